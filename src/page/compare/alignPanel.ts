import { html, nothing, type TemplateResult } from "lit-html";
import { parseAlignmentTemperature } from "../../core/firing/parseAlignment.ts";
import type { TemperatureUnit } from "../../core/units/temperature.ts";
import type { Bench } from "../bench/store.ts";
import { typedTemperature } from "../draft/typedValues.ts";
import { quantityField } from "../parts/quantityField.ts";
import { changeCompare } from "./changeCompare.ts";
import type { ChosenAlignment } from "./compareState.ts";

const WAYS: Readonly<Record<ChosenAlignment["at"], string>> = {
  peak: "at the peak",
  start: "at the first reading",
  rising: "on the way up, at",
  falling: "on the way down, at",
};

/** Where the firings are laid over each other, to choose. */
export function alignPanel(bench: Bench): TemplateResult {
  const { align } = bench.state().work.compare;
  const { unit } = bench.state().work;
  const choice = (at: ChosenAlignment["at"]) =>
    html`<label><input type="radio" name="align" .checked=${align.at === at}
      @change=${() => changeCompare(bench, `lining up ${WAYS[at].replace(",", "")}`, { align: { ...align, at } })}><span>${WAYS[at]}</span></label>`;
  return html`<div class="align-panel">
    <fieldset class="boxes answers"><legend>Line the firings up</legend>${(Object.keys(WAYS) as ChosenAlignment["at"][]).map(choice)}</fieldset>
    ${
      align.at === "rising" || align.at === "falling"
        ? quantityField({
            id: "align-temperature",
            label: `Temperature (°${unit})`,
            value: typedTemperature(align.tempC, unit),
            parse: (typed) => parseAlignmentTemperature(typed, { unit, where: "the temperature" }),
            onValue: (tempC) =>
              changeCompare(bench, `lining up at ${text(tempC, unit)}`, {
                align: { ...align, tempC },
              }),
          })
        : nothing
    }
  </div>`;
}

function text(tempC: number, unit: TemperatureUnit): string {
  return `${typedTemperature(tempC, unit)} °${unit}`;
}
