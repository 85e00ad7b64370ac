import type { GlazeFit } from "../../glaze/glazeFit.ts";
import type { MeasuredFit } from "../../glaze/measuredFit.ts";
import type { TwoCoats } from "../../glaze/twoCoats.ts";
import { printTemperature } from "../../units/print.ts";
import type { TemperatureUnit } from "../../units/temperature.ts";
import type { Spread } from "../../ware/spreadOf.ts";
import { type Block, section } from "../Block.ts";
import { asGiven, fewDigits, sharePer100, spreadWords } from "../spreadWords.ts";

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
        millionths(mismatch.perK.median),
        range(mismatch.perK),
        millionths(mismatch.glazePerK.median),
        "",
      ],
      ...measured.fits.map((each) => [
        each.from,
        asGiven(each.coatMm),
        `${each.holds === "about" ? "" : `${each.holds} `}${millionths(each.mismatchPerK.median)}`,
        range(each.mismatchPerK),
        millionths(each.glazePerK.median),
        each.agrees ? "agrees" : "disagrees",
      ]),
    ],
  };
}

function millionths(perK: number): string {
  return fewDigits(perK * 1e6);
}

function range({ low, high }: Spread): string {
  return `${millionths(low)} to ${millionths(high)}`;
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
