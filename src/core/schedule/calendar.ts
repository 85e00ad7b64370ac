import { peakOf } from "../curve/Curve.ts";
import { crossingTimes } from "../curve/edgeTimes.ts";
import { type AssumedKiln, REFERENCE_KILN } from "../kiln/LearnedKiln.ts";
import { printDuration, printTemperature } from "../text/quantities.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { clockAt } from "./clock.ts";
import { AT_TOP_END_SECONDS, topEndSeconds } from "./coneAim.ts";
import { UNLOAD_C } from "./coolingChecks.ts";
import { COOLING_BANDS } from "./coolingLimits.ts";
import type { Draft } from "./draftSchedule.ts";
import { expandSchedule } from "./expandSchedule.ts";
import { untilCool } from "./wishedPace.ts";

/** A moment of a firing at which somebody should be there, or may want to know. */
export interface FiringMoment {
  readonly what: string;
  /** After the start of the firing. */
  readonly seconds: number;
  /** What to mind then, as a sentence; left out where nobody has to do anything. */
  readonly care?: string;
  /** Somebody has to be there: an alarm rings so many minutes before. */
  readonly alarmMinutes?: number;
}

/** The end of the band through which quartz turns on the way down. */
const [QUARTZ] = COOLING_BANDS;

const ON_CARE =
  "Is the kiln clear of anything that burns, the vent on, and somebody within reach for the whole firing?";
const PEAK_CARE =
  "Be there, and see for yourself that the kiln switches off; if it goes on heating, switch it off at its main switch by hand. Look at cones only through infrared-rated glasses.";
const OPENING_CARE =
  "Open it only when the thermocouple says so, not the clock: with gloves and eye protection, standing aside.";

/**
 * The moments of a drafted firing in their order: switched on, time to check the cone, the peak,
 * into and through the quartz inversion, cool enough to open. A learned kiln gives its own times for
 * the last; without one it falls as the assumed kiln does.
 */
export function firingMoments(
  draft: Draft,
  options: { readonly unit: TemperatureUnit; readonly kiln?: AssumedKiln },
): readonly FiringMoment[] {
  const { unit } = options;
  const { curve } = draft.expansion;
  const { seconds: peakSeconds, tempC: peakC } = peakOf(curve);
  const isAssumed = draft.own === null && options.kiln === undefined;
  const opened = printTemperature(UNLOAD_C, unit);
  return [
    { what: "Switch the kiln on", seconds: 0, care: ON_CARE, alarmMinutes: 0 },
    ...coneMoments(draft),
    {
      what: `Peak, ${printTemperature(peakC, unit)}`,
      seconds: peakSeconds,
      care: PEAK_CARE,
      alarmMinutes: 15,
    },
    ...quartzMoments(draft, unit),
    ...coolMoments(draft, options.kiln).map((seconds) => ({
      what: isAssumed
        ? `Perhaps cool enough to open, ${opened}, if it falls as an assumed kiln does: read the thermocouple first`
        : `Cool enough to open, ${opened}: read the thermocouple first`,
      seconds,
      care: OPENING_CARE,
      alarmMinutes: 0,
    })),
  ].toSorted((a, b) => a.seconds - b.seconds);
}

/**
 * Moments as an iCalendar file (RFC 5545): times of the clock without a zone, so that they mean the
 * same wherever it is read; lines folded at 75 octets; text escaped. The time stamp that every
 * event has to carry is the start itself: same firing, same bytes.
 *
 * @param firing.start As `parseStart` gives it.
 * @throws RangeError when the start is no wall time.
 */
export function calendarText(
  moments: readonly FiringMoment[],
  firing: { readonly title: string; readonly start: string },
): string {
  const { title, start } = firing;
  const stamp = `${stampOf(clockAt(start, 0))}Z`;
  const events = moments.flatMap(({ what, seconds, care, alarmMinutes }, index) => [
    "BEGIN:VEVENT",
    `UID:${stampOf(start)}-${index + 1}-${slugOf(title)}@undunted.invalid`,
    `DTSTAMP:${stamp}`,
    `DTSTART:${stampOf(clockAt(start, seconds))}`,
    "DURATION:PT15M",
    `SUMMARY:${escaped(what)}`,
    `DESCRIPTION:${escaped(`${title}. Planned times; the kiln may be early or late.${care === undefined ? "" : ` ${care}`}`)}`,
    ...(alarmMinutes === undefined ? [] : alarmLines(what, alarmMinutes)),
    "END:VEVENT",
  ]);
  const lines = [
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    "PRODID:-//Undunted//Kiln firing//EN",
    "CALSCALE:GREGORIAN",
    ...events,
    "END:VCALENDAR",
  ];
  return lines.map((line) => `${folded(line)}\r\n`).join("");
}

