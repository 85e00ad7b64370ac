import { html, nothing, type TemplateResult } from "lit-html";
import type { Result } from "../../core/problem.ts";
import { inert } from "../../core/text/escape.ts";
import type { TemperatureUnit } from "../../core/units/temperature.ts";
import { compareTable } from "../compare/compareTable.ts";
import { draftTable } from "../draft/draftTable.ts";
import { dialog, problemList } from "../parts/controls.ts";
import { download, fileDrop } from "../parts/files.ts";
import type { KeptFile } from "../parts/KeptFile.ts";
import { reviewTable } from "../review/reviewTable.ts";
import type { AsideWork } from "../state/keep.ts";
import { benchFromJson, benchJson, plainJson } from "../state/packed.ts";
import {
  type Bench,
  EMPTY_BENCH,
  EMPTY_WORK,
  type Question,
  TABLES,
  type TableName,
} from "../state/state.ts";
import { forgetAll, layAside, throwAway } from "./keepOnChange.ts";

const VIEWS: Readonly<Record<TableName, (bench: Bench) => TemplateResult>> = {
  draft: draftTable,
  review: reviewTable,
  compare: compareTable,
};

/** The whole page, made from the bench's state. */
export function benchView(bench: Bench): TemplateResult {
  const { table, question, said, problems } = bench.state();
  return html`
    <header class="bench-head">
      <h1>Undunted</h1>
      ${tableTabs(bench)}
      ${benchTools(bench)}
    </header>
    <main>
      <div class="page-problems">${problemList(problems)}${asideList(bench)}</div>
      <div id="table-panel" role="tabpanel" aria-labelledby=${`tab-${table}`}>${VIEWS[table](bench)}</div>
    </main>
    <footer class="bench-foot">
      <p>Everything stays on this computer: the page asks nothing of any network, and keeps your work in this browser alone.</p>
    </footer>
    <p class="out-of-sight" role="status">${said}</p>
    ${question === null ? nothing : questionSheet(bench, question)}`;
}

function questionSheet(bench: Bench, question: Question): TemplateResult {
  const close = () => bench.show((state) => ({ ...state, question: null }));
  return dialog({
    id: "question",
    title: question.title,
    body: html`<p>${question.text}</p>`,
    leave: "Cancel",
    onLeave: close,
    actions: [
      {
        label: question.yes,
        act: () => {
          close();
          question.onYes();
        },
      },
    ],
  });
}

/** Work in this browser's store that does not lie on the bench, and what can be done with it. */
function asideList(bench: Bench): TemplateResult | typeof nothing {
  const { aside } = bench.state();
  if (aside.length === 0) return nothing;
  return html`<section class="aside-work" aria-labelledby="aside-title">
    <h2 id="aside-title">Put aside, nothing lost</h2>
    <ul>${aside.map((each) => asideItem(bench, each))}</ul>
  </section>`;
}

function asideItem(bench: Bench, aside: AsideWork): TemplateResult {
  const when = aside.savedMs === null ? "" : ` on ${dayAndClock(aside.savedMs)}`;
  const name = `undunted-aside${aside.savedMs === null ? "" : `-${aside.savedMs}`}.json`;
  const ask = (question: { title: string; text: string; yes: string; onYes: () => void }) =>
    bench.show((state) => ({ ...state, question }));
  return html`<li>
    <p>${
      aside.work === null
        ? html`What this browser kept${when} cannot be read by this page (${inert(aside.why)}). It stays as it is until you throw it away.`
        : html`Another window of this page kept other work${when}. What lies here does not replace it.`
    }</p>
    <p class="aside-acts">
      ${
        aside.work === null
          ? nothing
          : html`<button type="button" @click=${() =>
              ask({
                title: "Open what lay aside?",
                text: "It takes the place of what lies on all three tables now. Undo brings that back while the page is open; save the whole bench first to keep it as a file.",
                yes: "Open it",
                onYes: () => void layAside(bench, aside),
              })}>Open it…</button>`
      }
      <button type="button" @click=${() => download(name, plainJson(aside.raw), "application/json")}>Save it as a file</button>
      <button type="button" class="grave" @click=${() =>
        ask({
          title: "Throw it away?",
          text: "It is taken out of this browser for good. Save it as a file first if you want any of it again.",
          yes: "Throw it away",
          onYes: () => void throwAway(bench, aside),
        })}>Throw it away…</button>
    </p>
  </li>`;
}

/** `Sat 28 Nov, 14:03`, by this computer's clock. */
function dayAndClock(savedMs: number): string {
  const at = new Date(savedMs);
  const day = at.toLocaleDateString("en-GB", { weekday: "short", day: "numeric", month: "short" });
  const clock = at.toLocaleTimeString("en-GB", { hour: "2-digit", minute: "2-digit" });
  return `${day}, ${clock}`;
}

