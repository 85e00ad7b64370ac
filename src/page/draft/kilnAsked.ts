import type { KilnAsked } from "../worker/KilnAsked.ts";
import type { DraftDesk } from "./draftState.ts";

/** The kiln that schedules on the Draft table are laid out for, as a worker is told it. */
export function kilnAsked({ kiln }: Pick<DraftDesk, "kiln">): KilnAsked {
  return { learned: kiln?.learned ?? null, offsetK: kiln?.offset?.offsetK ?? 0 };
}
