import { html, nothing, type TemplateResult } from "lit-html";
import type { Decision } from "../../core/log/reading/LogReading.ts";
import { ok, type Problem } from "../../core/problem.ts";
import { inert } from "../../core/text/escape.ts";
import { parseDuration } from "../../core/units/temperature.ts";
import { quantityField } from "../parts/controls.ts";
import { NOTHING_TOLD, type ToldOfLog } from "../state/reviewState.ts";
import type { Bench } from "../state/state.ts";
import { logOptions, rememberTold, tellOfLog } from "./changeReview.ts";

/** Something that can be said of a log. */
type Told = keyof ToldOfLog;

/** Choices for what is one of a few; the value as it is stored. */
interface Choices<Key extends Told> {
  readonly key: Key;
  readonly label: string;
  readonly choices: readonly (readonly [value: NonNullable<ToldOfLog[Key]>, words: string])[];
}

const UNIT: Choices<"unit"> = {
  key: "unit",
  label: "Temperatures are in",
  choices: [
    ["C", "°C"],
    ["F", "°F"],
    ["K", "kelvin"],
  ],
};
const TIME_UNIT: Choices<"timeUnit"> = {
  key: "timeUnit",
  label: "Times are in",
  choices: [
    ["s", "seconds"],
    ["min", "minutes"],
    ["h", "hours"],
  ],
};
const DAY_ORDER: Choices<"dayFirst"> = {
  key: "dayFirst",
  label: "Dates are written",
  choices: [
    [true, "day first"],
    [false, "month first"],
  ],
};
const DELIMITER: Choices<"delimiter"> = {
  key: "delimiter",
  label: "Between the cells stands",
  choices: [
    [",", "a comma"],
    [";", "a semicolon"],
    ["\t", "a tab"],
    ["|", "a bar"],
    [" ", "blanks"],
  ],
};
const DECIMAL: Choices<"decimal"> = {
  key: "decimal",
  label: "Decimal mark",
  choices: [
    [".", "a point"],
    [",", "a comma"],
  ],
};
const ENCODING: Choices<"encoding"> = {
  key: "encoding",
  label: "Text encoding",
  choices: ["utf-8", "windows-1252", "utf-16le", "utf-16be", "shift_jis", "gb18030"].map(
    (name) => [name, name] as const,
  ),
};

/** What can be said of the thing that a decision is about. */
const ABOUT: Readonly<Record<string, readonly Told[]>> = {
  unit: ["unit"],
  columns: ["columns"],
  "time column": ["timeColumn"],
  "time format": ["timeUnit", "intervalSeconds"],
  "day order": ["dayFirst"],
  delimiter: ["delimiter"],
  "decimal mark": ["decimal"],
  encoding: ["encoding"],
};

/** What the reader asks for by a problem. */
const ASKED: Readonly<Record<string, readonly Told[]>> = {
  "log/unit-unknown": ["unit"],
  "log/time-unit-unknown": ["timeUnit"],
  "log/day-order": ["dayFirst"],
  "log/clock-reset": ["timeColumn"],
  "log/no-interval": ["intervalSeconds", "timeColumn", "timeUnit"],
  "log/no-time": ["timeColumn", "intervalSeconds"],
  "log/no-temperature": ["columns"],
  "firing/no-temperature": ["columns"],
  "log/no-readings": ["columns"],
  "log/unknown-column": ["columns", "timeColumn"],
  "log/no-table": ["delimiter", "decimal", "encoding"],
  "log/one-row": ["delimiter", "decimal"],
  "log/not-text": ["encoding"],
  "log/unknown-encoding": ["encoding"],
};

/** The controls that go with a decision about the log. */
function decisionControls(bench: Bench, { about }: Decision): TemplateResult | typeof nothing {
  const keys = ABOUT[about] ?? [];
  return keys.length === 0 ? nothing : html`${keys.map((key) => control(bench, key, "decided"))}`;
}

/** What can be answered where the reader asks; nothing where no choice helps. */
export function problemControls(
  bench: Bench,
  problems: readonly Problem[],
): TemplateResult | typeof nothing {
  const keys = [...new Set(problems.flatMap(({ code }) => ASKED[code] ?? []))];
  if (keys.length === 0) return nothing;
  return html`<div class="asks">${keys.map((key) => control(bench, key, "asked"))}</div>`;
}

function control(bench: Bench, key: Told, where: string): TemplateResult {
  const id = `${where}-${key}`;
  switch (key) {
    case "unit":
      return oneOf(bench, UNIT, id);
    case "timeUnit":
      return oneOf(bench, TIME_UNIT, id);
    case "dayFirst":
      return oneOf(bench, DAY_ORDER, id);
    case "delimiter":
      return oneOf(bench, DELIMITER, id);
    case "decimal":
      return oneOf(bench, DECIMAL, id);
    case "encoding":
      return oneOf(bench, ENCODING, id);
    case "timeColumn":
      return oneOf(bench, timeColumns(bench), id);
    case "columns":
      return columnBoxes(bench, id);
    case "intervalSeconds":
      return interval(bench, id);
  }
}

