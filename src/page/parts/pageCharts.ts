import type { TopLevelSpec } from "vega-lite";
import type { ChartStyle } from "../../core/charts/chartsOf.ts";
import type { ChartPair } from "../../core/reports/Block.ts";
import type { TemperatureUnit } from "../../core/units/temperature.ts";
import type { ChartSpecs } from "./chart.ts";

/** Charts of a report on the page: names to stand in its blocks, and the specs behind the names. */
export interface PageCharts<Name extends string> {
  /** To hand to the maker of the blocks. */
  readonly pairs: Readonly<Partial<Record<Name, ChartPair>>>;
  /** To hand to `blockList`. */
  readonly specs: ReadonlyMap<string, ChartSpecs>;
}

/**
 * Charts for the blocks of a report. Blocks hold drawings; on the page they hold the chart's name
 * in its place, so that it is drawn when it is shown. Null charts are left out.
 */
export function pageCharts<Name extends string>(
  makers: Readonly<Record<Name, ((style: ChartStyle) => TopLevelSpec) | null>>,
  style: { readonly unit: TemperatureUnit; readonly dark: boolean },
): PageCharts<Name> {
  const pairs: Partial<Record<Name, ChartPair>> = {};
  const specs = new Map<string, ChartSpecs>();
  for (const name of Object.keys(makers) as Name[]) {
    const maker = makers[name];
    if (maker === null) continue;
    const { unit } = style;
    pairs[name] = { light: name, dark: name };
    specs.set(name, {
      light: maker({ unit }),
      dark: style.dark ? maker({ unit, dark: true }) : null,
    });
  }
  return { pairs, specs };
}
