import type { Spread } from "../ware/spreadOf.ts";
import { toughnessOf } from "./bodyStrength.ts";
import type { GlazedWall } from "./fitDraws.ts";
import type { ThroughPart } from "./GlazeFitParts.ts";

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
