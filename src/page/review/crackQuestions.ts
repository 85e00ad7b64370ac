import { html, nothing, type TemplateResult } from "lit-html";
import { type DiagnosedCause, QUESTIONS, type QuestionId } from "../../core/diagnosis/Diagnosis.ts";
import type { FiringRecordFile } from "../../core/record/recordFormat.ts";
import type { Bench } from "../state/state.ts";
import { recordOf, saveRecord, showReview, writeRecord } from "./changeReview.ts";
import { goToPart } from "./findingList.ts";
import { PARTS, type RecordPart, type RecordPath, valueAt, withValue } from "./recordFields.ts";
import { addForm } from "./recordForm.ts";

/** Where the record holds the answer to a question; null where only a log can tell. */
const PLACES: Readonly<
  Record<QuestionId, { readonly part: RecordPart["key"] | "unloaded"; readonly key: string } | null>
> = {
  depth: { part: "found", key: "what" },
  edges: { part: "found", key: "edges" },
  "first seen": { part: "found", key: "when" },
  pattern: { part: "found", key: "pattern" },
  place: { part: "found", key: "where" },
  ring: { part: "found", key: "rings" },
  "state of the ware": { part: "ware", key: "state" },
  sound: { part: "heard", key: "at" },
  "cool and still pinging": { part: "heard", key: "at" },
  opening: { part: "unloaded", key: "temperature" },
  sides: { part: "ware", key: "glazedSides" },
  coat: { part: "trials", key: "crackSpacing" },
  quartz: null,
  cristobalite: null,
  heating: null,
};

/** Answers whose word in the record says less than a potter would. */
const WORDS: Readonly<Record<string, string>> = {
  "through-crack": "yes, through the wall",
  crackle: "crackle in the glaze only",
  crazing: "crazing, not wanted",
  crack: "a crack, how deep is not known",
  shivering: "glaze flakes off",
  chip: "a chip",
  none: "neither",
};

/** What can be asked of the pieces, answered by a click; each answer goes into the record at once. */
export function crackQuestions(bench: Bench, diagnosis: readonly DiagnosedCause[]): TemplateResult {
  const file = recordOf(bench.state().work);
  const open = openFirst(diagnosis);
  return html`<section class="report-part questions" id="questions" aria-labelledby="questions-title">
    <h3 id="questions-title" tabindex="-1">Ask the pieces</h3>
    <p>Every answer goes into the record, and the order of the kinds of crack follows it at once. Answer what you saw, and leave the rest.</p>
    ${pieceChoice(bench, file)}
    <div class="question-list">${open.map((id) => question(bench, file, id))}</div>
    <div class="actions"><button type="button" @click=${() => saveRecord(bench)}>Save these answers as the record</button></div>
  </section>`;
}

/** Questions that bear on what is still in the running first, then the others, in the order of asking. */
function openFirst(diagnosis: readonly DiagnosedCause[]): readonly QuestionId[] {
  const running = diagnosis.filter(({ standing }) => standing !== "speaks against");
  const open = new Set(running.flatMap(({ unanswered }) => unanswered));
  const all = (Object.keys(QUESTIONS) as QuestionId[]).filter((id) => PLACES[id] !== null);
  return [...all.filter((id) => open.has(id)), ...all.filter((id) => !open.has(id))];
}

function pieceChoice(bench: Bench, file: FiringRecordFile): TemplateResult | typeof nothing {
  const found = file.found ?? [];
  if (found.length < 2) return nothing;
  const piece = pieceAsked(bench, file);
  return html`<div class="field piece-choice"><label for="asked-piece">Answers are about</label>
    <select id="asked-piece" @change=${({ target }: Event) => showReview(bench, { piece: Number((target as HTMLSelectElement).value) })}>
      ${found.map((each, at) => html`<option value=${at} .selected=${at === piece}>${each.piece ?? `piece ${at + 1}`}</option>`)}
    </select></div>`;
}

function pieceAsked(bench: Bench, file: FiringRecordFile): number {
  return Math.min(bench.state().review.piece, Math.max(0, (file.found?.length ?? 0) - 1));
}

function question(bench: Bench, file: FiringRecordFile, id: QuestionId): TemplateResult {
  const place = PLACES[id];
  const { ask, look } = QUESTIONS[id];
  if (place === null) return html``;
  const part = PARTS.find(({ key }) => key === place.part);
  if (place.part === "heard" && part !== undefined)
    return box(
      id,
      ask,
      look,
      html`${heardSoFar(file)}${id === "sound" ? addForm(bench, part, "asked") : partLink("heard", "Note it in the record")}`,
    );
  if (place.part === "unloaded") return box(id, ask, look, opened(file));
  if (place.part === "trials")
    return box(id, ask, look, partLink("trials", "To the test pieces in the record"));
  const field = part?.fields.find(({ key }) => key === place.key);
  const choices = typeof field?.kind === "object" ? field.kind : [];
  const path: RecordPath = [
    place.part,
    place.part === "found" ? pieceAsked(bench, file) : 0,
    place.key,
  ];
  return html`<fieldset class="question"><legend>${ask}</legend><p class="hint">${look}</p>
    <div class="answers">${[...choices, undefined].map((choice) => answer(bench, { file, id, path, choice }))}</div></fieldset>`;
}

function answer(
  bench: Bench,
  asked: {
    readonly file: FiringRecordFile;
    readonly id: QuestionId;
    readonly path: RecordPath;
    readonly choice: string | undefined;
  },
): TemplateResult {
  const { file, id, path, choice } = asked;
  const pick = () =>
    writeRecord(bench, `the answer “${choice ?? "not noted"}”`, answered(file, path, choice));
  const label = choice === undefined ? "not noted" : (WORDS[choice] ?? choice);
  return html`<label><input type="radio" name=${`answer-${id}`} .checked=${valueAt(file, path) === choice} @change=${pick}> <span>${label}</span></label>`;
}

/** The record with an answer in it; what the answer is about is named where it was not yet. */
function answered(
  file: FiringRecordFile,
  path: RecordPath,
  choice: string | undefined,
): FiringRecordFile {
  const [part, at] = path;
  const isThere = valueAt(file, [part as string, at as number]) !== undefined;
  if (isThere || choice === undefined) return withValue(file, path, choice);
  const named = part === "found" ? { piece: "a piece" } : { name: "the ware", clay: "not noted" };
  return withValue(withValue(file, [part as string, 0], named), path, choice);
}

function box(id: QuestionId, ask: string, look: string, inside: unknown): TemplateResult {
  const titleId = `ask-${id.replaceAll(" ", "-")}`;
  return html`<div class="question" role="group" aria-labelledby=${titleId}><p class="question-ask" id=${titleId}>${ask}</p><p class="hint">${look}</p>${inside}</div>`;
}

function heardSoFar({ heard = [] }: FiringRecordFile): TemplateResult | typeof nothing {
  if (heard.length === 0) return nothing;
  return html`<ul>${heard.map(({ what, at }) => html`<li>${what} at ${at}</li>`)}</ul>`;
}

function opened({ unloaded }: FiringRecordFile): TemplateResult {
  const now = unloaded?.temperature;
  return html`${now === undefined ? nothing : html`<p>${now}, as noted.</p>`}<p><a href="#record-unloaded-temperature" @click=${(event: Event) => goToPart(event, "record-unloaded-temperature")}>${now === undefined ? "Note it in the record" : "Change it in the record"}</a></p>`;
}

function partLink(part: string, words: string): TemplateResult {
  return html`<p><a href=${`#record-${part}`} @click=${(event: Event) => goToPart(event, `record-${part}`)}>${words}</a></p>`;
}
