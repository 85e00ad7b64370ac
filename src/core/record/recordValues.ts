import { type ConeSeries, parseCone } from "../cones/cone.ts";
import type { WitnessBend } from "../cones/witnessOffset.ts";
import type { DocumentPath } from "../document/readDocument.ts";
import type { Problem, Result } from "../problem.ts";
import { nearWord } from "../text/nearWord.ts";
import { parseCoatMass, parseSlipDensity } from "../units/amounts.ts";
import { isBareNumber, parseLength } from "../units/quantity.ts";
import { parseTemperature, type TemperatureUnit } from "../units/temperature.ts";
import { wareLength } from "../ware/givenWare.ts";
import { bodyGiven, type GivenBody } from "../ware/ownBody.ts";
import type { Body } from "../ware/Ware.ts";
import { crackWords } from "./crackWords.ts";
import { FOUND_WORDS, type FoundOnWare } from "./FiringRecord.ts";
import { MOMENT_FORMS, type Moment, parseMoment } from "./moment.ts";

/** What the values of a record are read with. */
interface RecordContext {
  /** Unit of bare temperatures. */
  readonly unit: TemperatureUnit;
  readonly series: ConeSeries;
  /** Name of a place in the file: `a.yaml: heard[0].at, line 9`. */
  readonly placeOf: (path: DocumentPath) => string;
}

/** Above this a coat is a slip of the pen [mm]. */
const THICKEST_COAT_MM = 10;

/** What {@link recordValues} gives. */
export type RecordValues = ReturnType<typeof recordValues>;

/**
 * Readers for the written values of one file that gather their problems, so that all are shown.
 * After a problem a reader gives a stand-in; use nothing it gave once `problems` is not empty.
 */
