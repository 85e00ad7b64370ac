import { temperatureAt } from "../curve/temperatureAt.ts";
import { hottestZone } from "../firing/hottestZone.ts";
import { placedOnce, placedUnloading } from "../firing/placedMoments.ts";
import type { MeasuredPing } from "../glaze/GlazedPiece.ts";
import type { NotedFiring } from "./firingFacts.ts";
import type { Tile } from "./Tile.ts";
import type { FirstPingOf } from "./tileFits.ts";

/** One sigma of thermocouple and place against the tile [K]; our own estimate. */
const TILE_K = 15;

/** A ping is written down to this [s], one sigma; our own estimate. */
const NOTED_SECONDS = 120;

/**
 * The first ping of each tile on the way down, with the temperature that the log had then.
 * A ping before the peak, outside the log or in a gap of it gives none. It counts as heard with the
 * kiln shut when the record says that it was unloaded later.
 */
export function firstPings(firings: readonly NotedFiring[]): FirstPingOf {
  const byRecord = new Map(
    firings.flatMap((firing) => (firing.record === null ? [] : [[firing.record.name, firing]])),
  );
  return (tile) => {
    const firing = byRecord.get(tile.firing);
    return firing === undefined ? null : pingOf(tile, firing);
  };
}

function pingOf({ pings, coat }: Tile, { review, record }: NotedFiring): MeasuredPing | null {
  const zone = hottestZone(review.zones);
  const cooling = (pings?.moments ?? [])
    .map((moment) => placedOnce(moment, review.reading, zone, "pinging")?.seconds ?? null)
    .filter((seconds) => seconds !== null && seconds > zone.peakAtSeconds);
  const first = Math.min(...cooling.map(Number));
  const at = (seconds: number) => temperatureAt(zone.curve, seconds);
  const onsetC = cooling.length === 0 ? null : at(first);
  if (onsetC === null) return null;
  const [before, after] = [at(first - NOTED_SECONDS), at(first + NOTED_SECONDS)];
  const noted = before === null || after === null ? 0 : Math.abs(before - after) / 2;
  const unloading = placedUnloading(review.reading, zone, record);
  const openedAt = unloading.ok ? (unloading.value?.atSeconds ?? null) : null;
  return {
    coatMm: coat.firedMm,
    onsetC,
    sigmaK: Math.hypot(TILE_K, noted),
    kiln: openedAt === null ? "not noted" : first < openedAt ? "shut" : "opened",
  };
}
