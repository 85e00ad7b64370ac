import { cautionsFor } from "../cautions/cautionsFor.ts";
import { kilnHeatworkOf } from "../cones/usualOffset.ts";
import { ordered } from "../findings/ordered.ts";
import type { AssumedKiln } from "../kiln/AssumedKiln.ts";
import { checkSchedule } from "./checkSchedule.ts";
import { hoursFindings } from "./checks/hours.ts";
import { type LimitFor, limitedCrossings, passageOf, withStrain } from "./coolingLimits.ts";
import type { Draft } from "./Draft.ts";
import { energyKWh } from "./energyOf.ts";
import { expandSchedule } from "./expandSchedule.ts";
import { ownKilnFiring } from "./ownKilnFiring.ts";
import { limitsFor, pieceOf } from "./pieceOf.ts";
import type { Schedule } from "./Schedule.ts";
import { strainedPiece } from "./strainedPiece.ts";

/** What a draft is made from. */
interface DraftInput {
  readonly schedule: Schedule;
  /** Wall time of the start, as `parseStart` gives it, or null. */
  readonly start: string | null;
  /** Added to the planned temperatures before the cones are judged, from witness cones [K]; left out for the usual. */
  readonly offsetK?: number | null;
  /** One sigma of it [K]. */
  readonly offsetSigmaK?: number;
  /** The user's own kiln; without it the reference kiln stands in for `free`. */
  readonly kiln?: AssumedKiln;
  /** The guides for the ware; without them they are worked out. */
  readonly limitFor?: LimitFor;
  /** Leaves the stress in the ware out, where only the findings are wanted: a repair asks many times. */
  readonly findingsOnly?: boolean;
}

/** A schedule laid out in time and judged: the cone it makes, its way through the inversions, what to mind. */
export function draftSchedule(input: DraftInput): Draft {
  const { schedule, start } = input;
  const kiln = input.kiln === undefined ? {} : { kiln: input.kiln };
  const limitFor = input.limitFor ?? limitsFor(schedule.ware);
  const expansion = expandSchedule(schedule, kiln);
  const strained = input.findingsOnly ? null : strainedPiece(schedule.ware, expansion.curve);
  const heatwork = kilnHeatworkOf(expansion.curve, {
    series: schedule.series,
    offsetK: input.offsetK ?? null,
    ...(input.offsetSigmaK !== undefined && { offsetSigmaK: input.offsetSigmaK }),
  });
  const learned = input.kiln?.learned;
  const own = learned === undefined ? null : ownKilnFiring(learned, schedule, input);
  return {
    schedule,
    expansion,
    start,
    heatwork,
    own,
    energyKWh: input.kiln === undefined ? null : energyKWh({ schedule, kiln: input.kiln, own }),
    crossings: limitedCrossings(expansion.curve, { limitFor }).map((crossing) =>
      withStrain(
        crossing,
        strained === null ? null : passageOf(strained, crossing),
        pieceOf(schedule.ware).ware.body,
      ),
    ),
    strains: strained === null ? [] : [strained],
    findings: ordered([
      ...checkSchedule({ schedule, expansion, heatwork, limitFor, own, ...kiln }),
      ...hoursFindings(start, expansion, own),
    ]),
    cautions: cautionsFor({
      kiln: true,
      opening: true,
      crackle: schedule.ware.crackle,
      dampWare: schedule.ware.state === "damp",
      estimate: true,
    }),
  };
}
