import { basedOn } from "../sources/bibliography.ts";
import { notNought } from "../text/quantities.ts";
import { differencesFrom, type FactDifference } from "../trials/differences.ts";
import type { FiringInNumbers, FiringStudy } from "../trials/FiringStudy.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import type { Block, Cell, ChartPair } from "./Block.ts";
import { confoundingBlocks, differenceBlocks, factLabel, factText } from "./confoundingBlocks.ts";
import { fitStudyBlocks } from "./fitStudyBlocks.ts";
import { spacingBlocks } from "./spacingBlocks.ts";
import { nextTestBlocks, tileTable } from "./tileBlocks.ts";

/** Charts of a study; those of spacing by the name of their glaze. */
export interface StudyCharts {
  readonly causes?: ChartPair;
  readonly fits?: ChartPair;
  readonly spacing?: Readonly<Record<string, ChartPair>>;
}

/** How a study is shown. */
interface StudyShown {
  readonly unit: TemperatureUnit;
  readonly charts: StudyCharts;
  /** The firing that the others are held against, and the cones reached in words. */
  readonly against: Parameters<typeof againstBlocks>[1];
  /** Says which options of the command help on. */
  readonly hasCommands: boolean;
}

/** A study of firings and their tiles: differences, confounding, spacing, tiles, next test. */
export function trialBlocks(study: FiringStudy, shown: StudyShown): readonly Block[] {
  const { unit, charts } = shown;
  const { tiles, confounding, next } = study;
  const differences = [
    ...differenceBlocks(study.firings, study.differences, unit),
    ...againstBlocks(study.firings, shown.against, unit),
  ];
  if (tiles.tiles.length === 0)
    return [
      ...differences,
      {
        kind: "sentence",
        text: "No record names trial tiles, so nothing is said of crack spacing.",
      },
    ];
  return [
    ...differences,
    ...(confounding === null
      ? [
          {
            kind: "sentence",
            text: "No tile says anything of spacing: on none were cracks measured or looked for.",
          } as const,
        ]
      : [
          ...confoundingBlocks(confounding, charts.causes, heatFacts(study, unit)),
          ...spacingBlocks(study, charts.spacing ?? {}),
        ]),
    ...fitStudyBlocks(study.fits, charts.fits, shown.hasCommands),
    ...tileTable(tiles, study.firings),
    ...(next === null ? [] : nextTestBlocks(next, unit, shown.hasCommands)),
  ];
}

/** What differed between firings in the heat that they got, which goes by one word as a cause. */
function heatFacts({ differences }: FiringStudy, unit: TemperatureUnit): readonly string[] {
  const labels = differences
    .filter(({ cause, verdict }) => cause === "heat" && verdict === "differs")
    .map(({ name, label }) => (name === "above1100" ? "time " : "") + factLabel(label, unit));
  return [...new Set(labels)];
}

/** What the sentences of a study rest on. */
export function trialBasis({ tiles, differences, fits }: FiringStudy): readonly string[] {
  return [
    ...(differences.length === 0
      ? []
      : [
          "Thermocouple and place count for 10 °C each way in what differed, for three tenths of that where two records name the same kiln and type of thermocouple; that share is our own estimate.",
        ]),
    ...(tiles.tiles.length === 0
      ? []
      : [
          "The tile is what was repeated; lines and pictures of one tile are not. Causes are told apart by their columns in one design; parts of a firing that differed by no more than their uncertainty count as the same.",
          "Spacing is a fit with a free exponent on logarithms; nothing is forced to the guides. No published table of glaze crack spacing against thickness was found to hold it against.",
          basedOn("Guide ½: a thin brittle layer on a stiff body", "thouless-1990"),
          basedOn("Guide 1: mud and other layers that dry", "groisman-kaplan-1994"),
        ]),
    ...(fits === null || fits.pairs.length === 0
      ? []
      : [
          "Fit: a range holds 8 of 10 drawn cases, with all that is uncertain of glaze, body, coat and counting; more tiles do not narrow it, since most of it is what nobody knows of glaze and body. Spacing is read back by the energy that cracks set free; it ranks glazes and promises nothing.",
        ]),
  ];
}

/** Firings beside the one that they are held against, in one table. */
const BESIDE = 3;

/** Firings that are held against one at most; more would be a book of tables. */
const MOST = 12;

/** What the firings are held against, and what they are called. */
interface Against {
  /** Place in the order given. */
  readonly base: number;
  /** Cones reached in words, in the same order. */
  readonly cones: readonly string[];
}

/** Each firing held against one of them, number by number, with what is too little to be told. */
export function againstBlocks(
  firings: readonly FiringInNumbers[],
  against: Against,
  unit: TemperatureUnit,
): readonly Block[] {
  const { base } = against;
  const others = firings.flatMap((_, at) => (at === base ? [] : [at]));
  const shown = others.slice(0, MOST);
  const differences = differencesFrom(firings, base);
  const groups = Array.from({ length: Math.ceil(shown.length / BESIDE) }, (_, at) =>
    shown.slice(at * BESIDE, (at + 1) * BESIDE),
  );
  return [
    ...groups.map((group): Block => tableOf({ firings, differences, group, ...against }, unit)),
    ...(others.length > shown.length
      ? [
          {
            kind: "sentence",
            text: `The first ${shown.length} are held against firing ${base + 1}; ${others.length - shown.length} more are not.`,
          } as const,
        ]
      : []),
  ];
}

interface Given extends Against {
  readonly firings: readonly FiringInNumbers[];
  readonly differences: readonly FactDifference[];
  /** Places of the firings beside the base. */
  readonly group: readonly number[];
}

function tableOf(given: Given, unit: TemperatureUnit): Block {
  const { firings, differences, group, base } = given;
  const facts = firings[base]?.facts ?? [];
  return {
    kind: "table",
    caption: `Against firing ${base + 1}: how much more (+) or less (−), ± one standard deviation`,
    columns: [
      { head: "", align: "left" },
      { head: `firing ${base + 1}`, align: "right" },
      ...group.map((at) => ({ head: `firing ${at + 1}`, align: "right" }) as const),
    ],
    rows: facts.map((fact): readonly Cell[] => [
      factLabel(fact.label, unit),
      baseCell(fact, given, unit),
      ...group.map((at) => {
        const found = differences.find(
          ({ name, low, high }) => name === fact.name && (low === at || high === at),
        );
        return found === undefined ? "not known" : apartCell(found, { at, unit });
      }),
    ]),
  };
}

function baseCell(
  { kind, value }: FiringInNumbers["facts"][number],
  { cones, base }: Given,
  unit: TemperatureUnit,
): Cell {
  if (value === null) return "not known";
  return kind === "cones" ? (cones[base] ?? "") : factText(kind, value, unit);
}

/** How far a firing lies above or below the base. */
function apartCell(
  { kind, apart, sigma, high, verdict }: FactDifference,
  { at, unit }: { readonly at: number; readonly unit: TemperatureUnit },
): Cell {
  const doubt = `± ${notNought(amount(kind, sigma, unit))}`;
  if (verdict === "same") return { lines: ["not to be told", doubt], style: "faint" };
  const much = `${high === at ? "+" : "−"}${amount(kind, apart, unit)}`;
  return { lines: [much, doubt, ...(verdict === "perhaps" ? ["may be none"] : [])] };
}

function amount(kind: FactDifference["kind"], value: number, unit: TemperatureUnit): string {
  if (kind === "cones") return `${value.toFixed(1)} cones`;
  return factText(kind === "temperature" ? "difference" : kind, value, unit);
}
