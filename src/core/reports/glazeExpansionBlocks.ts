import type { TwoCoats } from "../glaze/fitRun.ts";
import type { Glaze } from "../glaze/Glaze.ts";
import type { GlazeFit } from "../glaze/glazeFit.ts";
import type { GlazeSheet } from "../glaze/glazeSheet.ts";
import { expansionText, sharesText } from "../glaze/glazeWords.ts";
import type { MeasuredFit } from "../glaze/measuredFit.ts";
import { entriesOf } from "../glaze/oxides.ts";
import type { Spread } from "../math/statistics.ts";
import {
  asGiven,
  fewDigits,
  printDifference,
  printTemperature,
  sharePer100,
  spreadWords,
} from "../text/quantities.ts";
import { fahrenheitDeltaFromCelsiusDelta, type TemperatureUnit } from "../units/temperature.ts";
import { type Block, section } from "./Block.ts";

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

/** What measurements say of the fit, beside what composition says; nothing when none were given. */
export function glazeMeasuredBlocks(fit: GlazeFit, unit: TemperatureUnit): readonly Block[] {
  const { fits, leftOut } = fit.measured;
  if (fits.length + leftOut.length === 0) return [];
  const remarks = [
    ...fits.flatMap((each) => remarksOf(each, unit)),
    ...leftOut.map(
      ({ onsetC, why }) => `ping at ${printTemperature(onsetC, unit)} not used: ${why}`,
    ),
    ...(fits.some(({ ping }) => ping !== null)
      ? [
          "first pings: a listener may miss the first; then it lay higher, and the difference is greater",
        ]
      : []),
    ...fit.twoCoats.map(twoCoatsWords),
  ];
  return section("Measured against computed", [
    ...(fits.length === 0 ? [] : [fitTable(fit)]),
    ...(remarks.length === 0 ? [] : [{ kind: "list", items: remarks } as const]),
  ]);
}

function fitTable({ mismatch, measured, piece }: GlazeFit): Block {
  return {
    kind: "table",
    caption: "Difference in shrinking [millionths per °C] that each way tells",
    columns: [
      { head: "from", align: "left" },
      { head: { lines: ["coat", "(mm)"] }, align: "right" },
      { head: "middle", align: "right" },
      { head: "range", align: "right" },
      { head: { lines: ["glaze", "would be"] }, align: "right" },
      { head: "with computed", align: "left" },
    ],
    rows: [
      [
        "computed",
        asGiven(piece.coatMm),
        inMillionths(mismatch.perK.median),
        range(mismatch.perK),
        inMillionths(mismatch.glazePerK.median),
        "",
      ],
      ...measured.fits.map((each) => [
        each.from,
        asGiven(each.coatMm),
        `${each.holds === "about" ? "" : `${each.holds} `}${inMillionths(each.mismatchPerK.median)}`,
        range(each.mismatchPerK),
        inMillionths(each.glazePerK.median),
        each.agrees ? "agrees" : "disagrees",
      ]),
    ],
  };
}

function inMillionths(perK: number): string {
  return fewDigits(perK * 1e6);
}

function range({ low, high }: Spread): string {
  return `${inMillionths(low)} to ${inMillionths(high)}`;
}

function remarksOf(fit: MeasuredFit, unit: TemperatureUnit): readonly string[] {
  return [
    ...boundWords(fit),
    ...pingWords(fit, unit),
    ...(fit.impossible > 0
      ? [
          `${fit.from} on ${asGiven(fit.coatMm)} mm: in ${sharePer100(fit.impossible)} draws it cannot be, and these are left out`,
        ]
      : []),
    ...(fit.agrees
      ? []
      : [
          `${fit.from} on ${asGiven(fit.coatMm)} mm: disagrees with the composition beyond both spreads; trust what was measured, and look for what the recipe or the body hides`,
        ]),
  ];
}

function boundWords({ from, holds, pitchOverCoat }: MeasuredFit): readonly string[] {
  if (from === "cracks seen") return [`${from}: that a coat cracked sets a lower bound only`];
  if (holds === "at most")
    return [
      `${from}: a coat that stayed whole sets an upper bound only, and none at all if it has no flaw`,
    ];
  if (holds === "at least" && pitchOverCoat !== null)
    return [
      `${from}: cracks ${Math.round(pitchOverCoat)} coats apart can be a pull that only just cracks the coat, or a greater one with few starting flaws; so it is a lower bound`,
    ];
  return [];
}

function pingWords({ ping }: MeasuredFit, unit: TemperatureUnit): readonly string[] {
  if (ping === null || ping.use === "usable") return [];
  return [
    `ping at ${printTemperature(ping.onsetC, unit)}: ${ping.use}, so it may be the body that cracked; look there first`,
  ];
}

function twoCoatsWords({ coatsMm, ratio, agree }: TwoCoats): string {
  const [thin, thick] = coatsMm.map(asGiven);
  const verdict = agree
    ? "they agree"
    : "they disagree, so one ping is no matter of fit, or the body shrinks unevenly between them";
  return `check by two coats, ${thin} and ${thick} mm: how far each cools before its first ping, times the root of its coat, is the same for both where fit alone cracks them; here the thinner has ${spreadWords(ratio, "")} times that of the thicker: ${verdict}`;
}
