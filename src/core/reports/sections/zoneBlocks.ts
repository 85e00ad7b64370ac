import type { FiringReview } from "../../firing/FiringReview.ts";
import type { ZoneReview } from "../../firing/foundZone.ts";
import { printDifference, printDuration, printTemperature } from "../../units/print.ts";
import type { TemperatureUnit } from "../../units/temperature.ts";
import type { Block, Cell } from "../Block.ts";
import { momentLines, momentText } from "../moments.ts";
import { plusMinus } from "./coneWords.ts";

/** The thermocouples side by side, and how far apart they were; empty with one. */
export function zoneBlocks(review: FiringReview, unit: TemperatureUnit): readonly Block[] {
  const { zones, spread, reading } = review;
  if (zones.length < 2) return [];
  const { startOfDaySeconds } = reading;
  return [
    { kind: "heading", text: "Where in the kiln" },
    {
      kind: "table",
      caption: "The thermocouples side by side",
      columns: [
        { head: "thermocouple", align: "left" },
        { head: "peak", align: "right" },
        { head: "when (h:min after start)", align: "right" },
        { head: `within ${printDifference(5, unit)} of peak`, align: "right" },
        { head: "heat reached", align: "right" },
        { head: "last reading", align: "right" },
      ],
      rows: zones.map((zone) => zoneRow(zone, { unit, startOfDaySeconds })),
    },
    ...(spread === null
      ? []
      : [
          {
            kind: "sentence",
            text: `They were farthest apart, ${printDifference(spread.largestC, unit)}, at ${momentText(startOfDaySeconds, spread.largestAtSeconds)}, and ${printDifference(spread.atPeakC, unit)} apart at the peak of the hottest.`,
          } as const,
        ]),
  ];
}

function zoneRow(
  zone: ZoneReview,
  context: { readonly unit: TemperatureUnit; readonly startOfDaySeconds: number | null },
): readonly Cell[] {
  const { unit, startOfDaySeconds } = context;
  const { sigmaCones, position } = zone.heatwork;
  return [
    zone.name,
    printTemperature(zone.peakC, unit),
    { lines: momentLines(startOfDaySeconds, zone.peakAtSeconds) },
    printDuration(zone.secondsWithinFiveOfPeak),
    {
      lines: [position.label, ...(sigmaCones === null ? [] : [`± ${plusMinus(sigmaCones)} cones`])],
    },
    printTemperature(zone.lastReadingC, unit),
  ];
}
