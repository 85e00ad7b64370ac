import type { Direction } from "../../curve/Band.ts";
import { basedOn } from "../../sources/basedOn.ts";
import { printTemperature } from "../../units/print.ts";
import type { TemperatureUnit } from "../../units/temperature.ts";
import type { ModelLimit } from "../../ware/modelLimits.ts";
import type { OpeningStrain } from "../../ware/openingStrain.ts";
import type { PieceStrain } from "../../ware/pieceStrain.ts";
import {
  passageRisk,
  STRAIN_RISK_WORDS,
  type StrainRisk,
  strainRisk,
} from "../../ware/strainRisk.ts";
import type { SpreadShares } from "../../ware/strainSpread.ts";
import type { Block, Cell } from "../Block.ts";
import { capitalised, stopped } from "../capitalised.ts";
import { momentLines } from "../moments.ts";
import type { PaintStyle } from "../paint.ts";
import { strainRatioText } from "./strainRatioText.ts";

interface StrainContext {
  readonly unit: TemperatureUnit;
  readonly startOfDaySeconds: number | null;
  /** A firing that happened, or one that is planned. */
  readonly tense: "was" | "will be";
}

const WAYS: readonly OpeningStrain["way"][] = ["lid opened", "lifted out"];

/** What the ranges hold, and what most of them come from. */
function rangeItem(strains: readonly PieceStrain[]): string {
  const ranges = strains.flatMap(({ passages, openings }) => [
    ...passages.flatMap(({ computed }) => (computed === null ? [] : [computed])),
    ...openings,
  ]);
  const worst = ranges.toSorted((a, b) => b.ratio - a.ratio)[0];
  const from = worst === undefined ? "" : `; at the worst here, ${sharesText(worst.shares)}`;
  return `The range holds 8 in 10 of what may be: the body's quartz, cristobalite, expansion and heat, its strength, the shape of a real piece, and how heat passes in the kiln${from}. Not in it: the stress of the glaze, and flaws. Nothing of it was checked on cracked pots.`;
}

/** Shares of the variance in words, the largest first. */
function sharesText({ body, strength, shape, kiln }: SpreadShares): string {
  const parts: readonly (readonly [string, number])[] = [
    ["the body", body],
    ["its strength", strength],
    ["the shape", shape],
    ["the kiln", kiln],
  ];
  return parts
    .toSorted(([, a], [, b]) => b - a)
    .map(([name, share]) => `${Math.round(share * 100)} % comes from ${name}`)
    .join(", ");
}

/** What the computation does not know about these pieces, or knows too hard; each said once. */
function limitItems(strains: readonly PieceStrain[]): readonly string[] {
  const all = strains.flatMap(({ limits }) =>
    limits
      .filter(({ topic }) => topic !== PRACTISED)
      .map(({ errs, why }) => `${ERRS[errs]}: ${why}`),
  );
  return [...new Set(all)].map(stopped);
}

/** The limit that published practice is named for. */
const PRACTISED: ModelLimit["topic"] = "plain shrinkage";

const ERRS = {
  "too hard": "Likely too strict",
  "too soft": "Likely too mild",
  "either way": "Uncertain either way",
} as const;

/** Where practice contradicts the computation. */
function againstPractice(unit: TemperatureUnit): string {
  return stopped(
    basedOn(
      `Below the quartz inversion it is likely too strict for ware without cristobalite: sanitary ware is cooled from ${printTemperature(500, unit)} to ${printTemperature(50, unit)} faster than it would allow`,
      "fortuna-2000",
    ),
  );
}

/**
 * The stress in the ware in words and tables, the piece that stands the least first; nothing where
 * no body is named.
 */
export function strainBlocks(
  strains: readonly PieceStrain[],
  context: StrainContext,
): readonly Block[] {
  if (strains.length === 0) return [];
  return [
    {
      kind: "sentence",
      text: "Computed stress over strength at its worst: 1 is where the ware is thought to break. It is good to a factor of two either way.",
    },
    ...passageBlocks(strains, context),
    ...openingBlocks(strains, context),
    {
      kind: "list",
      items: [
        ...heatingItems(strains),
        stopped(STRAIN_RISK_WORDS),
        rangeItem(strains),
        ...limitItems(strains),
        ...(strains.some(({ limits }) => limits.some(({ topic }) => topic === PRACTISED))
          ? [againstPractice(context.unit)]
          : []),
      ],
    },
  ];
}