export function recordValues({ unit, series, placeOf }: RecordContext) {
  const problems: Problem[] = [];

  function taken<T, S>(result: Result<T>, standIn: S): T | S {
    if (result.ok) return result.value;
    problems.push(...result.problems);
    return standIn;
  }

  function length(value: number | string, path: DocumentPath): number {
    return taken(parseLength(value, { where: placeOf(path) }), 0);
  }

  /** A bare number may be millimetres or thousandths of an inch: it is asked back, never guessed. */
  function thickness(value: number | string, path: DocumentPath): number {
    const where = placeOf(path);
    const read = parseLength(value, { where });
    const expected = `a thickness with its unit, above 0 and at most ${THICKEST_COAT_MM} mm`;
    if (read.ok && isBareNumber(value)) {
      problems.push({
        code: "record/coat-without-unit",
        what: `the coat is written as ${value}, without a unit`,
        where,
        expected,
        fix: `write "${value} mm", if millimetres are meant`,
      });
      return 0;
    }
    if (read.ok && read.value <= THICKEST_COAT_MM) return read.value;
    problems.push({
      code: "record/not-a-coat",
      what: `the coat is written as ${JSON.stringify(value)}`,
      where,
      expected,
      fix: 'write it like "0.8 mm"',
    });
    return 0;
  }

  return {
    problems: problems as readonly Problem[],
    /** Of a glaze coat [mm]. */
    thickness,
    placeOf,
    /** Adds a problem of the file. */
    refuse(problem: Problem): void {
      problems.push(problem);
    },
    /** Dry glaze on an area [g/cm²]. */
    coatMass: (text: string, path: DocumentPath): number =>
      taken(parseCoatMass(text, { where: placeOf(path) }), 1),
    /** [g/cm³] */
    slipDensity: (text: string, path: DocumentPath): number =>
      taken(parseSlipDensity(text, { where: placeOf(path) }), 1.5),
    /** An error as a share of what was read, from percent or a length; a mass has no length. */
    errorShare(value: number | string, readMm: number | null, path: DocumentPath): number {
      const percent = typeof value === "string" ? /^(\d+(?:\.\d+)?)\s*%$/.exec(value.trim()) : null;
      const share =
        percent !== null
          ? Number(percent[1]) / 100
          : readMm === null || isBareNumber(value)
            ? Number.NaN
            : length(value, path) / readMm;
      if (share > 0 && share < 1) return share;
      if (readMm === null || percent !== null || isBareNumber(value) || share >= 1)
        problems.push({
          code: "record/coat-error",
          what: `the error of a coat is written as ${JSON.stringify(value)}`,
          where: placeOf(path),
          expected:
            readMm === null
              ? "a share of the mass in percent, above 0 and below 100"
              : "a length with its unit, or percent, above 0 and less than the coat itself",
          fix: 'write it like "10 %"',
        });
      return 0.5;
    },
    temperature: (value: number | string, path: DocumentPath): number =>
      taken(parseTemperature(value, { unit, where: placeOf(path) }), 0),
    length,
    maybeLength: (value: number | string | undefined, path: DocumentPath): number | null =>
      value === undefined ? null : length(value, path),
    maybeWareLength(
      name: Parameters<typeof wareLength>[1]["name"],
      value: number | string | undefined,
      path: DocumentPath,
    ): number | null {
      if (value === undefined) return null;
      return taken(wareLength(value, { name, where: placeOf([...path, name]) }), null);
    },
    maybeBody: (given: string | GivenBody | undefined, path: DocumentPath): Body | null =>
      given === undefined
        ? null
        : taken(
            bodyGiven(given, (inside) => placeOf([...path, ...inside])),
            null,
          ),
    moment(text: string, path: DocumentPath): Moment {
      const moment = parseMoment(text);
      if (moment) return moment;
      problems.push({
        code: "record/not-a-moment",
        what: `"${text}" is not a moment`,
        where: placeOf(path),
        expected: MOMENT_FORMS,
        fix: 'write it like "09:10", with a 24-hour clock',
      });
      return { kind: "elapsed", seconds: 0 };
    },
    /** What was found, in one of the words that a record knows or as people call it. */
    foundWord(text: string, path: DocumentPath): FoundOnWare["what"] {
      const said = text.trim().toLowerCase();
      const word = FOUND_WORDS.find((each) => each.toLowerCase() === said) ?? crackWords(text).what;
      if (word !== null) return word;
      const near = nearWord(text, FOUND_WORDS);
      problems.push({
        code: "record/not-a-fault",
        what: `"${text}" is no fault that is known here`,
        where: placeOf(path),
        expected: listedOr(FOUND_WORDS),
        fix: near ? `write "${near}"` : 'write "crack", and the rest in its note',
      });
      return null;
    },
    bend(text: string, path: DocumentPath): WitnessBend {
      const bend = parseBend(text);
      if (bend) return bend;
      const near = nearWord(text, ["upright", "down"]);
      problems.push({
        code: "record/not-a-bend",
        what: `"${text}" does not say how far the cone bent`,
        where: placeOf(path),
        expected: BEND_FORMS,
        fix: near ? `write "${near}"` : 'write it like "4 o\'clock"',
      });
      return { kind: "upright" };
    },
    cone: (text: string, path: DocumentPath): string =>
      taken(parseCone(text, { series, where: placeOf(path) }), text),
  };
}

function listedOr(words: readonly string[]): string {
  return `${words.slice(0, -1).join(", ")} or ${words.at(-1)}`;
}

/** How the bend of a cone may be written. */
const BEND_FORMS =
  'upright, down, a clock position from 12 (upright) to 6 such as "4 o\'clock", or degrees from upright such as "45 degrees"';

const CLOCK = /^(\d{1,2}(?:\.\d+)?)\s*o['’ ]?\s*clock$/i;
const DEGREES = /^(\d{1,3}(?:\.\d+)?)\s*(?:degrees?|deg|°)$/i;

/**
 * A bend from its words; null when it is written in none of the {@link BEND_FORMS}.
 * Clock positions go from 12 (upright) to 6 (tip level with the base); degrees
 * from 0 (upright) to 180.
 */
function parseBend(text: string): WitnessBend | null {
  const said = text.trim().toLowerCase();
  if (said === "upright") return { kind: "upright" };
  if (said === "down") return { kind: "down" };
  const clock = CLOCK.exec(said);
  if (clock) {
    const oClock = Number(clock[1]);
    return oClock === 12 || (oClock >= 0 && oClock <= 6) ? { kind: "clock", oClock } : null;
  }
  const degrees = DEGREES.exec(said);
  if (degrees && Number(degrees[1]) <= 180) return { kind: "degrees", degrees: Number(degrees[1]) };
  return null;
}
