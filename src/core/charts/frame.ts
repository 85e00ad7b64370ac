/** Width of every plot [px]; with axis and key a chart is about 900 px wide. */
export const PLOT_WIDTH = 660;

/** A plot's size and what its edges mean, to place words where nothing else is. */
export interface Frame {
  readonly width: number;
  readonly height: number;
  /** Values at the left and right edge. */
  readonly x: readonly [number, number];
  /** Values at the bottom and top edge. */
  readonly y: readonly [number, number];
}

/** A place in a plot [px], from its top left corner. */
export interface Pixel {
  readonly x: number;
  readonly y: number;
}

/** Where a value pair lands [px]. */
export function pixelAt(frame: Frame, x: number, y: number): Pixel {
  return {
    x: (frame.width * (x - frame.x[0])) / (frame.x[1] - frame.x[0]),
    y: (frame.height * (frame.y[1] - y)) / (frame.y[1] - frame.y[0]),
  };
}

/** The value pair at a place [px]; may lie outside the plot. */
export function valueAt(frame: Frame, pixel: Pixel): { readonly x: number; readonly y: number } {
  return {
    x: frame.x[0] + (pixel.x / frame.width) * (frame.x[1] - frame.x[0]),
    y: frame.y[1] - (pixel.y / frame.height) * (frame.y[1] - frame.y[0]),
  };
}
