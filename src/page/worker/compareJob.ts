import type { TopLevelSpec } from "vega-lite";
import { type ChartStyle, comparisonChart, studyCharts } from "../../core/charts/chartsOf.ts";
import type { Alignment } from "../../core/firing/Alignment.ts";
import type { Comparison } from "../../core/firing/compareFirings.ts";
import { type ComparisonPart, compareParts } from "../../core/firing/compareFirings.ts";
import { ok, type Result } from "../../core/problem.ts";
import type { Block } from "../../core/reports/Block.ts";
import { comparisonBlocks, comparisonTitle } from "../../core/reports/comparisonBlocks.ts";
import { comparisonDocument } from "../../core/reports/documents/comparisonDocument.ts";
import { scheduleYaml } from "../../core/schedule/scheduleYaml.ts";
import type { FiringStudy } from "../../core/trials/FiringStudy.ts";
import { nextSchedule } from "../../core/trials/nextSchedule.ts";
import type { TemperatureUnit } from "../../core/units/temperature.ts";
import type { CompareAnswer, NamedCharts } from "./CompareAnswer.ts";

/** Firings that were read, in order, their study, and how they are laid beside each other. */
interface CompareAsked {
  readonly parts: readonly ComparisonPart[];
  readonly study: FiringStudy;
  /** Some record names trial tiles, so that one firing is enough. */
  readonly hasTrials: boolean;
  readonly alignment: Alignment;
  /** Place of the firing that the others are held against. */
  readonly base: number;
  readonly unit: TemperatureUnit;
  readonly dark: boolean;
}

interface Compared {
  readonly comparison: Comparison;
  readonly study: FiringStudy;
}

/** Compares firings that were read and studied, as the command does. */
export function compareJob(asked: CompareAsked): Result<CompareAnswer> {
  const { parts, study, hasTrials, alignment, base } = asked;
  const comparison = compareParts(parts, hasTrials ? 1 : 2);
  if (!comparison.ok) return comparison;
  const compared = { comparison: comparison.value, study };
  const makers = chartMakers(compared, alignment);
  const next = nextSchedule(study);
  return ok({
    title: comparisonTitle(comparison.value),
    blocks: {
      C: blocksIn("C", { asked, compared, makers }),
      F: blocksIn("F", { asked, compared, makers }),
    },
    charts: chartsIn(makers, asked),
    json: JSON.stringify(comparisonDocument(comparison.value, { study, alignment, base }), null, 2),
    nextSchedule: next.ok ? scheduleYaml(next.value) : null,
    tiles: study.tiles.tiles.length,
  });
}

type Maker = (style: ChartStyle) => TopLevelSpec;

/** Charts of spacing have the name of their glaze after this. */
const SPACING = "spacing: ";

function chartMakers(
  { comparison, study }: Compared,
  alignment: Alignment,
): ReadonlyMap<string, Maker> {
  const { firings, causes, fits, spacing } = studyCharts(comparison, study);
  const overlay = comparisonChart(comparison, alignment);
  return new Map<string, Maker>([
    ...(overlay === null ? [] : [["overlay", overlay] as const]),
    ["firings", firings],
    ...(causes === null ? [] : [["causes", causes] as const]),
    ...(fits === null ? [] : [["fits", fits] as const]),
    ...spacing.map(({ glaze, chart }) => [`${SPACING}${glaze}`, chart] as const),
  ]);
}

function chartsIn(makers: ReadonlyMap<string, Maker>, { unit, dark }: CompareAsked): NamedCharts {
  const texts = (isDark: boolean) =>
    Object.fromEntries(
      [...makers].map(([name, make]) => [name, JSON.stringify(make({ unit, dark: isDark }))]),
    );
  return { unit, light: texts(false), dark: dark ? texts(true) : null };
}

function blocksIn(
  unit: TemperatureUnit,
  {
    asked,
    compared,
    makers,
  }: {
    readonly asked: CompareAsked;
    readonly compared: Compared;
    readonly makers: ReadonlyMap<string, Maker>;
  },
): readonly Block[] {
  const pairs = Object.fromEntries(
    [...makers.keys()].map((name) => [name, { light: name, dark: name }]),
  );
  const ofGlazes = Object.entries(pairs).filter(([name]) => name.startsWith(SPACING));
  return comparisonBlocks(compared.comparison, {
    unit,
    study: compared.study,
    alignment: asked.alignment,
    base: asked.base,
    hasCommands: false,
    charts: {
      ...pairs,
      spacing: Object.fromEntries(
        ofGlazes.map(([name, pair]) => [name.slice(SPACING.length), pair]),
      ),
    },
  });
}
