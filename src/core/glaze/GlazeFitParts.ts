import type { Spread } from "../math/statistics.ts";
import { releaseNumber } from "./channelCracking.ts";
import { loneBacking } from "./crackedWall.ts";
import { spacingTableEnds } from "./crackSpacing.ts";
import { type GlazedWall, middleDraw } from "./fitDraws.ts";
import { toughnessOf } from "./laminate.ts";
import { leastPull } from "./throughCrack.ts";

/** What speaks for something or against it; never a verdict. */
export type Standing = "speaks for" | "open" | "speaks against";

/** How much more the glaze would shrink than its body. */
export interface MismatchPart {
  readonly setC: Spread;
  /** From the set point to the room; positive pulls the glaze [length over length]. */
  readonly strain: Spread;
  /** The same over the fall [1/K]. */
  readonly perK: Spread;
  /** Taken for the glaze [1/K]. */
  readonly glazePerK: Spread;
  /** Mean of the body over the same fall [1/K]. */
  readonly bodyPerK: Spread;
  /** Of the body's shrinking, what its quartz and cristobalite do [length over length]. */
  readonly silicaStrain: Spread;
  /** Mean of the body between the room and 500 °C, at its middle [1/K]. */
  readonly bodyTo500PerK: number;
  /** What that mean alone would give as mismatch, at the middle: it hides steps above it. */
  readonly strainByMeanTo500: number;
  /** Where the glaze is pulled most on the way down [°C], and how much [length over length]. */
  readonly greatest: { readonly strain: Spread; readonly tempC: Spread };
  /** Range in which the expansion of the glaze is known [°C]. */
  readonly knownFromC: number;
  readonly knownToC: number;
}

/** Stress at room temperature [MPa]; pull is positive. */
export interface StressPart {
  readonly glazeMPa: Spread;
  /** The same mismatch on a wall that does not give. */
  readonly thickBodyMPa: Spread;
  readonly underGlazeMPa: Spread;
  readonly bareFaceMPa: Spread | null;
  /** Bow of 100 mm [mm], hollow on the glazed face; null where the wall cannot bend. */
  readonly bowMm: Spread | null;
}

/** Whether the coat can crack. */
export interface CrazingPart {
  /** Share of draws in which it can, 0–1. */
  readonly share: number;
  readonly standing: Standing;
  /** Stress from which it can [MPa]. */
  readonly thresholdMPa: Spread;
  /** Greatest stress on the way down over that. */
  readonly overThreshold: Spread;
  /** Share of draws in which some coat up to 0.3 of the wall can crack. */
  readonly coatShare: number;
  /** Thinnest coat that can crack [mm], over those draws; null when there are too few. */
  readonly leastCoatMm: Spread | null;
  /** Temperature of the first ping over the draws that crack [°C]; null when too few do. */
  readonly firstPingC: Spread | null;
}

/** How close together the cracks come, over the draws that crack. */
export interface SpacingPart {
  /** Lower bound of the pitch [mm]: cracks do not fill in closer. */
  readonly leastMm: Spread;
  /** 1.5 and 2 times that: mean after chance, and the widest of a filled-in net. */
  readonly meanMm: Spread;
  readonly widestMm: Spread;
  /** The mean as counted along lines across a net [mm]. */
  readonly alongLinesMm: Spread;
  /** Mean after months or years of slow growth [mm]; null when too few draws crack. */
  readonly lateMeanMm: Spread | null;
  /** What a thicker coat does; null when the middle does not crack. */
  readonly thickerCoat: "closer" | "hardly changes" | "wider" | null;
  /** Shares of these draws that lie past the tables. */
  readonly fineShare: number;
  readonly wideShare: number;
}

