import type { Curve } from "../curve/Curve.ts";
import { lastAtOrBefore } from "../curve/temperatureAt.ts";

/** Where a falling Curve bends, and how well its readings tell. */
interface PlacedHinge {
  readonly seconds: number;
  readonly tempC: number;
  readonly plusMinusSeconds: number;
}

/** More readings than this tell no more. */
const MOST_READINGS = 240;
const TRIED = 120;
/** A thermocouple in its sheath follows by about this much [s]; our own estimate. */
const SHEATH_SECONDS = 60;

/**
 * The moment at which a fall bends downwards, near one that is known roughly: two straight lines in the
 * logarithm of the height above the room that meet there, by least squares over the place of the bend.
 * Its ± is where the fit is as good within its own scatter, at least half a step of the readings.
 */
export function placedHinge(
  curve: Curve,
  near: { readonly atSeconds: number; readonly window: number; readonly roomC: number },
): PlacedHinge {
  const { atSeconds, window, roomC } = near;
  const { times, heights, step } = readingsAbout(curve, near);
  const tries = Array.from({ length: TRIED + 1 }, (_, i) => {
    const seconds = atSeconds - window + (1.7 * window * i) / TRIED;
    return { seconds, ...fitted(times, heights, seconds) };
  });
  const best = tries.reduce((a, b) => (b.squares < a.squares ? b : a));
  const freedom = Math.max(1, times.length - 4);
  const asGood = tries.filter(({ squares }) => squares <= best.squares * (1 + 4 / freedom));
  const [low, high] = [asGood[0]?.seconds ?? best.seconds, asGood.at(-1)?.seconds ?? best.seconds];
  return {
    seconds: best.seconds,
    tempC: roomC + Math.exp(best.height),
    plusMinusSeconds: Math.max((high - low) / 2, step / 2) + SHEATH_SECONDS,
  };
}

function readingsAbout(
  curve: Curve,
  { atSeconds, window, roomC }: { atSeconds: number; window: number; roomC: number },
) {
  const [from, to] = [atSeconds - 2 * window, atSeconds + 1.5 * window];
  const { timesSeconds, tempsC } = curve;
  const begin = lastAtOrBefore(timesSeconds, from) + 1;
  const count = Math.max(0, lastAtOrBefore(timesSeconds, to) + 1 - begin);
  const inside = Array.from({ length: count }, (_, i) => begin + i).filter(
    (i) => tempsC[i]! > roomC + 1,
  );
  const every = Math.max(1, Math.floor(inside.length / MOST_READINGS));
  const kept = inside.filter((_, at) => at % every === 0);
  return {
    times: kept.map((i) => timesSeconds[i]!),
    heights: kept.map((i) => Math.log(tempsC[i]! - roomC)),
    step: (to - from) / Math.max(1, inside.length),
  };
}

/** Least squares of height = p + q·(t − c) + s·max(0, t − c): its squares, and p, the height at the bend. */
function fitted(times: readonly number[], heights: readonly number[], bend: number) {
  const sums = new Float64Array(9);
  for (const [i, time] of times.entries()) {
    const [x, y] = [(time - bend) / 3600, heights[i]!];
    const z = Math.max(0, x);
    const add = [1, x, z, x * x, x * z, z * z, y, x * y, z * y];
    for (let k = 0; k < 9; k++) sums[k] = sums[k]! + add[k]!;
  }
  const [n, x, z, xx, xz, zz, y, xy, zy] = sums as unknown as readonly [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const det = n * (xx * zz - xz * xz) - x * (x * zz - xz * z) + z * (x * xz - xx * z);
  if (!(Math.abs(det) > 1e-12)) return { squares: Number.POSITIVE_INFINITY, height: 0 };
  const p = (y * (xx * zz - xz * xz) - x * (xy * zz - xz * zy) + z * (xy * xz - xx * zy)) / det;
  const q = (n * (xy * zz - xz * zy) - y * (x * zz - xz * z) + z * (x * zy - xy * z)) / det;
  const s = (n * (xx * zy - xz * xy) - x * (x * zy - xy * z) + y * (x * xz - xx * z)) / det;
  let squares = 0;
  for (const [i, time] of times.entries()) {
    const at = (time - bend) / 3600;
    squares += (heights[i]! - p - q * at - s * Math.max(0, at)) ** 2;
  }
  return { squares, height: p };
}