/** An alarm that shows what is due (RFC 5545, 3.6.6). */
function alarmLines(what: string, minutesBefore: number): readonly string[] {
  return [
    "BEGIN:VALARM",
    "ACTION:DISPLAY",
    `DESCRIPTION:${escaped(what)}`,
    `TRIGGER:${minutesBefore === 0 ? "PT0S" : `-PT${minutesBefore}M`}`,
    "END:VALARM",
  ];
}

/** Said with a cone to look at, a quarter of an hour ahead. */
const ATTENDED = { care: PEAK_CARE, alarmMinutes: 15 } as const;

/**
 * When to look at the wanted cone: as it falls by the plan, or, where it falls only while the kiln
 * cools, at the end of the top hold, while something can still be done. None is wanted: no moment.
 */
function coneMoments({ schedule, heatwork, expansion }: Draft): readonly FiringMoment[] {
  const wanted = heatwork.cones.find(({ cone }) => cone === schedule.cone);
  if (wanted === undefined) return [];
  const { cone, downAtSeconds } = wanted;
  const topEnd = topEndSeconds(schedule, expansion);
  if (downAtSeconds !== null && (topEnd === null || downAtSeconds <= topEnd + AT_TOP_END_SECONDS))
    return [
      {
        what: `Look at cone ${cone}: by the plan it falls now`,
        seconds: downAtSeconds,
        ...ATTENDED,
      },
    ];
  if (topEnd === null) return [];
  const late =
    downAtSeconds === null
      ? "by the plan it does not fall"
      : `by the plan it falls only ${printDuration(downAtSeconds - topEnd)} from now, while the kiln cools`;
  return [
    { what: `Look at cone ${cone} before the kiln cools: ${late}`, seconds: topEnd, ...ATTENDED },
  ];
}

function quartzMoments(draft: Draft, unit: TemperatureUnit): readonly FiringMoment[] {
  if (QUARTZ === undefined) return [];
  const at = (tempC: number) =>
    crossingTimes(draft.expansion.curve, tempC).find(({ direction }) => direction === "cooling");
  const into = at(QUARTZ.highC);
  const out = at(QUARTZ.lowC);
  const moment = (what: string, tempC: number, seconds: number | undefined) =>
    seconds === undefined
      ? []
      : [{ what: `${what} the quartz inversion, ${printTemperature(tempC, unit)}`, seconds }];
  return [
    ...moment("Cools into", QUARTZ.highC, into?.seconds),
    ...moment("Passes", QUARTZ.lowC, out?.seconds),
  ];
}

function coolMoments(draft: Draft, kiln: AssumedKiln | undefined): readonly number[] {
  const own = draft.own?.firing.cooledTo.find(({ tempC }) => tempC === UNLOAD_C);
  if (own !== undefined) return [own.seconds];
  const { curve } = expandSchedule(untilCool(draft.schedule), { kiln: kiln ?? REFERENCE_KILN });
  const cool = crossingTimes(curve, UNLOAD_C).findLast(({ direction }) => direction === "cooling");
  const endC = curve.tempsC.at(-1)!;
  if (cool !== undefined) return [cool.seconds];
  return endC <= UNLOAD_C + 0.5 ? [curve.timesSeconds.at(-1)!] : [];
}

/** A wall time in the form of the standard: `20261201T180000`. */
function stampOf(wall: string): string {
  return wall.replaceAll(/[-:]/g, "");
}

function slugOf(title: string): string {
  return title
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, "-")
    .slice(0, 40);
}

/** Text of a value: backslash, semicolon, comma and line ends escaped, other controls left out. */
function escaped(text: string): string {
  return text
    .replaceAll(/[\\;,]/g, (mark) => `\\${mark}`)
    .replaceAll(/\r\n|\r|\n/g, "\\n")
    .replaceAll(/\p{Cc}/gu, "");
}

/** Octets that a line may have before it goes on in the next one. */
const LONGEST_LINE = 75;

/** A line cut where it grows too long, never inside a letter; each further line begins with a blank. */
function folded(line: string): string {
  let result = "";
  let octets = 0;
  for (const letter of line) {
    const size = octetsOf(letter);
    if (octets + size > LONGEST_LINE) {
      result += "\r\n ";
      octets = 1;
    }
    result += letter;
    octets += size;
  }
  return result;
}

/** Octets of a letter in UTF-8. */
function octetsOf(letter: string): number {
  const point = letter.codePointAt(0) ?? 0;
  return point < 0x80 ? 1 : point < 0x800 ? 2 : point < 0x10000 ? 3 : 4;
}
