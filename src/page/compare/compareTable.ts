import { html, nothing, type TemplateResult } from "lit-html";
import { inert } from "../../core/reports/inert.ts";
import type { Bench } from "../bench/store.ts";
import { fileDrop } from "../parts/fileDrop.ts";
import { problemList } from "../parts/problemList.ts";
import { photoPanel } from "../photo/photoPanel.ts";
import { changeCompare } from "./changeCompare.ts";
import { compareGroups } from "./compareGroups.ts";
import { compareReport } from "./compareReport.ts";
import { EMPTY_COMPARE } from "./compareState.ts";
import { demoFirings } from "./demoFirings.ts";
import { firingList } from "./firingList.ts";
import { layFirings } from "./layFirings.ts";
import { readFirings, stopReadingFirings } from "./watchCompare.ts";

/** What the core says of a single firing without tiles; the page asks for another. */
const TOO_FEW = "firing/too-few";

/** The Compare table: several firings and their trial tiles side by side, and the next test. */
export function compareTable(bench: Bench): TemplateResult {
  const { work, compare } = bench.state();
  const { answer, problems, refused, remark, isStopped } = compare;
  const isEmpty = work.compare.files.length === 0;
  return html`<h2 class=${isEmpty ? "" : "out-of-sight"}>Compare</h2>
    ${isEmpty ? emptyTable(bench) : html`${drop(bench, "Pick more firings")}${firingList(bench)}`}
    ${remark === "" ? nothing : html`<p class="paint-caution">${inert(remark)}</p>`}
    ${problemList(refused)}
    ${progress(bench)}
    ${isStopped ? html`<p>The reading was stopped. <button type="button" @click=${() => readFirings(bench)}>Read the rest after all</button></p>` : nothing}
    ${isEmpty ? nothing : stillMissing(bench)}
    ${problemList(problems.filter(({ code }) => code !== TOO_FEW))}
    ${answer === null ? nothing : compareReport(bench, answer)}
    ${isEmpty ? nothing : html`<div class="actions"><button type="button" class="grave" @click=${() => changeCompare(bench, "clearing the Compare table", EMPTY_COMPARE.work)}>Clear this table</button></div>`}
    ${photoPanel(bench)}`;
}

function drop(bench: Bench, button: string): TemplateResult {
  return fileDrop({
    id: "compare-files",
    button,
    hint: "or drop them here: logs, each with the record of the same name (.yaml), the schedules that the records name, and the files of the glazes and clays on the tiles",
    multiple: true,
    onFiles: (files) => layFirings(bench, files),
  });
}

function emptyTable(bench: Bench): TemplateResult {
  return html`<div class="empty-table">
    <p class="lead">Lay several firings beside each other, and see what their test tiles tell.</p>
    ${drop(bench, "Pick logs and records")}
    <p>The page lays the firings over each other, says what differed and by how much, what governs the spacing of the cracks on the tiles, how each glaze fits its clay, which causes cannot be told apart yet, and which test would tell them apart.</p>
    <p><button type="button" @click=${() => changeCompare(bench, "laying down the demo firings", { files: demoFirings() })}>Try it with three demo firings</button>
      <span class="hint">invented: crackle tiles in two kilns, cooled in three ways</span></p>
  </div>`;
}

/** How far the reading is, with a way to stop it. */
function progress(bench: Bench): TemplateResult {
  const { busy } = bench.state().compare;
  return html`<div class="reading-progress" role="status">${
    busy === null
      ? nothing
      : html`<label>${inert(busy.at)} <progress max="1" .value=${busy.fraction}></progress></label>
        <button type="button" @click=${() => stopReadingFirings(bench)}>Cancel</button>`
  }</div>`;
}

/** What the table still lacks for an answer. */
function stillMissing(bench: Bench): TemplateResult | typeof nothing {
  const { work, compare } = bench.state();
  const logs = compareGroups(work.compare.files).length;
  if (logs === 0) return html`<p class="lead">The logs are still missing: drop or pick them.</p>`;
  if (compare.problems.some(({ code }) => code === TOO_FEW))
    return html`<p class="lead">One firing lies here. Lay down another firing to compare it with.</p>`;
  if (compare.answer === null || compare.answer.tiles > 0) return nothing;
  return html`<p class="no-tiles">None of these firings has test tiles in its record, so only the firings are compared. To learn what governs the crackle, note each tile in the record of its firing: clay, glaze, fired coat, sides glazed, and the spacing of its cracks. “Review it” opens the record of a firing as a form.</p>`;
}
