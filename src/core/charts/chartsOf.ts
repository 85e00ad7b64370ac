import type { TopLevelSpec } from "vega-lite";
import type { Heatwork } from "../cones/cone.ts";
import { heatworkTrace } from "../cones/heatworkTrace.ts";
import { type Curve, temperatureAt } from "../curve/Curve.ts";
import { hottestZone } from "../firing/FiringFacts.ts";
import { type Alignment, AT_PEAK, alignmentWords, linedUp } from "../review/alignment.ts";
import type { Comparison } from "../review/compareFirings.ts";
import type { FiringReview } from "../review/FiringReview.ts";
import type { Draft } from "../schedule/draftSchedule.ts";
import type { FiringStudy } from "../trials/FiringStudy.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { CRISTOBALITE_BAND, type Crossing, QUARTZ_BAND } from "../ware/inversions.ts";
import type { PieceStrain } from "../ware/pieceStrain.ts";
import { limitCurve } from "../ware/strainRisk.ts";
import { causesChart } from "./causesChart.ts";
import { conesChart } from "./conesChart.ts";
import { coolingChart } from "./coolingChart.ts";
import { drawnPrediction } from "./drawnPrediction.ts";
import { firingChart } from "./firingChart.ts";
import { firingsChart } from "./firingsChart.ts";
import { fitsChart } from "./fitsChart.ts";
import { overlayChart } from "./overlayChart.ts";
import { spacingChart } from "./spacingChart.ts";
import { strainChart } from "./strainChart.ts";

/** How a chart is to be drawn. */
export interface ChartStyle {
  readonly unit: TemperatureUnit;
  readonly dark?: boolean;
}

/** The charts that go with a firing, planned or measured. */
export interface FiringCharts {
  readonly firing: (style: ChartStyle) => TopLevelSpec;
  readonly cooling: (style: ChartStyle) => TopLevelSpec;
  readonly cones: (style: ChartStyle) => TopLevelSpec;
  /** Null when nothing was seen of the cooling. */
  readonly strain: ((style: ChartStyle) => TopLevelSpec) | null;
}

const BANDS = [QUARTZ_BAND, CRISTOBALITE_BAND];

/** Cones shown on either side of the one that was reached. */
const NEIGHBOURS = 2;

/** The charts of a firing that happened. */
export function reviewCharts(review: FiringReview): FiringCharts {
  const hottest = hottestZone(review.zones);
  return chartsFor({
    title: review.title,
    zones: review.zones,
    planned: review.comparison?.planned ?? null,
    curve: hottest.curve,
    heatwork: hottest.heatwork,
    crossings: hottest.crossings,
    events: review.heard.flatMap((heard) =>
      heard.atSeconds === null ? [] : [{ label: heard.what, atSeconds: heard.atSeconds }],
    ),
    startOfDaySeconds: review.reading.startOfDaySeconds,
    weakest: review.strains[0] ?? null,
  });
}

/** The charts of a drafted firing. */
export function draftCharts(draft: Draft): FiringCharts {
  return chartsFor({
    title: draft.schedule.title,
    zones: [],
    planned: draft.expansion.curve,
    predicted: draft.own && drawnPrediction(draft.own, draft.expansion.curve),
    curve: draft.expansion.curve,
    heatwork: draft.heatwork,
    crossings: draft.crossings,
    events: [],
    startOfDaySeconds: draft.start === null ? null : secondsOfDay(draft.start),
    weakest: draft.strains[0] ?? null,
  });
}

/** Several firings over each other, lined up; null when none of them comes to where they are to be. */
export function comparisonChart(
  { firings }: Comparison,
  alignment: Alignment = AT_PEAK,
): ((style: ChartStyle) => TopLevelSpec) | null {
  const laid = firings.map((firing) => ({
    name: firing.title,
    curve: linedUp(firing, alignment)?.curve ?? null,
  }));
  if (laid.every(({ curve }) => curve === null)) return null;
  return (style) =>
    overlayChart({
      ...alignmentWords(alignment, style.unit),
      firings: laid,
      bands: BANDS,
      ...style,
    });
}

/** The charts of a study of firings and their tiles. */
export interface StudyCharts {
  /** Each firing by itself. */
  readonly firings: (style: ChartStyle) => TopLevelSpec;
  /** What moved with what; null when fewer than two things did. */
  readonly causes: ((style: ChartStyle) => TopLevelSpec) | null;
  /** Fit by files and by tiles; null when no glaze file is known. */
  readonly fits: ((style: ChartStyle) => TopLevelSpec) | null;
  /** Spacing against coat for each glaze. */
  readonly spacing: readonly {
    readonly glaze: string;
    readonly chart: (style: ChartStyle) => TopLevelSpec;
  }[];
}

/** The charts that go with a comparison and the study of its tiles. */
export function studyCharts(comparison: Comparison, study: FiringStudy): StudyCharts {
  const { confounding } = study;
  return {
    firings: ({ unit, dark }) =>
      firingsChart({
        title: "The firings one by one",
        firings: comparison.firings.map(({ title, aligned }, at) => ({
          name: title,
          curve: aligned,
          opened: openedOf(study, at),
        })),
        bands: BANDS,
        unit,
        ...(dark !== undefined && { dark }),
      }),
    causes:
      confounding !== null && confounding.causes.length > 1
        ? ({ dark }) =>
            causesChart({
              title: "What moved with what",
              confounding,
              ...(dark !== undefined && { dark }),
            })
        : null,
    fits: fitsOf(study),
    spacing: study.glazes.filter(hasSpacing(study)).map(({ glaze, spacing }) => ({
      glaze,
      chart: ({ dark }) =>
        spacingChart({
          title: `Crack spacing against coat, ${glaze}`,
          tiles: study.tiles.tiles.filter((tile) => tile.glaze === glaze),
          fit: spacing,
          expected: expectedOf(study, glaze),
          ...(dark !== undefined && { dark }),
        }),
    })),
  };
}

