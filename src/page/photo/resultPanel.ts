import { html, nothing, type TemplateResult } from "lit-html";
import type { PhotoMeasurement } from "../../core/photo/PhotoMeasurement.ts";
import { correctedWords, trialEntry } from "../../core/photo/trialEntry.ts";
import { trialLines } from "../../core/photo/trialLines.ts";
import { capitalised } from "../../core/reports/capitalised.ts";
import { measureDocument } from "../../core/reports/documents/measureDocument.ts";
import { inert } from "../../core/reports/inert.ts";
import { measureBlocks } from "../../core/reports/measureBlocks.ts";
import type { TemperatureUnit } from "../../core/units/temperature.ts";
import type { Bench } from "../bench/store.ts";
import { blockList } from "../parts/blockList.ts";
import { download, fileStem } from "../parts/download.ts";
import { remembered } from "../parts/remembered.ts";
import { showPhoto } from "./changePhoto.ts";
import { hasSpacing, type RecordTile, recordTiles, withEntry } from "./recordTiles.ts";

const blocksOf = remembered((measured: PhotoMeasurement, unit: TemperatureUnit) =>
  measureBlocks(measured, { unit, overlayUrl: null }),
);

/** The spacing in one sentence, to stand beside the picture while the count is corrected. */
export function resultLead(bench: Bench, measured: PhotoMeasurement): TemplateResult {
  const [lead] = blocksOf(measured, bench.state().work.unit);
  return html`<div class="photo-lead" id="photo-lead" aria-live="polite">${lead === undefined ? nothing : blockList([lead], "photo-lead")}
    ${measured.corrected === null ? nothing : html`<p>${capitalised(correctedWords(measured.corrected))}.</p>`}</div>`;
}

/** How the spacing was found, in the words of the command, and ways to keep it. */
export function resultPanel(bench: Bench, measured: PhotoMeasurement): TemplateResult {
  const { work, photo } = bench.state();
  const yaml = `${trialLines(measured).join("\n")}\n`;
  const stem = `${fileStem(measured.name.replace(/\.[^.]*$/, ""))}-crackle`;
  return html`<div class="report" id="photo-report">
    ${blockList(blocksOf(measured, work.unit).slice(1), "photo")}
    <div class="actions">
      <button type="button" @click=${() => void copy(bench, yaml)}>Copy the lines</button>
      <button type="button" @click=${() => download(`${stem}.yaml`, yaml, "application/yaml")}>Save the lines (YAML)</button>
      <button type="button" @click=${() => download(`${stem}.json`, `${JSON.stringify(measureDocument(measured), null, 2)}\n`, "application/json")}>Save the numbers of the count (JSON)</button>
    </div>
    ${tilePanel(bench, measured)}
    <p role="status" class="photo-done">${photo.done}</p>
  </div>`;
}

async function copy(bench: Bench, text: string): Promise<void> {
  const isCopied = await navigator.clipboard.writeText(text).then(
    () => true,
    () => false,
  );
  const done = isCopied
    ? "The lines are copied."
    : "The browser did not let the page copy; select the lines above, or save them.";
  showPhoto(bench, { done });
}

const tilesOf = remembered(recordTiles);

/** A test piece of a record on the bench to put the spacing onto. */
function tilePanel(bench: Bench, measured: PhotoMeasurement): TemplateResult | typeof nothing {
  const tiles = tilesOf(bench.state().work);
  if (tiles.length === 0)
    return html`<p class="hint">With a record on the Compare or the Review table that names test pieces, the spacing can be put onto one of them here.</p>`;
  return html`<form class="photo-tile" @submit=${(event: SubmitEvent) => {
    event.preventDefault();
    const field = (event.target as HTMLFormElement).elements.namedItem("photo-tile");
    const tile = tiles[Number((field as HTMLSelectElement).value)];
    if (tile !== undefined) put(bench, measured, tile);
  }}>
    <label class="photo-choice" for="photo-tile">Test piece
      <select id="photo-tile" name="photo-tile">${tiles.map(
        (tile, at) =>
          html`<option value=${at}>${inert(tile.piece)}, ${inert(tile.record.name)}${hasSpacing(tile) ? ", has a spacing" : ""}</option>`,
      )}</select></label>
    <button type="submit">Put the spacing onto this piece</button>
  </form>`;
}

function put(bench: Bench, measured: PhotoMeasurement, tile: RecordTile): void {
  const hadOne = hasSpacing(tile);
  const next = withEntry(bench.state().work, tile, trialEntry(measured));
  if (!next.ok) {
    const [problem] = next.problems;
    showPhoto(bench, {
      done: `Not put onto ${tile.piece}: ${problem?.what}; try: ${problem?.fix}`,
    });
    return;
  }
  bench.change(`the spacing of ${tile.piece}`, () => next.value);
  const gone = hadOne ? "; the spacing it had gave way, and Undo brings it back" : "";
  showPhoto(bench, { done: `${tile.piece} in ${tile.record.name} has the spacing now${gone}.` });
}
