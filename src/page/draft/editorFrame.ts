import type { Curve } from "../../core/curve/Curve.ts";
import { peakOf } from "../../core/curve/peakOf.ts";
import { fahrenheitFromCelsius, type TemperatureUnit } from "../../core/units/temperature.ts";

/** Size of the editor's drawing, in its own units. */
export const WIDTH = 960;
export const HEIGHT = 460;

/** Room for the words around the plot. */
export const MARGIN = { left: 56, right: 24, top: 36, bottom: 50 } as const;

/** What the edges of the editor mean. */
export interface EditorFrame {
  readonly endSeconds: number;
  readonly topC: number;
  readonly width: number;
  /** Where a moment and a temperature land. */
  readonly at: (seconds: number, tempC: number) => { readonly x: number; readonly y: number };
  /** The moment and the temperature at a place. */
  readonly from: (x: number, y: number) => { readonly seconds: number; readonly tempC: number };
}

/** The frame for a curve, with room to drag its ends further. */
export function editorFrame(curve: Curve): EditorFrame {
  const endSeconds = (curve.timesSeconds.at(-1) as number) * 1.04;
  const topC = Math.ceil((peakOf(curve).tempC * 1.08) / 100) * 100;
  const width = WIDTH - MARGIN.left - MARGIN.right;
  const height = HEIGHT - MARGIN.top - MARGIN.bottom;
  return {
    endSeconds,
    topC,
    width,
    at: (seconds, tempC) => ({
      x: MARGIN.left + (seconds / endSeconds) * width,
      y: MARGIN.top + (1 - tempC / topC) * height,
    }),
    from: (x, y) => ({
      seconds: ((x - MARGIN.left) / width) * endSeconds,
      tempC: (1 - (y - MARGIN.top) / height) * topC,
    }),
  };
}

/** Temperatures at the left edge, at whole hundreds of the reader's unit. */
export function tempSteps(
  { topC }: EditorFrame,
  unit: TemperatureUnit,
): readonly { readonly tempC: number; readonly label: string }[] {
  const top = unit === "C" ? topC : fahrenheitFromCelsius(topC);
  const step = unit === "C" ? 200 : 400;
  return Array.from({ length: Math.floor(top / step) + 1 }, (_, i) => {
    const value = i * step;
    return { tempC: unit === "C" ? value : (value - 32) / 1.8, label: String(value) };
  }).filter(({ tempC }) => tempC >= 0);
}

/** Hours at the lower edge, eight to twelve of them at round steps. */
export function hourSteps({ endSeconds }: EditorFrame): readonly number[] {
  const hours = endSeconds / 3600;
  const step = [1, 2, 3, 4, 6, 12, 24, 48].find((each) => hours / each <= 12) ?? 96;
  return Array.from({ length: Math.floor((hours * 0.97) / step) + 1 }, (_, i) => i * step);
}
