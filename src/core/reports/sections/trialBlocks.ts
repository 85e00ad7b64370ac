import { basedOn } from "../../sources/basedOn.ts";
import type { FiringStudy } from "../../trials/FiringStudy.ts";
import type { TemperatureUnit } from "../../units/temperature.ts";
import type { Block, ChartPair } from "../Block.ts";
import { againstBlocks } from "./againstBlocks.ts";
import { confoundingBlocks } from "./confoundingBlocks.ts";
import { differenceBlocks } from "./differenceBlocks.ts";
import { factLabel } from "./factWords.ts";
import { fitStudyBlocks } from "./fitStudyBlocks.ts";
import { nextTestBlocks } from "./nextTestBlocks.ts";
import { spacingBlocks } from "./spacingBlocks.ts";
import { tileTable } from "./tileTable.ts";

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
