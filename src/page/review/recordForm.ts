import { html, nothing, type TemplateResult } from "lit-html";
import { failed, ok, type Result } from "../../core/problem.ts";
import type { FiringRecordFile } from "../../core/record/recordFormat.ts";
import { quantityField } from "../parts/controls.ts";
import type { Bench } from "../state/state.ts";
import { recordName, recordOf, saveRecord, writeRecord, wrongWithRecord } from "./changeReview.ts";
import {
  GROUPS,
  HEAD_FIELDS,
  PARTS,
  type RecordField,
  type RecordPart,
  type RecordPath,
  typedValue,
  valueAt,
  withValue,
} from "./recordFields.ts";

/** The record as a form: every change is written into its file at once. */
export function recordForm(bench: Bench): TemplateResult {
  const { work } = bench.state();
  const file = recordOf(work);
  const name = recordName(work.review);
  return html`<details class="report-part record-form" id="record">
    <summary>The record, to write and to change</summary>
    <p class="hint">What was noted beside the log. Kept as ${name}; the command reads the same file when it lies beside the log. Comments in a file that was dropped stay where they are.</p>
    <div class="fields">${HEAD_FIELDS.map((field) => fieldFor(bench, file, [field.key], field))}</div>
    ${GROUPS.map(
      ({ key, title, fields }) => html`<fieldset class="record-group"><legend>${title}</legend>
        <div class="fields">${fields.map((field) => fieldFor(bench, file, [key, field.key], field))}</div></fieldset>`,
    )}
    ${PARTS.map((part) => partOf(bench, file, part))}
    <div class="fields">${fieldFor(bench, file, ["notes"], { key: "notes", label: "Notes", kind: "long" })}</div>
    <div class="actions">
      <button type="button" class="chief" @click=${() => saveRecord(bench)}>Save the record</button>
    </div>
  </details>`;
}

function partOf(bench: Bench, file: FiringRecordFile, part: RecordPart): TemplateResult {
  const items = file[part.key] ?? [];
  return html`<details class="record-part" id=${`record-${part.key}`}>
    <summary>${part.title} <span class="count">${items.length === 0 ? "none noted" : items.length}</span></summary>
    ${items.map((item, at) => {
      const { piece, name, cone, what } = item as Readonly<Record<string, string | undefined>>;
      const called = String(piece ?? name ?? cone ?? what ?? at + 1);
      return html`<fieldset class="record-item"><legend>${called}</legend>
        <div class="fields">${part.fields.map((field) => fieldFor(bench, file, [part.key, at, field.key], field))}</div>
        <button type="button" class="slim" @click=${() => take(bench, [part.key, at], called)}>Take out<span class="out-of-sight"> ${called}</span></button>
      </fieldset>`;
    })}
    ${addForm(bench, part, "add")}
  </details>`;
}

function take(bench: Bench, path: RecordPath, called: string): void {
  const file = recordOf(bench.state().work);
  writeRecord(bench, `taking out ${called}`, withValue(file, path, undefined));
}

function fieldFor(
  bench: Bench,
  file: FiringRecordFile,
  path: RecordPath,
  field: RecordField,
): TemplateResult {
  const value = valueAt(file, path);
  const write = (next: FiringRecordFile) => {
    if (next !== file) writeRecord(bench, `${field.label.toLowerCase()} in the record`, next);
  };
  const id = `record-${path.join("-")}`;
  if (typeof value === "object" && value !== null) return ownBody(field, value);
  if (typeof field.kind === "object")
    return choice({ id, field, value, pick: (next) => write(withValue(file, path, next)) });
  const check = (text: string): Result<FiringRecordFile> => {
    if (text.trim() === String(value ?? "")) return ok(file);
    const next = withValue(
      file,
      path,
      typedValue(field, text, { page: bench.state().work.unit, file: file.unit }),
    );
    const problems = wrongWithRecord(next);
    return problems.length > 0 ? failed(...problems) : ok(next);
  };
  if (field.kind === "long")
    return longField({ id, label: field.label, value: String(value ?? ""), check, write });
  return quantityField<FiringRecordFile>({
    id,
    label: field.label,
    value: String(value ?? ""),
    ...(field.hint !== undefined && { hint: field.hint }),
    parse: check,
    onValue: write,
  });
}

/** A body with properties of its own is kept as it is; its file is the place to change it. */
function ownBody(field: RecordField, body: object): TemplateResult {
  const name = "name" in body ? String(body.name) : "one of your own";
  return html`<div class="field"><span class="field-name">${field.label}</span><span>${name}, with properties of your own; kept as the file has it</span></div>`;
}

function choice(options: {
  readonly id: string;
  readonly field: RecordField;
  readonly value: unknown;
  readonly pick: (value: string | undefined) => void;
}): TemplateResult {
  const { id, field, value, pick } = options;
  const known = field.kind as readonly string[];
  const all =
    value === undefined || known.includes(String(value)) ? known : [String(value), ...known];
  return html`<div class="field"><label for=${id}>${field.label}</label>
    <select id=${id} @change=${({ target }: Event) => pick((target as HTMLSelectElement).value || undefined)}>
      ${field.needed ? nothing : html`<option value="" .selected=${value === undefined}>not noted</option>`}
      ${all.map((each) => html`<option value=${each} .selected=${each === value}>${each}</option>`)}
    </select></div>`;
}

function longField(options: {
  readonly id: string;
  readonly label: string;
  readonly value: string;
  readonly check: (text: string) => Result<FiringRecordFile>;
  readonly write: (file: FiringRecordFile) => void;
}): TemplateResult {
  const { id, label, value, check, write } = options;
  const take = ({ target }: Event) => {
    const next = check((target as HTMLTextAreaElement).value);
    if (next.ok) write(next.value);
  };
  return html`<div class="field is-long"><label for=${id}>${label}</label>
    <textarea id=${id} rows="4" .value=${value} @change=${take}></textarea></div>`;
}

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
