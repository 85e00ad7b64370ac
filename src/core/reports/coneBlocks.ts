import type { ConeSeries, ConeState, Heatwork, TableSeries } from "../cones/cone.ts";
import { printDifference, printRate, printTemperature } from "../text/quantities.ts";
import { capitalised, stopped } from "../text/wrap.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import type { Block, Cell } from "./Block.ts";
import { momentLines } from "./moments.ts";
import { reportText, type TextOptions } from "./reportText.ts";

/** How well an end point is known: seen in two copies of the table, in one, or remembered. */
type EndPointConfidence = "two-copies" | "one-copy" | "from-memory";

/** The published end points of a series, as they are shown. */
export interface ConesInput {
  readonly series: string;
  readonly rows: readonly {
    readonly cone: string;
    /** One per rate; null where the table prints none. */
    readonly cells: readonly ({
      readonly tempC: number;
      readonly confidence: EndPointConfidence;
    } | null)[];
  }[];
  /** Rates of the columns [°C/h]; empty for a table without rates. */
  readonly ratesCPerHour: readonly number[];
  readonly sources: readonly string[];
}

/** What heating rates do to one cone, as they are shown. */
export interface ConeInput {
  readonly series: string;
  readonly cone: string;
  readonly rows: readonly {
    readonly rateCPerHour: number;
    readonly tempC: number;
    readonly sigmaK: number;
    readonly basis: "printed" | "model";
    /** Of a printed cell; null for the model. */
    readonly confidence: EndPointConfidence | null;
    readonly extrapolated: boolean;
  }[];
  /** Columns of the table [°C/h]. */
  readonly printedCPerHour: readonly number[];
  readonly sources: readonly string[];
}

const MARKS: Readonly<Record<EndPointConfidence, string>> = {
  "two-copies": "",
  "one-copy": "†",
  "from-memory": "*",
};

const EXPLANATIONS: Readonly<Record<EndPointConfidence, string | null>> = {
  "two-copies": null,
  "one-copy": "† read in one copy of the table only.",
  "from-memory":
    "* from memory: not read again in any copy of the table, and the first to be replaced.",
};

/** The published end points of a series as text, each marked by how well it is known. */
export function conesText(input: ConesInput, options: TextOptions): string {
  const { unit } = options;
  const used = new Set(input.rows.flatMap(({ cells }) => cells.map((cell) => cell?.confidence)));
  const explanations = (["one-copy", "from-memory"] as const).flatMap((confidence) =>
    used.has(confidence) ? [EXPLANATIONS[confidence]!] : [],
  );
  const heads = input.ratesCPerHour.map((rate) => printRate(rate, unit));
  const widest = Math.max(1, ...input.rows.map(({ cells }) => cells.length));
  const blocks: readonly Block[] = [
    {
      kind: "table",
      caption:
        heads.length === 0
          ? "End points"
          : `End points by the heating rate over the last ${printDifference(100, unit)}`,
      columns: [
        { head: "cone", align: "right" },
        ...Array.from(
          { length: widest },
          (_, column) => ({ head: heads[column] ?? "end point", align: "right" }) as const,
        ),
      ],
      rows: input.rows.map(({ cone, cells }): readonly Cell[] => [
        cone,
        ...Array.from({ length: widest }, (_, column) => {
          const cell = cells[column] ?? null;
          return cell === null
            ? "–"
            : `${printTemperature(cell.tempC, unit)}${MARKS[cell.confidence].padStart(1, " ")}`;
        }),
      ]),
    },
    ...explanations.map((text) => ({ kind: "sentence", text }) as const),
    ...restsOn(input.sources),
  ];
  return reportText({ title: capitalised(seriesName(input.series)), blocks }, options.paint);
}

/** What heating rates do to one cone, as text: end points with their ± and where each is from. */
export function coneText(input: ConeInput, options: TextOptions): string {
  const { unit } = options;
  const blocks: readonly Block[] = [
    {
      kind: "sentence",
      text: "The slower the last stretch, the lower the temperature at which the cone goes down.",
    },
    {
      kind: "table",
      caption: `Where cone ${input.cone} goes down`,
      columns: [
        { head: "heating at", align: "right" },
        { head: "down at", align: "right" },
        { head: "give or take", align: "right" },
        { head: "from", align: "left" },
      ],
      rows: input.rows.map((row): readonly Cell[] => [
        printRate(row.rateCPerHour, unit),
        printTemperature(row.tempC, unit),
        `± ${printDifference(Math.max(1, row.sigmaK), unit)}`,
        basisText(row, input.printedCPerHour),
      ]),
    },
    ...restsOn(input.sources),
  ];
  const title = `Cone ${input.cone}, ${seriesName(input.series)}`;
  return reportText({ title, blocks }, options.paint);
}

/** Where an end point is from; a cell that was not read again is never called printed. */
function basisText(row: ConeInput["rows"][number], printed: readonly number[]): string {
  if (row.confidence === "from-memory") return "from memory, in no copy read again";
  if (row.confidence === "one-copy") return "printed, read in one copy of the table";
  if (row.basis === "printed") return "printed in the table";
  if (row.extrapolated) return "model, far beyond the rates in the table";
  if (row.rateCPerHour < Math.min(...printed)) return "model, slower than the table goes";
  if (row.rateCPerHour > Math.max(...printed)) return "model, faster than the table goes";
  return "model, between printed rates";
}