function passageBlocks(strains: readonly PieceStrain[], context: StrainContext): readonly Block[] {
  const rows = strains.flatMap((strained) => passageRows(strained, context));
  if (rows.length === 0)
    return [
      {
        kind: "sentence",
        text: `No inversion ${context.tense === "was" ? "was" : "will be"} reached that could be computed.`,
      },
    ];
  return [
    {
      kind: "table",
      caption: "Through the inversions, good to a factor of two either way",
      columns: [
        { head: "piece", align: "left" },
        { head: "through", align: "left" },
        { head: { lines: ["stress over", "strength"] }, align: "right" },
        { head: { lines: ["8 in 10", "between"] }, align: "right" },
        { head: { lines: ["worst (h:min", "after start)"] }, align: "right" },
      ],
      rows,
    },
  ];
}

function passageRows(
  { name, passages }: PieceStrain,
  { startOfDaySeconds }: StrainContext,
): readonly (readonly Cell[])[] {
  return passages.flatMap(
    ({ band, direction, measured, computed }): readonly (readonly Cell[])[] =>
      computed === null
        ? []
        : [
            [
              name,
              { lines: [band.replace(/ inversion$/, ""), direction] },
              ratioCell(computed.ratio, { measured, direction }),
              rangeText(computed),
              { lines: momentLines(startOfDaySeconds, computed.atSeconds) },
            ],
          ],
  );
}

function openingBlocks(
  strains: readonly PieceStrain[],
  { unit, tense }: StrainContext,
): readonly Block[] {
  const rows = strains.flatMap((strained) => openingRows(strained, unit));
  if (rows.length === 0) return [];
  const is = tense === "was" ? "was" : "is";
  return [
    {
      kind: "table",
      caption:
        "At the opening, good to a factor of two either way; under each ratio the range of 8 in 10",
      columns: [
        { head: "piece", align: "left" },
        { head: "at", align: "right" },
        { head: { lines: ["if the kiln", `${is} opened`] }, align: "right" },
        { head: { lines: ["if the ware", `${is} lifted out`] }, align: "right" },
      ],
      rows,
    },
    {
      kind: "sentence",
      text: "Opened: the lid is off and the ware stays on its shelf. Lifted out: it stands in the room on the hot shelf that it came with. A cold table or a draught is harder on it.",
    },
  ];
}

/** One row for each temperature, the lid beside lifting out. */
function openingRows(
  { name, openings }: PieceStrain,
  unit: TemperatureUnit,
): readonly (readonly Cell[])[] {
  const temps = [...new Set(openings.map(({ tempC }) => tempC))];
  return temps.map((tempC): readonly Cell[] => [
    name,
    printTemperature(tempC, unit),
    ...WAYS.map((way) =>
      openingCell(openings.find((each) => each.tempC === tempC && each.way === way)),
    ),
  ]);
}

function openingCell(opening: OpeningStrain | undefined): Cell {
  if (opening === undefined) return "–";
  const risk = strainRisk(opening.ratio);
  return {
    lines: [`${strainRatioText(opening.ratio)}, ${risk}`, rangeText(opening)],
    ...styled(risk),
  };
}

function ratioCell(
  ratio: number,
  passage: { readonly measured: "whole" | "partly"; readonly direction: Direction },
): Cell {
  const risk = passageRisk(passage.direction, ratio);
  const words = [strainRatioText(ratio), ...(risk === null ? [] : [risk])].join(", ");
  return { lines: passage.measured === "whole" ? [words] : [words, "or more"], ...styled(risk) };
}

function styled(risk: StrainRisk | null): { readonly style?: PaintStyle } {
  return risk === "high" ? { style: "warning" } : {};
}

function rangeText({ low, high }: { readonly low: number; readonly high: number }): string {
  return `${strainRatioText(low)} to ${strainRatioText(high)}`;
}

/** What the way up was computed with, or why it was not, each reason once; and what was seen in part. */
function heatingItems(strains: readonly PieceStrain[]): readonly string[] {
  const goesUp = strains.filter(({ passages }) =>
    passages.some(({ direction }) => direction === "heating"),
  );
  const partly = strains.some(({ passages }) =>
    passages.some(({ measured, computed }) => measured === "partly" && computed !== null),
  );
  return [
    ...(["computed", "raw", "state not known"] as const).flatMap((heating) => {
      const names = goesUp.filter((each) => each.heating === heating).map(({ name }) => name);
      return names.length === 0 ? [] : [`${capitalised(names.join(", "))}: ${HEATING[heating]}`];
    }),
    ...(partly
      ? [
          '"or more": a gap or the end of the curve hides part of that passage, and the ware is taken to be at rest where it begins again.',
        ]
      : []),
  ];
}

const HEATING = {
  computed:
    "on the way up the properties of the fired body at its end are used, and no word is put to the ratio. Bisque is weaker and softer, and its pores stop small cracks: it bears more than such a ratio says. Use it only to compare firings.",
  raw: "the way up is not computed. Raw clay is not yet the fired body whose properties are known.",
  "state not known":
    "the way up is not computed. It is not said whether the ware went in raw or bisqued.",
} as const;
