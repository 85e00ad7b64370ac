import { temperatureAt } from "../curve/temperatureAt.ts";
import type { LogReading } from "../log/LogReading.ts";
import { failed, ok, type Problem, type Result } from "../problem.ts";
import type { FiringRecord } from "./FiringRecord.ts";
import type { ZoneReview } from "./FiringReview.ts";
import { MOMENT_FORMS, type Moment, parseMoment, placeMoment } from "./moment.ts";
import type { SoundSaid } from "./soundSaid.ts";

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
}

/** When the kiln was opened, placed on the log, and how hot it was. */
export interface PlacedUnloading {
  readonly atSeconds: number | null;
  /** As the record says, else as the log shows at that time [°C]. */
  readonly tempC: number | null;
  readonly basis: "record" | "log" | null;
}

/**
 * What was heard, from the record and from the command, placed on the log, in order of time.
 * A time of day that comes twice in the log is taken on the way down, and its note says so.
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
    const placed = moment && placedOnce(moment, reading, zone);
    if (!moment) problems.push(notAMoment(sound.said, where));
    else if (!placed) problems.push(noClock(sound.said, where, moment));
    else
      sounds.push({
        ...sound,
        atSeconds: placed.seconds,
        tempC: temperatureAt(zone.curve, placed.seconds),
        note: [sound.note, placed.note].filter((note) => note !== null).join("; ") || null,
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
 * The unloading of a record on the log; a time of day alone is the first after the peak.
 * @returns null without one; `firing/no-clock` when its time cannot be placed.
 */
export function placedUnloading(
  reading: LogReading,
  zone: Pick<ZoneReview, "peakAtSeconds" | "curve">,
  record: FiringRecord | null,
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
  const late = Math.max(0, Math.ceil((zone.peakAtSeconds - first) / DAY_SECONDS));
  const atSeconds = first + (isFree ? late * DAY_SECONDS : 0);
  const logged = temperatureAt(zone.curve, atSeconds);
  const tempC = unloaded.temperatureC ?? logged;
  return ok({
    atSeconds,
    tempC,
    basis: unloaded.temperatureC !== null ? "record" : logged !== null ? "log" : null,
  });
}

/**
 * Where a moment lies on the log [s], with what to note of it; null when the log has no clock for it.
 * A time of day that comes twice is taken on the way down.
 */
export function placedOnce(
  moment: Moment,
  reading: LogReading,
  zone: ZoneReview,
): { readonly seconds: number; readonly note: string | null } | null {
  const first = placeMoment(moment, reading);
  if (first === null) return null;
  const isFree = moment.kind === "clock" && moment.date === null;
  const later = first + DAY_SECONDS;
  const comesTwice = isFree && first < zone.peakAtSeconds && later <= zone.lastReadingAtSeconds;
  return comesTwice
    ? {
        seconds: later,
        note: "this time of day comes twice in the log and was taken on the way down; write the date to be sure",
      }
    : { seconds: first, note: null };
}

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
