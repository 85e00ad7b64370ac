import type { SpacingFit } from "../trials/FiringStudy.ts";
import type { Tile } from "../trials/Tile.ts";
import { type ChartSpec, drawn, type Layer, VEGA_LITE_SCHEMA } from "./chartSpec.ts";
import { type Frame, PLOT_WIDTH } from "./frame.ts";
import { lineLayer } from "./layers.ts";
import { type AxisDef, acrossAxis, type Places, placing, upAxis } from "./places.ts";
import { type ExpectedCurve, expectedLayers } from "./spacingExpected.ts";
import { guideLayers } from "./spacingGuides.ts";
import { spacingKey } from "./spacingKey.ts";
import { tileLayers, tileMarks } from "./spacingTiles.ts";
import { type LineStyle, styleAt, theme, themeConfig } from "./theme.ts";

/** What a chart of crack spacing against coat shows. */
export interface SpacingChartInput {
  readonly title: string;
  /** Of one glaze; tiles without a spacing are left out. */
  readonly tiles: readonly Tile[];
  /** Null when there is too little for a line. */
  readonly fit: SpacingFit | null;
  /** Spacing to expect by the files of glaze and body, clay by clay. */
  readonly expected?: readonly ExpectedCurve[];
  readonly dark?: boolean;
}

const HEIGHT = 400;

/** Room beyond the outermost mark, in decimal logarithms. */
const ROOM = 0.06;

/**
 * Crack spacing against coat, both on logarithmic axes: clays by shape, sides by filling, tiles that
 * did not crack as open arrows from the least that their spacing can be, the fitted line with its
 * band, lines of the powers ½ and 1 to hold it against, and what files of glaze and body let expect.
 * @throws RangeError when no tile has a spacing or a bound of one.
 */
export function spacingChart(input: SpacingChartInput): ChartSpec {
  const tiles = input.tiles.filter(({ spacing }) => spacing.kind !== "not measured");
  if (tiles.length === 0) throw new RangeError("spacingChart: no tile says anything of spacing");
  const colours = theme(input.dark);
  const fitted = styleAt(colours.measured, 1);
  const { fit, expected = [] } = input;
  const frame = frameOf(tiles, fit, expected);
  const places: Places = {
    xField: "logCoat",
    yField: "logSpacing",
    x: logAxis(acrossAxis("Fired coat (mm)", frame.x, logTicks(frame.x))),
    y: logAxis(upAxis("Crack spacing (mm)", frame.y, logTicks(frame.y))),
  };
  return {
    $schema: VEGA_LITE_SCHEMA,
    description: descriptionOf(input, tiles),
    title: { text: input.title, subtitle: [subtitleOf(fit), CAUTION] },
    background: colours.paper,
    padding: 18,
    width: frame.width,
    height: frame.height,
    layer: [
      ...(fit === null ? [] : bandLayers(places, fit, fitted.stroke)),
      ...guideLayers({ places, frame, tiles, fit, colours }),
      ...(fit === null ? [] : [lineOf(places, fit, fitted)]),
      ...expectedLayers(places, expected, tileMarks(tiles, colours)),
      ...tileLayers(places, tiles, colours),
      ...spacingKey({ places, frame, tiles, fit, colours, hasExpected: expected.length > 0 }),
    ],
    config: themeConfig(colours),
  };
}

function frameOf(
  tiles: readonly Tile[],
  fit: SpacingFit | null,
  expected: readonly ExpectedCurve[],
): Frame {
  const coats = tiles.flatMap(({ coat: { firedMm, sigmaMm } }) => [
    Math.max(firedMm / 2, firedMm - sigmaMm),
    firedMm + sigmaMm,
  ]);
  const spacings = [
    ...tiles.flatMap(({ spacing }) => {
      if (spacing.kind === "uncracked") return [spacing.atLeastMm, spacing.atLeastMm * 1.35];
      if (spacing.kind !== "measured") return [];
      return [spacing.pitchMm, spacing.lowMm ?? spacing.pitchMm, spacing.highMm ?? spacing.pitchMm];
    }),
    ...(fit?.curve.flatMap(({ lowMm, highMm }) => [lowMm, highMm]) ?? []),
    ...expected.flatMap(({ points }) => points.flatMap(({ medianMm }) => medianMm ?? [])),
  ];
  return { width: PLOT_WIDTH, height: HEIGHT, x: rangeOf(coats), y: rangeOf(spacings) };
}

