import { type Curve, temperatureAt } from "../curve/Curve.ts";
import { type QuickenedFall, quickenedFalls } from "../kiln/quickenedFalls.ts";
import type { LogReading } from "../log/reading/LogReading.ts";
import { hottestZone, type ZoneReview } from "./FiringFacts.ts";
import type { PlacedUnloading } from "./placedMoments.ts";

/** When and how hot a kiln was opened, by its record and its log together. */
export interface KnownOpening {
  /** How hot; of the log where the two contradict each other. Null when neither tells [°C]. */
  readonly tempC: number | null;
  /** Null when neither tells [s]. */
  readonly atSeconds: number | null;
  readonly from: "record" | "log" | "both" | null;
  /** How record and log contradict each other, when they do. */
  readonly contradiction: "opened before" | "opened later" | "still shut" | null;
  /** How hot it may have been opened, and how much is to be said for it; empty when nothing is known. */
  readonly maybe: readonly { readonly tempC: number; readonly share: number }[];
  /** It was opened no hotter than this, as far as the log can tell [°C]; null when it cannot. */
  readonly notAboveC: number | null;
}

/** A record and a log that differ by less mean one opening [s], [K]. */
const SAME_SECONDS = 3600;
const SAME_K = 40;
/** So much longer must a log go on falling calmly to say that the kiln was still shut [s] … */
const CALM_SECONDS = 2700;
/** … and by so much [K]. */
const CALM_K = 25;

/** Nobody unloads hotter than this [°C]. */
const HOTTEST_OPENING_C = 350;

/** How sure a fall that quickened is an opening, and how sure a record is, where the two differ; our own estimates. */
const SURE = { opened: 0.9, "let air in": 0.5, againstRecord: 0.75, beforeRecord: 0.4 } as const;

/** Puts together what the record says of the opening and what the log shows of it. */
export function knownOpening(
  unloading: PlacedUnloading | null,
  logged: LoggedOpening,
  zone: ZoneReview,
): KnownOpening {
  const seen = logged.main;
  const said = unloading?.tempC ?? null;
  if (unloading === null || said === null) {
    const at = unloading?.atSeconds ?? null;
    if (seen === null) return { ...NOTHING, atSeconds: at, notAboveC: logged.shutDownToC };
    // A vent, a fan or a lid propped hot is no opening yet, and what it does to the ware is in the readings.
    if (seen.how === "let air in" && seen.tempC > HOTTEST_OPENING_C)
      return { ...NOTHING, atSeconds: at };
    return {
      tempC: seen.tempC,
      atSeconds: seen.atSeconds,
      from: "log",
      contradiction: null,
      maybe: [{ tempC: seen.tempC, share: SURE[seen.how] }],
      notAboveC: logged.shutDownToC,
    };
  }
  const recorded: KnownOpening = {
    tempC: said,
    atSeconds: unloading.atSeconds ?? coolingTo(zone, said),
    from: "record",
    contradiction: null,
    maybe: [{ tempC: said, share: 1 }],
    notAboveC: null,
  };
  if (logged.moments.some((moment) => isSame(moment, said, unloading.atSeconds)))
    return { ...recorded, from: "both" };
  const lid = seen?.how === "opened" ? seen : null;
  if (lid !== null) {
    const share = lid.tempC > said ? SURE.beforeRecord : SURE.againstRecord;
    return {
      tempC: lid.tempC,
      atSeconds: lid.atSeconds,
      from: "log",
      contradiction: lid.tempC > said ? "opened before" : "opened later",
      maybe: [
        { tempC: lid.tempC, share },
        { tempC: said, share: 1 - share },
      ],
      notAboveC: null,
    };
  }
  if (!staysCalmAfter(recorded, logged, zone)) return recorded;
  return {
    ...recorded,
    contradiction: "still shut",
    maybe: [{ tempC: said, share: 1 - SURE.againstRecord }],
    notAboveC: logged.shutDownToC,
  };
}

const NOTHING: KnownOpening = {
  tempC: null,
  atSeconds: null,
  from: null,
  contradiction: null,
  maybe: [],
  notAboveC: null,
};

function isSame(moment: OpeningInLog, saidC: number, saidSeconds: number | null): boolean {
  const nearK = Math.abs(moment.tempC - saidC);
  if (nearK <= Math.max(SAME_K, 2 * moment.plusMinusK)) return true;
  const apart =
    saidSeconds === null ? Number.POSITIVE_INFINITY : Math.abs(moment.atSeconds - saidSeconds);
  return apart <= SAME_SECONDS + moment.plusMinusSeconds;
}

/** Whether the readings go on falling as those of a shut kiln, well beyond the opening that was noted. */
function staysCalmAfter(recorded: KnownOpening, logged: LoggedOpening, zone: ZoneReview): boolean {
  const { shutDownToC } = logged;
  const { tempC, atSeconds } = recorded;
  if (tempC === null || shutDownToC === null || atSeconds === null) return false;
  return (
    shutDownToC < tempC - CALM_K &&
    atSeconds > zone.peakAtSeconds &&
    zone.lastReadingAtSeconds - atSeconds > CALM_SECONDS
  );
}

/** When a zone had fallen to a temperature after its peak; null when it did not [s]. */
function coolingTo({ curve, peakAtSeconds }: ZoneReview, tempC: number): number | null {
  const { timesSeconds, tempsC } = curve;
  const at = timesSeconds.findIndex((seconds, i) => seconds > peakAtSeconds && tempsC[i]! <= tempC);
  const seconds = timesSeconds[at];
  return seconds === undefined || temperatureAt(curve, seconds) === null ? null : seconds;
}

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
const LOGGED_SECONDS = 2700;

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
      Math.abs(other.atSeconds - fall.atSeconds) <= LOGGED_SECONDS + fall.plusMinusSeconds;
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
