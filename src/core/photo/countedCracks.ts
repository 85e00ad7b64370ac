import type { CrackPattern } from "../crackle/lineIntercept.ts";
import { ok, type Result } from "../problem.ts";
import { type CrackBands, crackBands } from "./crackBands.ts";
import type { CrackLines } from "./crackLines.ts";
import type { CrackProfile } from "./crackWidth.ts";
import { type Crossings, crossingsAlong, lineThrough, testLines } from "./crossings.ts";
import type { CheckLine, CountedCracks, PhotoChoice, PhotoInput } from "./PhotoMeasurement.ts";
import { spacingOfCounts } from "./spacingOfCounts.ts";

/** Directions of test lines: every 15 degrees, for which a square net is read within 0.6 %. */
const ANGLES_DEG = [0, 15, 30, 45, 60, 75, 90, 105, 120, 135, 150, 165];
/** Crossings nearer than this many widths of a crack cannot be told apart. */
const MERGE_WIDTHS = 2;
/** Least half width of the band about a line in which a grazing test line stays [px]. */
const LEAST_REACH_PX = 2;

interface Search extends CrackLines {
  readonly factor: number;
  readonly profile: CrackProfile;
}

interface Counting {
  readonly cracks: CountedCracks;
  readonly choices: readonly PhotoChoice[];
  readonly counted: readonly Crossings[];
  /** Strip along the edges without lines, and the nearest two crossings [px of the mask]. */
  readonly margin: number;
  readonly mergePx: number;
}

/** Crack lines counted along test lines, and the spacing that follows; problems as `photo/…`. */
export function countedCracks(input: PhotoInput, search: Search): Result<Counting> {
  const { lines, factor, profile } = search;
  const { wishes, name } = input;
  const mmPerPx = input.mmPerPx * factor;
  const mergePx = (wishes.mergePx ?? MERGE_WIDTHS * profile.width) / factor;
  const anglesDeg = wishes.anglesDeg ?? ANGLES_DEG;
  const margin = Math.ceil(profile.width / factor);
  const isLeftOut = () => false;
  const frame = { width: lines.width, height: lines.height, margin, mmPerPx, isLeftOut };
  const bands = crackBands(lines, Math.max(LEAST_REACH_PX, profile.width / factor / 2));
  const counted = testLines({ ...frame, anglesDeg, apart: roughIntercept(search) }).map((line) =>
    crossingsAlong(bands, line, mergePx),
  );
  const spacing = spacingOfCounts(counted, frame, { name, profile, factor, wishes });
  if (!spacing.ok) return spacing;
  return ok({
    counted,
    margin,
    mergePx,
    choices: choices(input, {
      mergePx: mergePx * factor,
      anglesDeg,
      pattern: spacing.value.pattern,
    }),
    cracks: {
      ...spacing.value,
      checkLines: checkLines(input, { bands, mergePx, frame, factor }),
    },
  });
}

/** Mean intercept from the length of line in the picture [px of the mask]; only to lay lines. */
function roughIntercept({ lines, length }: CrackLines): number {
  return (Math.PI * lines.width * lines.height) / (2 * length);
}

/** One level line and one upright line, for a person to count along. */
function checkLines(
  { wishes, mmPerPx }: PhotoInput,
  at: {
    readonly bands: CrackBands;
    readonly factor: number;
    readonly mergePx: number;
    readonly frame: { readonly width: number; readonly height: number; readonly margin: number };
  },
): readonly CheckLine[] {
  const { bands, factor, mergePx, frame } = at;
  const through = { x: 0.62 * frame.width, y: 0.38 * frame.height };
  return ([0, 90] as const).flatMap((angleDeg, which) => {
    const line = lineThrough(through, angleDeg, frame);
    if (line === null) return [];
    const crossings = crossingsAlong(bands, line, mergePx);
    return {
      name: which === 0 ? ("A" as const) : ("B" as const),
      crossings,
      lengthMm: crossings.lengthPx * factor * mmPerPx,
      ownCount: wishes.ownCounts?.[which] ?? null,
    };
  });
}

function choices(
  { wishes }: PhotoInput,
  chosen: {
    readonly mergePx: number;
    readonly anglesDeg: readonly number[];
    readonly pattern: CrackPattern;
  },
): readonly PhotoChoice[] {
  const by = (wish: unknown, otherwise: string) => (wish === undefined ? otherwise : "as you said");
  return [
    {
      what: "counted as one",
      value: `crossings closer than ${chosen.mergePx.toFixed(1)} pixels`,
      because: by(wishes.mergePx, "twice the width of the cracks; nearer ones run into each other"),
    },
    {
      what: "directions of lines",
      value: chosen.anglesDeg.length === 1 ? "1" : `${chosen.anglesDeg.length}`,
      because: by(wishes.anglesDeg, "every 15 degrees, so that no way of lying is favoured"),
    },
    {
      what: "pattern",
      value:
        chosen.pattern === "net"
          ? "a net with cells as long as wide"
          : "cracks side by side, one way",
      because: by(
        wishes.pattern,
        chosen.pattern === "net"
          ? "the two directions do not differ by three times or more"
          : "lines across meet three times as many cracks as lines along, or more",
      ),
    },
  ];
}