/** What drives a crack on into the wall, or splits a wall by a squeezed glaze. */
export interface ThroughPart {
  /** Least stress intensity on the way through [MPa·√m]. */
  readonly pullMPaRootM: Spread;
  readonly bodyToughnessMPaRootM: Spread;
  readonly toughnessSource: string;
  readonly overToughness: Spread;
  /** Share of draws that crack and are not stopped, 0–1. */
  readonly share: number;
  readonly standing: Standing;
  /** Depth in the body where it stops [mm], over draws that crack and stop; null when too few. */
  readonly stopsAtMm: Spread | null;
  readonly reasons: readonly {
    readonly direction: "for" | "against";
    readonly text: string;
  }[];
  /** Greatest pull in the body itself, and over its strength in bending. */
  readonly bodyPullMPa: Spread;
  readonly bodyPullOverRupture: Spread;
  /** The same where a held wall can bend: a rim, a cut, a handle's root. */
  readonly rimPullMPa: Spread;
  readonly rimPullOverRupture: Spread;
}

/** What time does. */
export interface DelayedPart {
  /** Growth of the body by moisture in ten years [length over length]. */
  readonly growth: Spread;
  readonly growthSource: string;
  /** Pull that it adds [MPa]. */
  readonly addedMPa: Spread;
  /** Share of all draws that are whole at first and crazed by moisture within ten years, 0–1. */
  readonly moistureShare: number;
  readonly moistureYears: Spread | null;
  /** Share of all draws that are whole at first, where cracks may creep on in damp air, 0–1. */
  readonly slowShare: number;
  /** Thinnest coat in which they may [mm]; up to the thinnest coat that cracks at once. */
  readonly slowFromMm: Spread | null;
}

type Reason = ThroughPart["reasons"][number];

/** Walls of fewer coats are thin for their glaze, of more coats stout; our own choice. */
const THIN_WALL = 10;
const STOUT_WALL = 20;

/** Bodies under this are weak against a running crack [MPa·√m]. */
const WEAK_BODY = 0.8;

/** What speaks for a crack that goes through the wall and against it, weightiest first. */
export function throughReasons(wall: GlazedWall, overToughness: Spread): readonly Reason[] {
  const { glazing, wallMm, coatMm } = wall.piece;
  const walls = wallMm / coatMm;
  const pull = pullReason(overToughness);
  const reasons: readonly (Reason | null)[] = [
    pull,
    glazing === "one face, wall held"
      ? speaksFor("a closed wall glazed on one face cannot bend away from the crack")
      : null,
    glazing === "both faces" ? speaksAgainst("the coat on the other face shares the load") : null,
    glazing === "one face, free to bend"
      ? speaksAgainst(
          "a flat piece glazed on one face bends, and the crack loses its pull on the way",
        )
      : null,
    walls < THIN_WALL ? speaksFor(`the wall is only ${walls.toFixed(1)} coats thick`) : null,
    walls > STOUT_WALL ? speaksAgainst(`the wall is ${Math.round(walls)} coats thick`) : null,
    toughnessOf(wall.body).value < WEAK_BODY
      ? speaksFor("porous low-fired bodies bear little against a running crack")
      : null,
  ];
  return reasons.filter((reason) => reason !== null);
}

function pullReason({ low, high }: Spread): Reason | null {
  if (low > 1) return speaksFor("the least pull on the way is more than the body bears");
  return high < 1 ? speaksAgainst("the least pull on the way is less than the body bears") : null;
}

function speaksFor(text: string): Reason {
  return { direction: "for", text };
}

function speaksAgainst(text: string): Reason {
  return { direction: "against", text };
}

/**
 * Where the fit of a glaze leaves what is tabled or known, in words without temperatures.
 * At the middle of everything.
 */
export function fitLimits(wall: GlazedWall): readonly string[] {
  const { layers } = middleDraw(wall);
  const { glazing, coatMm, wallMm } = wall.piece;
  const lone = loneBacking(layers, glazing);
  const spacing = { ...lone, wallOverCoat: wallMm / coatMm };
  return [
    ...releaseNumber(lone).past,
    ...spacingTableEnds(spacing),
    ...leastPull({ ...lone, glazeMPa: 1, coatMm, wallMm, glazing }).past,
    ...(toughnessOf(wall.body).source === "our own estimate"
      ? ["how tough the body is was guessed: its name says no common kind of clay"]
      : []),
  ];
}
