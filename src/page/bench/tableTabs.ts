import { html, type TemplateResult } from "lit-html";
import { TABLES, type TableName } from "./state.ts";
import type { Bench } from "./store.ts";

const LABELS: Readonly<Record<TableName, string>> = {
  draft: "Draft",
  review: "Review",
  compare: "Compare",
};

/** The three tables as tabs: one stop for the Tab key, arrows from one to the next. */
export function tableTabs(bench: Bench): TemplateResult {
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
  const name = TABLES[at % TABLES.length] as TableName;
  open(bench, name);
  document.getElementById(`tab-${name}`)?.focus();
}
