import { type Curve, temperatureAt } from "../curve/Curve.ts";
import type { LogReading } from "../log/reading/LogReading.ts";
import type { Schedule } from "../schedule/Schedule.ts";
import { type Asked, askedOf, plannedCourse } from "./askedHeat.ts";
import { type Row, rateOver, rowsOf } from "./timeBins.ts";

/** What a kiln that heats by itself should have done instead. */
type RunawayWhy =
  | "columns at 0"
  | "output at 0"
  | "above the set point"
  | "above the plan"
  | "after the end";

/** A stretch in which a kiln climbed though nothing asked it to. */
export interface Runaway {
  readonly zone: string;
  readonly why: RunawayWhy;
  readonly fromSeconds: number;
  readonly fromC: number;
  /** Its hottest moment. */
  readonly toSeconds: number;
  readonly toC: number;
  /** Set point or plan at that moment; null where there was none, or it was off. */
  readonly askedC: number | null;
  /** It has fallen since. */
  readonly isOver: boolean;
}

/** A way to tell that a climb is not asked for. */
interface Rule {
  readonly why: RunawayWhy;
  /** What was asked for; null where this moment is no sign of a runaway, `unknown` where the log is silent. */
  readonly unasked: (row: Row) => { readonly askedC: number | null } | "unknown" | null;
  /** Least rise since it began [K], and least time [s]. */
  readonly riseK: (began: { readonly askedC: number | null }) => number;
  readonly seconds: number;
  /** Least that the excess over what is asked has grown by [K]. */
  readonly growthK: number;
  /** Least rate at which it still climbs [°C/h]. */
  readonly rateCPerHour: number;
}

/** So far above what is asked for, and for so long, a climb is no overshoot any more; our own estimates. */
const ABOVE_K = 15;
const LONG_SECONDS = 600;
/** Heat in elements and bricks goes on for minutes after switching off, by a few K and ever slower. */
const SOAK_BACK_K = 15;
const SLOWING = 0.7;
const FAR_RISE_K = 30;
/** A zone that is not the controlled one may run so much hotter than the set point [K]. */
const ZONE_APART_K = 60;
/** Output below this is none, above it the controller itself asks for heat. */
const NO_OUTPUT = 0.03;
const FALLEN_K = 15;
/** Below this on the way down a kiln is past its peak [K]. */
const PAST_PEAK_K = 30;

/**
 * The worst stretch in which a kiln climbed unasked: while set point and output were off, above its
 * set point or its plan by more than 15 °C for 10 min and still rising, or after its programme.
 *
 * An overshoot, heat that soaks back, a set point that is 0 for a moment, an output column that
 * tells nothing, a zone that is hotter than the one controlled and a kiln fired by hand are none.
 *
 * @param plan The schedule that was fired; read only where the log has no set point.
 */
export function runawayOf(reading: LogReading, plan: Schedule | null): Runaway | null {
  const zones = reading.channels.flatMap(({ name, role, curve }) =>
    role === "temperature" && curve !== null ? [{ name, curve }] : [],
  );
  const found = zones.flatMap(({ name, curve }) => {
    const others = zones.flatMap((zone) => (zone.curve === curve ? [] : [zone.curve]));
    return stretchesOf({ name, curve, others }, reading, plan);
  });
  return found.toSorted((a, b) => b.toC - b.fromC - (a.toC - a.fromC))[0] ?? null;
}

interface Zone {
  readonly name: string;
  readonly curve: Curve;
  readonly others: readonly Curve[];
}

function stretchesOf(zone: Zone, reading: LogReading, plan: Schedule | null): readonly Runaway[] {
  const asked = askedOf(reading, zone.curve);
  const rows = rowsOf(zone.curve, asked.outputAt);
  return rulesFor(zone, { asked, rows, plan }).flatMap((rule) => climbsBy(rule, rows, zone.name));
}

function rulesFor(
  zone: Zone,
  known: { readonly asked: Asked; readonly rows: readonly Row[]; readonly plan: Schedule | null },
): readonly Rule[] {
  const { asked, rows, plan } = known;
  if (asked.setPoint === "idle") return [idleRule];
  if (asked.setPoint === "programme") return [setPointRule(zone, asked)];
  return [
    ...(asked.isOutputTelling ? [outputRule(asked, rows)] : []),
    ...(plan === null ? [] : planRules(zone.curve, rows, plan)),
  ];
}

/** Set point and output stand at 0 throughout, and the kiln climbs. */
const idleRule: Rule = {
  why: "columns at 0",
  unasked: ({ tempC }) => (tempC > 60 ? { askedC: null } : null),
  riseK: () => 60,
  seconds: LONG_SECONDS,
  growthK: 0,
  rateCPerHour: 30,
};

/** Above a set point that is on, far above one that has dropped, or after its programme. */
function setPointRule({ others }: Zone, asked: Asked): Rule {
  return {
    why: "above the set point",
    unasked: ({ seconds, tempC, output }) => {
      const setC = asked.setPointAt(seconds);
      const isHeating = output !== null && output > NO_OUTPUT;
      if (setC === null) return "unknown";
      if (setC === "over" && isHeating) return null;
      if (setC === "over") return { askedC: null };
      if (tempC - setC <= ABOVE_K) return null;
      if (asked.isOff(setC) && !isHeating) return { askedC: null };
      const isShared = others.every((curve) => {
        const otherC = temperatureAt(curve, seconds);
        return otherC === null || otherC - setC > ABOVE_K;
      });
      return !isShared && tempC - setC < ZONE_APART_K ? null : { askedC: setC };
    },
    riseK: ({ askedC }) => (askedC === null ? SOAK_BACK_K : 5),
    seconds: LONG_SECONDS,
    growthK: 5,
    rateCPerHour: 15,
  };
}

