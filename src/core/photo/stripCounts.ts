import type { TestLine } from "../crackle/lineIntercept.ts";
import type { Crossings } from "./crossingsAlong.ts";
import type { Place } from "./Picture.ts";

/** Strips that a picture is cut into each way; each should be two cells wide or more. */
export const STRIPS = 5;

/** The picture that test lines lie in, in its own pixels. */
export interface CountedFrame {
  readonly width: number;
  readonly height: number;
  /** Strip along the edges that no line enters [px]. */
  readonly margin: number;
  readonly mmPerPx: number;
  /** Places whose length and crossings do not count. */
  readonly isLeftOut: (place: Place) => boolean;
}

/** The strip of a place that does not count. */
const NOWHERE = -1;

/** Length and crossings in one strip, direction by direction. */
export interface StripCount {
  readonly byAngle: readonly { readonly angleDeg: number; readonly line: TestLine }[];
  readonly all: TestLine;
}

/** A picture's counts sorted into upright strips and into level ones. */
export interface StripCounts {
  readonly upright: readonly StripCount[];
  readonly level: readonly StripCount[];
}

/**
 * Counts along test lines, sorted into strips of the picture. Neighbouring lines meet the same
 * cracks and so are no independent witnesses; strips are nearly so.
 */
export function stripCounts(counted: readonly Crossings[], frame: CountedFrame): StripCounts {
  const { width, height, margin } = frame;
  return {
    upright: strips(counted, ({ x }) => (x - margin) / (width - 2 * margin), frame),
    level: strips(counted, ({ y }) => (y - margin) / (height - 2 * margin), frame),
  };
}

function strips(
  counted: readonly Crossings[],
  shareOf: (place: Place) => number,
  { mmPerPx, isLeftOut }: CountedFrame,
): readonly StripCount[] {
  const angles = [...new Set(counted.map(({ line }) => line.angleDeg))];
  const indexOf = (place: Place) =>
    isLeftOut(place)
      ? NOWHERE
      : Math.min(STRIPS - 1, Math.max(0, Math.floor(STRIPS * shareOf(place))));
  const lengths = angles.map(() => new Float64Array(STRIPS));
  const crossings = angles.map(() => new Float64Array(STRIPS));
  for (const each of counted) {
    const at = angles.indexOf(each.line.angleDeg);
    addLength(lengths[at] as Float64Array, each, indexOf);
    for (const place of each.places) {
      add(crossings[at] as Float64Array, indexOf(place), 1);
    }
  }
  return Array.from({ length: STRIPS }, (_, strip) => {
    const byAngle = angles.map((angleDeg, at) => ({
      angleDeg,
      line: {
        lengthMm: (lengths[at]?.[strip] as number) * mmPerPx,
        crossings: crossings[at]?.[strip] as number,
      },
    }));
    return { byAngle, all: together(byAngle.map(({ line }) => line)) };
  });
}

/** Spreads a line's length over strips, pixel by pixel. */
function addLength(
  lengths: Float64Array,
  { line, lengthPx }: Crossings,
  indexOf: (place: Place) => number,
): void {
  const steps = Math.max(1, Math.round(lengthPx));
  for (let step = 0; step < steps; step++) {
    const share = (step + 0.5) / steps;
    const strip = indexOf({
      x: line.from.x + share * (line.to.x - line.from.x),
      y: line.from.y + share * (line.to.y - line.from.y),
    });
    add(lengths, strip, lengthPx / steps);
  }
}

function add(sums: Float64Array, strip: number, more: number): void {
  if (strip !== NOWHERE) sums[strip] = (sums[strip] as number) + more;
}

/** Several lines as one. */
export function together(lines: readonly TestLine[]): TestLine {
  return {
    lengthMm: lines.reduce((sum, line) => sum + line.lengthMm, 0),
    crossings: lines.reduce((sum, line) => sum + line.crossings, 0),
  };
}
