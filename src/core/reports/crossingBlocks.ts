import { printRate, printSpan, printTemperature } from "../text/quantities.ts";
import { stopped } from "../text/wrap.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { bandSaid, type Crossing } from "../ware/inversions.ts";
import type { Block, Cell, Column } from "./Block.ts";
import { momentLines } from "./moments.ts";

const COLUMNS: readonly Column[] = [
  { head: "through", align: "left" },
  { head: "from → to", align: "right" },
  { head: "mean", align: "right" },
  { head: "fastest", align: "right" },
  { head: { lines: ["when (h:min", "after start)"] }, align: "right" },
  { head: "guide", align: "right" },
];

/** How one Curve went through its bands: rates, when, and the guide; then what qualifies them. */
export function crossingBlocks(
  crossings: readonly Crossing[],
  context: {
    readonly caption: string;
    readonly unit: TemperatureUnit;
    readonly startOfDaySeconds: number | null;
  },
): readonly Block[] {
  if (crossings.length === 0) return [];
  const remarks = crossings.flatMap((crossing) => remarksOf(crossing, context.unit));
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
    { lines: [nameOf(crossing, unit), crossing.direction] },
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

function nameOf(crossing: Crossing, unit: TemperatureUnit): string {
  return bandSaid(crossing.band, { ...crossing, unit }).replace(/ inversion$/, "");
}

/** The guide and what the computed stress says; where the kiln was open, only that. */
function limitCell(crossing: Crossing, unit: TemperatureUnit): Cell {
  const { limitCPerHour, severity, openedC } = crossing;
  if (openedC !== null && crossing.measured !== "no")
    return { lines: ["open from", printTemperature(openedC, unit)] };
  if (limitCPerHour === null) return "none";
  const guide = printRate(limitCPerHour, unit);
  if (severity === null) return guide;
  return severity === "note"
    ? { lines: [guide, "bears it"], style: "good" }
    : { lines: [guide, severity === "caution" ? "hard on it" : "too fast"], style: "warning" };
}

function remarksOf(crossing: Crossing, unit: TemperatureUnit): readonly string[] {
  const name = bandSaid(crossing.band, { ...crossing, unit });
  return crossing.notes.map((note) => `${name}, ${crossing.direction}: ${stopped(note)}`);
}
