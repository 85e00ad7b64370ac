"""What `undunted review` does to a log of three thermocouples, as a pandas script would do it.

    python3 review.py LOG.csv CONES.json

CONES.json holds [name, activation energy in kJ/mol, ln A, coldest kelvin that counts] for each cone.
Reading and features are the same; where there is a quicker way in numpy that says the same to a
potter, it is taken: trapezoids instead of exact integrals, merging instead of an exact cut into
ramps and holds. Prints the answers, then what it took as JSON on standard error.
"""

import heapq
import json
import resource
import sys

import numpy as np
import pandas as pd

GAS = 8.31446261815324e-3
BANDS = (("quartz inversion", 550.0, 600.0), ("cristobalite inversion", 200.0, 280.0))
WINDOW_S = 900.0
EDGE_S = 180.0


def main() -> None:
    path, cones_path = sys.argv[1:3]
    with open(cones_path, encoding="utf-8") as file:
        cones = json.load(file)
    log = read(path)
    zones = {name: zone(log.index.to_numpy(), log[name], cones) for name in log.columns}
    for name, found in zones.items():
        print(name, found)
    spread = log.max(axis=1) - log.min(axis=1)
    hottest = log.max().idxmax()
    print("zones apart", spread.max(), "at", spread.idxmax(), "peak", spread[log[hottest].idxmax()])
    used = resource.getrusage(resource.RUSAGE_SELF)
    cpu_ms = 1000 * (used.ru_utime + used.ru_stime)
    took = {"cpuMs": cpu_ms, "peakKB": used.ru_maxrss}
    print(json.dumps(took), file=sys.stderr)


def read(path: str) -> pd.DataFrame:
    """Temperatures by seconds from the start, in order, one row a moment."""
    table = pd.read_csv(path, parse_dates=[0])
    clock = table.columns[0]
    if not table[clock].is_monotonic_increasing:
        table = table.sort_values(clock, kind="stable")
    if not table[clock].is_unique:
        table = table.drop_duplicates(clock)
    table.index = pd.Index((table[clock] - table[clock].iloc[0]).dt.total_seconds())
    return table.drop(columns=clock).astype(float)


def zone(times: np.ndarray, column: pd.Series, cones: list) -> dict:
    usual = np.median(np.diff(times))
    possible = column.between(-273.15, 1850)
    spikes = spikes_of(column)
    keep = (possible & ~spikes & column.notna()).to_numpy()
    t, y = times[keep], column.to_numpy()[keep]
    steps = np.diff(t)
    gap = steps > max(5 * usual, 120)
    peak = int(np.argmax(y))
    starts, reach = bins_of(t, y)
    return {
        "peak": y[peak],
        "at": t[peak],
        "readings": len(y),
        "spikes": int(spikes.sum()),
        "gaps": int(gap.sum()),
        "noise": noise_of(y),
        "cones": heatwork_of(t, y, gap, cones),
        "segments": segments_of(starts, reach),
        "bands": [
            (name, falls, passage(t, y, peak, (low, high), falls))
            for name, low, high in BANDS
            for falls in (False, True)
        ],
    }


def spikes_of(column: pd.Series) -> pd.Series:
    """Hampel: eleven readings, five deviations, at least 5 K. Only where a step is that large."""
    large = column.diff().abs() > 2.5
    near = large.rolling(7, center=True, min_periods=1).max() > 0
    if not near.any():
        return near
    middle = column.rolling(11, center=True, min_periods=1).median()
    off = (column - middle).abs()
    deviation = off.rolling(11, center=True, min_periods=1).median()
    return near & (off > np.maximum(5 * 1.4826 * deviation, 5))


def noise_of(y: np.ndarray) -> float:
    sizes = np.abs(np.diff(y, 2))
    quiet = int(np.ceil(0.95 * len(sizes)))
    return float(np.partition(sizes, quiet - 1)[:quiet].mean() / (0.7168 * np.sqrt(6)))


def heatwork_of(t: np.ndarray, y: np.ndarray, gap: np.ndarray, cones: list) -> tuple:
    """Budgets of all cones and when they went down; each on the part of the log that is warm for it."""
    hours = np.where(gap, 0.0, np.diff(t)) / 3600
    kelvin = y + 273.15
    highest = np.maximum.accumulate(kelvin)
    lowest_after = np.maximum.accumulate(kelvin[::-1])[::-1]
    states = []
    for name, energy, log_factor, cold in cones:
        first = int(np.searchsorted(highest, cold))
        last = len(kelvin) - int(np.searchsorted(lowest_after[::-1], cold))
        if last - first < 2:
            continue
        rate = np.exp(log_factor - energy / (GAS * kelvin[first:last]))
        budget = np.cumsum((rate[1:] + rate[:-1]) * 0.5 * hours[first : last - 1])
        at = int(np.searchsorted(budget, 1.0))
        moment = t[first + 1 + at] if at < len(budget) else None
        states.append((name, float(np.minimum(budget[-1], 10_000)), moment))
    fallen = [state for state in states if state[2] is not None]
    return len(states), fallen[-1] if fallen else None


