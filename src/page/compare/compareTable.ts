import { html, nothing, type TemplateResult } from "lit-html";
import firstLog from "../../../logs/2026-02-21-b.csv?raw";
import firstRecord from "../../../logs/2026-02-21-b.yaml?raw";
import secondLog from "../../../logs/2026-03-14-b.csv?raw";
import secondRecord from "../../../logs/2026-03-14-b.yaml?raw";
import thirdLog from "../../../logs/2026-04-11-a.csv?raw";
import thirdRecord from "../../../logs/2026-04-11-a.yaml?raw";
import glaze from "../../../logs/glaze-pond-ice.yaml?raw";
import { failed, ok, type Problem, type Result } from "../../core/problem.ts";
import { inert } from "../../core/text/escape.ts";
import { problemList } from "../parts/controls.ts";
import { fileDrop } from "../parts/files.ts";
import { type KeptFile, sameFile } from "../parts/KeptFile.ts";
import { photoPanel } from "../photo/photoPanel.ts";
import { columnsOf, stemOf } from "../review/changeReview.ts";
import { sortFiles } from "../review/filesPanel.ts";
import { NOTHING_TOLD } from "../state/reviewState.ts";
import { type Bench, EMPTY_COMPARE } from "../state/state.ts";
import { bodyOfFile, glazeOfFile, wareKind } from "../worker/compareJob.ts";
import { withLaid } from "../worker/readGroup.ts";
import { changeCompare, compareGroups, otherKind, showCompare } from "./changeCompare.ts";
import { compareReport } from "./compareReport.ts";
import { firingList } from "./firingList.ts";
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

/** Three invented firings of one studio with their trial tiles and their glaze, to try the table with. */
function demoFirings(): readonly KeptFile[] {
  const files = [
    fileOf("2026-02-21-b.csv", firstLog),
    fileOf("2026-02-21-b.yaml", firstRecord),
    fileOf("2026-03-14-b.csv", secondLog),
    fileOf("2026-03-14-b.yaml", secondRecord),
    fileOf("2026-04-11-a.csv", thirdLog),
    fileOf("2026-04-11-a.yaml", thirdRecord),
    fileOf("glaze-pond-ice.yaml", glaze),
  ];
  return withLaid([], files);
}

function fileOf(name: string, text: string): KeptFile {
  return { name, bytes: new Uint8Array(new TextEncoder().encode(text)) };
}

const DOCUMENT = /\.(?:ya?ml|json)$/i;

/**
 * Lays dropped files on the table, each by itself: what cannot be of use here is left out and said.
 * A file of a name that lies there already takes its place.
 */
async function layFirings(bench: Bench, files: Result<readonly KeptFile[]>): Promise<void> {
  if (!files.ok) {
    showCompare(bench, { refused: files.problems });
    return;
  }
  const refused: Problem[] = [];
  const laid: KeptFile[] = [];
  const near = [...bench.state().work.compare.files, ...files.value];
  for (const file of files.value) {
    const looked = await lookedAt(file, near);
    if (looked.ok) laid.push(file);
    else refused.push(...looked.problems);
  }
  const before = bench.state().work.compare.files;
  const changed = laid.filter((file) => !before.some((other) => sameFile(file, other)));
  const names = changed.map(({ name }) => name).join(", ");
  if (changed.length > 0)
    changeCompare(bench, `laying down ${names}`, { files: withLaid(before, changed) });
  const remark = replacedWords(changed, before);
  const said = laidWords(changed);
  showCompare(bench, { refused, remark });
  bench.show((state) => ({ ...state, said: `${said} ${remark}`.trim() }));
}

/** Whether a file may be of use: a log, or a document that stands beside one. */
async function lookedAt(file: KeptFile, near: readonly KeptFile[]): Promise<Result<null>> {
  if (!DOCUMENT.test(file.name)) {
    const columns = await columnsOf(file, NOTHING_TOLD);
    return columns === null || columns.ok ? ok(null) : columns;
  }
  const isOfLog = near.some(
    ({ name }) => !DOCUMENT.test(name) && stemOf(name) === stemOf(file.name),
  );
  const kind = otherKind(file);
  if (kind === "glaze" || kind === "body") return ok(null);
  const sorted = sortFiles([file]);
  if (sorted.ok || (isOfLog && sorted.problems.every(({ code }) => code !== "page/whole-bench")))
    return ok(null);
  const isBench = sorted.problems.some(({ code }) => code === "page/whole-bench");
  return isBench || kind !== "nothing" ? sorted : withoutUse(file);
}

/** What is wrong with a broken file of ware; of any other, that it has no use here. */
function withoutUse(file: KeptFile): Result<null> {
  const kind = wareKind(file);
  if (kind === null) return failed(noUse(file));
  const read = kind === "glaze" ? glazeOfFile(file) : bodyOfFile(file);
  return read.ok ? ok(null) : read;
}

function noUse({ name }: KeptFile): Problem {
  return {
    code: "page/no-use-here",
    where: name,
    what: "it is no record of a firing, no schedule, no glaze and no clay body, or a broken one, and no log of its name lies here",
    expected:
      "logs, each with the record of the same name, the schedules that the records name, and the files of the glazes and clays on the tiles",
    fix: "drop a record together with its log",
  };
}

function laidWords(laid: readonly KeptFile[]): string {
  const [first] = laid;
  if (first === undefined) return "Nothing new was laid down.";
  return `${laid.length === 1 ? first.name : `${laid.length} files`} laid down.`;
}

/** Says which files took the place of others; empty when none did. */
function replacedWords(laid: readonly KeptFile[], before: readonly KeptFile[]): string {
  const names = laid.flatMap(({ name }) =>
    before.some((other) => other.name === name) ? name : [],
  );
  return names.length === 0
    ? ""
    : `Another file of the same name was replaced: ${names.join(", ")}. Undo brings it back; to keep both, give one another name.`;
}
