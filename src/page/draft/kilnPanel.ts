import { html, nothing, type TemplateResult } from "lit-html";
import { REFERENCE_KILN } from "../../core/kiln/LearnedKiln.ts";
import { asAssumedKiln } from "../../core/kiln/reach.ts";
import { failed, ok, type Result } from "../../core/problem.ts";
import { inert } from "../../core/text/escape.ts";
import { printDifference } from "../../core/text/quantities.ts";
import { capitalised, stopped } from "../../core/text/wrap.ts";
import { writtenQuantity } from "../../core/units/quantity.ts";
import type { TemperatureUnit } from "../../core/units/temperature.ts";
import { problemList, quantityField } from "../parts/controls.ts";
import { fileDrop } from "../parts/files.ts";
import type { DeskKiln } from "../state/draftState.ts";
import type { Bench } from "../state/state.ts";
import { withLaid } from "../worker/readGroup.ts";
import { changeDraft, deskDraft } from "./changeDraft.ts";

/** The kiln: the assumed one, or the user's own as its logs show it. */
export function kilnPanel(bench: Bench): TemplateResult {
  const { draft, work } = bench.state();
  const { kilnFiles } = work.draft;
  const basis =
    draft.kiln === null ? REFERENCE_KILN.basis : asAssumedKiln(draft.kiln.learned).basis;
  return html`<section class="panel" aria-labelledby="kiln-title"><h3 id="kiln-title">Kiln</h3>
    <p>${capitalised(stopped(inert(basis)))} ${draft.kiln === null || work.draft.offset !== null ? nothing : offsetWords(draft.kiln.offset, work.unit)}</p>
    ${toldOffset(bench)}
    ${fileDrop({
      id: "kiln-logs",
      button: kilnFiles.length === 0 ? "Pick logs of your kiln" : "Pick more logs",
      hint: "or drop them here, with the records beside them, and the schedule is laid out for your kiln",
      multiple: true,
      onFiles: (files) => {
        if (!files.ok) deskDraft(bench, { kilnProblems: files.problems });
        else
          changeDraft(bench, "adding logs of the kiln", {
            kilnFiles: withLaid(kilnFiles, files.value),
          });
      },
    })}
    ${draft.kilnBusy === null ? nothing : html`<p role="status">${inert(draft.kilnBusy)}… <button type="button" @click=${() => changeDraft(bench, "stopping to learn the kiln", { kilnFiles: [] })}>Stop</button></p>`}
    ${problemList(draft.kilnProblems)}
    ${kilnFiles.length === 0 ? nothing : fromLogs(bench)}
  </section>`;
}

function fromLogs(bench: Bench): TemplateResult {
  const { kilnFiles, powerWatt, tariffPerKWh } = bench.state().work.draft;
  return html`<p class="hint">From ${kilnFiles.map(({ name }) => inert(name)).join(", ")}.</p>
    <div class="fields">
      ${quantityField<number | null>({
        id: "power",
        label: "Power on the plate",
        value: powerWatt === null ? "" : `${powerWatt} W`,
        placeholder: "10.5 kW",
        parse: (text) => positive(text, { w: 1, kw: 1000 }, { what: "a power", fix: "10.5 kW" }),
        onValue: (watt) =>
          changeDraft(bench, "changing the power of the kiln", { powerWatt: watt }),
      })}
      ${quantityField<number | null>({
        id: "tariff",
        label: "Price of a kilowatt-hour",
        value: tariffPerKWh === null ? "" : String(tariffPerKWh),
        placeholder: "0.30",
        parse: (text) => positive(text, { "": 1 }, { what: "a price", fix: "0.30" }),
        onValue: (price) =>
          changeDraft(bench, "changing the price of electricity", { tariffPerKWh: price }),
      })}
    </div>
    <button type="button" @click=${() => changeDraft(bench, "taking the kiln's logs away", { kilnFiles: [] })}>Use the assumed kiln again</button>`;
}

function positive(
  text: string,
  units: Readonly<Record<string, number>>,
  words: { readonly what: string; readonly fix: string },
): Result<number | null> {
  if (text.trim() === "") return ok(null);
  const written = writtenQuantity(text);
  const scale = written === null ? undefined : units[written.unit];
  if (written !== null && scale !== undefined && written.value > 0)
    return ok(written.value * scale);
  return failed({
    code: "page/not-a-number",
    where: "the kiln",
    what: `"${text.trim().slice(0, 40)}" is not ${words.what}`,
    expected: `a number above 0, like ${words.fix}`,
    fix: `write it like ${words.fix}`,
  });
}

/** The offset that the cones here allow for, as the command says it. */
function offsetWords(offset: DeskKiln["offset"], unit: TemperatureUnit): string {
  if (offset === null) return "";
  return `By its witness cones the thermocouple reads ${offText(offset.offsetK, unit)}; the cones here allow for that.`;
}

/** The offset that a review told, and a way to be rid of it. */
export function toldOffset(bench: Bench): TemplateResult | typeof nothing {
  const { unit, draft } = bench.state().work;
  if (draft.offset === null) return nothing;
  const { offsetK, from } = draft.offset;
  return html`<p id="told-offset">By the witness cones of ${inert(from)} the thermocouple reads ${offText(offsetK, unit)}; the cones here allow for that.
    <button type="button" class="slim" @click=${() => changeDraft(bench, "taking the thermocouple's offset away", { offset: null })}>Reckon without it</button></p>`;
}

function offText(offsetK: number, unit: TemperatureUnit): string {
  return `${printDifference(Math.abs(offsetK), unit)} too ${offsetK < 0 ? "high" : "low"}`;
}