def bins_of(t: np.ndarray, y: np.ndarray) -> tuple:
    """Medians of at most about two thousand bins, none narrower than half a minute."""
    width = max(30.0, (t[-1] - t[0]) / 2000)
    frame = pd.DataFrame({"bin": ((t - t[0]) // width).astype(np.int64), "t": t, "y": y})
    grouped = frame.groupby("bin", sort=False)
    return grouped["t"].median().to_numpy(), grouped["y"].median().to_numpy()


def segments_of(t: np.ndarray, y: np.ndarray) -> list:
    """Ramps and holds, bottom up: neighbours are merged while the misfit that it adds is small."""
    width = (t[-1] - t[0]) / max(1, len(t) - 1)
    penalty = 2.0**2 * 600 / width
    hours = (t - t[0]) / 3600
    level = y - y[0]
    sums = [
        np.concatenate(([0.0], np.cumsum(part))).tolist()
        for part in (hours, level, hours * hours, hours * level, level * level)
    ]
    s_t, s_y, s_tt, s_ty, s_yy = sums

    def fit(a: int, b: int) -> tuple:
        n = b - a
        x, v = s_t[b] - s_t[a], s_y[b] - s_y[a]
        xx = s_tt[b] - s_tt[a] - x * x / n
        xv = s_ty[b] - s_ty[a] - x * v / n
        flat = s_yy[b] - s_yy[a] - v * v / n
        return (flat - xv * xv / xx if xx > 0 else flat), (xv / xx if xx > 0 else 0.0), flat

    n = len(t)
    step = max(2, int(480 / width) // 4)
    edges = list(range(0, n, step)) + [n]
    if edges[-1] - edges[-2] < 2:
        del edges[-2]
    count = len(edges) - 1
    after = list(range(1, count)) + [-1]
    before = [-1] + list(range(count - 1))
    end = edges[1:]
    begin = edges[:-1]
    alive = [True] * count
    cost = [fit(a, b)[0] for a, b in zip(begin, end)]
    version = [0] * count
    queue = []

    def offer(i: int) -> None:
        j = after[i]
        if j >= 0:
            added = fit(begin[i], end[j])[0] - cost[i] - cost[j]
            heapq.heappush(queue, (added, i, j, version[i], version[j]))

    for i in range(count):
        offer(i)
    while queue:
        added, i, j, vi, vj = heapq.heappop(queue)
        if not (alive[i] and alive[j] and version[i] == vi and version[j] == vj):
            continue
        if added > 2 * penalty:
            break
        alive[j] = False
        end[i], after[i] = end[j], after[j]
        if after[i] >= 0:
            before[after[i]] = i
        cost[i] = fit(begin[i], end[i])[0]
        version[i] += 1
        offer(i)
        if before[i] >= 0:
            offer(before[i])
    found = []
    for i in range(count):
        if alive[i]:
            misfit, slope, flat = fit(begin[i], end[i])
            kind = "hold" if flat - misfit <= penalty else "ramp"
            found.append((kind, t[begin[i]], t[end[i] - 1], round(slope, 2)))
    return found


def passage(t: np.ndarray, y: np.ndarray, peak: int, band: tuple, falls: bool):
    """First entering to last leaving by robust lines, mean rate, fastest slope over 15 min."""
    low, high = band
    part = slice(peak, None) if falls else slice(0, peak + 1)
    tt, yy = t[part], (-y[part] if falls else y[part])
    enter, leave = (-high, -low) if falls else (low, high)
    entered = np.flatnonzero((yy[:-1] < enter) & (yy[1:] >= enter))
    left = np.flatnonzero((yy[:-1] < leave) & (yy[1:] >= leave))
    if len(entered) == 0 or len(left) == 0:
        return None
    start = edge(tt, yy, int(entered[0]), enter)
    stop = edge(tt, yy, int(left[-1]), leave)
    return start, stop, (leave - enter) / (stop - start) * 3600, fastest(t, y, start, stop)


def edge(t: np.ndarray, y: np.ndarray, i: int, level: float) -> float:
    """When a level is crossed: Theil-Sen on at most 120 readings within 3 min."""
    at = t[i] + (level - y[i]) / (y[i + 1] - y[i]) * (t[i + 1] - t[i])
    a, b = np.searchsorted(t, (at - EDGE_S, at + EDGE_S))
    stride = max(1, -(-(b - a) // 120))
    x, v = t[a:b:stride], y[a:b:stride]
    if len(x) < 5:
        return at
    p, q = np.triu_indices(len(x), 1)
    slope = np.median((v[q] - v[p]) / (x[q] - x[p]))
    return at + (level - np.median(v - slope * (x - at))) / slope


def fastest(t: np.ndarray, y: np.ndarray, start: float, stop: float) -> float:
    """Largest least-squares slope over 15 min whose middle lies in the passage, every 30 s."""
    window = min(WINDOW_S, max(stop - start, 120.0))
    looks = np.linspace(start, stop, max(2, int((stop - start) / 30) + 2))
    a, b = np.searchsorted(t, start - window), np.searchsorted(t, stop + window)
    x, v = t[a:b] - start, y[a:b] - y[a]
    sums = [np.concatenate(([0.0], np.cumsum(part))) for part in (x, v, x * x, x * v)]
    lo = np.searchsorted(x, looks - start - window / 2)
    hi = np.searchsorted(x, looks - start + window / 2, side="right")
    n = hi - lo
    good = n >= 3
    lo, hi, n = lo[good], hi[good], n[good]
    sx, sv, sxx, sxv = (part[hi] - part[lo] for part in sums)
    slopes = (sxv - sx * sv / n) / (sxx - sx * sx / n) * 3600
    return float(slopes[np.argmax(np.abs(slopes))])


main()
