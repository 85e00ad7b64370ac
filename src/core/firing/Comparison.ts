import type { Caution } from "../cautions/Caution.ts";
import type { Curve } from "../curve/Curve.ts";
import type { ThermocoupleShift } from "./thermocoupleShift.ts";

/** One firing's column in a comparison; every number from its hottest zone, named. */
export interface ComparedFiring {
  readonly title: string;
  readonly zone: string;
  /** Time 0 = the peak. */
  readonly aligned: Curve;
  readonly peakC: number;
  readonly coneLabel: string;
  readonly coneIndex: number | null;
  readonly sigmaCones: number | null;
  readonly lastHundredCPerHour: number | null;
  readonly secondsWithinFiveOfPeak: number;
  readonly secondsAbove1100C: number;
  readonly quartzCooling: {
    readonly meanCPerHour: number | null;
    readonly fastestCPerHour: number | null;
  };
  readonly cristobaliteCooling: {
    readonly meanCPerHour: number | null;
    readonly fastestCPerHour: number | null;
  };
  readonly lastReadingC: number;
  readonly totalSeconds: number;
  readonly warnings: number;
}

/** Several firings side by side, in the order given. */
export interface Comparison {
  readonly firings: readonly ComparedFiring[];
  /** From the first firing to the last; empty when they share no two zones. */
  readonly thermocoupleShifts: readonly ThermocoupleShift[];
  readonly cautions: readonly Caution[];
}