function rangeOf(amounts: readonly number[]): [number, number] {
  const logs = amounts.map((amount) => Math.log10(amount));
  return [drawn(Math.min(...logs) - ROOM), drawn(Math.max(...logs) + ROOM)];
}

function bandLayers(places: Places, { curve }: SpacingFit, colour: string): readonly Layer[] {
  return [
    {
      data: {
        values: curve.map(({ coatMm, lowMm, highMm }) => ({
          logCoat: drawn(Math.log10(coatMm)),
          logSpacing: drawn(Math.log10(lowMm)),
          high: drawn(Math.log10(highMm)),
        })),
      },
      mark: { type: "area", color: colour, opacity: 0.18, clip: true },
      encoding: { ...placing(places), y2: { field: "high" } },
    },
  ];
}

function lineOf(places: Places, { curve }: SpacingFit, style: LineStyle): Layer {
  return lineLayer(
    places,
    curve.map(({ coatMm, pitchMm }, order) => ({
      logCoat: drawn(Math.log10(coatMm)),
      logSpacing: drawn(Math.log10(pitchMm)),
      piece: 0,
      order,
    })),
    style,
    "order",
  );
}

/** A chart may be passed on without the report that it stood in. */
const CAUTION = "A crackled surface is not for food or drink.";

function subtitleOf(fit: SpacingFit | null): string {
  if (fit === null) return "Too little for a line; both axes are logarithmic";
  const { value, low, high } = fit.exponent;
  const range = [low, high].map((end) => (Number.isFinite(end) ? end.toFixed(2) : "no end"));
  const levels = fit.curveIsOf.filter(({ factor }) => factor !== "firing").map(levelWords);
  const of = levels.length === 0 ? "" : `; the line is for ${levels.join(", ")}`;
  return `Power ${value.toFixed(2)} (${range.join(" to ")}) from ${fit.tiles} tiles${of}`;
}

function levelWords({ factor, level }: SpacingFit["curveIsOf"][number]): string {
  if (factor === "sides") return level === "one" ? "one side glazed" : "both sides glazed";
  return level;
}

function descriptionOf({ title, fit }: SpacingChartInput, tiles: readonly Tile[]): string {
  const uncracked = tiles.filter(({ spacing }) => spacing.kind === "uncracked").length;
  const measured = tiles.length - uncracked;
  const said =
    fit === null
      ? "no line is fitted"
      : `the fitted line rises with the power ${fit.exponent.value.toFixed(2)} of the coat`;
  return `${title}: crack spacing against fired coat for ${measured} measured and ${uncracked} uncracked tiles on logarithmic axes; ${said}; lines of the powers ½ and 1 to hold it against.`;
}

/** An axis over decimal logarithms, its ticks labelled with the amounts themselves. */
interface LogAxis extends AxisDef {
  readonly axis: AxisDef["axis"] & { readonly labelExpr: string };
}

/** What ticks may stand at, between 1 and 10. */
const FINE = [1, 1.5, 2, 3, 4, 5, 6, 8];
const COARSE = [1, 2, 5];

/** Turns an axis into one over decimal logarithms; its ticks are the logarithms of round amounts. */
function logAxis(axis: AxisDef): LogAxis {
  return {
    ...axis,
    axis: { ...axis.axis, labelExpr: "format(pow(10, datum.value), '.2~f')" },
  };
}

/** Round amounts inside a range of decimal logarithms, as logarithms; fewer when the range is wide. */
function logTicks([low, high]: readonly [number, number]): readonly number[] {
  const leads = high - low > 1.2 ? COARSE : FINE;
  const powers = Array.from(
    { length: Math.ceil(high) - Math.floor(low) + 1 },
    (_, i) => Math.floor(low) + i,
  );
  return powers
    .flatMap((power) => leads.map((lead) => drawn(Math.log10(lead) + power)))
    .filter((tick) => tick >= low - 1e-9 && tick <= high + 1e-9);
}