function fitsOf({ fits }: FiringStudy): StudyCharts["fits"] {
  const pairs = fits?.pairs ?? [];
  if (pairs.length === 0) return null;
  return ({ dark }) =>
    fitsChart({
      title: "How the glazes fit their clays",
      pairs,
      ...(dark !== undefined && { dark }),
    });
}

/** Spacing to expect by the files, once for each clay: of the body that most of its tiles have. */
function expectedOf({ fits }: FiringStudy, glaze: string) {
  const own = fits?.pairs.filter((pair) => pair.glaze === glaze) ?? [];
  return own
    .filter(({ clay }, at) => own.findIndex((pair) => pair.clay === clay) === at)
    .map(({ clay, expected }) => ({ clay, points: expected }));
}

/** Tells of a glaze whether any of its tiles says something of spacing, and so can be drawn. */
function hasSpacing({ tiles }: FiringStudy) {
  return ({ glaze }: { readonly glaze: string }): boolean =>
    tiles.tiles.some((tile) => tile.glaze === glaze && tile.spacing.kind !== "not measured");
}

function openedOf({ firings }: FiringStudy, at: number) {
  const factOf = (name: string) =>
    firings[at]?.facts.find((fact) => fact.name === name)?.value ?? null;
  const [atSeconds, tempC] = [factOf("openedAfter"), factOf("openedAt")];
  return atSeconds === null || tempC === null ? null : { atSeconds, tempC };
}

function chartsFor(firing: {
  readonly title: string;
  readonly zones: readonly { readonly name: string; readonly curve: Curve }[];
  readonly planned: Curve | null;
  readonly predicted?: Curve | null;
  readonly curve: Curve;
  readonly heatwork: Heatwork;
  readonly crossings: readonly Crossing[];
  readonly events: readonly { readonly label: string; readonly atSeconds: number }[];
  readonly startOfDaySeconds: number | null;
  /** The piece that bears the least. */
  readonly weakest: PieceStrain | null;
}): FiringCharts {
  const { title, planned, heatwork, weakest } = firing;
  const zones = firing.zones.map(({ name, curve }) => ({ name, curve }));
  return {
    firing: (style) =>
      firingChart({
        title,
        zones,
        planned,
        predicted: firing.predicted ?? null,
        bands: firing.crossings.some(({ isCristobalitic }) => isCristobalitic)
          ? BANDS
          : [QUARTZ_BAND],
        conesDown: conesDown(firing.curve, heatwork),
        events: firing.events,
        startOfDaySeconds: firing.startOfDaySeconds,
        ...style,
      }),
    cooling: (style) =>
      coolingChart({
        title: zones.length > 0 ? "How fast it cooled" : "How fast it will cool",
        zones,
        planned,
        limits: guidesOf(firing.crossings),
        limitCurve: weakest && {
          label: `half the strength of ${weakest.name}, computed`,
          points: limitCurve(weakest.ware),
        },
        ...style,
      }),
    cones: (style) =>
      conesChart({
        title: zones.length > 0 ? "How the cones fell" : "How the cones will fall",
        traces: heatworkTrace({
          curve: firing.curve,
          series: heatwork.series,
          cones: neighbours(heatwork),
          offsetK: heatwork.offsetK,
        }),
        ...style,
      }),
    strain: weakest?.passages.some(({ direction }) => direction === "cooling")
      ? ({ dark = false }) =>
          strainChart({ title: "Stress in the ware", curve: firing.curve, strained: weakest, dark })
      : null,
  };
}

/** The guides as steps, each over the part of its band in which it is to be kept. */
function guidesOf(crossings: readonly Crossing[]) {
  return crossings.flatMap(({ band, direction, limitCPerHour, limitFromC, limitToC, severity }) =>
    direction === "heating" || limitCPerHour === null || limitFromC === null || limitToC === null
      ? []
      : [
          {
            band: { name: band, lowC: limitToC, highC: limitFromC },
            limitCPerHour,
            label: `guide, ${band}`,
            isBroken: severity === "caution" || severity === "warning",
          },
        ],
  );
}

function neighbours(heatwork: Heatwork): readonly string[] {
  const names = heatwork.cones.map((state) => state.cone).filter((cone) => !cone.includes("."));
  const reached = names.indexOf(heatwork.position.cone ?? names[0]!);
  return names.slice(Math.max(0, reached - NEIGHBOURS + 1), reached + NEIGHBOURS + 1);
}

/** The last cones to fall, with the temperature that the Curve had then. */
function conesDown(curve: Curve, heatwork: Heatwork) {
  const shown = new Set(neighbours(heatwork));
  return heatwork.cones.flatMap(({ cone, downAtSeconds }) => {
    const tempC = downAtSeconds === null ? null : temperatureAt(curve, downAtSeconds);
    return downAtSeconds === null || tempC === null || !shown.has(cone)
      ? []
      : [{ cone, atSeconds: downAtSeconds, tempC }];
  });
}

function secondsOfDay(wallTime: string): number {
  const [hours, minutes, seconds] = wallTime.slice(11).split(":").map(Number);
  return (hours ?? 0) * 3600 + (minutes ?? 0) * 60 + (seconds ?? 0);
}
