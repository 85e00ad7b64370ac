import type { z } from "zod";
import type { OwnKilnFiring } from "../../schedule/ownKilnFiring.ts";
import { heatworkPiece } from "./pieces.ts";
import type { ownKilnShape } from "./shapes.ts";

/** A prediction for the user's own kiln as its part of a document. */
export function ownKilnPiece(own: OwnKilnFiring): z.infer<typeof ownKilnShape> {
  const { firing, segments, stall, powerFrom, heatwork } = own;
  return {
    segments: segments.map(({ askedCPerHour, ...went }) => ({
      ...went,
      askedCPerHour: askedCPerHour === "free" ? null : askedCPerHour,
    })),
    stall,
    endSeconds: firing.endSeconds,
    cooledTo: firing.cooledTo.map(({ tempC, seconds }) => ({ tempC, seconds })),
    powerFrom,
    energyKWh: firing.energyKWh,
    cost: firing.cost,
    heatwork: heatworkPiece(heatwork),
  };
}
