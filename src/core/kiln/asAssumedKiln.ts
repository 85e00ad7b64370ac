import type { AssumedKiln } from "./AssumedKiln.ts";
import { lossKPerSecond } from "./heatBalance.ts";
import type { LearnedKiln } from "./LearnedKiln.ts";
import { climbCPerHour } from "./reachRows.ts";

/** A learned kiln in place of the assumed one, for drafting and checking schedules. */
export function asAssumedKiln(learned: LearnedKiln): AssumedKiln {
  const { cooling, power, roomC, powerWatt } = learned;
  const balance = { cooling, pullKPerSecond: power.pullKPerSecond, roomC };
  return {
    fullHeatingCPerHour: (tempC) => Math.max(0, climbCPerHour(balance, tempC)),
    naturalCoolingCPerHour: (tempC) => Math.max(0, 3600 * lossKPerSecond(cooling, tempC, roomC)),
    ...(powerWatt !== null &&
      power.from === "output" && { heatCapacityJPerK: powerWatt / power.pullKPerSecond }),
    learned,
    basis: basisOf(learned),
  };
}

function basisOf({ firings, power }: LearnedKiln): string {
  const names = firings.map(({ name }) => name);
  const logs = names.length === 1 ? names[0] : `${names.length} logs, ${names.join(", ")}`;
  const least =
    power.from === "output" ? "" : "; full heating is the fastest climb seen, the least it can do";
  return `your kiln as learned from ${logs}${least}`;
}
