import { html, nothing, type TemplateResult } from "lit-html";
import { asAssumedKiln } from "../../core/kiln/reach.ts";
import { type Block, findingBlocks } from "../../core/reports/Block.ts";
import { crossingBlocks } from "../../core/reports/crossingBlocks.ts";
import { draftBlocks } from "../../core/reports/draftBlocks.ts";
import { momentText, startOfDayOf } from "../../core/reports/moments.ts";
import { calendarText, type FiringMoment, firingMoments } from "../../core/schedule/calendar.ts";
import { parseStart } from "../../core/schedule/clock.ts";
import { limitsFor, pieceOf } from "../../core/schedule/coolingLimits.ts";
import { type Draft, draftSchedule } from "../../core/schedule/draftSchedule.ts";
import type { Schedule } from "../../core/schedule/Schedule.ts";
import { inert } from "../../core/text/escape.ts";
import { strainRatioText } from "../../core/text/quantities.ts";
import type { TemperatureUnit } from "../../core/units/temperature.ts";
import { isJudged, strainRisk } from "../../core/ware/strainRisk.ts";
import type { WareStrain } from "../../core/ware/Ware.ts";
import { wareStrain } from "../../core/ware/wareStrain.ts";
import { blockList } from "../parts/blockList.ts";
import { problemList, remembered, still } from "../parts/controls.ts";
import { download, fileStem } from "../parts/files.ts";
import type { DeskKiln } from "../state/draftState.ts";
import type { Bench } from "../state/state.ts";
import { type KilnAsked, knownKiln } from "../worker/answers.ts";
import { changeDraft, changeSchedule, kilnAsked } from "./changeDraft.ts";
import { changePanel } from "./changePanel.ts";
import { curveEditor } from "./curveEditor.ts";
import { draftReport } from "./draftReport.ts";
import { kilnPanel } from "./kilnPanel.ts";
import { savePanel } from "./savePanel.ts";
import { segmentTable } from "./segmentTable.ts";
import { startView } from "./startView.ts";
import { warePanel } from "./warePanel.ts";

/** The Draft table: a schedule to change by typing or by dragging, and what it does at once. */
export function draftTable(bench: Bench): TemplateResult {
  const { schedule } = bench.state().work.draft;
  return schedule === null ? startView(bench) : scheduleView(bench, schedule);
}

function scheduleView(bench: Bench, schedule: Schedule): TemplateResult {
  const state = bench.state();
  const { unit, draft } = state.work;
  const light = lightDraft(schedule, draft.start, kilnAsked(state.draft.kiln, draft.offset));
  return html`<div class="draft">
    <div class="draft-title">${title(bench, schedule)}</div>
    <div class="draft-problems">${problemList(state.draft.problems)}</div>
    <div class="draft-sheet">
      ${curveEditor(bench, { draft: light.draft, unit })}
      ${segmentTable(bench, light.draft, unit)}
    </div>
    <div class="draft-answer">
      ${still(answerPanel(light, unit))}
    </div>
    <div class="draft-panels">
      ${changePanel(bench, schedule)}
      ${warePanel(bench, schedule)}
      ${kilnPanel(bench)}
      ${clockPanel(bench, light.draft)}
      ${savePanel(bench, schedule)}
    </div>
    <details class="draft-report" ?open=${!state.narrow}><summary>The whole report</summary>${draftReport(state)}</details>
  </div>${still(kilnCard(light.draft, unit, state.draft.kiln))}`;
}

function title(bench: Bench, schedule: Schedule): TemplateResult {
  return html`<h2 class="out-of-sight">${inert(schedule.title)}</h2>
    <label class="out-of-sight" for="title">Title</label>
    <textarea id="title" class="title-field" rows="1" maxlength="200" .value=${inert(schedule.title)}
      @keydown=${(event: KeyboardEvent) => {
        if (event.key !== "Enter") return;
        event.preventDefault();
        (event.target as HTMLTextAreaElement).blur();
      }}
      @change=${(event: Event) => {
        const text = (event.target as HTMLTextAreaElement).value.replaceAll(/\s+/g, " ").trim();
        if (text !== "")
          changeSchedule(bench, { ...schedule, title: text }, { what: "changing the title" });
      }}></textarea>
    <button type="button" @click=${() => changeDraft(bench, "clearing the Draft table", { schedule: null })}>Take it off the table</button>`;
}

/** The blocks of a draft as it stands, made once for all who show a part of them. */
const lightBlocks = remembered((draft: Parameters<typeof draftBlocks>[0], unit: "C" | "F") =>
  draftBlocks(draft, { unit }),
);

/** What the schedule does, at every change: cone, times, stress, findings, crossings. */
const answerPanel = remembered(answerOf);

function answerOf(light: LightDraft, unit: TemperatureUnit): TemplateResult {
  const { draft } = light;
  const when = { unit, startOfDaySeconds: startOfDayOf(draft.start) };
  const [lead, sentence] = lightBlocks(draft, unit);
  const total = draft.expansion.timeline.at(-1)?.endSeconds ?? 0;
  const blocks: readonly Block[] = [
    ...(lead && sentence ? [lead, sentence] : []),
    { kind: "sentence", text: `It ends ${momentText(when.startOfDaySeconds, total)}.` },
    ...strainNow(light, when),
    ...findingBlocks(draft.findings, when),
    { kind: "heading", text: "Through the inversions" },
    ...crossingBlocks(draft.crossings, { caption: "How fast it goes", ...when }),
  ];
  return html`<div class="answer">${blocks.length === 0 ? nothing : blockList(blocks, "answer")}</div>`;
}

