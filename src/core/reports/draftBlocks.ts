import { peakOf } from "../curve/Curve.ts";
import { AT_TOP_END_SECONDS, topEndSeconds } from "../schedule/coneAim.ts";
import { pieceOf } from "../schedule/coolingLimits.ts";
import type { Draft } from "../schedule/draftSchedule.ts";
import type { Schedule, TimelineRow } from "../schedule/Schedule.ts";
import {
  printDifference,
  printDuration,
  printRate,
  printSetRate,
  printSpan,
  printTemperature,
} from "../text/quantities.ts";
import { capitalised, stopped } from "../text/wrap.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import {
  type Block,
  type Cell,
  cautionBlocks,
  chartBlocks,
  findingBlocks,
  section,
} from "./Block.ts";
import { basisBlocks, bodyBlocks } from "./basisBlocks.ts";
import { coneLabel, coneTableBlocks, plusMinusSentence, positionSentence } from "./coneBlocks.ts";
import { crossingBlocks } from "./crossingBlocks.ts";
import { type Mending, mendingBlocks } from "./mendingBlocks.ts";
import { momentColumns, momentLines, momentText, startOfDayOf } from "./moments.ts";
import { ownKilnBlocks } from "./ownKilnBlocks.ts";
import type { ReportContext } from "./reviewBlocks.ts";
import { strainBlocks } from "./strainBlocks.ts";

/** What a report of a draft may know beside the draft. */
export interface DraftContext extends ReportContext {
  /** How the schedule was changed before it was drafted, if it was. */
  readonly mending?: Mending;
  /** What the thermocouple is taken to be out by, and by what cones; nothing where it is the usual. */
  readonly thermocouple?: string;
  /** What was assumed on the way beside what the draft assumes, as sentences. */
  readonly assumed?: readonly string[];
}

/** A drafted firing as blocks: what it reaches, when, how fast, and what speaks against it. */
export function draftBlocks(draft: Draft, context: DraftContext): readonly Block[] {
  const { unit, charts = {}, sources = [] } = context;
  const { heatwork, expansion, crossings, findings } = draft;
  const startOfDaySeconds = startOfDayOf(draft.start);
  const when = { unit, startOfDaySeconds };
  return [
    {
      kind: "lead",
      text: `${capitalised(coneLabel(heatwork))}, peak ${printTemperature(peakOf(expansion.curve).tempC, unit)}`,
    },
    {
      kind: "sentence",
      text: `${positionSentence(heatwork, "will be")} ${plusMinusSentence(heatwork, unit)}`,
    },
    { kind: "facts", facts: headlineFacts(draft, when, context.thermocouple) },
    ...(context.mending === undefined ? [] : mendingBlocks(context.mending, unit)),
    ...chartBlocks("The schedule, temperature against time", charts.firing),
    { kind: "heading", text: "Timeline" },
    timelineTable(expansion.timeline, when, draft.schedule.unit),
    ...reasonBlocks(draft.schedule),
    ...ownKilnBlocks(draft, when),
    ...findingBlocks(findings, when),
    ...section("Through the inversions", [
      ...crossingBlocks(crossings, { caption: "How fast it goes", ...when }),
      ...chartBlocks("Cooling through the inversions", charts.cooling),
    ]),
    ...section("Stress in the ware", [
      ...strainBlocks(draft.strains, { tense: "will be", ...when }),
      ...chartBlocks("Computed stress over strength against time", charts.strain),
    ]),
    ...section("Cones", [
      ...coneTableBlocks(heatwork, { tense: "will be", ...when }),
      ...chartBlocks("Cones going down during the firing", charts.cones),
    ]),
    ...section(
      "What had to be assumed",
      listBlocks(
        [...expansion.assumptions, ...(context.assumed ?? [])].map((each) =>
          capitalised(stopped(each)),
        ),
      ),
    ),
    ...bodyBlocks(draftedPieces(draft.schedule), {
      unit,
      ownIn: "the schedule under ware, body, or in a file named with --body",
    }),
    ...basisBlocks({ heatwork, crossings, findings, sources }, unit),
    ...cautionBlocks(draft.cautions),
  ];
}

interface When {
  readonly unit: TemperatureUnit;
  readonly startOfDaySeconds: number | null;
}

/** What was assumed of the piece stands among the assumptions already. */
function draftedPieces({ ware }: Schedule) {
  const piece = pieceOf(ware);
  return [{ name: "the ware", ware: piece.ware, assumed: [] }];
}

