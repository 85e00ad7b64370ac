import { html, nothing, type TemplateResult } from "lit-html";
import type { PhotoMeasurement } from "../../core/photo/PhotoMeasurement.ts";
import {
  correctedWords,
  type TrialEntry,
  trialEntry,
  trialLines,
} from "../../core/photo/trialEntry.ts";
import { failed, ok, type Result } from "../../core/problem.ts";
import { parseRecordFile } from "../../core/record/parseRecord.ts";
import type { FiringRecordFile } from "../../core/record/recordFormat.ts";
import { recordYaml } from "../../core/record/recordYaml.ts";
import { measureDocument } from "../../core/reports/documents/measureDocument.ts";
import { measureBlocks } from "../../core/reports/measureBlocks.ts";
import { inert } from "../../core/text/escape.ts";
import { capitalised } from "../../core/text/wrap.ts";
import type { TemperatureUnit } from "../../core/units/temperature.ts";
import { blockList } from "../parts/blockList.ts";
import { remembered } from "../parts/controls.ts";
import { download, fileStem } from "../parts/files.ts";
import type { KeptFile } from "../parts/KeptFile.ts";
import type { Bench, Work } from "../state/state.ts";
import { textOf } from "../worker/readGroup.ts";
import { showPhoto } from "./changePhoto.ts";

/** A test piece of a record that lies on the bench. */
interface RecordTile {
  readonly record: KeptFile;
  readonly at: number;
  readonly piece: string;
}

interface ReadRecord {
  readonly text: string;
  readonly file: FiringRecordFile;
}

const READ = new WeakMap<KeptFile, Result<ReadRecord>>();

function readRecord(record: KeptFile): Result<ReadRecord> {
  const known = READ.get(record);
  if (known !== undefined) return known;
  const text = textOf(record);
  const file = text.ok ? parseRecordFile(text.value, record.name) : text;
  const read = text.ok && file.ok ? ok({ text: text.value, file: file.value }) : file;
  READ.set(record, read as Result<ReadRecord>);
  return read as Result<ReadRecord>;
}

/** All test pieces of the records on the Compare table and the Review table. */
function recordTiles({ compare, review }: Work): readonly RecordTile[] {
  const records = [...compare.files, ...(review.record === null ? [] : [review.record])];
  return records
    .filter(({ name }) => /\.(ya?ml|json)$/i.test(name))
    .flatMap((record) => {
      const read = readRecord(record);
      const trials = read.ok ? (read.value.file.trials ?? []) : [];
      return trials.map(({ piece }, at) => ({ record, at, piece }));
    });
}

/** The work with a photograph's spacing on a test piece; the problems that its record would have. */
function withEntry(work: Work, tile: RecordTile, entry: TrialEntry): Result<Work> {
  const read = readRecord(tile.record);
  if (!read.ok) return read;
  const { text, file } = read.value;
  const trials = (file.trials ?? []).map((trial, at) =>
    at === tile.at ? withSpacing(trial, entry) : trial,
  );
  const next = recordYaml({ ...file, trials }, text);
  const check = parseRecordFile(next, tile.record.name);
  if (!check.ok) return failed(...check.problems);
  const record = { name: tile.record.name, bytes: new Uint8Array(new TextEncoder().encode(next)) };
  const swapped = (each: KeptFile) => (each === tile.record ? record : each);
  return ok({
    ...work,
    compare: { ...work.compare, files: work.compare.files.map(swapped) },
    review: { ...work.review, record: work.review.record && swapped(work.review.record) },
  });
}

type WrittenTrial = NonNullable<FiringRecordFile["trials"]>[number];

/** Earlier counts of the piece give way, since a record takes one spacing of a piece. */
function withSpacing(trial: WrittenTrial, entry: TrialEntry): WrittenTrial {
  const { crackSpacing, spacingRange, spacingFrom, pattern, lines, note, ...rest } = trial;
  const notes = note === undefined || note === entry.note ? entry.note : `${note}; ${entry.note}`;
  return { ...rest, ...entry, note: notes };
}

/** Whether the piece has a spacing already, which the photograph's would replace. */
function hasSpacing({ record, at }: RecordTile): boolean {
  const read = readRecord(record);
  const trial = read.ok ? read.value.file.trials?.[at] : undefined;
  return trial?.crackSpacing !== undefined || trial?.lines !== undefined;
}

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
