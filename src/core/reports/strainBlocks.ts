import { basedOn } from "../sources/bibliography.ts";
import { printTemperature, strainRatioText } from "../text/quantities.ts";
import { capitalised, stopped } from "../text/wrap.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { bandSaid, hasCristobalite, publishedRates } from "../ware/inversions.ts";
import type { OpeningStrain } from "../ware/openingStrain.ts";
import type { ModelLimit, PieceStrain } from "../ware/pieceStrain.ts";
import { passageRisk, STRAIN_RISK_WORDS, type StrainRisk, strainRisk } from "../ware/strainRisk.ts";
import type { SpreadShares } from "../ware/strainSpread.ts";
import type { Body } from "../ware/Ware.ts";
import type { Block, Cell, PaintStyle } from "./Block.ts";
import { momentLines } from "./moments.ts";

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

/** Where practice contradicts the computation, and what is published of rates. */
function besideIt(unit: TemperatureUnit): readonly string[] {
  return [
    stopped(
      basedOn(
        `Below the quartz inversion it is too strict for ware without cristobalite, so that no word is put to it there and nothing is judged by it: sanitary ware is cooled from ${printTemperature(500, unit)} to ${printTemperature(50, unit)} faster than it would allow, and kilns are opened daily at ${printTemperature(150, unit)} to ${printTemperature(190, unit)} without loss`,
        "fortuna-2000",
        "opening-practice",
      ),
    ),
    stopped(`Published, to be read beside it: ${publishedRates(unit).join("; ")}`),
  ];
}

/** The stress in the ware in words and tables, the piece that bears the least first. */
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
        ...besideIt(context.unit),
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
      caption: "On the way through",
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
  { name, passages, ware }: PieceStrain,
  { startOfDaySeconds, unit }: StrainContext,
): readonly (readonly Cell[])[] {
  return passages.flatMap(
    ({ band, direction, measured, computed }): readonly (readonly Cell[])[] =>
      computed === null
        ? []
        : [
            [
              name,
              { lines: [bandNameOf(band, ware.body, unit), direction] },
              ratioCell(
                computed.ratio,
                measured,
                passageRisk({ band, direction, ratio: computed.ratio }, ware.body),
              ),
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
      caption: "At the opening; under each ratio the range of 8 in 10",
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
  { name, openings, ware }: PieceStrain,
  unit: TemperatureUnit,
): readonly (readonly Cell[])[] {
  const temps = [...new Set(openings.map(({ tempC }) => tempC))];
  return temps.map((tempC): readonly Cell[] => [
    name,
    printTemperature(tempC, unit),
    ...WAYS.map((way) =>
      openingCell(
        openings.find((each) => each.tempC === tempC && each.way === way),
        hasCristobalite(ware.body),
      ),
    ),
  ]);
}

function openingCell(opening: OpeningStrain | undefined, isJudged: boolean): Cell {
  if (opening === undefined) return "–";
  const risk = isJudged ? strainRisk(opening.ratio) : null;
  return {
    lines: [withRisk(opening.ratio, risk), rangeText(opening)],
    ...styled(risk),
  };
}

function ratioCell(ratio: number, measured: "whole" | "partly", risk: StrainRisk | null): Cell {
  const words = withRisk(ratio, risk);
  return { lines: measured === "whole" ? [words] : [words, "or more"], ...styled(risk) };
}

function withRisk(ratio: number, risk: StrainRisk | null): string {
  return [strainRatioText(ratio), ...(risk === null ? [] : [risk])].join(", ");
}

function bandNameOf(band: string, body: Body, unit: TemperatureUnit): string {
  return bandSaid(band, { isCristobalitic: hasCristobalite(body), unit }).replace(
    / inversion$/,
    "",
  );
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
    "on the way up the ware is taken to be the finished body already, as in a glaze firing over finished ware, and no word is put to the ratio. Bisque is weaker and softer, and its pores stop small cracks: it bears more than such a ratio says. Use it only to compare firings.",
  raw: "the way up is not computed. Raw clay is not yet the fired body whose properties are known.",
  "state not known":
    "the way up is not computed. It is not said whether the ware went in raw or bisqued.",
} as const;
