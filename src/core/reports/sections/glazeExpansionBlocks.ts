import type { Glaze } from "../../glaze/Glaze.ts";
import type { GlazeSheet } from "../../glaze/GlazeSheet.ts";
import { expansionText, sharesText } from "../../glaze/glazeWords.ts";
import { entriesOf } from "../../glaze/oxides.ts";
import { printDifference, printTemperature } from "../../units/print.ts";
import { fahrenheitDeltaFromCelsiusDelta, type TemperatureUnit } from "../../units/temperature.ts";
import { type Block, section } from "../Block.ts";

/** Cooling from a usual set point to the room, for an example [K]. */
const USUAL_COOLING_K = 500;

/** Expansion with its band, what other sets say, and where the glaze turns stiff. */
export function glazeExpansionBlocks(sheet: GlazeSheet, unit: TemperatureUnit): readonly Block[] {
  const { glaze } = sheet;
  return [
    ...section("Expansion", [
      { kind: "facts", facts: expansionFacts(sheet, unit) },
      { kind: "sentence", text: bandSentence(glaze, unit) },
      opinionsTable(sheet, unit),
      {
        kind: "sentence",
        text: "Compare a value only with another of the same set. A body's value from a dilatometer belongs to no set.",
      },
    ]),
    ...section("Set point", [{ kind: "facts", facts: setFacts(sheet, unit) }]),
  ];
}

/** A coefficient with its unit, and its spread: `7.24 ± 0.50 · 10⁻⁶/°C`. */
export function coefficientText(
  perK: number,
  unit: TemperatureUnit,
  sigmaPerK: number | null = null,
): string {
  return `${millionthsText(perK, unit, sigmaPerK)} · ${millionths(unit)}`;
}

/** The same without its unit, for a column that says it: `7.24 ± 0.50`. */
export function millionthsText(
  perK: number,
  unit: TemperatureUnit,
  sigmaPerK: number | null = null,
): string {
  const per = unit === "C" ? 1 : fahrenheitDeltaFromCelsiusDelta(1);
  const spread = sigmaPerK === null ? "" : ` ± ${expansionText(sigmaPerK / per)}`;
  return `${expansionText(perK / per)}${spread}`;
}

/** The unit of a coefficient: `10⁻⁶/°C`. */
export function millionths(unit: TemperatureUnit): string {
  return `10⁻⁶/°${unit}`;
}

function expansionFacts({ glaze, computed }: GlazeSheet, unit: TemperatureUnit) {
  const { expansion } = glaze;
  const range = `${printTemperature(expansion.fromC, unit)} to ${printTemperature(expansion.toC, unit)}`;
  return [
    {
      label: expansion.from,
      text: `${coefficientText(expansion.meanPerK, unit, expansion.sigmaPerK)}, mean of ${range}`,
    },
    ...(expansion.from === "measured" && computed !== null
      ? [
          {
            label: "computed",
            text: `${coefficientText(computed.meanPerK, unit)}, set aside for the measured one`,
          },
        ]
      : []),
    ...(expansion.from === "computed"
      ? [
          {
            label: "close relatives",
            text: `± ${coefficientText(expansion.relativeSigmaPerK, unit)} on the difference of two glazes of one family`,
          },
        ]
      : []),
  ];
}

function bandSentence({ expansion, youngGPa, poisson }: Glaze, unit: TemperatureUnit): string {
  const stressMPa =
    (expansion.sigmaPerK * USUAL_COOLING_K * youngGPa.value * 1000) / (1 - poisson.value);
  return `Each ± is one standard deviation. Over ${printDifference(USUAL_COOLING_K, unit)} of cooling this one is worth ± ${Math.round(stressMPa)} MPa in a thin glaze, where crazing begins at some 15 to 50 MPa depending on the coat: an expansion ranks glazes, it does not foretell crazing.`;
}

function opinionsTable({ opinions }: GlazeSheet, unit: TemperatureUnit): Block {
  return {
    kind: "table",
    caption: "Second opinions, each on a scale of its own",
    columns: [
      { head: "set", align: "left" },
      { head: { lines: ["expansion,", millionths(unit)] }, align: "right" },
      { head: "made for", align: "left" },
      { head: "left out, wt %", align: "left" },
    ],
    rows: opinions.map(({ name, meanPerK, range, leftWtPercent }) => [
      name,
      millionthsText(meanPerK, unit),
      range.replace(
        "20 to 100 °C",
        `${printTemperature(20, unit)} to ${printTemperature(100, unit)}`,
      ),
      sharesText(entriesOf(leftWtPercent)) || "nothing",
    ]),
  };
}

function setFacts({ glaze, stiff }: GlazeSheet, unit: TemperatureUnit) {
  const { valueC, sigmaK, from } = glaze.setPoint;
  return [
    {
      label: "set point",
      text: `${printTemperature(valueC, unit)} ± ${printDifference(sigmaK, unit)}, ${from}; below it a cooling glaze holds stress`,
    },
    {
      label: "10¹² Pa·s",
      text: `${printTemperature(stiff.tempC, unit)} by the model, whose standard error is ${printDifference(9, unit)} to ${printDifference(17, unit)}; kiln-cooled glaze sets about ${printDifference(20, unit)} lower, give or take as much`,
    },
  ];
}
