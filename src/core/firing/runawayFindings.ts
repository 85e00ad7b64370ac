import { type Curve, peakOf } from "../curve/Curve.ts";
import { type Finding, RUNAWAY } from "../findings/Finding.ts";
import type { LogReading } from "../log/reading/LogReading.ts";
import type { Schedule } from "../schedule/Schedule.ts";
import { askedOf } from "./askedHeat.ts";
import { type Runaway, runawayOf } from "./runaway.ts";
import { type Row, rateOver, rowsOf } from "./timeBins.ts";

const BASIS =
  "climbs of 10 min or more that neither set point, output nor plan asks for; an overshoot, heat that soaks back and a zone hotter than the one controlled are left out; the limits are our own estimates";

const SWITCH_OFF =
  "Switch the kiln off by hand at its main switch or breaker, if that is safe to reach. Leave the lid shut. If anything smokes or burns, or you cannot reach the switch, get everybody out and call the fire service.";
const NOT_AGAIN =
  "Do not fire this kiln again until a licensed electrician has found the cause under your local code: most often a relay that sticks closed.";

/** A kiln that heats by itself, as an emergency; empty when there is none. */
export function runawayFindings(reading: LogReading, plan: Schedule | null): readonly Finding[] {
  const found = runawayOf(reading, plan);
  if (found === null) return [];
  const { fromSeconds, toSeconds, fromC, toC, askedC, isOver } = found;
  const severalZones = reading.channels.filter(({ role }) => role === "temperature").length > 1;
  return [
    {
      topic: RUNAWAY,
      severity: "warning",
      statement: isOver
        ? `DANGER: this kiln heated by itself. It climbed from {from} to {to} in {for} ${whyWords(found)}.`
        : `EMERGENCY: the kiln is heating by itself. It has climbed from {from} to {to} in {for} ${whyWords(found)}.`,
      evidence: [
        { name: "from", value: fromC, kind: "temperature" },
        { name: "to", value: toC, kind: "temperature" },
        { name: "for", value: toSeconds - fromSeconds, kind: "duration" },
        ...(askedC === null
          ? []
          : ([{ name: "asked", value: askedC, kind: "temperature" }] as const)),
      ],
      basis: BASIS,
      advice: isOver
        ? `Keep it switched off at its main switch or breaker. ${NOT_AGAIN}`
        : `${SWITCH_OFF} ${NOT_AGAIN}`,
      zone: severalZones ? found.zone : null,
      span: { fromSeconds, toSeconds },
    },
  ];
}

function whyWords({ why, askedC }: Runaway): string {
  switch (why) {
    case "columns at 0":
      return "while set point and output stood at 0 (unless you are firing it by hand)";
    case "output at 0":
      return "while its output stood at 0";
    case "above the set point":
      return askedC === null
        ? "while its controller asked for no heat"
        : "and past its set point, which stood at {asked}";
    case "above the plan":
      return "and past its schedule, which stood at {asked}";
    case "after the end":
      return "after the top of its schedule, which only cools from there";
  }
}

/** Elements asked for as much as this are flat out. */
const FLAT_OUT = 0.95;
/** So long without a climb, flat out, no working kiln stands [s]; our own estimates, as all below. */
const STANDING_SECONDS = 1800;
/** Slower than this it stands [°C/h]. */
const STANDING_C_PER_HOUR = 5;
/** A fall of this much is a fall [K]. */
const FALLEN_K = 10;
/** A worn kiln creeps near its own top, from this on: there it must stand for longer [°C, K, s]. */
const WORN = { fromC: 900, nearK: 40, seconds: 3600 };
/** Below this elements and bricks still take up the first heat [°C]. */
const WARM_C = 60;
/** So near its set point a kiln is where it should be [K]. */
const AT_SET_POINT_K = 15;

/** Elements flat out while the reading stands or falls on the way up: the reading is not to be trusted. */
export function standingFindings(reading: LogReading): readonly Finding[] {
  const zones = reading.channels.filter(({ role }) => role === "temperature");
  return zones.flatMap(({ name, curve }) => {
    const stand = curve === null ? null : longestStand(curve, reading);
    return stand === null ? [] : [standingFinding(stand, zones.length > 1 ? name : null)];
  });
}

interface Stand {
  readonly from: Row;
  readonly to: Row;
  readonly isNearTop: boolean;
}

function standingFinding({ from, to, isNearTop }: Stand, zone: string | null): Finding {
  const hasFallen = from.tempC - to.tempC > FALLEN_K;
  return {
    topic: "reading not to be trusted",
    severity: isNearTop ? "caution" : "warning",
    statement: `With the elements flat out for {for} the reading ${hasFallen ? "fell from {from} to {to}" : "stood at {from}"}: do not trust it. The thermocouple may have slipped out, an element or a relay may be dead${isNearTop ? ", or worn elements can do no more" : ""}.`,
    evidence: [
      { name: "for", value: to.seconds - from.seconds, kind: "duration" },
      { name: "from", value: from.tempC, kind: "temperature" },
      { name: "to", value: to.tempC, kind: "temperature" },
    ],
    basis:
      "an output of 95 % or more for half an hour or more, below its set point, without a climb; our own estimate",
    advice:
      "If it is still firing, switch it off: the kiln may be far hotter than it reads. Go by the witness cones. Have a licensed electrician check relays, elements and mains under your local code, kiln isolated and cold, and see that the thermocouple sits in its hole.",
    zone,
    span: { fromSeconds: from.seconds, toSeconds: to.seconds },
  };
}

/** The longest stretch flat out without a climb; null when there is none. */
function longestStand(curve: Curve, reading: LogReading): Stand | null {
  const asked = askedOf(reading, curve);
  if (!asked.isOutputTelling) return null;
  const rows = rowsOf(curve, asked.outputAt);
  const peakC = peakOf(curve).tempC;
  let first: number | null = null;
  let best: Stand | null = null;
  for (const [at, row] of rows.entries()) {
    const setC = asked.setPointAt(row.seconds);
    const isWanting = typeof setC !== "number" || setC - row.tempC > AT_SET_POINT_K;
    if (row.output === null || row.output < FLAT_OUT || row.tempC < WARM_C || !isWanting) {
      first = null;
      continue;
    }
    first ??= at;
    if (row.seconds - rows[first]!.seconds < STANDING_SECONDS) continue;
    const rate = rateOver(rows, at, STANDING_SECONDS);
    if (rate === null || rate.rateCPerHour > STANDING_C_PER_HOUR) continue;
    const from = rows.find(({ seconds }) => seconds >= row.seconds - STANDING_SECONDS) ?? row;
    const begun: Row = best !== null && best.to.seconds >= from.seconds ? best.from : from;
    const isNearTop =
      row.tempC > Math.max(WORN.fromC, peakC - WORN.nearK) && begun.tempC - row.tempC < FALLEN_K;
    best = { from: begun, to: row, isNearTop };
  }
  return best === null || isTooShort(best) ? null : best;
}

function isTooShort({ from, to, isNearTop }: Stand): boolean {
  return isNearTop && to.seconds - from.seconds < WORN.seconds;
}