/** No set point, but an output that has told of heating before and now tells of none. */
function outputRule(asked: Asked, rows: readonly Row[]): Rule {
  const seconds = Math.max(2 * LONG_SECONDS, asked.silentSeconds(rows));
  return {
    why: "output at 0",
    unasked: ({ output }) => (output !== null && output <= NO_OUTPUT ? { askedC: null } : null),
    riseK: () => 20,
    seconds,
    growthK: 0,
    rateCPerHour: 20,
  };
}

/** Without columns: a kiln that kept to its plan, and then leaves it upwards. */
function planRules(curve: Curve, rows: readonly Row[], plan: Schedule): readonly Rule[] {
  const course = plannedCourse(curve, rows, plan);
  if (course === null) return [];
  const { planned, peakC, peakAtSeconds, isClimbingAfterwards, keptUntil } = course;
  const isIdle = ({ output }: Row) => output === null || output <= NO_OUTPUT;
  let hottestC = Number.NEGATIVE_INFINITY;
  let before = Number.POSITIVE_INFINITY;
  /** Hottest up to a row; rows are asked for in order of time, again from the first by each rule. */
  const hottestUntil = (row: Row) => {
    if (row.seconds < before) hottestC = Number.NEGATIVE_INFINITY;
    before = row.seconds;
    hottestC = Math.max(hottestC, row.tempC);
    return hottestC;
  };
  const above: Rule = {
    why: "above the plan",
    unasked: (row) => {
      const { seconds, tempC } = row;
      if (!isIdle(row) || !keptUntil(seconds)) return null;
      const planC = temperatureAt(planned, seconds);
      const askedC = seconds > peakAtSeconds ? peakC : planC;
      // Before its peak a plan may merely be overtaken: only far above it is that no haste.
      const least = askedC === peakC ? ABOVE_K : 2 * ABOVE_K;
      return askedC !== null && tempC > askedC + least ? { askedC } : null;
    },
    riseK: () => 10,
    seconds: LONG_SECONDS,
    growthK: 10,
    rateCPerHour: 15,
  };
  const afterwards: Rule = {
    why: "after the end",
    unasked: (row) => {
      const top = hottestUntil(row);
      const isPast = top > peakC - 20 && row.tempC < top - PAST_PEAK_K;
      return isIdle(row) && isPast && !isClimbingAfterwards && row.seconds > peakAtSeconds
        ? { askedC: null }
        : null;
    },
    riseK: () => 20,
    seconds: LONG_SECONDS,
    growthK: 0,
    rateCPerHour: 20,
  };
  return [above, afterwards];
}

/** Every stretch of one rule that is long, goes far enough, and still climbs at its end. */
function climbsBy(rule: Rule, rows: readonly Row[], zone: string): readonly Runaway[] {
  const found: { readonly open: Start; hottest: Start }[] = [];
  const lastC = rows.at(-1)?.tempC ?? 0;
  let lowest: Start | null = null;
  let isOpen = false;
  for (const [at, row] of rows.entries()) {
    const sign = rule.unasked(row);
    if (sign === "unknown") continue;
    if (sign === null) {
      lowest = null;
      isOpen = false;
      continue;
    }
    const here: Start = { at, row, askedC: sign.askedC };
    if (lowest === null || (!isOpen && isBetterStart(here, lowest))) lowest = here;
    const last = found.at(-1);
    if (isOpen && last !== undefined) {
      if (row.tempC > last.hottest.row.tempC) last.hottest = here;
    } else if (isRunaway(rule, { lowest, here, rows })) {
      isOpen = true;
      found.push({ open: lowest, hottest: here });
    }
  }
  return found.map((each) => runawayFrom(rule, each, { zone, lastC }));
}

/** Lower, or the set point has come on again: what was climbed without one is over. */
function isBetterStart(here: Start, lowest: Start): boolean {
  if (here.askedC !== null && lowest.askedC === null) return true;
  return here.row.tempC < lowest.row.tempC;
}

interface Start {
  readonly at: number;
  readonly row: Row;
  readonly askedC: number | null;
}

function isRunaway(
  rule: Rule,
  walk: { readonly lowest: Start; readonly here: Start; readonly rows: readonly Row[] },
): boolean {
  const { lowest, here, rows } = walk;
  const rise = here.row.tempC - lowest.row.tempC;
  if (here.row.seconds - lowest.row.seconds < rule.seconds || rise < rule.riseK(lowest))
    return false;
  const growth = rise - ((here.askedC ?? 0) - (lowest.askedC ?? 0));
  if (here.askedC !== null && lowest.askedC !== null && growth < rule.growthK) return false;
  const rate = rateOver(rows, here.at, LONG_SECONDS);
  if (rate === null || rate.rateCPerHour < Math.max(rule.rateCPerHour, 3 * rate.sigmaCPerHour))
    return false;
  return rise >= FAR_RISE_K || rate.lateCPerHour >= SLOWING * rate.earlyCPerHour;
}

function runawayFrom(
  rule: Rule,
  { open, hottest }: { readonly open: Start; readonly hottest: Start },
  { zone, lastC }: { readonly zone: string; readonly lastC: number },
): Runaway {
  return {
    zone,
    why: rule.why,
    fromSeconds: open.row.seconds,
    fromC: open.row.tempC,
    toSeconds: hottest.row.seconds,
    toC: hottest.row.tempC,
    askedC: hottest.askedC,
    isOver: lastC < hottest.row.tempC - FALLEN_K,
  };
}
