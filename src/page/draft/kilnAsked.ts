import { remembered } from "../parts/remembered.ts";
import type { KilnAsked } from "../worker/KilnAsked.ts";
import type { DeskKiln, DraftWork } from "./draftState.ts";

/** The kiln that schedules on the Draft table are laid out for, as a worker is told it. */
export const kilnAsked = remembered(
  (kiln: DeskKiln | null, offset: DraftWork["offset"]): KilnAsked => {
    const learned = kiln?.learned ?? null;
    const past = kiln?.offset ?? null;
    if (offset !== null || past === null) return { learned, offsetK: offset?.offsetK ?? null };
    return { learned, offsetK: past.offsetK, offsetSigmaK: past.sigmaK };
  },
);
