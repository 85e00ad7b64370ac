import { html, nothing, type TemplateResult } from "lit-html";
import { failed, ok, type Result } from "../../core/problem.ts";
import { parseLength } from "../../core/units/quantity.ts";
import { quantityField } from "../parts/controls.ts";
import type { DecodedPhoto } from "../state/decodePhoto.ts";
import type { PhotoWork } from "../state/photoState.ts";
import type { Bench } from "../state/state.ts";
import { changePart, changePhoto, showPhoto } from "./changePhoto.ts";

/** What says how large the tile is, what part of the picture is measured, and how. */
export function scaleFields(bench: Bench, photo: DecodedPhoto): TemplateResult {
  const work = bench.state().work.photo;
  return html`<fieldset class="photo-fields"><legend>Scale</legend>
      ${radio(bench, "points", "from two places on a ruler in the picture")}
      ${radio(bench, "width", "from the width of what is measured")}
      ${work.scaleBy === "points" ? distance(bench, work) : width(bench, work)}
    </fieldset>
    <fieldset class="photo-fields"><legend>Part to measure</legend>
      <p class="hint">${
        work.region === null
          ? "The whole picture: a ruler, writing or the edge of the tile in it is counted as cracks."
          : "What lies outside of the frame is not looked at."
      }</p>
      ${work.region === null ? partButton(bench, photo) : wholeButton(bench)}
    </fieldset>
    <details class="photo-more"><summary>Where the count goes wrong</summary>${wishes(bench, work)}</details>`;
}

function radio(bench: Bench, scaleBy: PhotoWork["scaleBy"], words: string): TemplateResult {
  const work = bench.state().work.photo;
  return html`<label class="tick"><input type="radio" name="photo-scale" .checked=${work.scaleBy === scaleBy}
    @change=${() => changePhoto(bench, "where the scale comes from", { scaleBy })}> ${words}</label>`;
}

function distance(bench: Bench, { distanceMm }: PhotoWork): TemplateResult {
  return html`<p class="hint">Move the two crosses onto two marks of the ruler, far apart: drag them, or Tab to one and use the arrow keys, with Shift in larger steps. Then type how far apart these marks are.</p>
    ${quantityField<number | null>({
      id: "photo-distance",
      label: "True distance between the two places",
      value: distanceMm === null ? "" : `${distanceMm} mm`,
      placeholder: "50 mm, 5 cm, 2 in",
      parse: (text) => maybeLength(text, "the distance"),
      onValue: (mm) => changePhoto(bench, "the distance on the ruler", { distanceMm: mm }),
    })}`;
}

function width(bench: Bench, { widthMm }: PhotoWork): TemplateResult {
  return quantityField<number | null>({
    id: "photo-width",
    label: "True width of what is measured, left edge to right edge",
    value: widthMm === null ? "" : `${widthMm} mm`,
    placeholder: "100 mm, 10 cm, 4 in",
    parse: (text) => maybeLength(text, "the width"),
    onValue: (mm) => changePhoto(bench, "the width of what is measured", { widthMm: mm }),
  });
}

function maybeLength(text: string, where: string): Result<number | null> {
  return text.trim() === "" ? ok(null) : parseLength(text, { where });
}

function partButton(bench: Bench, { picture }: DecodedPhoto): TemplateResult {
  const { width, height } = picture;
  const region = {
    x: Math.round(0.1 * width),
    y: Math.round(0.1 * height),
    width: Math.round(0.8 * width),
    height: Math.round(0.8 * height),
  };
  return html`<button type="button" @click=${() => {
    showPhoto(bench, { tool: "points" });
    changePart(bench, { what: "measuring a part only" }, { region });
  }}>Measure a part only</button>`;
}

function wholeButton(bench: Bench): TemplateResult {
  return html`<button type="button" @click=${() =>
    changePart(
      bench,
      { what: "measuring the whole picture" },
      { region: null },
    )}>Measure the whole picture</button>`;
}

function wishes(bench: Bench, { pattern, thresholdShare }: PhotoWork): TemplateResult {
  return html`<div class="fields">
    <div class="field"><label for="photo-pattern">Pattern</label>
      <select id="photo-pattern" .value=${pattern ?? ""} @change=${(event: Event) => {
        const { value } = event.target as HTMLSelectElement;
        const chosen = value === "net" || value === "parallel" ? value : null;
        changePhoto(bench, "the pattern of the cracks", { pattern: chosen });
      }}>
        <option value="" ?selected=${pattern === null}>as it is found</option>
        <option value="net" ?selected=${pattern === "net"}>a net</option>
        <option value="parallel" ?selected=${pattern === "parallel"}>side by side, one way</option>
      </select></div>
    ${quantityField<number | null>({
      id: "photo-threshold",
      label: "Faintest crack, in % of the usual",
      value: thresholdShare === null ? "" : `${Math.round(100 * thresholdShare)} %`,
      placeholder: "40 %",
      hint: "lower where faint cracks are missed, higher where false ones are found",
      parse: threshold,
      onValue: (share) =>
        changePart(bench, { what: "the faintest crack" }, { thresholdShare: share }),
    })}
  </div>`;
}

function threshold(text: string): Result<number | null> {
  if (text.trim() === "") return ok(null);
  const percent = Number(text.replace("%", "").replace(",", ".").trim());
  if (percent >= 5 && percent <= 95) return ok(percent / 100);
  return failed({
    code: "page/not-a-number",
    where: "the faintest crack",
    what: `"${text.trim().slice(0, 40)}" cannot be taken`,
    expected: "5 to 95 % of the usual crack",
    fix: "40 %",
  });
}

/** What is still missing before anything can be counted; nothing when nothing is. */
export function stillMissing({
  scaleBy,
  distanceMm,
  widthMm,
}: PhotoWork): TemplateResult | typeof nothing {
  const isTold = scaleBy === "points" ? distanceMm !== null : widthMm !== null;
  if (isTold) return nothing;
  const what = scaleBy === "points" ? "how far apart the two places are" : "how wide the tile is";
  return html`<p class="lead">Say ${what}, and the cracks are counted.</p>`;
}
