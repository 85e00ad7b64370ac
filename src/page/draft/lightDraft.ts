import type { Draft } from "../../core/schedule/draftSchedule.ts";
import { draftSchedule } from "../../core/schedule/draftSchedule.ts";
import { limitsFor, pieceOf } from "../../core/schedule/pieceOf.ts";
import type { Schedule } from "../../core/schedule/Schedule.ts";
import type { WareStrain } from "../../core/ware/Ware.ts";
import { wareStrain } from "../../core/ware/wareStrain.ts";
import { remembered } from "../parts/remembered.ts";
import { type KilnAsked, knownKiln } from "../worker/KilnAsked.ts";

/** The part of a draft that is worked out at every change, well within a frame. */
export interface LightDraft {
  /** Without stress and its spread, which come when the schedule rests. */
  readonly draft: Draft;
  /** Stress by the middle properties of the body. */
  readonly worst: WareStrain["worst"];
}

/** Cones, times, findings, crossings and the middle value of the stress of a schedule. */
export const lightDraft = remembered(
  (schedule: Schedule, start: string | null, kiln: KilnAsked): LightDraft => {
    const { limitFor, piece } = wareOf(schedule.ware);
    const draft = draftSchedule({
      schedule,
      start,
      limitFor,
      findingsOnly: true,
      ...known(kiln),
    });
    return { draft, worst: wareStrain(draft.expansion.curve, piece.ware).worst };
  },
);

const known = remembered(knownKiln);

/** What the ware stands, worked out once for each ware. */
const wareOf = remembered((ware: Schedule["ware"]) => ({
  limitFor: limitsFor(ware),
  piece: pieceOf(ware),
}));
