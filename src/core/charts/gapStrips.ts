import type { Curve } from "../curve/Curve.ts";
import { drawn, type Layer } from "./chartSpec.ts";
import { type Frame, pixelAt } from "./frame.ts";
import { type Label, labelLayers } from "./layers.ts";
import { labelWidth } from "./placement.ts";
import { type Places, placing } from "./places.ts";
import type { Theme } from "./theme.ts";

/** Narrowest gap that is shaded [px]; a narrower one only breaks the line. */
const NARROWEST = 4;

/** Stretches in which no thermocouple was read, as faint upright strips; named at the foot when there is room. */
export function gapStrips(
  places: Places,
  frame: Frame,
  curves: readonly Curve[],
  colours: Theme,
): readonly Layer[] {
  const gaps = commonGaps(curves).filter(
    ({ from, to }) => pixelAt(frame, to, 0).x - pixelAt(frame, from, 0).x >= NARROWEST,
  );
  if (gaps.length === 0) return [];
  const labels = gaps.flatMap(({ from, to }) =>
    nameOf(pixelAt(frame, from, 0).x, pixelAt(frame, to, 0).x, frame),
  );
  return [
    {
      data: {
        values: gaps.map(({ from, to }) => ({
          elapsedHours: from,
          endHours: to,
          [places.yField]: frame.y[0],
          top: frame.y[1],
        })),
      },
      mark: { type: "rect", color: colours.grid, opacity: 0.55 },
      encoding: { ...placing(places), x2: { field: "endHours" }, y2: { field: "top" } },
    },
    ...labelLayers(places, frame, labels, colours.quiet, colours.paper),
  ];
}

/** Gaps that all Curves share, in hours. */
function commonGaps(
  curves: readonly Curve[],
): readonly { readonly from: number; readonly to: number }[] {
  const [first, ...others] = curves;
  return (first?.gaps ?? []).flatMap((gap) => {
    const shared = others.map(({ gaps }) =>
      gaps.find((other) => other.fromSeconds < gap.toSeconds && other.toSeconds > gap.fromSeconds),
    );
    if (shared.includes(undefined)) return [];
    const from = Math.max(
      gap.fromSeconds,
      ...shared.map((other) => other?.fromSeconds ?? gap.fromSeconds),
    );
    const to = Math.min(gap.toSeconds, ...shared.map((other) => other?.toSeconds ?? gap.toSeconds));
    return [{ from: drawn(from / 3600), to: drawn(to / 3600) }];
  });
}

function nameOf(left: number, right: number, frame: Frame): readonly Label[] {
  const words = ["no readings", "gap"].find((text) => labelWidth(text) + 6 <= right - left);
  return words
    ? [{ text: words, at: { x: (left + right) / 2, y: frame.height - 12 }, align: "center" }]
    : [];
}
