import { passagesOf } from "../curve/bandPassage.ts";
import { type Curve, peakOf, temperatureAt } from "../curve/Curve.ts";
import type { Direction } from "../curve/edgeTimes.ts";
import { CRISTOBALITE_BAND, QUARTZ_BAND } from "./inversions.ts";
import { type OpeningStrain, openingStrains } from "./openingStrain.ts";
import { isFlat, pieceShape } from "./pieceShape.ts";
import { WATCHED } from "./strainRunner.ts";
import { ratioSpread, type SpreadShares } from "./strainSpread.ts";
import type { Ware, WareStrain } from "./Ware.ts";
import { followedWare } from "./wareStrain.ts";

/** A piece whose stress can be computed, and how it went into the kiln. */
export interface StrainedPiece {
  readonly name: string;
  readonly ware: Ware;
  /** null when it is not known. */
  readonly state: "bone dry" | "damp" | "bisqued" | "glazed on bisque" | "glazed raw" | null;
}

/** The worst of a computed passage; uncertain by a factor of two either way. */
export interface ComputedPassage {
  /** Stress over strength at its worst, with the 10 and 90 % points of what body, strength, shape and kiln may be. */
  readonly ratio: number;
  readonly low: number;
  readonly high: number;
  /** What that range comes from. */
  readonly shares: SpreadShares;
  readonly atSeconds: number;
  /** Of the kiln, at that moment [°C]. */
  readonly tempC: number;
  /** From when the kiln enters the band until the last part of the ware has left it [s]. */
  readonly fromSeconds: number;
  readonly toSeconds: number;
}

/** One way through an inversion that the kiln went into. */
interface PiecePassage {
  readonly band: string;
  readonly direction: Direction;
  /** `partly` when a gap or an end of the Curve hides some of it: then the ratio is understated. */
  readonly measured: "whole" | "partly";
  /** null on the way up, unless the piece had been fired before. */
  readonly computed: ComputedPassage | null;
}

/** Whether the way up is computed, and if not why. */
export type HeatingStrain = "computed" | "raw" | "state not known";

/** What one Curve does to one piece. */
export interface PieceStrain extends StrainedPiece {
  readonly strain: WareStrain;
  /** In the order in which they happened. */
  readonly passages: readonly PiecePassage[];
  readonly heating: HeatingStrain;
  /** For the temperatures that were asked for; empty when none was. */
  readonly openings: readonly OpeningStrain[];
  /** What the computed stress does not know about this piece, or knows too hard. */
  readonly limits: readonly ModelLimit[];
}

/** How often the body is drawn for a spread, and from which seed: the same every time. */
export const STRAIN_DRAWS = { runs: 200, seed: 1 } as const;

/**
 * What a Curve does to a piece on the way up, on the way down and at the opening, each with the
 * spread that the uncertainty of its body makes.
 * The way up is computed only for ware that had been fired before, with the properties of the
 * fired body at its end. Bisque is weaker and less stiff; which of the two counts for more is not
 * known. Raw clay is not that body at all.
 *
 * @param openedC Temperatures at which the kiln is, or may be, opened [°C].
 */
export function pieceStrain(
  curve: Curve,
  piece: StrainedPiece,
  openedC: readonly number[] = [],
): PieceStrain {
  const { name, ware, state } = piece;
  const { strain, moments } = followedWare(curve, ware);
  return {
    name,
    ware,
    state,
    strain,
    passages: passages(curve, piece, { strain, moments }),
    heating: heatingOf(state),
    openings: openingStrains(ware, openedC, STRAIN_DRAWS),
    limits: modelLimits(ware),
  };
}

/** Whether the way up can be computed for ware that goes in like this. */
export function heatingOf(state: StrainedPiece["state"]): HeatingStrain {
  if (state === null) return "state not known";
  return state === "bisqued" || state === "glazed on bisque" ? "computed" : "raw";
}

function passages(
  curve: Curve,
  { ware, state }: StrainedPiece,
  { strain, moments }: ReturnType<typeof followedWare>,
): readonly PiecePassage[] {
  const passage = passagesOf(curve);
  return WATCHED.flatMap(({ band, direction }, i): readonly PiecePassage[] => {
    const worst = strain.worst.find(
      (each) => each.band === band.name && each.direction === direction,
    );
    if (worst === undefined) return [];
    const measured = passage(band, direction).measured === "whole" ? "whole" : "partly";
    const known = direction === "cooling" || heatingOf(state) === "computed";
    if (!known) return [{ band: band.name, direction, measured, computed: null }];
    const { ratio, atSeconds, tempC } = worst;
    const spread = ratioSpread(ware, moments(i), STRAIN_DRAWS);
    const computed = {
      ratio,
      low: Math.min(spread.low, ratio),
      high: Math.max(spread.high, ratio),
      shares: spread.shares,
      atSeconds,
      tempC,
      ...passageSpan(curve, strain, worst),
    };
    return [{ band: band.name, direction, measured, computed }];
  });
}

