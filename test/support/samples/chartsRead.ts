import type { ChartSpec, Row } from "../../../src/core/charts/chartSpec.ts";

/** One layer as a test reads it: kind of mark, its properties, its rows. */
export interface ReadLayer {
  readonly mark: Readonly<Record<string, unknown>>;
  readonly rows: readonly Row[];
}

/** The layers of a chart whose mark is of a type. */
export function layersOf(spec: ChartSpec, type: string): readonly ReadLayer[] {
  return (spec.layer as unknown as readonly { mark: ReadLayer["mark"]; data: { values: Row[] } }[])
    .filter((layer) => layer.mark.type === type)
    .map((layer) => ({ mark: layer.mark, rows: layer.data.values }));
}

/** Everything that is written in a chart, once each. */
export function wordsOf(spec: ChartSpec): readonly string[] {
  return [
    ...new Set(
      layersOf(spec, "text").flatMap((layer) => layer.rows.map((row) => String(row.text))),
    ),
  ];
}

/** Range of an axis, as all layers agree on it. */
export function rangeOf(spec: ChartSpec, channel: "x" | "y"): readonly number[] {
  const [range, ...others] = [
    ...new Set(
      (
        spec.layer as unknown as readonly {
          encoding: Record<string, { scale: { domain: number[] } }>;
        }[]
      ).map((layer) => JSON.stringify(layer.encoding[channel]?.scale.domain)),
    ),
  ];
  if (others.length > 0) throw new RangeError(`rangeOf: layers disagree about ${channel}`);
  return JSON.parse(range ?? "[]");
}
