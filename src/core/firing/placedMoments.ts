import { temperatureAt } from "../curve/Curve.ts";
import type { LogReading } from "../log/reading/LogReading.ts";
import { failed, ok, type Problem, type Result } from "../problem.ts";
import type { FiringRecord } from "../record/FiringRecord.ts";
import {
  MOMENT_FORMS,
  type Moment,
  parseMoment,
  placeMoment,
  type SoundKind,
  type SoundSaid,
  soundKind,
} from "../record/moment.ts";
import type { ZoneReview } from "./FiringFacts.ts";
import type { LoggedOpening } from "./knownOpening.ts";

const DAY_SECONDS = 86_400;

/** Something heard, placed on the log. */
export interface PlacedSound {
  readonly what: string;
  /** As written: `14:05`. */
  readonly said: string;
  /** From the start of the log [s]; may lie outside it. */
  readonly atSeconds: number;
  /** Of the hottest zone; null outside the readings and in gaps. */
  readonly tempC: number | null;
  readonly note: string | null;
  /** Where else in the log a time without its day may lie, as likely as `atSeconds`; null when it is sure. */
  readonly orElse: { readonly atSeconds: number; readonly tempC: number | null } | null;
}

/** When the kiln was opened, placed on the log, and how hot it was. */
export interface PlacedUnloading {
  readonly atSeconds: number | null;
  /** As the record says, else as the log shows at that time [°C]. */
  readonly tempC: number | null;
  readonly basis: "record" | "log" | null;
}

/** Hotter than this no glaze has set, so none can ping [°C]; our own estimate, after set points of glazes. */
const GLAZE_SET_BELOW_C = 700;

/** A kiln is hardly opened hotter than this by choice [°C]; our own estimate. */
const HARDLY_OPENED_C = 300;
/** A time that was noted lies within this of the opening that the log shows [s]. */
const NOTED_WITHIN_SECONDS = 5400;

/**
 * What was heard, from the record and from the command, placed on the log, in order of time.
 * A time of day that comes twice in the log is placed where it can be: glaze pings on the way down only, and
 * no hotter than it sets. What else comes twice is taken on the way down, with the other place beside it.
 *
 * @returns `firing/not-a-moment` or `firing/no-clock` for a time that cannot be placed.
 */
export function placedSounds(
  reading: LogReading,
  zone: ZoneReview,
  given: {
    readonly record: FiringRecord | null;
    readonly heard: readonly SoundSaid[];
  },
): Result<readonly PlacedSound[]> {
  const problems: Problem[] = [];
  const sounds: PlacedSound[] = [];
  const add = (
    sound: { what: string; said: string; note: string | null },
    moment: Moment | null,
    where: string,
  ): void => {
    const placed = moment && placedOnce(moment, reading, zone, soundKind(sound.what));
    if (!moment) problems.push(notAMoment(sound.said, where));
    else if (!placed) problems.push(noClock(sound.said, where, moment));
    else
      sounds.push({
        ...sound,
        atSeconds: placed.seconds,
        tempC: temperatureAt(zone.curve, placed.seconds),
        note: [sound.note, placed.note].filter((note) => note !== null).join("; ") || null,
        orElse:
          placed.orElseSeconds === null
            ? null
            : {
                atSeconds: placed.orElseSeconds,
                tempC: temperatureAt(zone.curve, placed.orElseSeconds),
              },
      });
  };
  given.record?.heard.forEach((sound, i) => {
    add(sound, sound.at, `${given.record?.name}: heard[${i}].at`);
  });
  for (const sound of given.heard)
    add(
      { what: sound.what, said: sound.at, note: sound.note ?? null },
      parseMoment(sound.at),
      "--heard",
    );
  if (problems.length > 0) return failed(...problems);
  return ok(sounds.sort((a, b) => a.atSeconds - b.atSeconds));
}

/**
 * The unloading of a record on the log. A time of day alone is that of the day after the peak on which the
 * log shows an opening, or on which it reads what the record says; else the first on which the kiln is cool.
 * @returns null without one; `firing/no-clock` when its time cannot be placed.
 */
export function placedUnloading(
  reading: LogReading,
  zone: Pick<ZoneReview, "peakAtSeconds" | "curve">,
  record: FiringRecord | null,
  logged: LoggedOpening | null = null,
): Result<PlacedUnloading | null> {
  const unloaded = record?.unloaded;
  if (!record || !unloaded) return ok(null);
  if (unloaded.at === null)
    return ok({
      atSeconds: null,
      tempC: unloaded.temperatureC,
      basis: unloaded.temperatureC === null ? null : "record",
    });
  const first = placeMoment(unloaded.at, reading);
  if (first === null)
    return failed(noClock(unloaded.said ?? "", `${record.name}: unloaded.at`, unloaded.at));
  const isFree = unloaded.at.kind === "clock" && unloaded.at.date === null;
  const atSeconds = isFree
    ? openedOnDay(first, zone, { logged, saidC: unloaded.temperatureC })
    : first;
  const readC = temperatureAt(zone.curve, atSeconds);
  const tempC = unloaded.temperatureC ?? readC;
  return ok({
    atSeconds,
    tempC,
    basis: unloaded.temperatureC !== null ? "record" : readC !== null ? "log" : null,
  });
}