/** Undo, the unit, and what is done with the bench as a whole. */
function benchTools(bench: Bench): TemplateResult {
  const { past, ahead } = bench.state();
  const undo = past.at(-1)?.what;
  const redo = ahead.at(-1)?.what;
  return html`<div class="tools">
    ${unitSwitch(bench)}
    <button type="button" ?disabled=${undo === undefined} title=${undo === undefined ? "Nothing to undo" : `Undo: ${undo}`}
      aria-label=${undo === undefined ? "Undo" : `Undo: ${undo}`} @click=${bench.undo}>Undo</button>
    <button type="button" ?disabled=${redo === undefined} title=${redo === undefined ? "Nothing to do again" : `Do again: ${redo}`}
      aria-label=${redo === undefined ? "Do again" : `Do again: ${redo}`} @click=${bench.redo}>Again</button>
    <details class="whole">
      <summary>Whole bench</summary>
      <div class="whole-sheet">
        <p>All three tables with every file on them, as one file to keep or to carry to another computer.</p>
        <button type="button" @click=${() => download("undunted-bench.json", benchJson(bench.state().work), "application/json")}>Save the whole bench</button>
        ${fileDrop({ id: "open-bench", button: "Open a saved bench", hint: "", accept: ".json", onFiles: (files) => reopen(bench, files) })}
        <button type="button" class="grave" @click=${() => askToClear(bench)}>Clear the whole bench…</button>
      </div>
    </details>
  </div>`;
}

function unitSwitch(bench: Bench): TemplateResult {
  const { unit } = bench.state().work;
  const choice = (each: TemperatureUnit) =>
    html`<label><input type="radio" name="unit" .checked=${unit === each}
      @change=${() => bench.change(`°${each}`, (work) => ({ ...work, unit: each, unitChosen: true }))}><span>°${each}</span></label>`;
  return html`<fieldset class="unit"><legend class="out-of-sight">Degrees</legend>${choice("C")}${choice("F")}</fieldset>`;
}

function reopen(bench: Bench, files: Result<readonly KeptFile[]>): void {
  const [file] = files.ok ? files.value : [];
  if (!files.ok) bench.show((state) => ({ ...state, problems: files.problems }));
  if (file === undefined) return;
  const work = benchFromJson(new TextDecoder().decode(file.bytes), file.name);
  if (!work.ok) bench.show((state) => ({ ...state, problems: work.problems }));
  else {
    bench.show((state) => ({ ...state, problems: [], said: `${file.name} lies on the bench.` }));
    bench.change(`opening ${file.name}`, () => work.value);
  }
}

function askToClear(bench: Bench): void {
  bench.show((state) => ({
    ...state,
    question: {
      title: "Clear the whole bench?",
      text: "Schedules, logs and everything typed are taken off all three tables and out of this browser, the steps to undo included. Save the whole bench first if you want any of it again.",
      yes: "Clear it all",
      onYes: () => clear(bench),
    },
  }));
}

function clear(bench: Bench): void {
  const { dark, narrow, table } = bench.state();
  bench.show(() => ({
    ...EMPTY_BENCH,
    work: EMPTY_WORK,
    dark,
    narrow,
    table,
    said: "The bench is clear.",
  }));
  void forgetAll(bench);
}

const LABELS: Readonly<Record<TableName, string>> = {
  draft: "Draft",
  review: "Review",
  compare: "Compare",
};

/** The three tables as tabs: one stop for the Tab key, arrows from one to the next. */
function tableTabs(bench: Bench): TemplateResult {
  const { table } = bench.state();
  return html`<div class="tabs" role="tablist" aria-label="Tables" @keydown=${(event: KeyboardEvent) => move(event, bench)}>
    ${TABLES.map((name) => {
      const isOpen = name === table;
      return html`<button type="button" role="tab" id=${`tab-${name}`} aria-selected=${isOpen}
        aria-controls="table-panel" tabindex=${isOpen ? 0 : -1}
        @click=${() => open(bench, name)}>${LABELS[name]}</button>`;
    })}
  </div>`;
}

function open(bench: Bench, table: TableName): void {
  bench.show((state) => ({ ...state, table }));
}

const STEPS: Readonly<Record<string, (at: number) => number>> = {
  ArrowRight: (at) => at + 1,
  ArrowLeft: (at) => at - 1,
  Home: () => 0,
  End: () => TABLES.length - 1,
};

function move(event: KeyboardEvent, bench: Bench): void {
  const step = STEPS[event.key];
  if (step === undefined) return;
  event.preventDefault();
  const at = step(TABLES.indexOf(bench.state().table)) + TABLES.length;
  const name = TABLES[at % TABLES.length]!;
  open(bench, name);
  document.getElementById(`tab-${name}`)?.focus();
}
