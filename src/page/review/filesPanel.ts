import { html, nothing, type TemplateResult } from "lit-html";
import { failed, type Result } from "../../core/problem.ts";
import type { KeptFile } from "../bench/KeptFile.ts";
import type { Bench } from "../bench/store.ts";
import { fileDrop } from "../parts/fileDrop.ts";
import { firingGroups, withLaid } from "../worker/readGroup.ts";
import { changeReview, showReview } from "./changeReview.ts";
import { demoFiring } from "./demoFiring.ts";
import { layFiles } from "./layFiles.ts";
import { isEmpty } from "./reviewState.ts";

/** The files on the table, and places to lay more. */
export function filesPanel(bench: Bench): TemplateResult {
  const { review, unitChosen } = bench.state().work;
  const { isFollowed } = bench.state().review;
  const drop = fileDrop({
    id: "review-files",
    button: review.log === null ? "Pick a log" : "Pick other files",
    hint: "or drop it here: any table of times and temperatures, with its record and its schedule (.yaml) if you have them",
    multiple: true,
    onFiles: (files) => layFiles(bench, files),
  });
  if (isEmpty(review)) return emptyTable(bench, drop);
  return html`${drop}<ul class="files">
    ${fileItem(bench, "log")}${fileItem(bench, "record")}${fileItem(bench, "schedule")}
  </ul>${isFollowed && !unitChosen ? html`<p class="hint">This log is in °F, so the page shows °F now. The switch above shows all in °C; what is stored stays the same.</p>` : nothing}${review.log === null ? html`<p class="lead">The log is still missing: drop or pick it.</p>` : nothing}`;
}

function emptyTable(bench: Bench, drop: TemplateResult): TemplateResult {
  return html`<div class="empty-table">
    <p class="lead">Lay down the log of a firing, and read what it did to the ware.</p>
    ${drop}
    <p>The log is a file from your controller or your logger, of any make. The page tells you how it read it, the cone that was reached, how fast it went through the inversions, and what to change next time.</p>
    <p><button type="button" @click=${() => changeReview(bench, "laying down the demo firing", demoFiring())}>Try it with a demo firing</button>
      <span class="hint">invented: platters that cracked in a kiln opened too hot</span></p>
  </div>`;
}

const WHAT = { log: "log", record: "record", schedule: "schedule" } as const;

function fileItem(bench: Bench, kind: keyof typeof WHAT): TemplateResult | typeof nothing {
  const file = bench.state().work.review[kind];
  if (file === null) return nothing;
  return html`<li><span class="file-kind">${WHAT[kind]}</span> <span class="file-name">${file.name}</span>
    <button type="button" class="slim" @click=${() => changeReview(bench, `taking away ${file.name}`, { [kind]: null })}>Take away<span class="out-of-sight"> ${file.name}</span></button></li>`;
}

/** Earlier firings of the kiln: what has changed since shows among the findings. */
export function earlierPanel(bench: Bench): TemplateResult {
  const { earlier } = bench.state().work.review;
  return html`<section class="report-part" id="earlier" aria-labelledby="earlier-title">
    <h3 id="earlier-title">Earlier firings of this kiln</h3>
    <p>With earlier logs and their records, the findings say what has changed: elements that pull less, a thermocouple that has drifted.</p>
    ${fileDrop({
      id: "earlier-files",
      button: "Pick earlier logs",
      hint: "or drop them here, each with the record of the same name",
      multiple: true,
      onFiles: (files) => layEarlier(bench, files),
    })}
    ${
      earlier.length === 0
        ? nothing
        : html`<ul class="files">${earlier.map(
            (file, at) => html`<li><span class="file-name">${file.name}</span>
          <button type="button" class="slim" @click=${() =>
            changeReview(bench, `taking away ${file.name}`, {
              earlier: earlier.filter((_, each) => each !== at),
            })}>Take away<span class="out-of-sight"> ${file.name}</span></button></li>`,
          )}</ul>`
    }
  </section>`;
}

function layEarlier(bench: Bench, files: Result<readonly KeptFile[]>): void {
  const sorted = files.ok ? withLogs(files.value) : files;
  if (!sorted.ok) {
    showReview(bench, { refused: sorted.problems });
    return;
  }
  const { earlier } = bench.state().work.review;
  changeReview(bench, "laying down earlier logs", { earlier: withLaid(earlier, sorted.value) });
}

function withLogs(files: readonly KeptFile[]): Result<readonly KeptFile[]> {
  if (firingGroups(files).length > 0) return { ok: true, value: files };
  return failed({
    code: "page/no-log",
    where: files.map(({ name }) => name).join(", "),
    what: "there is no log among these files",
    expected: "earlier logs, each with the record of the same name if there is one",
    fix: "pick the logs together with their records",
  });
}
