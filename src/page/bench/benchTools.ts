import { html, type TemplateResult } from "lit-html";
import type { Result } from "../../core/problem.ts";
import type { TemperatureUnit } from "../../core/units/temperature.ts";
import { download } from "../parts/download.ts";
import { fileDrop } from "../parts/fileDrop.ts";
import type { KeptFile } from "./KeptFile.ts";
import { forgetAll } from "./keepOnChange.ts";
import { benchFromJson, benchJson } from "./packed.ts";
import { EMPTY_BENCH, EMPTY_WORK } from "./state.ts";
import type { Bench } from "./store.ts";

/** Undo, the unit, and what is done with the bench as a whole. */
export function benchTools(bench: Bench): TemplateResult {
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
