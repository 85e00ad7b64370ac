import { cautionsFor } from "../cautions/cautions.ts";
import { type Curve, peakOf } from "../curve/Curve.ts";
import { crossingTimes } from "../curve/edgeTimes.ts";
import { failed, ok, type Problem, type Result } from "../problem.ts";
import { kilnFindings } from "./kilnFindings.ts";
import {
  type CooledTo,
  type CoolingConstants,
  type KilnFiring,
  type LearnedFiring,
  type LearnedKiln,
  type LearnOptions,
  lossKPerSecond,
} from "./LearnedKiln.ts";
import {
  type FallSample,
  fitCooling,
  fitUpperCooling,
  type NaturalFall,
  naturalFall,
  scatterK,
} from "./naturalFall.ts";
import { ceilingOf, type Pull, pullOf, reachRows } from "./reach.ts";
import { energyOf, fullOnFraction, tooLittle } from "./tooLittle.ts";
import { fitTwoNode } from "./twoNode.ts";

/** A first reading below this is taken for the room's [°C]; otherwise the room is not known … */
const ROOM_BELOW_C = 45;
/** … and is taken to be this [°C]. */
const USUAL_ROOM_C = 20;

/** A natural fall has to cover this much before constants are fitted to it [K]. */
const ENOUGH_DROP_K = 120;

/** A two-node fit further from its log than this is not used [K]. */
const LARGEST_RMS_K = 15;

/** The two temperatures at which falls are told: the inversions of quartz and cristobalite [°C]. */
const QUARTZ_C = 573;
const CRISTOBALITE_C = 226;

/** A firing with what was found in it on the way. */
interface Studied {
  readonly firing: KilnFiring;
  readonly roomC: number;
  readonly fall: NaturalFall;
  readonly samples: readonly FallSample[];
}

/**
 * A kiln as one or more of its logs show it.
 * Cooling constants come from where it fell by itself with the lid shut, its power from the output
 * column or, without one, from the fastest climb. The constants fit the logs; they are no
 * properties of the kiln.
 *
 * @returns the kiln, or `kiln/no-firing`, `kiln/several-kilns`, `kiln/too-short`,
 * `kiln/no-climb`, `kiln/no-power`, `kiln/no-natural-cooling`, each with what is missing.
 */
export function learnKiln(
  firings: readonly KilnFiring[],
  options: LearnOptions = {},
): Result<LearnedKiln> {
  const lacking = tooLittle(firings);
  if (lacking.length > 0) return failed(...lacking);
  const studied = inOrder(firings).map(study);
  const falling = studied.filter(({ samples }) => spanK(samples) >= ENOUGH_DROP_K);
  if (falling.length === 0) return failed(noNaturalCooling(studied));
  const samples = falling.flatMap((each) => each.samples);
  const temps = samples.map(({ tempC }) => tempC);
  const cooling = {
    ...fitCooling(samples),
    lowestC: Math.min(...temps),
    highestC: Math.max(...temps),
    firings: falling.map(({ firing }) => firing.name),
  };
  const pulls = studied.map(({ firing, roomC }) => pullOf({ ...firing, roomC }, cooling));
  const power = powerOf(studied, pulls);
  if (!power.ok) return power;
  const roomC = studied.reduce((sum, each) => sum + each.roomC, 0) / studied.length;
  const balance = { cooling, pullKPerSecond: power.value.pullKPerSecond, roomC };
  const learned = studied.map((each, i) =>
    learnedFiring(each, { cooling, pull: pulls[i] ?? null, options }),
  );
  const reach = reachRows(
    studied.map(({ firing }) => firing.curve),
    balance,
  );
  const twoNode = twoNodeOf(studied);
  const ceilingC = ceilingOf(balance, twoNode);
  return ok({
    firings: learned,
    roomC,
    cooling,
    power: power.value,
    twoNode,
    reach,
    ceilingC,
    powerWatt: options.powerWatt ?? null,
    tariffPerKWh: options.tariffPerKWh ?? null,
    findings: kilnFindings({
      firings: learned,
      offsets: inOrder(firings).map(offsetOf),
      cooling,
      power: power.value,
      ceilingC,
      roomC,
    }),
    cautions: cautionsFor({ kiln: true, opening: true, estimate: true }),
  });
}

