import { html, nothing, type TemplateResult } from "lit-html";
import { compareTable } from "../compare/compareTable.ts";
import { draftTable } from "../draft/draftTable.ts";
import { dialog } from "../parts/dialog.ts";
import { problemList } from "../parts/problemList.ts";
import { reviewTable } from "../review/reviewTable.ts";
import { asideList } from "./asideList.ts";
import { benchTools } from "./benchTools.ts";
import type { Question, TableName } from "./state.ts";
import type { Bench } from "./store.ts";
import { tableTabs } from "./tableTabs.ts";

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
