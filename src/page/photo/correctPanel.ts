import { html, nothing, type TemplateResult } from "lit-html";
import { placeAlong } from "../../core/photo/correctedPhoto.ts";
import type { Crossings } from "../../core/photo/crossings.ts";
import { failed, ok, type Result } from "../../core/problem.ts";
import { parseLength } from "../../core/units/quantity.ts";
import { quantityField } from "../parts/controls.ts";
import type { DecodedPhoto } from "../state/decodePhoto.ts";
import type { PhotoDesk, PhotoTool, PhotoWork, ShownLines } from "../state/photoState.ts";
import type { Bench } from "../state/state.ts";
import {
  addCrossings,
  changePhoto,
  crossingsOn,
  isShown,
  type ListedCrossing,
  putBack,
  resetCount,
  showPhoto,
  takeAway,
} from "./changePhoto.ts";
import { newArea } from "./photoStage.ts";

type Measured = NonNullable<PhotoDesk["measured"]>;

const TOOLS: readonly {
  readonly tool: PhotoTool;
  readonly label: string;
  readonly hint: string;
}[] = [
  {
    tool: "points",
    label: "Place",
    hint: "Drag the crosses of the scale and the corners of the part to measure.",
  },
  {
    tool: "take",
    label: "Take away",
    hint: "Touch a dot that lies on no crack, or draw a stroke along a false crack: every crossing under it goes, on lines that are not shown as well.",
  },
  {
    tool: "add",
    label: "Add",
    hint: "Draw a stroke along a crack that was missed: every test line that it meets counts it. A touch adds one crossing on the nearest line.",
  },
  {
    tool: "leave",
    label: "Leave out",
    hint: "Draw a box over a speck or an edge: what lies in it is not counted, and its length of line neither.",
  },
];

/** The tools that the pointer takes up, and how the picture is shown. */
export function toolBar(bench: Bench): TemplateResult {
  const { photo } = bench.state();
  const isCounted = (photo.measured?.found.cracks ?? null) !== null;
  const hint = TOOLS.find(({ tool }) => tool === photo.tool)?.hint ?? "";
  return html`<div class="photo-bar">
      <fieldset class="unit photo-tools"><legend class="out-of-sight">What the pointer does on the picture</legend>
        ${TOOLS.map(
          ({
            tool,
            label,
          }) => html`<label><input type="radio" name="photo-tool" .checked=${photo.tool === tool}
            ?disabled=${tool !== "points" && !isCounted} @change=${() => showPhoto(bench, { tool })}><span>${label}</span></label>`,
        )}
      </fieldset>
      ${
        isCounted
          ? choice({
              id: "photo-shown",
              label: "Lines shown",
              choices: SHOWN,
              value: photo.shown,
              onValue: (shown) => showPhoto(bench, { shown }),
            })
          : nothing
      }
      ${choice({
        id: "photo-zoom",
        label: "Size",
        choices: ZOOMS,
        value: String(photo.zoom) as keyof typeof ZOOMS,
        onValue: (zoom) => showPhoto(bench, { zoom: Number(zoom) as PhotoDesk["zoom"] }),
      })}
    </div>
    <p class="hint" aria-live="polite">${hint}</p>`;
}

const SHOWN: Readonly<Record<ShownLines, string>> = {
  straight: "level and upright",
  slanting: "slanting, 45°",
  all: "in all directions",
};
const ZOOMS: Readonly<Record<"1" | "2" | "4", string>> = {
  1: "whole",
  2: "2 times",
  4: "4 times",
};

function choice<Value extends string>({
  id,
  label,
  choices,
  value,
  onValue,
}: {
  readonly id: string;
  readonly label: string;
  readonly choices: Readonly<Record<Value, string>>;
  readonly value: Value;
  readonly onValue: (value: Value) => void;
}): TemplateResult {
  return html`<label class="photo-choice" for=${id}>${label}
    <select id=${id} @change=${(event: Event) => onValue((event.target as HTMLSelectElement).value as Value)}>
      ${(Object.entries(choices) as [Value, string][]).map(
        ([each, words]) =>
          html`<option value=${each} ?selected=${each === value}>${words}</option>`,
      )}
    </select></label>`;
}

/** The corrections, and all lines and crossings as a list that the keyboard reaches. */
export function correctPanel(bench: Bench, photo: DecodedPhoto): TemplateResult | typeof nothing {
  const { measured } = bench.state().photo;
  const work = bench.state().work.photo;
  if (measured === null || measured.found.cracks === null) return nothing;
  const isCorrected = work.takenAway.length + work.added.length + work.leftOut.length > 0;
  return html`<section class="panel" aria-labelledby="photo-correct"><h3 id="photo-correct">Correct the count</h3>
    <p>Red: the cracks found. Round dots: crossings that count. Squares: added by hand. Rings: taken away.</p>
    ${areaList(bench, photo)}
    <details class="photo-more"><summary>Lines and crossings, one by one</summary>${lineList(bench, measured)}</details>
    ${isCorrected ? html`<button type="button" @click=${() => resetCount(bench)}>Bring back what was found</button>` : nothing}
  </section>`;
}