function headlineFacts(draft: Draft, when: When, said?: string) {
  const { schedule, start, expansion } = draft;
  const { unit, startOfDaySeconds } = when;
  const total = expansion.timeline.at(-1)?.endSeconds ?? 0;
  const ware = wareText(schedule);
  return [
    { label: "cone wanted", text: wantedText(draft, when) },
    ...(said === undefined ? [] : [{ label: "thermocouple", text: said }]),
    ...(start === null
      ? []
      : [{ label: "starts", text: `${start.replace("T", " ").slice(0, 16)} by the clock` }]),
    {
      label: "takes",
      text: `${printDuration(total)}, from ${printTemperature(schedule.startC, unit)}; ends ${momentText(startOfDaySeconds, total)}`,
    },
    ...(draft.energyKWh === null
      ? []
      : [
          {
            label: "electricity",
            text: `about ${Math.round(draft.energyKWh)} kWh, as the logs of the kiln have it`,
          },
        ]),
    ...(ware === "" ? [] : [{ label: "ware", text: ware }]),
    ...(schedule.notes === null ? [] : [{ label: "notes", text: schedule.notes }]),
  ];
}

/** The cone wanted: when it falls, as against the end of the top hold, or what it lacks. */
function wantedText(draft: Draft, { unit, startOfDaySeconds }: When): string {
  const { schedule, heatwork, expansion } = draft;
  const { cone } = schedule;
  if (cone === null) return "none named in the schedule";
  const state = heatwork.cones.find((each) => each.cone === cone);
  if (state === undefined) return `cone ${cone}`;
  const { downAtSeconds, marginK } = state;
  if (downAtSeconds === null)
    return `cone ${cone}: ${state.bend}, ${printDifference(Math.abs(marginK), unit)} short of its end`;
  const topEnd = topEndSeconds(schedule, expansion);
  return `cone ${cone}: falls ${momentText(startOfDaySeconds, downAtSeconds)}${topEnd === null ? "" : `, ${endText(downAtSeconds - topEnd)}`}`;
}

function endText(afterSeconds: number): string {
  if (Math.abs(afterSeconds) <= AT_TOP_END_SECONDS) return "as the top hold ends";
  const much = printDuration(Math.abs(afterSeconds));
  return afterSeconds < 0
    ? `${much} before the top hold ends`
    : `${much} after the top hold has ended, while the kiln cools`;
}

function wareText(schedule: Schedule): string {
  const { thickestMm, widestMm, state, crackle } = schedule.ware;
  return [
    ...(state === null ? [] : [state]),
    ...(thickestMm === null ? [] : [`thickest part ${Math.round(thickestMm)} mm`]),
    ...(widestMm === null ? [] : [`widest piece ${Math.round(widestMm)} mm`]),
    ...(crackle ? ["glaze meant to crackle"] : []),
  ].join(", ");
}

function timelineTable(timeline: readonly TimelineRow[], when: When, own: TemperatureUnit): Block {
  const { unit, startOfDaySeconds } = when;
  return {
    kind: "table",
    caption: "Segment by segment",
    columns: [
      { head: "segment", align: "right" },
      { head: "from → to", align: "right" },
      { head: "rate", align: "right" },
      { head: "lasts", align: "right" },
      ...momentColumns("ends", startOfDaySeconds),
    ],
    rows: timeline.map((row): readonly Cell[] => [
      String(row.segment + 1),
      row.kind === "hold" ? printTemperature(row.toC, unit) : printSpan(row.fromC, row.toC, unit),
      rateText(row, unit, own),
      printDuration(row.endSeconds - row.startSeconds),
      ...momentLines(startOfDaySeconds, row.endSeconds),
    ]),
  };
}

function rateText(row: TimelineRow, unit: TemperatureUnit, own: TemperatureUnit): string {
  if (row.kind === "hold") return "hold";
  return row.assumedRate
    ? `free, about ${printRate(row.rateCPerHour, unit)}`
    : `${row.rateCPerHour < 0 ? "down" : "up"} ${printSetRate(row.rateCPerHour, { unit, own })}`;
}

function reasonBlocks(schedule: Schedule): readonly Block[] {
  return listBlocks(
    schedule.segments.flatMap(({ why }, index) =>
      why === null ? [] : [`Segment ${index + 1}: ${stopped(why)}`],
    ),
  );
}

function listBlocks(items: readonly string[]): readonly Block[] {
  return items.length === 0 ? [] : [{ kind: "list", items }];
}