/**
 * From when the kiln is in a band until the last part of the ware has left it [s]; the worst moment
 * of the passage lies within.
 */
function passageSpan(
  curve: Curve,
  strain: WareStrain,
  worst: WareStrain["worst"][number],
): { readonly fromSeconds: number; readonly toSeconds: number } {
  const { lowC, highC } = worst.band === QUARTZ_BAND.name ? QUARTZ_BAND : CRISTOBALITE_BAND;
  const peakSeconds = peakOf(curve).seconds;
  let [fromSeconds, toSeconds] = [worst.atSeconds, worst.atSeconds];
  for (const [i, seconds] of strain.timesSeconds.entries()) {
    const heating = seconds < peakSeconds;
    if (heating !== (worst.direction === "heating")) continue;
    const kilnC = temperatureAt(curve, seconds);
    if (kilnC === null) continue;
    const parts = [kilnC, strain.wallC[i]!, strain.baseC[i]!];
    const within = heating
      ? kilnC >= lowC && Math.min(...parts) <= highC
      : kilnC <= highC && Math.max(...parts) >= lowC;
    if (!within) continue;
    fromSeconds = Math.min(fromSeconds, seconds);
    toSeconds = Math.max(toSeconds, seconds);
  }
  return { fromSeconds, toSeconds };
}

/** Something about a piece or a firing that the computed stress does not know, or knows too hard. */
export interface ModelLimit {
  readonly topic:
    | "plain shrinkage"
    | "thick body"
    | "porous body"
    | "glaze"
    | "flat"
    | "strength from memory";
  /** Which way it errs where it applies. */
  readonly errs: "too hard" | "too soft" | "either way";
  /** A sentence without its full stop. */
  readonly why: string;
}

/** From this much cristobalite on, what happens at 226 °C is its step, not plain shrinkage. */
const CRISTOBALITE_FROM = 0.02;

/** Thicker than this, a base on a shelf is not how a piece is stacked or judged [mm]; our own estimate. */
const THICK_MM = 30;

/** Bodies as weak as this are porous, and stop small cracks [MPa]; our own estimate. */
const POROUS_BELOW_MPA = 20;

/** Expected misses of the model that apply to a piece, for reports to say where they show its stress. */
function modelLimits({ body, geometry }: Ware): readonly ModelLimit[] {
  const shape = pieceShape(geometry);
  const limits: ModelLimit[] = [];
  if (body.cristobaliteFraction.value < CRISTOBALITE_FROM)
    limits.push({
      topic: "plain shrinkage",
      errs: "too hard",
      why: "without cristobalite, stress below the quartz inversion is plain shrinkage; moving air, which evens out what radiation no longer does, is left out there, and ware is cooled faster than this in practice",
    });
  if (Math.max(shape.baseMm, shape.wallMm) > THICK_MM)
    limits.push({
      topic: "thick body",
      errs: "too hard",
      why: "so thick a piece is taken to stand on its whole underside, though bricks and sculptures stand on edge or hollow and lose heat all round",
    });
  if (body.ruptureMPa.value < POROUS_BELOW_MPA)
    limits.push({
      topic: "porous body",
      errs: "too hard",
      why: "a porous body stops small cracks that a dense one would not, and bears more than its strength says",
    });
  if (isFlat(shape) && geometry.stands !== "on edge")
    limits.push({
      topic: "flat",
      errs: "too hard",
      why: "tiles on edge or on narrow supports lose heat from both faces, and are strained less than flat on a shelf",
    });
  if (geometry.glazedSides !== "none")
    limits.push({
      topic: "glaze",
      errs: "too soft",
      why: "the pull of the glaze is not in it: a tight glaze inside puts some 5 to 19 MPa of tension into a wall of 6 mm",
    });
  if ([body.ruptureMPa, body.youngGPa].some(({ source }) => source.includes("from memory")))
    limits.push({
      topic: "strength from memory",
      errs: "either way",
      why: "strength and stiffness of this body are from memory, not measured on yours",
    });
  return limits;
}