function timeColumns(bench: Bench): Choices<"timeColumn"> {
  const { columns } = bench.state().review;
  return {
    key: "timeColumn",
    label: "The time stands in",
    choices: columns.map((name) => [name, name] as const),
  };
}

/** A list with the log's own word first; a value that is in no choice is shown as it is. */
function oneOf<Key extends Told>(bench: Bench, options: Choices<Key>, id: string): TemplateResult {
  const { key, label, choices } = options;
  const now = bench.state().work.review.told[key];
  const known = choices.findIndex(([value]) => value === now);
  const pick = ({ target }: Event) => {
    const choice = choices[Number((target as HTMLSelectElement).value)];
    const value = (choice?.[0] ?? null) as ToldOfLog[Key];
    const said = choice === undefined ? "as the log says" : choice[1];
    tellOfLog(bench, `${label.toLowerCase()} ${said}`, { [key]: value } as Partial<ToldOfLog>);
  };
  return html`<div class="field">
    <label for=${id}>${label}</label>
    <select id=${id} @change=${pick}>
      <option value="-1" ?selected=${now === null} .selected=${now === null}>as the log itself says</option>
      ${choices.map(([, words], at) => html`<option value=${at} .selected=${at === known}>${words}</option>`)}
    </select>
  </div>`;
}

function columnBoxes(bench: Bench, id: string): TemplateResult {
  const { columns } = bench.state().review;
  const told = bench.state().work.review.told.columns;
  const tick = (name: string, isOn: boolean) => {
    const next = columns.filter((each) => (each === name ? isOn : (told ?? []).includes(each)));
    tellOfLog(bench, `the temperature columns`, { columns: next.length === 0 ? null : next });
  };
  return html`<fieldset class="boxes" id=${id}>
    <legend>Temperatures stand in ${told === null ? "(nothing ticked: as the log itself says)" : ""}</legend>
    ${columns.map(
      (name) => html`<label><input type="checkbox" .checked=${told?.includes(name) ?? false}
        @change=${({ target }: Event) => tick(name, (target as HTMLInputElement).checked)}> ${name}</label>`,
    )}
  </fieldset>`;
}

function interval(bench: Bench, id: string): TemplateResult {
  const now = bench.state().work.review.told.intervalSeconds;
  return quantityField<number | null>({
    id,
    label: "One row every",
    value: now === null ? "" : `${now} s`,
    placeholder: "30 s",
    hint: "only for a log without times",
    parse: (text) =>
      text.trim() === "" ? ok(null) : parseDuration(text, { bareUnit: "s", where: "interval" }),
    onValue: (intervalSeconds) => {
      if (intervalSeconds !== now)
        tellOfLog(bench, "the time between two rows", { intervalSeconds });
    },
  });
}

const CONFIDENCE: Readonly<Record<Decision["confidence"], string>> = {
  told: "as you said",
  certain: "certain",
  likely: "likely",
  guessed: "a guess",
};

/** What was decided about the log, each with its reason, and a control to decide otherwise. */
export function readingPanel(bench: Bench, decisions: readonly Decision[]): TemplateResult {
  return html`<ul class="decisions">${decisions.map((each) => decisionItem(bench, each))}</ul>
    ${toldActions(bench)}`;
}

function decisionItem(bench: Bench, decision: Decision): TemplateResult {
  const { about, choice, confidence, because, runnerUp } = decision;
  return html`<li class="decision is-${confidence}">
    <div>
      <p><span class="decision-about">${about}</span> <strong>${inert(choice)}</strong> <span class="sureness">${CONFIDENCE[confidence]}</span></p>
      <p class="hint">${inert(because)}${runnerUp === null ? nothing : html`; next best: ${inert(runnerUp)}`}</p>
    </div>
    <div class="decision-controls">${decisionControls(bench, decision)}</div>
  </li>`;
}

/** What is done with what a person said: into the record, or forgotten. */
export function toldActions(bench: Bench): TemplateResult | typeof nothing {
  const { told } = bench.state().work.review;
  if (Object.keys(logOptions(told)).length === 0) return nothing;
  return html`<div class="actions">
    <button type="button" class="chief" @click=${() => rememberTold(bench)}>Remember this in the record</button>
    <button type="button" @click=${() => tellOfLog(bench, "reading the log as it says itself", NOTHING_TOLD)}>Read it as it says itself</button>
  </div>`;
}
