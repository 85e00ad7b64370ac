import type { z } from "zod";
import type { FiringRecordFile } from "../../../src/core/record/recordFormat.ts";
import type { FiringPlan } from "./fire.ts";
import type { LogShape } from "./logShapes.ts";

/** A firing record as one writes it down. */
export type WrittenRecord = z.input<typeof FiringRecordFile>;

/** Something heard, placed by what happened rather than by the clock. */
export interface HeardWhen {
  readonly what: string;
  /** On the way down, when the kiln read this … */
  readonly belowC?: number;
  /** … or so long after it was unloaded. */
  readonly minutesAfterUnloading?: number;
  readonly note?: string;
}

type Noted = Omit<
  WrittenRecord,
  "formatVersion" | "invented" | "witnessCones" | "unloaded" | "heard"
>;

/** One firing of the invented studio: how it went, how it was logged, and what was noted. */
export interface DemoFiring {
  /** File name without its ending: date and which firing of that day. */
  readonly name: string;
  /** What the log is there to show, one line for the README. */
  readonly shows: string;
  /** Wall time at which the logger was started. */
  readonly start: string;
  readonly plan: FiringPlan;
  readonly shape: LogShape;
  /** How moments are noted: by the clock, or since the start when the log has no clock. */
  readonly moments: "clock" | "elapsed";
  /** Cones that stood by the first thermocouple. */
  readonly cones: readonly string[];
  /** Opened when the kiln had fallen below this reading. */
  readonly unloadedBelowC: number;
  readonly heard: readonly HeardWhen[];
  /** What the physics does not decide. */
  readonly noted: Omit<Noted, "kiln" | "thermocouple" | "notes"> & {
    readonly kiln: string;
    readonly thermocouple: NonNullable<WrittenRecord["thermocouple"]>;
    readonly notes: string;
  };
}
