import type { PingBand, PingReview, PlacedPing } from "../../pings/PingReview.ts";
import { printDuration, printTemperature } from "../../units/print.ts";
import type { TemperatureUnit } from "../../units/temperature.ts";
import type { Block, Cell } from "../Block.ts";
import { clockText } from "../moments.ts";

/** Pings that are listed one by one. */
const LISTED = 10;

/** The loudest pings with time, loudness, tone and dying away; nothing when there are none. */
export function loudestPings(review: PingReview, unit: TemperatureUnit): readonly Block[] {
  const { pings, started, temperatures } = review;
  if (pings.length === 0) return [];
  const loudest = pings.toSorted((a, b) => b.overFloorDb - a.overFloorDb).slice(0, LISTED);
  const hasClock = started.secondsOfDay !== null;
  return [
    {
      kind: "table",
      caption:
        pings.length > LISTED
          ? `The ${LISTED} loudest of ${pings.length}; --json lists all`
          : "All of them, loudest first",
      columns: [
        { head: { lines: ["after", "min:s"] }, align: "right" },
        ...(hasClock ? [{ head: "clock", align: "right" } as const] : []),
        ...(temperatures === null ? [] : [{ head: "at", align: "right" } as const]),
        { head: { lines: ["over quiet", "dB"] }, align: "right" },
        { head: { lines: ["peak, full", "scale 0 dB"] }, align: "right" },
        { head: { lines: ["tone", "kHz"] }, align: "right" },
        { head: { lines: ["20 dB down", "in ms"] }, align: "right" },
      ],
      rows: loudest.map((ping): readonly Cell[] => [
        minutesText(ping.atSeconds),
        ...(hasClock ? [clockText(started.secondsOfDay, ping.atSeconds) ?? ""] : []),
        ...(temperatures === null ? [] : [tempText(ping, unit)]),
        ping.overFloorDb.toFixed(0),
        `${ping.levelDbfs.toFixed(0).replace("-", "−")}${ping.isClipped ? " or more" : ""}`,
        (ping.pitchHz / 1000).toFixed(1),
        ping.decayMs === null ? "—" : ping.decayMs.toFixed(0),
      ]),
    },
  ];
}

/** Pings against temperature; nothing without a log. */
export function pingTemperatureBlocks(
  { temperatures }: PingReview,
  unit: TemperatureUnit,
): readonly Block[] {
  if (temperatures === null) return [];
  const { inversions, steps, logName, channel, unloading } = temperatures;
  const named = (band: PingBand) =>
    `${printTemperature(band.highC, unit)} to ${printTemperature(band.lowC, unit)}${band.name === null ? "" : ` (${band.name})`}`;
  const row = (band: PingBand): readonly Cell[] => [
    named(band),
    String(band.count),
    printDuration(band.seconds),
    rateText(band.perHour),
  ];
  const taken: readonly (readonly Cell[])[] =
    unloading === null || unloading.seconds === 0
      ? []
      : [
          [
            "after unloading, not as hot as the kiln",
            String(unloading.count),
            printDuration(unloading.seconds),
            rateText((unloading.count * 3600) / unloading.seconds),
          ],
        ];
  return [
    {
      kind: "table",
      caption: `Pings against temperature, ${channel} of ${logName}`,
      columns: [
        { head: "from", align: "left" },
        { head: "pings", align: "right" },
        { head: "listened", align: "right" },
        { head: "per hour", align: "right" },
      ],
      rows: [...steps.map(row), ...inversions.map(row), ...taken],
    },
  ];
}

function rateText(perHour: number): string {
  return perHour >= 10 ? String(Math.round(perHour)) : perHour.toFixed(1);
}

function tempText({ tempC }: PlacedPing, unit: TemperatureUnit): string {
  return tempC === null ? "—" : printTemperature(tempC, unit);
}

function minutesText(seconds: number): string {
  const whole = Math.floor(seconds / 60);
  return `${whole}:${(seconds - 60 * whole).toFixed(2).padStart(5, "0")}`;
}