function areaList(bench: Bench, photo: DecodedPhoto): TemplateResult {
  const { leftOut } = bench.state().work.photo;
  return html`${
    leftOut.length === 0
      ? nothing
      : html`<ul class="files">${leftOut.map(
          (
            { width, height },
            at,
          ) => html`<li>Area ${at + 1}, ${Math.round(width)} by ${Math.round(height)} pixels, left out
        <button type="button" class="slim" @click=${() =>
          changePhoto(bench, "counting an area again", {
            leftOut: leftOut.filter((_, each) => each !== at),
          })}>Count it again<span class="out-of-sight">, area ${at + 1}</span></button></li>`,
        )}</ul>`
  }
    <button type="button" @click=${() => {
      showPhoto(bench, { tool: "leave" });
      newArea(bench, photo);
      focusArea(leftOut.length);
    }}>Leave an area out</button>`;
}

/** The keyboard goes to the corner of an area as soon as it is drawn. */
function focusArea(at: number): void {
  requestAnimationFrame(() => document.getElementById(`photo-left-${at}-a`)?.focus());
}

function lineList(bench: Bench, measured: Measured): TemplateResult {
  const { shown, line } = bench.state().photo;
  const work = bench.state().work.photo;
  const { counted } = measured.found.found;
  const lines = counted.flatMap((each, at) => (isShown(shown, each) ? [at] : []));
  const at = line !== null && lines.includes(line) ? line : null;
  return html`<div class="field"><label for="photo-line">Line, of those that are shown</label>
    <select id="photo-line" @change=${(event: Event) => {
      const { value } = event.target as HTMLSelectElement;
      showPhoto(bench, { line: value === "" ? null : Number(value), crossing: null });
    }}>
      <option value="" ?selected=${at === null}>choose a line</option>
      ${lines.map((each) => html`<option value=${each} ?selected=${each === at}>${lineWords(measured, each, work)}</option>`)}
    </select></div>
    ${at === null ? nothing : oneLine(bench, measured, at)}`;
}

function lineWords(measured: Measured, at: number, work: PhotoWork): string {
  const line = measured.found.found.counted[at]!;
  const listed = crossingsOn(measured.found.found.counted, at, work);
  const count = listed.filter(({ is }) => is !== "taken away").length;
  return `${at + 1}: ${line.line.angleDeg}°, ${mm(measured, line.lengthPx)}, ${count} crossings`;
}

function oneLine(bench: Bench, measured: Measured, at: number): TemplateResult {
  const { counted } = measured.found.found;
  const line = counted[at]!;
  const listed = crossingsOn(counted, at, bench.state().work.photo);
  return html`<div class="table" role="group" aria-label="Crossings on the line" tabindex="0"><table>
      <caption>Line ${at + 1}, ${line.line.angleDeg}° from the level, clockwise</caption>
      <thead><tr><th scope="col" class="right">from its start</th><th scope="col">crossing</th><td></td></tr></thead>
      <tbody>${listed.map((each) => crossingRow(bench, measured, each))}</tbody>
    </table></div>
    ${quantityField<number>({
      id: "photo-add-at",
      label: "Add a crossing, so far from the start of the line",
      value: "",
      placeholder: "12.5 mm",
      parse: (text) => along(text, measured, line),
      onValue: (px) => addCrossings(bench, [{ line: at, along: px }]),
    })}`;
}

function crossingRow(bench: Bench, measured: Measured, each: ListedCrossing): TemplateResult {
  const line = measured.found.found.counted[each.line]!;
  const where = mm(measured, each.along);
  const look = () => {
    const { factor } = measured.found.found;
    const { x, y } = placeAlong(line, each.along);
    const { area } = measured.part;
    const lens = { x: area.x + x * factor, y: area.y + y * factor };
    showPhoto(bench, { crossing: { line: each.line, along: each.along }, lens });
  };
  const isAway = each.is === "taken away";
  return html`<tr><th scope="row" class="right">${where}</th><td>${each.is}</td><td>
    <button type="button" class="slim" @focus=${look} @blur=${() => showPhoto(bench, { crossing: null, lens: null })}
      @click=${() => (isAway ? putBack(bench, each) : away(bench, each))}>${isAway ? "Put back" : "Take away"}<span class="out-of-sight"> the crossing at ${where}</span></button></td></tr>`;
}

/** A crossing that was added leaves no row behind, so the keyboard goes back to the line. */
function away(bench: Bench, each: ListedCrossing): void {
  if (each.is === "added") document.getElementById("photo-line")?.focus();
  takeAway(bench, [each]);
}

function along(text: string, { found }: Measured, line: Crossings): Result<number> {
  const length = parseLength(text, { where: "the new crossing" });
  if (!length.ok) return length;
  const px = length.value / (found.mmPerPx * found.found.factor);
  if (px <= line.lengthPx) return ok(px);
  return failed({
    code: "page/beyond-the-line",
    where: "the new crossing",
    what: `the line ends after ${(line.lengthPx * found.mmPerPx * found.found.factor).toFixed(1)} mm`,
    expected: "a place on the line",
    fix: "a shorter way from its start",
  });
}

function mm({ found }: Measured, px: number): string {
  return `${(px * found.mmPerPx * found.found.factor).toFixed(1)} mm`;
}
