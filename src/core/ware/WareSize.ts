/** As much of the ware as published advice for heating knows: its thickest part and its widest piece [mm]. */
export interface WareSize {
  readonly thickestMm: number | null;
  readonly widestMm: number | null;
}

/** Walls of sanitary ware, whose practice is published, are up to this thick [mm]. */
const SANITARY_WALL_MM = 12;

/** Pieces from this width on are judged as large [mm]; our own estimate. */
const WIDE_MM = 300;

/** Thick or wide ware is judged harder. */
export function isDemanding(ware: WareSize): boolean {
  return (ware.thickestMm ?? 0) > SANITARY_WALL_MM || (ware.widestMm ?? 0) >= WIDE_MM;
}
