import type { TopLevelSpec } from "vega-lite";
import { type PictureSpec, VEGA_LITE_SCHEMA } from "./chartSpec.ts";

/**
 * Several charts as one picture, one above the other, plots in line with each other.
 * Colours and fonts are those of the first, so all must be made with the same theme.
 * @throws RangeError when there is no chart.
 */
export function reviewPicture(charts: readonly TopLevelSpec[]): PictureSpec {
  const [first] = charts;
  if (!first) throw new RangeError("reviewPicture: no charts");
  return {
    $schema: VEGA_LITE_SCHEMA,
    description: charts.map((chart) => chart.description ?? "").join(" "),
    ...shared(first),
    spacing: 46,
    bounds: "full",
    vconcat: charts.map(part),
  };
}

function shared({
  background,
  padding,
  config,
}: TopLevelSpec): Pick<TopLevelSpec, "background" | "padding" | "config"> {
  return {
    ...(background === undefined ? {} : { background }),
    ...(padding === undefined ? {} : { padding }),
    ...(config === undefined ? {} : { config }),
  };
}

/** A chart without what belongs to the whole picture. */
function part(chart: TopLevelSpec): PictureSpec["vconcat"][number] {
  const { $schema, background, padding, config, ...rest } = chart;
  return rest as PictureSpec["vconcat"][number];
}
