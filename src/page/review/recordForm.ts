import { html, nothing, type TemplateResult } from "lit-html";
import type { FiringRecordFile } from "../../core/firing/recordFormat.ts";
import { failed, ok, type Result } from "../../core/problem.ts";
import type { Bench } from "../bench/store.ts";
import { quantityField } from "../parts/quantityField.ts";
import { addForm } from "./addForm.ts";
import { recordName, recordOf, writeRecord, wrongWithRecord } from "./changeReview.ts";
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
import { saveRecord } from "./saveRecord.ts";

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