/** By wall time where every log has one; otherwise as given. */
function inOrder(firings: readonly KilnFiring[]): readonly KilnFiring[] {
  if (firings.some(({ start }) => start === null)) return firings;
  return firings.toSorted((a, b) => ((a.start as string) < (b.start as string) ? -1 : 1));
}

/** What the cones of a firing allow; nothing where none stood in it. */
function offsetOf({ offset }: KilnFiring): NonNullable<KilnFiring["offset"]> {
  return offset ?? { lowK: null, highK: null };
}

function study(firing: KilnFiring): Studied {
  const first = firing.curve.tempsC[0]!;
  const roomC = first < ROOM_BELOW_C ? first : USUAL_ROOM_C;
  const fall = naturalFall(firing.curve, firing.output, roomC);
  const all = fall.samples.map(({ tempC, rateCPerHour }) => ({
    tempC,
    roomC,
    fallCPerHour: -rateCPerHour,
  }));
  const samples = fall.from === "shape" && all.length > 0 ? fitUpperCooling(all).kept : all;
  return { firing, roomC, fall, samples };
}

function spanK(samples: readonly FallSample[]): number {
  const temps = samples.map(({ tempC }) => tempC);
  return samples.length < 2 ? 0 : Math.max(...temps) - Math.min(...temps);
}

function noNaturalCooling(studied: readonly Studied[]): Problem {
  const ends = studied.map(({ firing, fall }) => {
    const lastC = Math.round(firing.curve.tempsC.at(-1)!);
    return fall.openedAtSeconds === null
      ? `${firing.name} ends at ${lastC} °C`
      : `${firing.name} was opened early`;
  });
  return {
    code: "kiln/no-natural-cooling",
    where: studied.map(({ firing }) => firing.name).join(", "),
    what: `no stretch shows the kiln falling by itself, lid shut and power off: ${ends.join("; ")}`,
    expected: `a fall of ${ENOUGH_DROP_K} °C or more after the peak that no programme holds back and no draught hurries`,
    fix: "log one firing that cools with the power off and the lid shut, and let the logger run overnight",
  };
}

/** The newest firing with an output column speaks for the power; without one, the fastest climb of all. */
function powerOf(
  studied: readonly Studied[],
  pulls: readonly (Pull | null)[],
): Result<LearnedKiln["power"]> {
  const found = studied.flatMap(({ firing }, i) => {
    const pull = pulls[i];
    return pull
      ? [{ firing: firing.name, from: pull.from, pullKPerSecond: pull.pullKPerSecond }]
      : [];
  });
  const newest = found.findLast(({ from }) => from === "output");
  const fastest = found.toSorted((a, b) => b.pullKPerSecond - a.pullKPerSecond)[0];
  const best = newest ?? fastest;
  if (best) return ok(best);
  return failed({
    code: "kiln/no-power",
    where: studied.map(({ firing }) => firing.name).join(", "),
    what: "no log shows the kiln climbing above 300 °C for long enough",
    expected: "half an hour or more of climbing between 300 °C and the peak",
    fix: "log the firing from its start",
  });
}

