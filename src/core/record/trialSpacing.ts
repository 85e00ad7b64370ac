import type { z } from "zod";
import type { DocumentPath } from "../document/readDocument.ts";
import type { Problem } from "../problem.ts";
import type { MeasuredSpacing, TrialSpacing } from "./FiringRecord.ts";
import type { RecordValues } from "./recordValues.ts";
import { type CountedLine, spacingOfLines } from "./spacingOfLines.ts";
import type { Trial } from "./trialFormat.ts";

type Written = z.output<typeof Trial>;

/** Sides of a piece [mm]. */
export interface PieceSize {
  readonly longMm: number;
  readonly shortMm: number;
}

/** What a test piece says of crack spacing; what contradicts itself is a problem. */
export function trialSpacing(
  trial: Written,
  path: DocumentPath,
  { values, size }: { readonly values: RecordValues; readonly size: PieceSize | null },
): TrialSpacing {
  const refuse = (problem: Omit<Problem, "where">, key: string) =>
    values.refuse({ ...problem, where: values.placeOf([...path, key]) });
  const lines = linesOf(trial, path, values);
  const clash = contradiction(trial, lines);
  if (clash !== null) {
    refuse(clash.problem, clash.key);
    return { kind: "not measured", why: clash.problem.what };
  }
  if (size !== null) refuseLongLines(lines, size, { path, values });
  const spacing = spacingRead(trial, { path, values, lines, size });
  if (spacing.kind === "measured" && size !== null && spacing.pitchMm > size.longMm)
    refuse(
      {
        code: "record/spacing-wider-than-piece",
        what: `cracks ${spacing.pitchMm.toFixed(1)} mm apart on a piece of ${size.longMm} by ${size.shortMm} mm`,
        expected: "a spacing that fits on the piece",
        fix: "check the unit; when a piece shows no crack, write cracked: none and its size",
      },
      spacing.from === "lines" ? "lines" : "crackSpacing",
    );
  return spacing;
}

function refuseLongLines(
  lines: readonly CountedLine[],
  { longMm, shortMm }: PieceSize,
  { path, values }: { readonly path: DocumentPath; readonly values: RecordValues },
): void {
  lines.forEach(({ lengthMm }, i) => {
    if (lengthMm <= Math.hypot(longMm, shortMm)) return;
    values.refuse({
      code: "record/line-longer-than-piece",
      what: `a line of ${lengthMm} mm on a piece of ${longMm} by ${shortMm} mm`,
      where: values.placeOf([...path, "lines", i, "length"]),
      expected: "a line that fits on the piece",
      fix: "check the unit; write several lines one by one, not as one length",
    });
  });
}

function spacingRead(
  trial: Written,
  on: {
    readonly path: DocumentPath;
    readonly values: RecordValues;
    readonly lines: readonly CountedLine[];
    readonly size: PieceSize | null;
  },
): TrialSpacing {
  const { lines, size } = on;
  const isCounted = lines.some(({ crossings }) => crossings > 0);
  if (isCounted) return spacingOfLines(lines, trial.pattern ?? "net");
  if (trial.crackSpacing !== undefined)
    return spacingWritten(trial, trial.crackSpacing, on.path, on.values);
  if (trial.cracked === "none" && size !== null)
    return { kind: "uncracked", atLeastMm: size.shortMm, from: "size" };
  if (lines.length > 0) {
    const atLeastMm = Math.max(...lines.map(({ lengthMm }) => lengthMm));
    return { kind: "uncracked", atLeastMm, from: "lines" };
  }
  const why =
    trial.cracked === "none"
      ? "it has no crack and no size is noted, so how wide a spacing it rules out is not known"
      : "no crack spacing is noted";
  return { kind: "not measured", why };
}

function spacingWritten(
  trial: Written,
  written: number | string,
  path: DocumentPath,
  values: RecordValues,
): MeasuredSpacing {
  const pitchMm = values.length(written, [...path, "crackSpacing"]);
  const [low, high] = (trial.spacingRange ?? []).map((end, i) =>
    values.length(end, [...path, "spacingRange", i]),
  );
  if (low !== undefined && high !== undefined && !(low <= pitchMm && pitchMm <= high))
    values.refuse({
      code: "record/spacing-outside-range",
      what: `crackSpacing of ${pitchMm} mm does not lie between ${low} and ${high} mm`,
      where: values.placeOf([...path, "spacingRange"]),
      expected: "the narrowest and the widest that crackSpacing may be, in this order",
      fix: "write the smaller number first, and check both",
    });
  return {
    kind: "measured",
    pitchMm,
    lowMm: low ?? null,
    highMm: high ?? null,
    interceptMm: null,
    lines: 0,
    lengthMm: 0,
    crossings: 0,
    pattern: trial.pattern ?? "net",
    from: trial.spacingFrom === "photo" ? "photo" : "spacing",
    directions: [],
    alongOverAcross: null,
  };
}

function linesOf(
  { lines = [] }: Written,
  path: DocumentPath,
  values: RecordValues,
): readonly CountedLine[] {
  return lines.map(({ length, crossings, direction }, i) => ({
    // A length that cannot be read is a problem already; 1 mm stands in.
    lengthMm: values.length(length, [...path, "lines", i, "length"]) || 1,
    crossings,
    direction: direction ?? null,
  }));
}

interface Contradiction {
  readonly key: "cracked" | "lines" | "crackSpacing" | "spacingRange";
  readonly problem: Omit<Problem, "where">;
}

function contradiction(trial: Written, lines: readonly CountedLine[]): Contradiction | null {
  const counted = lines.some(({ crossings }) => crossings > 0);
  const directed = lines.filter(({ direction }) => direction !== null).length;
  if (trial.cracked === "none" && (counted || trial.crackSpacing !== undefined))
    return {
      key: "cracked",
      problem: {
        code: "record/uncracked-with-spacing",
        what: `trial ${trial.piece} has no cracks and yet a crack spacing`,
        expected: "cracked: none, or a crack spacing",
        fix: "write cracked: crackle, or take the spacing out",
      },
    };
  if (lines.length > 0 && trial.crackSpacing !== undefined)
    return {
      key: "crackSpacing",
      problem: {
        code: "record/two-spacings",
        what: `trial ${trial.piece} has counted lines and a crack spacing`,
        expected: "one of them, so that it is clear which counts",
        fix: "keep the lines, and put the other into note",
      },
    };
  if (trial.spacingRange !== undefined && trial.crackSpacing === undefined)
    return {
      key: "spacingRange",
      problem: {
        code: "record/range-without-spacing",
        what: `trial ${trial.piece} has a range of its crack spacing and no spacing`,
        expected: "crackSpacing beside spacingRange",
        fix: "add crackSpacing",
      },
    };
  if (directed > 0 && directed < lines.length)
    return {
      key: "lines",
      problem: {
        code: "record/line-without-direction",
        what: `${directed} of ${lines.length} lines of trial ${trial.piece} have a direction`,
        expected: "a direction for all of them or for none",
        fix: "add direction: along or direction: across to the others",
      },
    };
  return null;
}
