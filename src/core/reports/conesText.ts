import { printDifference, printRate, printTemperature } from "../units/print.ts";
import type { Block, Cell } from "./Block.ts";
import { capitalised, stopped } from "./capitalised.ts";
import { reportText, type TextOptions } from "./reportText.ts";
import { seriesName } from "./sections/coneWords.ts";

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
