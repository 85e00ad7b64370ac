import { html, nothing, type TemplateResult } from "lit-html";
import type { Problem, Result } from "../../core/problem.ts";
import type { KeptFile } from "../bench/KeptFile.ts";
import type { Bench } from "../bench/store.ts";
import { fileDrop } from "../parts/fileDrop.ts";
import { problemList } from "../parts/problemList.ts";
import { layPhoto, showPhoto } from "./changePhoto.ts";
import { correctedOf } from "./correctCount.ts";
import { correctPanel, toolBar } from "./correctPanel.ts";
import type { DecodedPhoto } from "./decodePhoto.ts";
import { demoTile } from "./demoTile.ts";
import { photoStage } from "./photoStage.ts";
import type { PhotoDesk } from "./photoState.ts";
import { resultLead, resultPanel } from "./resultPanel.ts";
import { scaleFields, stillMissing } from "./scaleFields.ts";
import { countCracks, stopCounting } from "./watchPhoto.ts";

/** Largest file that is laid down; the browser has to keep it [bytes]. */
const MOST_BYTES = 60 * 2 ** 20;

/** A photograph of an inked tile: its scale, the count of its cracks, and what is corrected by hand. */
export function photoPanel(bench: Bench): TemplateResult {
  const { photo, work } = bench.state();
  const { file } = work.photo;
  return html`<section class="photo" aria-labelledby="photo-title">
    <h2 id="photo-title">Measure a photograph of a tile</h2>
    ${file === null ? emptyPanel(bench) : html`${drop(bench, "Pick another photograph")}${fileLine(bench, file)}`}
    ${problemList(photo.problems)}
    ${busyLine(bench, photo)}
    ${photo.picture === null ? nothing : openPhoto(bench, photo.picture)}
  </section>`;
}

function drop(bench: Bench, button: string): TemplateResult {
  return fileDrop({
    id: "photo-file",
    button,
    hint: "or drop it here: PNG or JPEG",
    accept: ".png,.jpg,.jpeg,image/png,image/jpeg",
    onFiles: (files) => lay(bench, files),
  });
}

function emptyPanel(bench: Bench): TemplateResult {
  return html`<p class="lead">Lay down a photograph of a crackled tile, and have its cracks counted.</p>
    ${drop(bench, "Pick a photograph")}
    <p>Rub ink into the cracks and wipe the glaze clean; lay a ruler beside the tile, in its plane; photograph it from straight above, in focus and in even light, with ten cells across or more; five give a wide range.</p>
    <p><button type="button" @click=${() => void layDemo(bench)}>Try it with a demo tile</button>
      <span class="hint">invented: drawn by this page, with a ruler</span></p>`;
}

function fileLine(bench: Bench, file: KeptFile): TemplateResult {
  const { isInvented } = bench.state().work.photo;
  const { picture } = bench.state().photo;
  const was = picture?.was ?? null;
  return html`<ul class="files"><li><span class="file-kind">photograph</span> <span class="file-name">${file.name}</span>
      ${isInvented ? html`<span class="hint">invented, drawn by this page</span>` : nothing}
      <button type="button" class="slim" @click=${() => layPhoto(bench, `taking away ${file.name}`, {})}>Take away<span class="out-of-sight"> ${file.name}</span></button></li></ul>
    ${
      was === null || picture === null
        ? nothing
        : html`<p class="paint-caution">It has ${was.width} by ${was.height} pixels, more than this page measures; it was made smaller to ${picture.picture.width} by ${picture.picture.height}. Fine cracks can be lost by that: crop the picture to the tile, or measure it with the command.</p>`
    }`;
}

function lay(bench: Bench, files: Result<readonly KeptFile[]>): void {
  const [file] = files.ok ? files.value : [];
  const problems = files.ok ? [] : files.problems;
  const large = file !== undefined && file.bytes.length > MOST_BYTES ? tooLarge(file) : null;
  if (large !== null || file === undefined) {
    showPhoto(bench, { problems: large === null ? problems : [large] });
    return;
  }
  layPhoto(bench, `laying down ${file.name}`, { file });
}

function tooLarge({ name, bytes }: KeptFile): Problem {
  return {
    code: "file/too-large",
    where: name,
    what: `it has ${Math.round(bytes.length / 2 ** 20)} MB`,
    expected: `at most ${MOST_BYTES / 2 ** 20} MB`,
    fix: "save it as JPEG, or crop it to the tile",
  };
}

async function layDemo(bench: Bench): Promise<void> {
  const demo = await demoTile();
  layPhoto(bench, "laying down the demo tile", demo);
}

function busyLine(bench: Bench, { busy, isStopped }: PhotoDesk): TemplateResult | typeof nothing {
  if (busy !== null)
    return html`<p class="photo-busy" role="status"><progress max="1" .value=${busy.fraction} aria-label="How far it is"></progress> ${busy.at}…
      <button type="button" @click=${() => stopCounting(bench)}>Stop</button></p>`;
  if (!isStopped) return nothing;
  return html`<p class="photo-busy">Stopped. <button type="button" @click=${() => void countCracks(bench)}>Count the cracks</button></p>`;
}

function openPhoto(bench: Bench, picture: DecodedPhoto): TemplateResult {
  const { photo, work } = bench.state();
  const { measured } = photo;
  const { takenAway, added, leftOut } = work.photo;
  const corrected = measured === null ? null : correctedOf(measured, takenAway, added, leftOut);
  return html`<div class="photo-bench">
      <div class="photo-left-side">${toolBar(bench)}${photoStage(bench, picture)}</div>
      <div class="photo-right-side">${stillMissing(work.photo)}${corrected?.ok ? resultLead(bench, corrected.value) : nothing}${scaleFields(bench, picture)}${correctPanel(bench, picture)}</div>
    </div>
    ${corrected === null ? nothing : corrected.ok ? resultPanel(bench, corrected.value) : problemList(corrected.problems)}`;
}
