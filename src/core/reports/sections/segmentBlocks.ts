import { type FallByItself, fellByItself } from "../../firing/fellByItself.ts";
import type { FoundSegment } from "../../firing/foundZone.ts";
import { printDuration, printRate, printTemperature } from "../../units/print.ts";
import type { TemperatureUnit } from "../../units/temperature.ts";
import type { Block, Cell } from "../Block.ts";
import { momentColumns, momentLines } from "../moments.ts";
import { printSpan, printTravel } from "../printSpan.ts";

const LEAST_DRIFT_CPERHOUR = 1;

/** Ramps and holds that were found in a measured Curve. */
export function segmentBlocks(
  segments: readonly FoundSegment[],
  context: {
    readonly caption: string;
    readonly unit: TemperatureUnit;
    readonly startOfDaySeconds: number | null;
  },
): readonly Block[] {
  const { caption, unit, startOfDaySeconds } = context;
  if (segments.length === 0) return [];
  return [
    {
      kind: "table",
      caption,
      columns: [
        { head: "", align: "left" },
        { head: "from → to", align: "right" },
        { head: "rate", align: "right" },
        { head: "lasted", align: "right" },
        ...momentColumns("ended", startOfDaySeconds),
      ],
      rows: fellByItself(segments).map((segment): readonly Cell[] => [
        segment.kind === "hold" && segment.stable ? "steady hold" : segment.kind,
        spanCell(segment, unit),
        rateCell(segment, unit),
        printDuration(segment.endSeconds - segment.startSeconds),
        ...momentLines(startOfDaySeconds, segment.endSeconds),
      ]),
    },
  ];
}

function spanCell(segment: FoundSegment | FallByItself, unit: TemperatureUnit): string {
  const from = printTemperature(segment.fromC, unit);
  const to = printTemperature(segment.toC, unit);
  return segment.kind === "hold" && from === to ? to : printSpan(segment.fromC, segment.toC, unit);
}

function rateCell(segment: FoundSegment | FallByItself, unit: TemperatureUnit): string {
  if (segment.kind === "fell by itself")
    return `${printTravel(segment.firstCPerHour, unit)}, in the end ${printRate(-segment.lastCPerHour, unit)}`;
  if (segment.kind === "ramp") return printTravel(segment.rateCPerHour, unit);
  if (Math.abs(segment.rateCPerHour) < LEAST_DRIFT_CPERHOUR) return "held";
  const direction = segment.rateCPerHour < 0 ? "drifting down" : "drifting up";
  return `${direction} ${printRate(segment.rateCPerHour, unit)}`;
}