/** The day on which a kiln was opened at a time of day [s from the start of its log]. */
function openedOnDay(
  first: number,
  zone: Pick<ZoneReview, "peakAtSeconds" | "curve">,
  known: { readonly logged: LoggedOpening | null; readonly saidC: number | null },
): number {
  const late = Math.max(0, Math.ceil((zone.peakAtSeconds - first) / DAY_SECONDS));
  const end = zone.curve.timesSeconds.at(-1)!;
  const earliest = first + late * DAY_SECONDS;
  const days = [earliest];
  while (days.at(-1)! <= end) days.push(days.at(-1)! + DAY_SECONDS);
  const heat = (seconds: number) => temperatureAt(zone.curve, seconds);
  const seen = known.logged?.main?.atSeconds;
  const bySeen =
    seen === undefined
      ? undefined
      : days.find((seconds) => Math.abs(seconds - seen) <= NOTED_WITHIN_SECONDS);
  if (bySeen !== undefined) return bySeen;
  const { saidC } = known;
  if (saidC !== null) {
    const away = (seconds: number) => Math.abs((heat(seconds) ?? saidC) - saidC);
    return days.reduce((a, b) => (away(b) < away(a) ? b : a));
  }
  return days.find((seconds) => (heat(seconds) ?? 0) <= HARDLY_OPENED_C) ?? earliest;
}

/** Where a moment lies on a log. */
interface PlacedOnce {
  /** From its start [s]. */
  readonly seconds: number;
  /** How it was chosen, where the same time of day comes again; null when it does not. */
  readonly note: string | null;
  /** The other place, where nothing tells the two apart [s]. */
  readonly orElseSeconds: number | null;
}

/**
 * Where a moment lies on the log; null when the log has no clock for it.
 * A time of day that comes more than once is placed by what was heard then, else on the way down.
 */
export function placedOnce(
  moment: Moment,
  reading: LogReading,
  zone: ZoneReview,
  kind: SoundKind = "other",
): PlacedOnce | null {
  const first = placeMoment(moment, reading);
  if (first === null) return null;
  const sure = { seconds: first, note: null, orElseSeconds: null };
  if (moment.kind !== "clock" || moment.date !== null) return sure;
  const until = zone.lastReadingAtSeconds + (kind === "pinging" ? DAY_SECONDS : 0);
  const days = [first];
  while (days.at(-1)! + DAY_SECONDS <= until) days.push(days.at(-1)! + DAY_SECONDS);
  if (days.length === 1) return sure;
  const falling = days.filter((seconds) => seconds >= zone.peakAtSeconds);
  const inLog = falling.filter((seconds) => seconds <= zone.lastReadingAtSeconds);
  if (kind === "pinging") {
    const set = falling.filter(
      (seconds) => (temperatureAt(zone.curve, seconds) ?? 0) <= GLAZE_SET_BELOW_C,
    );
    const [seconds = first, another] = set;
    const other = another !== undefined && another <= zone.lastReadingAtSeconds ? another : null;
    if (other === null && seconds === first) return sure;
    return other === null
      ? { seconds, note: ONLY_ON_THE_WAY_DOWN, orElseSeconds: null }
      : { seconds, note: SAY_THE_DAY, orElseSeconds: other };
  }
  const [seconds = first, another] = inLog;
  const before = days.findLast((each) => each < zone.peakAtSeconds);
  const orElseSeconds = another ?? before ?? null;
  return { seconds, note: orElseSeconds === null ? null : SAY_THE_DAY, orElseSeconds };
}

const ONLY_ON_THE_WAY_DOWN =
  "this time of day comes more than once; a glaze pings only once it has set, so it was taken on the way down";
const SAY_THE_DAY =
  "this time of day comes more than once in the log and was taken the first time on the way down; write the date to be sure";

function notAMoment(said: string, where: string): Problem {
  return {
    code: "firing/not-a-moment",
    what: `"${said}" is not a moment`,
    where,
    expected: MOMENT_FORMS,
    fix: 'write it like "09:10", with a 24-hour clock',
  };
}

function noClock(said: string, where: string, moment: Moment): Problem {
  const wantsDate = moment.kind === "clock" && moment.date !== null;
  return {
    code: "firing/no-clock",
    what: `"${said}" cannot be placed: the log has no ${wantsDate ? "date" : "clock"}`,
    where,
    expected: wantsDate
      ? "a time of day or a time since the start of the log"
      : "a time since the start of the log",
    fix: 'write the time since the first reading: "+14:05"',
  };
}