/** The stress on the way down by the middle properties of the body; the rest is in the report. */
function strainNow(
  { draft, worst }: LightDraft,
  when: { readonly unit: TemperatureUnit; readonly startOfDaySeconds: number | null },
): readonly Block[] {
  const { body } = pieceOf(draft.schedule.ware).ware;
  return [
    {
      kind: "table",
      caption: "Stress over strength at its worst, cooling",
      columns: [
        { head: "through", align: "left" },
        { head: { lines: ["stress over", "strength"] }, align: "right" },
        { head: "", align: "left" },
        { head: "when", align: "left" },
      ],
      rows: worst
        .filter((each) => isJudged(each, body))
        .map(({ band, ratio, atSeconds }) => {
          const risk = strainRisk(ratio);
          return [
            band.replace(/ inversion$/, ""),
            strainRatioText(ratio),
            {
              lines: [risk],
              style: risk === "high" ? "warning" : risk === "watch" ? "caution" : "good",
            },
            momentText(when.startOfDaySeconds, atSeconds),
          ];
        }),
    },
  ];
}

/** The part of a draft that is worked out at every change, well within a frame. */
interface LightDraft {
  /** Without stress and its spread, which come when the schedule rests. */
  readonly draft: Draft;
  /** Stress by the middle properties of the body. */
  readonly worst: WareStrain["worst"];
}

/** Cones, times, findings, crossings and the middle value of the stress of a schedule. */
const lightDraft = remembered(
  (schedule: Schedule, start: string | null, kiln: KilnAsked): LightDraft => {
    const { limitFor, piece } = wareOf(schedule.ware);
    const draft = draftSchedule({
      schedule,
      start,
      limitFor,
      findingsOnly: true,
      ...known(kiln),
    });
    return { draft, worst: wareStrain(draft.expansion.curve, piece.ware).worst };
  },
);

const known = remembered(knownKiln);

/** What the ware stands, worked out once for each ware. */
const wareOf = remembered((ware: Schedule["ware"]) => ({
  limitFor: limitsFor(ware),
  piece: pieceOf(ware),
}));

/** When the kiln is switched on, what happens when, and a calendar of it. */
function clockPanel(bench: Bench, draft: Draft): TemplateResult {
  const { start } = draft;
  const moments = momentsOf(draft, bench.state().work.unit, bench.state().draft.kiln);
  const startOfDay = startOfDayOf(start);
  return html`<section class="panel" aria-labelledby="clock-title"><h3 id="clock-title">By the clock</h3>
    <div class="fields"><div class="field"><label for="start">The kiln is switched on</label>
      <input type="datetime-local" id="start" .value=${start?.slice(0, 16) ?? ""} @change=${(event: Event) => setStart(bench, (event.target as HTMLInputElement).value)}>
    </div></div>
    <ul class="moments">${moments.map(({ what, seconds }) => html`<li>${what}: ${momentText(startOfDay, seconds)}</li>`)}</ul>
    ${start === null ? html`<p class="hint">Choose a start, and every time is told by the clock too.</p>` : nothing}
    <button type="button" ?disabled=${start === null} @click=${() => start !== null && download(`${fileStem(draft.schedule.title)}.ics`, calendarText(moments, { title: draft.schedule.title, start }), "text/calendar")}>Save as a calendar (.ics)</button>
  </section>`;
}

/** The moments of a draft, for the kiln on the table. */
const momentsOf = remembered(
  (draft: Draft, unit: TemperatureUnit, own: DeskKiln | null): readonly FiringMoment[] => {
    const kiln = own === null ? {} : { kiln: asAssumedKiln(own.learned) };
    return firingMoments(draft, { unit, ...kiln });
  },
);

function setStart(bench: Bench, text: string): void {
  const start = parseStart(text, "the start");
  changeDraft(bench, "changing the start", { start: start.ok ? start.value : null });
}

/** One sheet to hang beside the kiln: segments, clock times, cone, cautions, room for notes. */
const kilnCard = remembered(cardOf);

function cardOf(draft: Draft, unit: TemperatureUnit, kiln: DeskKiln | null): TemplateResult {
  const blocks = lightBlocks(draft, unit);
  const startOfDay = startOfDayOf(draft.start);
  const start =
    draft.start === null
      ? "Start: ____________"
      : `Start: ${draft.start.replace("T", " ").slice(0, 16)}`;
  const kept = blocks.filter(isOnCard);
  return html`<section class="card" aria-label="Kiln card">
    <h2>${inert(draft.schedule.title)}</h2>
    <p class="card-start">${start}</p>
    ${blockList(
      kept.filter(({ kind }) => kind !== "caution"),
      "card",
    )}
    <ul class="moments">${momentsOf(draft, unit, kiln).map(({ what, seconds }) => html`<li>${what}: ${momentText(startOfDay, seconds)}</li>`)}</ul>
    ${blockList(warningsOf(blocks), "card-findings")}
    ${blockList(
      kept.filter(({ kind }) => kind === "caution"),
      "card-cautions",
    )}
    <div class="card-notes"><p>Witness cones, times, what was heard:</p></div>
  </section>`;
}

function isOnCard(block: Block): boolean {
  return (
    block.kind === "lead" ||
    block.kind === "caution" ||
    (block.kind === "table" && block.caption === "Segment by segment")
  );
}

/** Only what somebody has to mind; notes stay in the report. */
function warningsOf(blocks: readonly Block[]): readonly Block[] {
  return blocks.filter((block) => block.kind === "finding" && block.severity !== "note");
}
