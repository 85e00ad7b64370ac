import { drawn } from "./chartSpec.ts";
import type { AxisDef } from "./places.ts";

/** An axis over decimal logarithms, its ticks labelled with the amounts themselves. */
export interface LogAxis extends AxisDef {
  readonly axis: AxisDef["axis"] & { readonly labelExpr: string };
}

/** What ticks may stand at, between 1 and 10. */
const FINE = [1, 1.5, 2, 3, 4, 5, 6, 8];
const COARSE = [1, 2, 5];

/** Turns an axis into one over decimal logarithms; its ticks are the logarithms of round amounts. */
export function logAxis(axis: AxisDef): LogAxis {
  return {
    ...axis,
    axis: { ...axis.axis, labelExpr: "format(pow(10, datum.value), '.2~f')" },
  };
}

/** Round amounts inside a range of decimal logarithms, as logarithms; fewer when the range is wide. */
export function logTicks([low, high]: readonly [number, number]): readonly number[] {
  const leads = high - low > 1.2 ? COARSE : FINE;
  const powers = Array.from(
    { length: Math.ceil(high) - Math.floor(low) + 1 },
    (_, i) => Math.floor(low) + i,
  );
  return powers
    .flatMap((power) => leads.map((lead) => drawn(Math.log10(lead) + power)))
    .filter((tick) => tick >= low - 1e-9 && tick <= high + 1e-9);
}
