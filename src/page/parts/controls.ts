import { html, nothing, type TemplateResult } from "lit-html";
import { guard } from "lit-html/directives/guard.js";
import { ref } from "lit-html/directives/ref.js";
import type { Problem, Result } from "../../core/problem.ts";
import { inert } from "../../core/text/escape.ts";

/** A sheet that lies over the bench until it is answered. */
interface DialogOptions {
  readonly id: string;
  readonly title: string;
  readonly body: unknown;
  /** Buttons; the one that keeps things as they are is made by the sheet itself. */
  readonly actions: readonly { readonly label: string; readonly act: () => void }[];
  /** `Cancel`, `Close`. */
  readonly leave: string;
  readonly onLeave: () => void;
}

/** A modal sheet with the browser's own focus keeping; Escape leaves it. */
export function dialog(options: DialogOptions): TemplateResult {
  const { id, title, body, actions, leave, onLeave } = options;
  return html`<dialog aria-labelledby=${id} ${ref(open)} @cancel=${(event: Event) => {
    event.preventDefault();
    onLeave();
  }}>
    <h2 id=${id}>${title}</h2>
    <div class="dialog-body">${body}</div>
    <div class="actions">
      <button type="button" autofocus @click=${onLeave}>${leave}</button>
      ${actions.map(({ label, act }) => html`<button type="button" class="chief" @click=${act}>${label}</button>`)}
    </div>
  </dialog>`;
}

function open(element: Element | undefined): void {
  const sheet = element as HTMLDialogElement | undefined;
  if (sheet !== undefined && !sheet.open)
    queueMicrotask(() => {
      if (sheet.isConnected && !sheet.open) sheet.showModal();
    });
}

/** What a person can fix, in the four parts that the command prints too; nothing when there is none. */
export function problemList(problems: readonly Problem[]): TemplateResult | typeof nothing {
  if (problems.length === 0) return nothing;
  return html`<div role="alert"><ul class="problems">${problems.map(
    ({ where, what, expected, fix, code }) => html`<li>
      <p class="problem-what"><span class="problem-where">${inert(where)}:</span> ${inert(what)}</p>
      <dl><dt>expected</dt><dd>${inert(expected)}</dd><dt>try</dt><dd>${inert(fix)}</dd></dl>
      <p class="problem-code">${code}</p>
    </li>`,
  )}</ul></div>`;
}

/** A function that gives the same object again for the same arguments as the last time. */
export function remembered<Given extends readonly unknown[], T>(
  make: (...given: Given) => T,
): (...given: Given) => T {
  let last: { readonly given: Given; readonly made: T } | null = null;
  return (...given) => {
    const isSame = last?.given.every((each, index) => Object.is(each, given[index]));
    if (last !== null && isSame) return last.made;
    last = { given, made: make(...given) };
    return last.made;
  };
}

/** A part of a view that is only gone through again when it is another one than before: see `remembered`. */
export function still(part: TemplateResult): unknown {
  return guard([part], () => part);
}

/** A field for something typed with its unit. */
interface QuantityFieldOptions<T> {
  readonly id: string;
  readonly label: string;
  /** The head of a table says the label, but where the screen is too narrow for a table. */
  readonly inTable?: boolean;
  /** What the label needs for whoever does not see what stands around it: `of segment 2`. */
  readonly of?: string;
  /** What it holds, as a person would type it. */
  readonly value: string;
  readonly parse: (text: string) => Result<T>;
  readonly onValue: (value: T) => void;
  readonly hint?: string;
  readonly placeholder?: string;
}

/** What a field last showed of the stored value. */
const SHOWN = new WeakMap<HTMLInputElement, string>();

/** Fields in which something stands that is not taken over yet, or cannot be. */
const TOUCHED = new WeakSet<HTMLInputElement>();

/**
 * A field for a quantity: what is typed is taken on Enter or on leaving; what cannot be understood
 * stays in the field with what is wrong about it, and the stored value stays as it was.
 */
export function quantityField<T>(options: QuantityFieldOptions<T>): TemplateResult {
  const { id, label, value, hint } = options;
  const problemId = `${id}-problem`;
  const hintId = hint === undefined ? "" : `${id}-hint`;
  return html`<div class="field">
    <label for=${id} class=${options.inTable ? "table-label" : nothing}>${label}${options.of === undefined ? nothing : html`<span class="out-of-sight">${options.of}</span>`}</label>
    <input id=${id} type="text" autocomplete="off" spellcheck="false" placeholder=${options.placeholder ?? nothing}
      aria-describedby=${`${problemId} ${hintId}`.trim()}
      ${ref((element) => sync(element as HTMLInputElement | undefined, value))}
      @input=${(event: Event) => TOUCHED.add(event.target as HTMLInputElement)}
      @change=${(event: Event) => take(event.target as HTMLInputElement, options)}>
    ${hint === undefined ? nothing : html`<span class="hint" id=${hintId}>${hint}</span>`}
    <span class="field-problem" id=${problemId} role="status"></span>
  </div>`;
}

function sync(input: HTMLInputElement | undefined, value: string): void {
  if (input === undefined) return;
  const isNew = SHOWN.get(input) !== value;
  SHOWN.set(input, value);
  if (isNew) TOUCHED.delete(input);
  if (TOUCHED.has(input) || input.value === value) return;
  input.value = value;
  complain(input, "");
}

function take<T>(input: HTMLInputElement, options: QuantityFieldOptions<T>): void {
  const result = options.parse(input.value);
  if (result.ok) {
    TOUCHED.delete(input);
    complain(input, "");
    options.onValue(result.value);
    const shown = SHOWN.get(input);
    if (shown !== undefined && input.isConnected) input.value = shown;
    return;
  }
  const [problem] = result.problems;
  if (problem) complain(input, `${problem.what}; try: ${problem.fix}`);
}

function complain(input: HTMLInputElement, text: string): void {
  input.setAttribute("aria-invalid", String(text !== ""));
  const place = input.parentElement?.querySelector(".field-problem");
  if (place) place.textContent = text;
}
