import { printRate } from "../../units/print.ts";
import type { TemperatureUnit } from "../../units/temperature.ts";
import type { Crossing } from "../../ware/Crossing.ts";
import { limitSeverity } from "../../ware/limitSeverity.ts";
import type { Block, Cell, Column } from "../Block.ts";
import { stopped } from "../capitalised.ts";
import { momentLines } from "../moments.ts";
import { printSpan } from "../printSpan.ts";

const COLUMNS: readonly Column[] = [
  { head: "through", align: "left" },
  { head: "from → to", align: "right" },
  { head: "mean", align: "right" },
  { head: "fastest", align: "right" },
  { head: { lines: ["when (h:min", "after start)"] }, align: "right" },
  { head: "limit", align: "right" },
];

/** How one Curve went through its bands: rates, when, and the limit; then what qualifies them. */
export function crossingBlocks(
  crossings: readonly Crossing[],
  context: {
    readonly caption: string;
    readonly unit: TemperatureUnit;
    readonly startOfDaySeconds: number | null;
  },
): readonly Block[] {
  if (crossings.length === 0) return [];
  const remarks = crossings.flatMap(remarksOf);
  return [
    {
      kind: "table",
      caption: context.caption,
      columns: COLUMNS,
      rows: crossings.map((crossing) => crossingRow(crossing, context)),
    },
    ...(remarks.length === 0 ? [] : [{ kind: "list", items: remarks } as const]),
  ];
}

function crossingRow(
  crossing: Crossing,
  context: { readonly unit: TemperatureUnit; readonly startOfDaySeconds: number | null },
): readonly Cell[] {
  const { unit, startOfDaySeconds } = context;
  const { meanCPerHour, fastestCPerHour, fastestAtSeconds } = crossing;
  return [
    { lines: [crossing.band.replace(/ inversion$/, ""), crossing.direction] },
    printSpan(crossing.fromC, crossing.toC, unit),
    meanCPerHour === null ? missing(crossing) : printRate(meanCPerHour, unit),
    fastestCell(crossing, unit),
    fastestCPerHour === null || fastestAtSeconds === null
      ? "–"
      : { lines: momentLines(startOfDaySeconds, fastestAtSeconds) },
    limitCell(crossing, unit),
  ];
}

function missing(crossing: Crossing): Cell {
  if (crossing.measured === "no") return { lines: ["not", "reached"] };
  return { lines: ["partly", "seen"] };
}

function fastestCell(crossing: Crossing, unit: TemperatureUnit): Cell {
  const { fastestCPerHour, windowMinutes } = crossing;
  if (fastestCPerHour === null) return "–";
  const rate = printRate(fastestCPerHour, unit);
  return windowMinutes === null
    ? rate
    : { lines: [rate, `over ${Math.max(1, Math.round(windowMinutes))} min`] };
}

function limitCell(crossing: Crossing, unit: TemperatureUnit): Cell {
  const { limitCPerHour, fastestCPerHour } = crossing;
  if (limitCPerHour === null) return "none";
  const limit = printRate(limitCPerHour, unit);
  if (fastestCPerHour === null) return limit;
  return limitSeverity(Math.abs(fastestCPerHour), limitCPerHour) !== "note"
    ? { lines: [limit, "over it"], style: "warning" }
    : { lines: [limit, "within"], style: "good" };
}

function remarksOf({ band, direction, notes }: Crossing): readonly string[] {
  return notes.map((note) => `${band}, ${direction}: ${stopped(note)}`);
}
