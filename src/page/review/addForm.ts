import { html, nothing, type TemplateResult } from "lit-html";
import type { FiringRecordFile } from "../../core/firing/recordFormat.ts";
import type { Bench } from "../bench/store.ts";
import { recordOf, writeRecord, wrongWithRecord } from "./changeReview.ts";
import { type RecordField, type RecordPart, typedValue } from "./recordFields.ts";

/**
 * Blank fields for what an item of a list needs; it goes into the record when all of them are given.
 *
 * @param where Makes the ids its own, where the same form stands twice on the page.
 */
export function addForm(bench: Bench, part: RecordPart, where: string): TemplateResult {
  const needed = part.fields.filter((field) => field.needed);
  return html`<form class="add-form" @submit=${(event: SubmitEvent) => add(event, bench, part)}>
    <div class="fields">${needed.map((field) => blank(`${where}-${part.key}-${field.key}`, field))}</div>
    <button type="submit">${part.add}</button>
    <p class="field-problem" role="status"></p>
  </form>`;
}

function blank(id: string, { key, label, kind, hint }: RecordField): TemplateResult {
  const field =
    typeof kind === "object"
      ? html`<select id=${id} name=${key}>${kind.map((each) => html`<option value=${each}>${each}</option>`)}</select>`
      : html`<input id=${id} name=${key} type="text" autocomplete="off" spellcheck="false">`;
  return html`<div class="field"><label for=${id}>${label}</label>${field}${hint === undefined ? nothing : html`<span class="hint">${hint}</span>`}</div>`;
}

function add(event: SubmitEvent, bench: Bench, part: RecordPart): void {
  event.preventDefault();
  const form = event.target as HTMLFormElement;
  const given = new FormData(form);
  const { work } = bench.state();
  const file = recordOf(work);
  const units = { page: work.unit, file: file.unit };
  const item = Object.fromEntries(
    part.fields.flatMap((field) => {
      const value = typedValue(field, String(given.get(field.key) ?? ""), units);
      return value === undefined ? [] : [[field.key, value]];
    }),
  );
  const empty = part.fields.find((field) => field.needed && item[field.key] === undefined);
  const next = { ...file, [part.key]: [...(file[part.key] ?? []), item] } as FiringRecordFile;
  const [problem] = empty === undefined ? wrongWithRecord(next) : [];
  const place = form.querySelector(".field-problem") as HTMLElement;
  if (empty !== undefined) place.textContent = `${empty.label} is still empty.`;
  else if (problem !== undefined) place.textContent = `${problem.what}; try: ${problem.fix}`;
  else {
    place.textContent = "";
    form.reset();
    writeRecord(bench, part.add.toLowerCase(), next);
  }
}
