import type { Curve } from "../curve/Curve.ts";
import { temperatureAt } from "../curve/temperatureAt.ts";
import { type QuickenedFall, quickenedFalls } from "../kiln/quickenedFalls.ts";
import type { LogReading } from "../log/LogReading.ts";
import type { ZoneReview } from "./foundZone.ts";
import { hottestZone } from "./hottestZone.ts";

/** A moment at which cold air came into a kiln, as its log shows it; temperatures of the hottest zone. */
export interface OpeningInLog extends QuickenedFall {
  /** An opened lid, or less: a propped one, a vent, a fan. */
  readonly how: "opened" | "let air in";
}

/** What a log says of the opening of its kiln. */
export interface LoggedOpening {
  /** In order of time. */
  readonly moments: readonly OpeningInLog[];
  /** The first that looks like an opened lid, else the first; null when the kiln only slowed down. */
  readonly main: OpeningInLog | null;
  /** Down to here the kiln stayed shut as far as the log can tell [°C]; null when it does not fall. */
  readonly shutDownToC: number | null;
}

/** An opened lid makes a kiln fall at least this many times as fast as a shut one; our own estimate. */
const LID_TIMES = 2.2;
/** Hotter than this, nobody takes a lid off but for raku: a vent, a fan or a propped lid [°C]; our own estimate. */
const LID_OFF_BELOW_C = 450;
/** Two zones see one opening within this [s]. */
const SAME_SECONDS = 2700;

/**
 * Where the log of a firing shows cold air coming in, from all its zones: an opening is seen by every
 * thermocouple, so that what only one of several sees is not taken for an opened lid.
 */
export function openingInLog(reading: LogReading, zones: readonly ZoneReview[]): LoggedOpening {
  const explained = {
    output: reading.channels.find(({ outputFraction }) => outputFraction)?.outputFraction ?? null,
    setPoint: setPointOf(reading),
  };
  const hottest = hottestZone(zones);
  const watched = zones.map((zone) => ({ zone, ...quickenedFalls(zone.curve, explained) }));
  const all = watched
    .flatMap(({ zone, quickened }) => quickened.map((fall) => ({ zone, fall })))
    .toSorted((a, b) => a.fall.atSeconds - b.fall.atSeconds);
  const moments: OpeningInLog[] = [];
  for (const { fall } of all) {
    const isSame = (other: QuickenedFall) =>
      Math.abs(other.atSeconds - fall.atSeconds) <= SAME_SECONDS + fall.plusMinusSeconds;
    if (moments.some(isSame)) continue;
    const together = all.filter((other) => isSame(other.fall));
    const strongest = together.reduce((a, b) => (times(b.fall) > times(a.fall) ? b : a)).fall;
    const byHottest = together.find(({ zone }) => zone === hottest)?.fall ?? strongest;
    const seenBy = new Set(together.map(({ zone }) => zone)).size;
    const tempC = temperatureAt(hottest.curve, byHottest.atSeconds) ?? byHottest.tempC;
    const isLid =
      times(byHottest) >= LID_TIMES && tempC < LID_OFF_BELOW_C && 2 * seenBy > zones.length;
    moments.push({
      ...byHottest,
      tempC:
        Math.abs(tempC - byHottest.tempC) <= 3 * byHottest.plusMinusK ? byHottest.tempC : tempC,
      how: isLid ? "opened" : "let air in",
    });
  }
  const calm = watched.find(({ zone }) => zone === hottest)?.calmDownToC ?? null;
  return {
    moments,
    main: moments.find(({ how }) => how === "opened") ?? moments[0] ?? null,
    shutDownToC: moments[0]?.tempC ?? calm,
  };
}

function times({ afterCPerHour, ownCPerHour }: QuickenedFall): number {
  return afterCPerHour / ownCPerHour;
}

function setPointOf(reading: LogReading): Curve | null {
  return reading.channels.find(({ role, curve }) => role === "set-point" && curve)?.curve ?? null;
}
