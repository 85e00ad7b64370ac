import { type Box, densely, freestBox } from "../../core/charts/placement.ts";
import { textWidth } from "../../core/charts/textWidth.ts";
import type { ChartRead, LayerRead, Row } from "./ChartRead.ts";

/** Words that take a larger share of the plot than this look for the place where they cover least. */
const LONG = 1 / 3;

/** From one place that is tried to the next [px]. */
const STEP = 6;

/** Half the height of a line of small words [px]. */
const HALF_LINE = 8;

/** Moves long words of a narrow plot along their line to where they cover the curves least; null for others. */
export function freeWords(
  chart: ChartRead,
  narrow: { readonly width: number; readonly height: number },
): (row: Row, layer: LayerRead) => number | null {
  const placed = placedIn(narrow);
  const lines = chart.layer
    .filter(({ mark }) => mark.type === "line" && mark.clip)
    .flatMap((layer) => densely(layer.data.values.map((row) => placed(row, layer))));
  const frame = { ...narrow, x: [0, 1], y: [0, 1] } as const;
  return (row, layer) => {
    const text = layer.encoding.text?.field;
    if (text === undefined || layer.mark.align === "right") return null;
    const wide = textWidth(String(row[text]), layer.mark.fontSize ?? 11);
    if (wide < LONG * narrow.width) return null;
    const { x, y } = placed(row, layer);
    const shift = layer.mark.align === "center" ? wide / 2 : 0;
    const tried = leftsNear(x - shift, narrow.width - wide).map(
      (left): Box => ({
        left,
        right: left + wide,
        top: y - HALF_LINE,
        bottom: y + HALF_LINE,
      }),
    );
    return freestBox(tried, { lines, boxes: [] }, frame).left + shift;
  };
}

/** Left ends to try, from where the words want to be outwards, inside the plot. */
function leftsNear(wanted: number, most: number): readonly number[] {
  const last = Math.max(0, most);
  const all = [Math.min(Math.max(0, wanted), last)];
  for (let left = 0; left <= last; left += STEP) all.push(left);
  return all.toSorted((a, b) => Math.abs(a - wanted) - Math.abs(b - wanted));
}

function placedIn({ width, height }: { readonly width: number; readonly height: number }) {
  return (row: Row, { encoding: { x, y } }: LayerRead) => {
    const [left, right] = x.scale.domain;
    const [low, high] = y.scale.domain;
    return {
      x: ((Number(row[x.field]) - left) / (right - left)) * width,
      y: ((high - Number(row[y.field])) / (high - low)) * height,
    };
  };
}