function learnedFiring(
  { firing, roomC, fall, samples }: Studied,
  known: {
    readonly cooling: CoolingConstants;
    readonly pull: Pull | null;
    readonly options: LearnOptions;
  },
): LearnedFiring {
  const { curve, output, name, start } = firing;
  const peak = peakOf(curve);
  const own = spanK(samples) >= ENOUGH_DROP_K ? fitCooling(samples) : null;
  const fallAt = (tempC: number) =>
    own !== null && samples.some((sample) => Math.abs(sample.tempC - tempC) < 60)
      ? 3600 * lossKPerSecond(own, tempC, roomC)
      : null;
  const energyKWh = energyOf(output, known.options.powerWatt);
  const { tariffPerKWh } = known.options;
  return {
    name,
    start,
    roomC,
    peakC: peak.tempC,
    peakAtSeconds: peak.seconds,
    fallAtQuartzCPerHour: fallAt(QUARTZ_C),
    fallAtCristobaliteCPerHour: fallAt(CRISTOBALITE_C),
    coolingFrom: own === null ? null : fall.from,
    openedAtSeconds: fall.openedAtSeconds,
    cooledTo: fallTimes(curve, known.cooling, { roomC, opened: fall.openedAtSeconds !== null }),
    pulls: known.pull?.stretches ?? [],
    fullOnFraction: output === null ? null : fullOnFraction(output, peak.seconds),
    noiseK: scatterK(curve),
    energyKWh,
    cost: energyKWh === null || tariffPerKWh === undefined ? null : energyKWh * tariffPerKWh,
  };
}

/** The newest firing that carries it: from the room up, with its output, and a good way down. */
function twoNodeOf(studied: readonly Studied[]): LearnedKiln["twoNode"] {
  for (const { firing, roomC, fall, samples } of studied.toReversed()) {
    const { curve, output, name } = firing;
    if (output === null || spanK(samples) < ENOUGH_DROP_K) continue;
    if (curve.tempsC[0]! >= ROOM_BELOW_C) continue;
    const untilSeconds = fall.openedAtSeconds ?? curve.timesSeconds.at(-1)!;
    const found = fitTwoNode({ curve, output, roomC, untilSeconds });
    if (found !== null && found.rmsK <= LARGEST_RMS_K) return { ...found, firing: name };
  }
  return null;
}

/** Temperatures to which one waits before opening and unloading [°C]. */
const WAITED_FOR_C = [200, 100, 50] as const;

/** Nearer to the room than this a fall never quite arrives [K]. */
const NEVER_WITHIN_K = 8;
const STEPS = 200;

/**
 * Time of a fall by itself, lid shut, between two temperatures [s]: ∫ dT / loss, by Simpson's rule.
 * @returns null when the lower one is the room's, or nearly.
 */
export function secondsToFall(
  cooling: CoolingConstants,
  fall: { readonly fromC: number; readonly toC: number; readonly roomC: number },
): number | null {
  const { fromC, toC, roomC } = fall;
  if (toC < roomC + NEVER_WITHIN_K) return null;
  if (fromC <= toC) return 0;
  // Steps even in ln(T − Ta), for the fall slows down towards the room.
  const low = Math.log(toC - roomC);
  const step = (Math.log(fromC - roomC) - low) / STEPS;
  let sum = 0;
  for (let k = 0; k <= STEPS; k++) {
    const aboveK = Math.exp(low + k * step);
    const weight = k === 0 || k === STEPS ? 1 : k % 2 === 1 ? 4 : 2;
    sum += (weight * aboveK) / lossKPerSecond(cooling, roomC + aboveK, roomC);
  }
  return (sum * step) / 3;
}

/**
 * When a firing had fallen to 200, 100 and 50 °C after its peak: as read, or, where the log ends
 * before, as it would fall by itself from the last reading. An opened kiln is not reckoned on.
 */
function fallTimes(
  curve: Curve,
  cooling: CoolingConstants,
  situation: { readonly roomC: number; readonly opened: boolean },
): readonly CooledTo[] {
  const peak = peakOf(curve);
  const lastSeconds = curve.timesSeconds.at(-1)!;
  const lastC = curve.tempsC.at(-1)!;
  return WAITED_FOR_C.flatMap((tempC): readonly CooledTo[] => {
    const read = crossingTimes(curve, tempC).find(
      ({ seconds, direction }) => seconds > peak.seconds && direction === "cooling",
    );
    if (read) return [{ tempC, secondsFromPeak: read.seconds - peak.seconds, how: "measured" }];
    if (situation.opened || lastC < tempC) return [];
    const left = secondsToFall(cooling, { fromC: lastC, toC: tempC, roomC: situation.roomC });
    return left === null
      ? []
      : [{ tempC, secondsFromPeak: lastSeconds - peak.seconds + left, how: "worked out" }];
  });
}
