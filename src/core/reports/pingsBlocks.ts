import { LEAST_THRESHOLD_DB, SCATTER_FACTOR } from "../pings/Ping.ts";
import type { PingBand, PingReview, PingSpan, PlacedPing } from "../pings/PingReview.ts";
import { printDuration, printElapsed, printTemperature } from "../text/quantities.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import {
  type Block,
  type Cell,
  type ChartPair,
  cautionBlocks,
  chartBlocks,
  findingBlocks,
  section,
} from "./Block.ts";
import { basisBlocks } from "./basisBlocks.ts";
import { clockText } from "./moments.ts";
import { pingRecordLines } from "./pingRecordLines.ts";

/** What the report of a recording needs to know beside its object. */
export interface PingsContext {
  readonly unit: TemperatureUnit;
  readonly charts?: Readonly<Record<string, ChartPair>>;
}

/** A recording as blocks: how many, what they speak for, when, how hot, and how they were told apart. */
export function pingsBlocks(
  review: PingReview,
  { unit, charts = {} }: PingsContext,
): readonly Block[] {
  return [
    { kind: "lead", text: leadText(review) },
    { kind: "facts", facts: facts(review) },
    ...chartBlocks("Pings against time, with their loudness", charts.loudness),
    ...chartBlocks("How the pings add up", charts.count),
    ...findingBlocks(review.findings, { unit, startOfDaySeconds: null }),
    ...section("When they came", review.pings.length === 0 ? [] : [spansTable(review.spans)]),
    ...section("How hot it was", [
      ...pingTemperatureBlocks(review, unit),
      ...chartBlocks("Pings per hour against temperature", charts.temperature),
    ]),
    ...section("The loudest", loudestPings(review, unit)),
    { kind: "heading", text: "How they were told from other sounds" },
    { kind: "list", items: hearingItems(review) },
    ...section(
      "Lines for the firing record",
      pingRecordLines(review).length === 0
        ? []
        : [{ kind: "lines", lines: pingRecordLines(review) }],
    ),
    ...basisBlocks({ heatwork: null, crossings: [], findings: review.findings, sources: [] }, unit),
    ...cautionBlocks(review.cautions),
  ];
}

function leadText({ pings, heard, spans }: PingReview): string {
  const length = printDuration(heard.seconds);
  if (pings.length === 0) return `No ping found in ${length}`;
  const count = `${pings.length} ${pings.length === 1 ? "ping" : "pings"} or more in ${length}`;
  const early = spans[0];
  return spans.length > 1 && early
    ? `${count}, ${percent(early.share)} of them in the first 10 minutes`
    : count;
}

function facts(review: PingReview) {
  const { sound, heard, kinds } = review;
  const [deep, light] = kinds.kinds;
  return [
    { label: "recording", text: [sound.format, ...sound.notes].join("; ") },
    { label: "started", text: startedText(review) },
    {
      label: "quiet level",
      text: heard.bands
        .map(
          ({ lowHz, highHz, floorDbfs }) =>
            `${Math.round(floorDbfs).toString().replace("-", "−")} dB at ${kilo(lowHz)}–${kilo(highHz)}`,
        )
        .join(", ")
        .concat(" kHz, full scale being 0"),
    },
    ...(deep === undefined
      ? []
      : [
          {
            label: "tones",
            text:
              light === undefined
                ? `one kind, about ${kilo(deep.pitchHz)} kHz, most within a factor of ${deep.pitchFactor.toFixed(1)}${kinds.evidence === null ? "; too few to look for two" : ""}`
                : `two kinds, ${deep.count} about ${kilo(deep.pitchHz)} kHz and ${light.count} about ${kilo(light.pitchHz)} kHz`,
          },
        ]),
  ];
}

function startedText({ started, temperatures }: PingReview): string {
  const { secondsOfDay, elapsedSeconds } = started;
  const clock = clockText(secondsOfDay, 0);
  const into = temperatures === null ? "the firing" : temperatures.logName;
  const parts = [
    ...(elapsedSeconds === null ? [] : [`${printElapsed(elapsedSeconds)} into ${into}`]),
    ...(clock === null ? [] : [`${clock} by the clock`]),
  ];
  return parts.length === 0 ? 'not said (--started "21:05")' : parts.join(", ");
}

function spansTable(spans: readonly PingSpan[]): Block {
  return {
    kind: "table",
    caption: "Pings since the start of the recording",
    columns: [
      { head: "time", align: "left" },
      { head: "pings", align: "right" },
      { head: "share", align: "right" },
      { head: "per hour", align: "right" },
    ],
    rows: spans.map((span): readonly Cell[] => [
      span.fromSeconds === 0
        ? `first ${printDuration(span.toSeconds)}`
        : `to ${printDuration(span.toSeconds)}`,
      String(span.count),
      percent(span.share),
      rate(span.perHour),
    ]),
  };
}

function hearingItems({ heard }: PingReview): readonly string[] {
  const { settings, others, bands } = heard;
  const thresholds = bands.map(({ thresholdDb }) => thresholdDb.toFixed(0)).join(", ");
  return [
    settings.thresholdDb === null
      ? `A ping stands out of the quiet level of a band by ${SCATTER_FACTOR} times its scatter (median absolute deviation), ${LEAST_THRESHOLD_DB} dB at least: here ${thresholds} dB from the deepest band up (--threshold).`
      : `A ping stands out of the quiet level of a band by ${settings.thresholdDb} dB, as told (--threshold).`,
    `The quiet level is the median over ${settings.floorSeconds} s (--floor).`,
    `A ping starts at once, ${settings.attackDb} dB within 6 ms (--attack), and dies away within a quarter of a second. Not counted: ${others.slow} that swelled up instead, ${others.lasting} that stayed, ${others.thuds} thuds (below 350 Hz), ${others.amongNoise} sharp ones among other noise, such as speech.`,
    `Pings within ${Math.round(settings.apartSeconds * 1000)} ms of another are counted with it, so that an echo is no second one (--apart).`,
    "All these choices are our own, tried on made-up sounds only: there clicks 20 dB over the noise were all found and nothing else was; at 10 dB one in three can be missed. Times are good to 10 ms.",
  ];
}

function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
}

function rate(perHour: number): string {
  return perHour >= 10 ? String(Math.round(perHour)) : perHour.toFixed(1);
}

function kilo(hertz: number): string {
  return (hertz / 1000).toFixed(1);
}

/** Pings that are listed one by one. */
const LISTED = 10;

/** The loudest pings with time, loudness, tone and dying away; nothing when there are none. */
function loudestPings(review: PingReview, unit: TemperatureUnit): readonly Block[] {
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
function pingTemperatureBlocks(
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
