import { CONE_TABLES, type ConeTable, parseCone, type TableSeries } from "../../core/cones/cone.ts";
import { endPointC } from "../../core/cones/endPoint.ts";
import { failed, ok, type Result } from "../../core/problem.ts";
import { type ConeInput, conesText, coneText } from "../../core/reports/coneBlocks.ts";
import { conesDocument } from "../../core/reports/documents/conesDocument.ts";
import { CONES_SOURCES } from "../../core/sources/cones.ts";
import {
  celsiusDeltaFromFahrenheitDelta,
  type TemperatureUnit,
} from "../../core/units/temperature.ts";
import { answer, answerJson, type CommonOptions, EXIT, paintFor, refuse } from "../conversation.ts";

/** Rates at which one cone is shown beside the chart's own, as people set them in either unit [°C/h]. */
const SHOWN_RATES = {
  C: [10, 15, 30, 60, 100, 150, 200, 300],
  F: [50, 100, 150, 200, 300].map(celsiusDeltaFromFahrenheitDelta),
} as const;

/** `undunted cones [CONE]`: the published tables, and what a rate does to one cone. */
export async function run(
  given: string | undefined,
  options: CommonOptions & { readonly series: string },
): Promise<number> {
  const series = seriesFrom(options.series);
  if (!series.ok) return refuse(series.problems, options);
  const table = CONE_TABLES[series.value];
  const view = { unit: options.unit ?? "C", paint: paintFor(options) } as const;
  if (given === undefined) {
    const input = tableInput(table);
    if (options.json) answerJson(conesDocument(input));
    else answer(conesText(input, view));
    return EXIT.fine;
  }
  const cone = parseCone(given, { series: series.value, where: "command line" });
  if (!cone.ok) return refuse(cone.problems, options);
  const input = coneInput(table, cone.value, options.json ? "C" : view.unit);
  if (options.json) answerJson(conesDocument(input));
  else answer(coneText(input, view));
  return EXIT.fine;
}

function seriesFrom(name: string): Result<TableSeries> {
  const names = Object.keys(CONE_TABLES) as TableSeries[];
  const found = names.find((series) => series === name.toLowerCase());
  if (found) return ok(found);
  return failed({
    code: "command/series",
    where: "--series",
    what: `"${name}" is not a series of cones`,
    expected: names.join(", "),
    fix: "one of these names",
  });
}

function tableInput(table: ConeTable) {
  return {
    series: table.series,
    ratesCPerHour: table.ratesCPerHour.flatMap((rate) => (rate === null ? [] : [rate])),
    rows: table.rows.map((row) => ({
      cone: row.cone,
      cells: row.endPoints.map(
        (cell) => cell && { tempC: cell.tempC, confidence: cell.confidence },
      ),
    })),
    sources: sourceTitles(table.sources),
  };
}

function coneInput(table: ConeTable, cone: string, unit: TemperatureUnit): ConeInput {
  const printed = table.ratesCPerHour.flatMap((rate) => (rate === null ? [] : [rate]));
  const rates = [...new Set([...SHOWN_RATES[unit], ...printed])].sort((a, b) => a - b);
  return {
    series: table.series,
    cone,
    rows: rates.flatMap((rateCPerHour) => {
      const end = endPointC({ series: table.series, cone, rateCPerHour });
      return end.ok ? [{ rateCPerHour, ...end.value }] : [];
    }),
    printedCPerHour: printed,
    sources: sourceTitles(sourcesOf(table, cone)),
  };
}

/** What the printed end points of one cone were read from; the model of it is held to the same. */
function sourcesOf(table: ConeTable, cone: string): ConeTable["sources"] {
  const cells = table.rows.find((row) => row.cone === cone)?.endPoints ?? [];
  const used = new Set(cells.flatMap((cell) => cell?.sources ?? []));
  return table.sources.filter((id) => used.has(id));
}

function sourceTitles(sources: ConeTable["sources"]): readonly string[] {
  return sources.map((id) => {
    const { title, publisher, locator } = CONES_SOURCES[id];
    return `${title} (${publisher}; ${locator})`;
  });
}
