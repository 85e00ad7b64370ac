import { heatworkAtClock } from "../cones/followCone.ts";
import { printElapsed } from "../text/quantities.ts";
import { type ChartSpec, drawn, type Layer, type Row, VEGA_LITE_SCHEMA } from "./chartSpec.ts";
import { type Frame, PLOT_WIDTH, pixelAt } from "./frame.ts";
import { keyLayers } from "./key.ts";
import { type Label, labelLayers, lineLayer } from "./layers.ts";
import { labelWidth, spread } from "./placement.ts";
import { acrossAxis, type Places, placing, upAxis } from "./places.ts";
import { hourTicks } from "./quantities.ts";
import { type LineStyle, styleAt, type Theme, theme, themeConfig } from "./theme.ts";

/** Heatwork of one cone over time. */
interface ConeTrace {
  readonly cone: string;
  readonly timesSeconds: Float64Array;
  /** Share of the cone's budget, never falling; 1 = down. */
  readonly heatwork: Float64Array;
}

/** What a cones chart shows. */
export interface ConesChartInput {
  readonly title: string;
  readonly traces: readonly ConeTrace[];
  readonly dark?: boolean;
}

const HEIGHT = 260;

/** Heatwork at the top edge: enough to see a cone go past down. */
const TOP = 1.3;

/** Heatwork at which a cone is seen to bend; inferred by the cones room, not measured. */
const BENDING = [
  { heatwork: heatworkAtClock(0).heatwork, words: "starts to bend" },
  { heatwork: heatworkAtClock(3).heatwork, words: "half down" },
];

interface Line extends ConeTrace {
  readonly style: LineStyle;
  readonly last: number;
  /** Where it is down [h]; null when it never is. */
  readonly downHours: number | null;
  /** Where it leaves the chart at the top [h]; null when it stays inside. */
  readonly leavesHours: number | null;
}

/**
 * Heatwork of neighbouring cones over time: each line is one cone, 1 is down. Only the time in which
 * something happens is shown; a cone that is well past down leaves the chart at the top, named there.
 * @throws RangeError when there is no trace.
 */
export function conesChart(input: ConesChartInput): ChartSpec {
  if (input.traces.length === 0) throw new RangeError("conesChart: no traces");
  const colours = theme(input.dark);
  const lines = input.traces.map((trace, i) => lineOf(trace, styleAt(colours.compared, i)));
  const frame = frameOf(lines);
  const places: Places = {
    xField: "elapsedHours",
    yField: "heatwork",
    x: acrossAxis("Elapsed time (h)", frame.x, hourTicks(frame.x[0], frame.x[1])),
    y: levelAxis(frame),
  };
  return {
    $schema: VEGA_LITE_SCHEMA,
    description: descriptionOf(input, lines),
    title: {
      text: input.title,
      subtitle: "Heatwork of each cone as a share of what brings it down",
    },
    background: colours.paper,
    padding: 18,
    width: frame.width,
    height: frame.height,
    layer: [
      ...levelLayers(places, frame, colours),
      ...lines.map((line) => lineLayer(places, rowsOf(line, frame), line.style, "elapsedHours")),
      ...labelLayers(places, frame, topLabels(lines, frame), colours.ink, colours.paper),
      ...keyLayers(
        places,
        frame,
        lines
          .filter((line) => line.leavesHours === null)
          .map((line) => ({
            name: `cone ${line.cone}`,
            details: [stateText(line)],
            nearY: pixelAt(frame, 0, line.last).y,
            style: line.style,
          })),
        colours,
      ),
    ],
    config: themeConfig(colours),
  };
}

function lineOf(trace: ConeTrace, style: LineStyle): Line {
  const last = trace.heatwork.at(-1) ?? 0;
  return { ...trace, style, last, downHours: hoursAt(trace, 1), leavesHours: hoursAt(trace, TOP) };
}

/** When a trace first reaches a level [h], on the straight line between its points; null when it does not. */
function hoursAt({ timesSeconds, heatwork }: ConeTrace, level: number): number | null {
  const i = heatwork.findIndex((value) => value >= level);
  if (i < 0) return null;
  const to = timesSeconds[i]!;
  if (i === 0) return to / 3600;
  const from = timesSeconds[i - 1]!;
  const below = heatwork[i - 1]!;
  return (from + ((level - below) / (heatwork[i]! - below)) * (to - from)) / 3600;
}

