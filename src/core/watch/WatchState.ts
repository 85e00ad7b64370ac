import type { Bend, ConeSeries, Heatwork } from "../cones/cone.ts";
import type { Finding } from "../findings/Finding.ts";

/** Which way a kiln is going. */
export type Phase = "climbing" | "holding" | "falling";

/** A rate with the time that it was measured over. */
export interface RecentRate {
  /** Signed; falling is negative. */
  readonly rateCPerHour: number;
  /** One sigma, from the scatter of the readings about their line. */
  readonly sigmaCPerHour: number;
  /** From the first reading used to the last [s]. */
  readonly overSeconds: number;
  readonly readings: number;
}

/** A moment to come, with the span in which two of three such moments lie. */
export interface ExpectedMoment {
  /** Seconds after the start of the log. */
  readonly atSeconds: number;
  readonly earliestSeconds: number;
  /** Null when it may not come at all. */
  readonly latestSeconds: number | null;
}

/** What the cone that is wanted has done and is expected to do. */
export interface WantedCone {
  readonly cone: string;
  readonly series: ConeSeries;
  /** Share of its heatwork; 1 is down. */
  readonly heatwork: number;
  readonly bend: Bend;
  readonly downAtSeconds: number | null;
  /** When it will be down; null when it is, when the kiln is falling, or when that is not to be seen. */
  readonly expected: (ExpectedMoment & { readonly atC: number }) | null;
  /** Why there is no expectation, as a clause; null when there is one or the cone is down. */
  readonly whyNot: string | null;
  /** What the expectation goes on. */
  readonly by: "plan" | "present rate" | null;
  /** The rate that is thought to go on, and how long it was measured over; null without an expectation. */
  readonly goingOn: RecentRate | null;
}

/** When the kiln has cooled to a temperature. */
export interface CooledBy extends ExpectedMoment {
  readonly tempC: number;
  /** It was read in the log. */
  readonly isMeasured: boolean;
}

/** When the kiln will be cool, and what that goes on. */
export interface CoolingExpectation {
  /** Hottest first; a temperature that the kiln never quite reaches is left out. */
  readonly cooledBy: readonly CooledBy[];
  /** From what it falls: now, the end of the plan, or where the cone goes down. */
  readonly from: "now" | "end of the plan" | "cone down";
  /** Whose cooling it is. */
  readonly kiln: "learned" | "reference";
  /** How fast this log fell by itself, over what that kiln does; null where no such fall was seen. */
  readonly ownShare: number | null;
  /** First sign that the lid or a vent was opened [s]; null where there was none. */
  readonly openedAtSeconds: number | null;
  /** One sigma of the time of the fall, as a factor either way. */
  readonly factor: number;
  /** What it goes on, one clause. */
  readonly basis: string;
}

/** Where the firing stands on its plan. */
export interface PlanStanding {
  readonly title: string;
  /** Behind its plan [s]; negative when ahead. */
  readonly lateSeconds: number;
  /** What the plan does at this place, and where to. */
  readonly doing: Phase;
  readonly toC: number;
  /** Signed [°C/h], 0 on a hold, or as the kiln goes by itself. */
  readonly asked: number | "free";
  /** Of this ramp or hold [s]. */
  readonly leftSeconds: number;
  /** When the plan's highest temperature is reached, as it is going; null when that is over. */
  readonly peakAtSeconds: number | null;
  readonly peakC: number;
  /** When the programme ends, as it is going [s]. */
  readonly endSeconds: number;
  /** The cone that the whole plan would leave, as it is going. */
  readonly finalCone: string;
  /** The same on the count of whole cones, for differences only; null outside the series. */
  readonly finalIndex: number | null;
  /** One sigma of it in cones; null where there is no cone on one side. */
  readonly finalSigmaCones: number | null;
}

/** One thermocouple as it stands. */
export interface WatchedZone {
  readonly name: string;
  readonly tempC: number;
  /** Moment of its last reading [s]. */
  readonly atSeconds: number;
  readonly rateCPerHour: number | null;
}

/** A firing as it stands at its last reading; that reading is its now. */
export interface WatchState {
  readonly name: string;
  /** Wall time of the first reading without a zone; null when only elapsed. */
  readonly start: string | null;
  readonly startOfDaySeconds: number | null;
  readonly readings: number;
  readonly rejectedRows: number;
  /** Last reading [s after the first]. */
  readonly nowSeconds: number;
  /** Hottest thermocouple: all below is about it. */
  readonly zone: string;
  readonly zones: readonly WatchedZone[];
  readonly tempC: number;
  readonly peakC: number;
  readonly peakAtSeconds: number;
  /** Null where the last minutes hold too few readings. */
  readonly rate: RecentRate | null;
  readonly phase: Phase | null;
  readonly heatwork: Heatwork;
  /** Null when no cone is wanted. */
  readonly wanted: WantedCone | null;
  readonly plan: PlanStanding | null;
  /** Null until it can be said from what the kiln will fall. */
  readonly cooling: CoolingExpectation | null;
  readonly findings: readonly Finding[];
}
