import type { Draft } from "../../core/schedule/Draft.ts";
import { draftSchedule } from "../../core/schedule/draftSchedule.ts";
import { pieceOf } from "../../core/schedule/pieceOf.ts";
import type { Schedule } from "../../core/schedule/Schedule.ts";
import type { WareStrain } from "../../core/ware/Ware.ts";
import { wareStrain } from "../../core/ware/wareStrain.ts";
import { remembered } from "../parts/remembered.ts";
import { knownKiln } from "../worker/KilnAsked.ts";
import type { DeskKiln } from "./draftState.ts";
import { kilnAsked } from "./kilnAsked.ts";

/** The part of a draft that is worked out at every change, well within a frame. */
export interface LightDraft {
  /** Without stress and its spread, which come when the schedule rests. */
  readonly draft: Draft;
  /** Stress by the middle properties of the body; null when no body is named. */
  readonly strain: WareStrain | null;
}

/** Cones, times, findings, crossings and the middle value of the stress of a schedule. */
export const lightDraft = remembered(
  (schedule: Schedule, start: string | null, kiln: DeskKiln | null): LightDraft => {
    const draft = draftSchedule({ schedule, start, findingsOnly: true, ...known(kiln) });
    const piece = pieceOf(schedule.ware);
    const strain = piece === null ? null : wareStrain(draft.expansion.curve, piece.ware);
    return { draft, strain };
  },
);

const known = remembered((kiln: DeskKiln | null) => knownKiln(kilnAsked({ kiln })));
