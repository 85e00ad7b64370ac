/** A grey picture, row by row from the top left; grey runs from 0 (black) to 255 (white). */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly grey: Float32Array | Uint8Array;
}

/** A place in a picture [px], from its top left corner. */
export interface Place {
  readonly x: number;
  readonly y: number;
}
