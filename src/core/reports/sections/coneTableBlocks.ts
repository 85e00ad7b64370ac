import type { ConeState, Heatwork } from "../../cones/cone.ts";
import { printDifference } from "../../units/print.ts";
import type { TemperatureUnit } from "../../units/temperature.ts";
import type { Block, Cell } from "../Block.ts";
import { momentLines } from "../moments.ts";
import type { Tense } from "./coneWords.ts";

const SHOWN = 4;

/** How the cones nearest to the heat reached would stand; empty when the series has none. */
export function coneTableBlocks(
  heatwork: Heatwork,
  context: {
    readonly unit: TemperatureUnit;
    readonly tense: Tense;
    readonly startOfDaySeconds: number | null;
  },
): readonly Block[] {
  const { unit, tense, startOfDaySeconds } = context;
  const nearest = nearestCones(heatwork.cones);
  if (nearest.length === 0) return [];
  return [
    {
      kind: "table",
      caption: tense === "was" ? "How cones in the kiln should have stood" : "How cones will stand",
      columns: [
        { head: "cone", align: "left" },
        { head: "stands", align: "left" },
        { head: "past (+) or short (−) of its end", align: "right" },
        { head: "model ±", align: "right" },
        { head: "down (h:min after start)", align: "right" },
      ],
      rows: nearest.map((state): readonly Cell[] => [
        state.cone,
        state.bend,
        `${state.marginK < 0 ? "−" : "+"}${printDifference(Math.abs(state.marginK), unit)}`,
        `± ${printDifference(Math.max(1, state.marginSigmaK), unit)}`,
        state.downAtSeconds === null
          ? "–"
          : { lines: momentLines(startOfDaySeconds, state.downAtSeconds) },
      ]),
    },
  ];
}

function nearestCones(cones: readonly ConeState[]): readonly ConeState[] {
  const nearest = new Set(
    [...cones].sort((a, b) => Math.abs(a.marginK) - Math.abs(b.marginK)).slice(0, SHOWN),
  );
  return cones.filter((state) => nearest.has(state));
}
