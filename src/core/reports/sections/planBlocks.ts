import type { PlanComparison } from "../../firing/FiringReview.ts";
import { printDifference, printDuration } from "../../units/print.ts";
import type { TemperatureUnit } from "../../units/temperature.ts";
import type { Block } from "../Block.ts";
import { momentText } from "../moments.ts";

/** How far the firing went from its plan; empty without one. */
export function planBlocks(
  comparison: PlanComparison | null,
  context: { readonly unit: TemperatureUnit; readonly startOfDaySeconds: number | null },
): readonly Block[] {
  if (comparison === null) return [];
  const { unit, startOfDaySeconds } = context;
  const farthest = momentText(startOfDaySeconds, comparison.largestDeviationAtSeconds);
  return [
    { kind: "heading", text: "Against the plan" },
    {
      kind: "facts",
      facts: [
        { label: "plan", text: `${comparison.title}; measured by thermocouple ${comparison.zone}` },
        { label: "lined up by", text: shiftText(comparison.shiftSeconds) },
        {
          label: "farthest from plan",
          text: `${offBy(comparison.largestDeviationC, unit)} at ${farthest}`,
        },
        { label: "peak", text: offBy(comparison.peakDeviationC, unit) },
        { label: "time taken", text: delayText(comparison.peakDelaySeconds) },
        { label: "area between curves", text: areaText(comparison.areaDeviation) },
      ],
    },
  ];
}

function offBy(deviationC: number, unit: TemperatureUnit): string {
  const size = printDifference(Math.abs(deviationC), unit);
  if (size.startsWith("0 ")) return "as planned, to the degree";
  return `${size} ${deviationC < 0 ? "below" : "above"} the plan`;
}

function shiftText(seconds: number): string {
  if (Math.abs(seconds) < 30) return "nothing: both start together";
  return `moving the plan ${printDuration(Math.abs(seconds))} ${seconds < 0 ? "earlier" : "later"}`;
}

function delayText(seconds: number): string {
  if (Math.abs(seconds) < 30) return "as planned, over the part that both have";
  return `${printDuration(Math.abs(seconds))} ${seconds < 0 ? "shorter" : "longer"} than planned, over the part that both have`;
}

function areaText(ratio: number): string {
  const percent = (Math.abs(ratio) * 100).toFixed(1);
  if (percent === "0.0") return "under 0.1 % of the area under the plan";
  return `${percent} % of the area under the plan, on the ${ratio < 0 ? "cool" : "hot"} side`;
}