function restsOn(sources: readonly string[]): readonly Block[] {
  if (sources.length === 0) return [];
  return [
    { kind: "heading", text: "What this rests on" },
    { kind: "list", items: sources.map(stopped) },
  ];
}

/** Whether a Curve was measured or is planned; the sentences about it change their tense. */
type Tense = "was" | "will be";

const SERIES_NAMES: Readonly<Record<TableSeries, string>> = {
  "self-supporting": "self-supporting cones",
  "self-supporting-iron-free": "self-supporting cones, iron-free",
  large: "large cones",
  "large-iron-free": "large cones, iron-free",
  small: "small cones",
  "large-legacy": "large cones, older table",
  "fairchild-peters-1926": "cones as measured by Fairchild and Peters, 1926",
  pce: "cones for refractories (PCE)",
  "seger-jis": "Seger cones, Japanese standard",
  "seger-european": "Seger cones, European",
};

/** A cone series in words. */
export function seriesName(series: string): string {
  return SERIES_NAMES[series as ConeSeries] ?? series;
}

/** Where the heat stands among the cones, as a potter would say it. */
export function positionSentence(heatwork: Heatwork, tense: Tense): string {
  const { cone, fraction, next } = heatwork.position;
  const isMeasured = tense === "was";
  const down = isMeasured ? "was down" : "goes down";
  if (cone === null) {
    const softest = heatwork.cones[0]?.cone;
    const which = softest === undefined ? "the softest cone" : `cone ${softest}, the softest`;
    return `Not even ${which} of the series, ${down}.`;
  }
  if (next === null || fraction === null)
    return `Cone ${cone} ${down}; the series has no harder cone to measure the rest by.`;
  if (fraction < 0.1) return `Cone ${cone} ${isMeasured ? "was just down" : "just goes down"}.`;
  const carried = isMeasured ? "carried on" : "carries on";
  return `Cone ${cone} ${down}, and the heat ${carried} ${shareWords(fraction)} of the way to cone ${next}.`;
}

/** What the ± beside a cone means, and what is allowed for; says so when no ± can be given. */
export function plusMinusSentence(heatwork: Heatwork, unit: TemperatureUnit): string {
  const allowed = usualText(heatwork, unit);
  if (heatwork.sigmaCones === null)
    return `How far off this may be is not known, so no ± is given.${allowed}`;
  return `Two firings in three lie within ${plusMinus(heatwork.sigmaCones)} cones of this: cone model, thermocouple and place in the kiln taken together.${allowed}`;
}

/** What kilns are usually out by, where it was allowed for and is worth a word. */
function usualText({ offsetIs, offsetK }: Heatwork, unit: TemperatureUnit): string {
  if (offsetIs !== "usual" || Math.abs(offsetK) < 0.5) return "";
  return ` Kilns usually run a little hotter for the cone than they read; ${printDifference(offsetK, unit)} is allowed for, and witness cones would tell what yours does.`;
}

/** A position with its ±: `cone 5 + 60 % (± 0.6 cones)`. */
export function coneLabel(heatwork: Heatwork): string {
  const { label } = heatwork.position;
  return heatwork.sigmaCones === null
    ? label
    : `${label} (± ${plusMinus(heatwork.sigmaCones)} cones)`;
}

/** One sigma in cones, to a tenth, never shown as nothing. */
export function plusMinus(sigmaCones: number): string {
  return Math.max(0.1, sigmaCones).toFixed(1);
}

function shareWords(fraction: number): string {
  if (fraction < 0.18) return "a little";
  if (fraction < 0.29) return "about a quarter";
  if (fraction < 0.42) return "about a third";
  if (fraction < 0.58) return "about half";
  if (fraction < 0.71) return "about two thirds";
  return fraction < 0.9 ? "about three quarters" : "nearly all";
}

const SHOWN = 4;

/** How the cones nearest to the heat reached would stand; empty when the series has none. */
export function coneTableBlocks(
  heatwork: Heatwork,
  context: {
    readonly unit: TemperatureUnit;
    readonly tense: Tense;
    readonly startOfDaySeconds: number | null;
  },
): readonly Block[] {
  const { unit, tense, startOfDaySeconds } = context;
  const nearest = nearestCones(heatwork.cones);
  if (nearest.length === 0) return [];
  return [
    {
      kind: "table",
      caption: tense === "was" ? "How cones in the kiln should have stood" : "How cones will stand",
      columns: [
        { head: "cone", align: "left" },
        { head: "stands", align: "left" },
        { head: "past (+) or short (−) of its end", align: "right" },
        { head: "model ±", align: "right" },
        { head: "down (h:min after start)", align: "right" },
      ],
      rows: nearest.map((state): readonly Cell[] => [
        state.cone,
        state.bend,
        `${state.marginK < 0 ? "−" : "+"}${printDifference(Math.abs(state.marginK), unit)}`,
        `± ${printDifference(Math.max(1, state.marginSigmaK), unit)}`,
        state.downAtSeconds === null
          ? "–"
          : { lines: momentLines(startOfDaySeconds, state.downAtSeconds) },
      ]),
    },
  ];
}

function nearestCones(cones: readonly ConeState[]): readonly ConeState[] {
  const nearest = new Set(
    [...cones].sort((a, b) => Math.abs(a.marginK) - Math.abs(b.marginK)).slice(0, SHOWN),
  );
  return cones.filter((state) => nearest.has(state));
}
