import { type Curve, peakOf } from "../../core/curve/Curve.ts";
import { fahrenheitFromCelsius, type TemperatureUnit } from "../../core/units/temperature.ts";

/** Size of the editor's drawing in its own units, and the room for the words around the plot. */
export interface EditorSheet {
  readonly width: number;
  readonly height: number;
  readonly margin: {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
  };
  /** Labels at the lower edge at most. */
  readonly hours: number;
}

/** The editor where there is room. */
export const WIDE_SHEET: EditorSheet = {
  width: 960,
  height: 460,
  margin: { left: 56, right: 24, top: 36, bottom: 50 },
  hours: 12,
};

/** The editor on a telephone: taller, so that a finger can tell its corners apart. */
export const NARROW_SHEET: EditorSheet = {
  width: 480,
  height: 460,
  margin: { left: 50, right: 22, top: 36, bottom: 34 },
  hours: 6,
};

/** What the edges of the editor mean. */
export interface EditorFrame {
  readonly sheet: EditorSheet;
  readonly endSeconds: number;
  readonly topC: number;
  readonly width: number;
  /** Where a moment and a temperature land. */
  readonly at: (seconds: number, tempC: number) => { readonly x: number; readonly y: number };
  /** The moment and the temperature at a place. */
  readonly from: (x: number, y: number) => { readonly seconds: number; readonly tempC: number };
}

/** The frame for a curve, with room to drag its ends further. */
export function editorFrame(curve: Curve, sheet: EditorSheet): EditorFrame {
  const { margin } = sheet;
  const endSeconds = curve.timesSeconds.at(-1)! * 1.04;
  const topC = Math.ceil((peakOf(curve).tempC * 1.08) / 100) * 100;
  const width = sheet.width - margin.left - margin.right;
  const height = sheet.height - margin.top - margin.bottom;
  return {
    sheet,
    endSeconds,
    topC,
    width,
    at: (seconds, tempC) => ({
      x: margin.left + (seconds / endSeconds) * width,
      y: margin.top + (1 - tempC / topC) * height,
    }),
    from: (x, y) => ({
      seconds: ((x - margin.left) / width) * endSeconds,
      tempC: (1 - (y - margin.top) / height) * topC,
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

/** Hours at the lower edge at round steps, as many as have room. */
export function hourSteps({ endSeconds, sheet }: EditorFrame): readonly number[] {
  const hours = endSeconds / 3600;
  const step = [1, 2, 3, 4, 6, 8, 12, 24, 48].find((each) => hours / each <= sheet.hours) ?? 96;
  return Array.from({ length: Math.floor((hours * 0.97) / step) + 1 }, (_, i) => i * step);
}
