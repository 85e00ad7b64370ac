import { html, type TemplateResult } from "lit-html";
import type { Result } from "../../core/problem.ts";
import { glued } from "../../core/reports/wrap.ts";
import { parseSchedule } from "../../core/schedule/scheduleFile.ts";
import { followedUnit } from "../bench/followedUnit.ts";
import type { KeptFile } from "../bench/KeptFile.ts";
import type { Bench } from "../bench/store.ts";
import { fileDrop } from "../parts/fileDrop.ts";
import { problemList } from "../parts/problemList.ts";
import { remembered } from "../parts/remembered.ts";
import { textOf } from "../worker/readGroup.ts";
import { draftProblems, laySchedule } from "./changeDraft.ts";
import { toldOffset } from "./kilnPanel.ts";
import { SHIPPED_SCHEDULES } from "./shippedSchedules.ts";
import { wishForm } from "./wishForm.ts";

/** The schedule for whoever sees the page for the first time. */
const DEMO = "cone-5-crackle-tiles.yaml";

/** The empty table: the three ways to begin. */
export function startView(bench: Bench): TemplateResult {
  const { draft } = bench.state();
  return html`<div class="start">
    <h2>Draft a firing</h2>
    <p>A schedule lies here, and what it will do: the cone it reaches, how fast it goes through the inversions, the stress in the ware, when to be at the kiln. Change a number or drag the curve, and all of it follows. Begin in one of three ways.</p>
    <p><button type="button" @click=${() => layShipped(bench, DEMO)}>Try it with a demo schedule</button>
      <span class="hint">cone 5 for crackle tiles; every change can be undone</span></p>
    ${toldOffset(bench)}
    ${problemList(draft.problems)}
    <div class="ways">
      <section class="panel" aria-labelledby="way-new"><h3 id="way-new">From nothing</h3>${wishForm(bench)}</section>
      <section class="panel" aria-labelledby="way-shipped"><h3 id="way-shipped">From a schedule that comes with the page</h3>
        <ul class="shelf">${shipped().map(({ name, title, cone }) => html`<li><button type="button" @click=${() => layShipped(bench, name)}>${title}${cone === null ? "" : html`<span class="hint"> ${glued(`cone ${cone}`)}</span>`}</button></li>`)}</ul>
      </section>
      <section class="panel" aria-labelledby="way-file"><h3 id="way-file">From a file of your own</h3>
        ${fileDrop({ id: "schedule-file", button: "Pick a schedule", hint: "or drop a .yaml or .json file here", accept: ".yaml,.yml,.json", onFiles: (files) => layFile(bench, files) })}
        <p class="hint">The file is the one that the command reads and that this page saves.</p>
      </section>
    </div>
  </div>`;
}

/** The shipped schedules by their titles. */
const shipped = remembered(() =>
  SHIPPED_SCHEDULES.flatMap(({ name, text }) => {
    const read = parseSchedule(text, name);
    return read.ok ? [{ name, title: glued(read.value.title), cone: read.value.cone }] : [];
  }),
);

function layShipped(bench: Bench, name: string): void {
  const file = SHIPPED_SCHEDULES.find((each) => each.name === name);
  if (file !== undefined) layText(bench, file);
}

function layFile(bench: Bench, files: Result<readonly KeptFile[]>): void {
  const [file] = files.ok ? files.value : [];
  if (!files.ok) draftProblems(bench, files.problems);
  if (file === undefined) return;
  const text = textOf(file);
  if (text.ok) layText(bench, { name: file.name, text: text.value });
  else draftProblems(bench, text.problems);
}

function layText(bench: Bench, file: { readonly name: string; readonly text: string }): void {
  const read = parseSchedule(file.text, file.name);
  if (!read.ok) draftProblems(bench, read.problems);
  else {
    laySchedule(bench, `opening ${file.name}`, read.value);
    bench.show((state) => ({ ...state, work: followedUnit(state.work, read.value.unit) }));
  }
}