/** From where the first cone begins to take heat to where the last one has all that it gets. */
function frameOf(lines: readonly Line[]): Frame {
  const all = lines.flatMap((line) => [line.timesSeconds[0]!, line.timesSeconds.at(-1)!]);
  const begins = lines.map((line) => hoursAt(line, 0.02)).filter((hours) => hours !== null);
  const ends = lines
    .map((line) => line.leavesHours ?? hoursAt(line, line.last * 0.995))
    .filter((hours) => hours !== null);
  const from = begins.length > 0 ? Math.min(...begins) : Math.min(...all) / 3600;
  const to =
    ends.length > 0 && Math.max(...ends) > from ? Math.max(...ends) : Math.max(...all) / 3600;
  const margin = (to - from) * 0.06;
  return {
    width: PLOT_WIDTH,
    height: HEIGHT,
    x: [
      drawn(Math.max(Math.min(...all) / 3600, from - margin)),
      drawn(Math.min(Math.max(...all) / 3600, to + margin)),
    ],
    y: [0, TOP],
  };
}

function levelAxis(frame: Frame): Places["y"] {
  const plain = upAxis("Heatwork (1 = down)", frame.y, [
    0,
    ...BENDING.map((level) => level.heatwork),
    1,
  ]);
  return { ...plain, axis: { ...plain.axis, grid: false } };
}

function levelLayers(places: Places, frame: Frame, colours: Theme): readonly Layer[] {
  const levels = [...BENDING, { heatwork: 1, words: "down" }];
  const rule = (
    heatwork: number,
    mark: { color: string; strokeWidth: number; strokeDash?: number[] },
  ): Layer => ({
    data: { values: frame.x.map((elapsedHours) => ({ elapsedHours, heatwork })) },
    mark: { type: "line", ...mark },
    encoding: placing(places),
  });
  const labels = levels.map(
    ({ heatwork, words }): Label => ({
      text: words,
      at: { x: 2, y: pixelAt(frame, 0, heatwork).y - 10 },
      align: "left",
    }),
  );
  return [
    ...BENDING.map(({ heatwork }) =>
      rule(heatwork, { color: colours.quiet, strokeWidth: 0.7, strokeDash: [2, 3] }),
    ),
    rule(1, { color: colours.ink, strokeWidth: 1.2 }),
    ...labelLayers(places, frame, labels, colours.quiet, colours.paper),
  ];
}

/**
 * The part of a trace that the chart shows, with one point beyond the top so that the line runs out of it,
 * or level to the right edge when the cone stood where it was.
 */
function rowsOf(line: Line, frame: Frame): readonly Row[] {
  const rows: Row[] = [];
  for (let i = 0; i < line.heatwork.length; i++) {
    const elapsedHours = line.timesSeconds[i]! / 3600;
    const heatwork = line.heatwork[i]!;
    if (elapsedHours < frame.x[0]) continue;
    if (elapsedHours > frame.x[1]) break;
    rows.push({ elapsedHours: drawn(elapsedHours), heatwork: drawn(heatwork), piece: 0 });
    if (heatwork > TOP) break;
  }
  if (line.leavesHours === null)
    rows.push({ elapsedHours: frame.x[1], heatwork: drawn(line.last), piece: 0 });
  const stride = Math.ceil(rows.length / 600);
  return rows.filter((_, i) => i % stride === 0 || i === rows.length - 1);
}

/** Names over the lines that leave at the top. */
function topLabels(lines: readonly Line[], frame: Frame): readonly Label[] {
  const leaving = lines.filter((line) => line.leavesHours !== null);
  const widest = Math.max(0, ...leaving.map((line) => labelWidth(stateText(line))));
  const xs = spread(
    leaving.map((line) => pixelAt(frame, line.leavesHours as number, 0).x),
    widest + 10,
    100 + widest / 2,
    frame.width,
  );
  return leaving.flatMap((line, i): readonly Label[] => {
    const x = xs[i]!;
    return [
      { text: `cone ${line.cone}`, at: { x, y: -28 }, align: "center" },
      { text: stateText(line), at: { x, y: -11 }, align: "center" },
    ];
  });
}

function stateText(line: Line): string {
  return line.downHours === null
    ? `heatwork ${line.last.toFixed(2)}`
    : `down at ${printElapsed(line.downHours * 3600)} h`;
}

function descriptionOf(input: ConesChartInput, lines: readonly Line[]): string {
  const states = lines.map(
    (line) =>
      `cone ${line.cone} ${line.downHours === null ? `reaches ${line.last.toFixed(2)}` : stateText(line)}`,
  );
  return `${input.title}: heatwork of each cone over time, where 1 is down; ${states.join(", ")}.`;
}
