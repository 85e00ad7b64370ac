import type { Curve } from "../curve/Curve.ts";
import { printDuration, printElapsed } from "../units/print.ts";
import type { ConeSeries } from "./cone.ts";

/** Slowest and fastest effective rates at which a cone answer is not yet a guess [°C/h]. */
const SLOWEST_CPERHOUR = 8;
const FASTEST_CPERHOUR = 300;

/** Heat more than this below the peak adds next to nothing [K]. */
const HOT_PART_K = 150;

/** True when an effective rate [°C/h] lies beyond what cones were published for. */
export function isExtrapolatedRate(rateCPerHour: number): boolean {
  const tolerance = 1e-6;
  return (
    rateCPerHour < SLOWEST_CPERHOUR * (1 - tolerance) ||
    rateCPerHour > FASTEST_CPERHOUR * (1 + tolerance)
  );
}

/** Why a cone answer reaches beyond what was published or measured, as phrases; empty when it does not. */
export function extrapolationsOf(answer: {
  readonly curve: Curve;
  readonly series: ConeSeries;
  readonly peakC: number;
  readonly rateCPerHour: number | null;
}): readonly string[] {
  return [
    ...rateReasons(answer.rateCPerHour),
    ...(answer.series === "small"
      ? ["small cones were published at 300 °C/h (540 °F/h) only; elsewhere ± 10 °C (18 °F)"]
      : []),
    ...gapReasons(answer.curve, answer.peakC),
  ];
}

function rateReasons(rateCPerHour: number | null): readonly string[] {
  if (rateCPerHour === null || !isExtrapolatedRate(rateCPerHour)) return [];
  return rateCPerHour < SLOWEST_CPERHOUR
    ? ["so much time near the top is like a ramp slower than 8 °C/h (14 °F/h), beyond the charts"]
    : [
        "so little time near the top is like a ramp faster than 300 °C/h (540 °F/h), beyond the charts",
      ];
}

function gapReasons({ timesSeconds, tempsC, gaps }: Curve, peakC: number): readonly string[] {
  return gaps.flatMap((gap) => {
    const at = timesSeconds.indexOf(gap.fromSeconds);
    const hotterC = Math.max(tempsC[at] as number, tempsC[at + 1] as number);
    const length = printDuration(gap.toSeconds - gap.fromSeconds);
    return hotterC < peakC - HOT_PART_K
      ? []
      : [
          `nothing was measured for ${length} from ${printElapsed(gap.fromSeconds)}; its heat is not counted`,
        ];
  });
}
