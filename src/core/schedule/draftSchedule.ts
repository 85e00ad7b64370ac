import { cautionsFor } from "../cautions/cautionsFor.ts";
import { heatworkOf } from "../cones/heatwork.ts";
import type { AssumedKiln } from "../kiln/AssumedKiln.ts";
import { checkSchedule } from "./checkSchedule.ts";
import { type LimitFor, limitedCrossings, strainedCrossings } from "./coolingLimits.ts";
import type { Draft } from "./Draft.ts";
import { energyKWh } from "./energyOf.ts";
import { expandSchedule } from "./expandSchedule.ts";
import { limitsFor, pieceOf } from "./pieceOf.ts";
import type { Schedule } from "./Schedule.ts";

/** What a draft is made from. */
interface DraftInput {
  readonly schedule: Schedule;
  /** Wall time of the start, as `parseStart` gives it, or null. */
  readonly start: string | null;
  /** Added to the planned temperatures before the cones are judged, from witness cones [K]. */
  readonly offsetK?: number;
  /** The user's own kiln; without it the reference kiln stands in for `full`. */
  readonly kiln?: AssumedKiln;
  /** What the ware stands on cooling; without it what is published. */
  readonly limitFor?: LimitFor;
}

/** A schedule laid out in time and judged: the cone it makes, its way through the inversions, what to mind. */
export function draftSchedule(input: DraftInput): Draft {
  const { schedule, start } = input;
  const kiln = input.kiln === undefined ? {} : { kiln: input.kiln };
  const limitFor = input.limitFor ?? limitsFor(schedule.ware);
  const piece = pieceOf(schedule.ware);
  const expansion = expandSchedule(schedule, kiln);
  const heatwork = heatworkOf(expansion.curve, {
    series: schedule.series,
    offsetK: input.offsetK ?? 0,
  });
  return {
    schedule,
    expansion,
    start,
    heatwork,
    energyKWh: input.kiln === undefined ? null : energyKWh(expansion, input.kiln),
    crossings:
      piece === null
        ? limitedCrossings(expansion.curve, { ware: schedule.ware, limitFor })
        : strainedCrossings(expansion.curve, { size: schedule.ware, ware: piece.ware, limitFor }),
    findings: checkSchedule({ schedule, expansion, heatwork, limitFor, ...kiln }),
    cautions: cautionsFor({
      kiln: true,
      opening: true,
      crackle: schedule.ware.crackle,
      dampWare: schedule.ware.state === "damp",
      estimate: true,
    }),
  };
}
