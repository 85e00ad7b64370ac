import type { Schedule } from "../Schedule.ts";

/** Walls of sanitary ware, whose practice is published, are up to this thick [mm]. */
const SANITARY_WALL_MM = 12;

/** Pieces from this width on are judged as large [mm]. */
const WIDE_MM = 300;

/** Sanitary-ware practice from 600 to 500 °C [°C/h]. */
const SANITARY_C_PER_HOUR = 60;

/** Thin walls are not given more than this, however thin [°C/h]. */
const MOST_C_PER_HOUR = 150;

/** Thick or wide ware is judged harder. */
export function isDemanding(ware: Schedule["ware"]): boolean {
  return (ware.thickestMm ?? 0) > SANITARY_WALL_MM || (ware.widestMm ?? 0) >= WIDE_MM;
}

/**
 * Rate through the quartz inversion that published practice allows this ware [°C/h], from a rule that
 * knows no ware. Known walls: 60 °C/h at 12 mm, in inverse proportion to thickness, 150 at most;
 * wide pieces not above the rule; unknown walls the rule itself.
 */
export function quartzLimit(ware: Schedule["ware"], ruleCPerHour: number): number {
  const wide = (ware.widestMm ?? 0) >= WIDE_MM;
  if (ware.thickestMm === null) return ruleCPerHour;
  return Math.min(scaledToWall(ware.thickestMm), wide ? ruleCPerHour : MOST_C_PER_HOUR);
}

/** The same for cristobalite [°C/h]: thick walls lower the rule, thin ones do not raise it. */
export function cristobaliteLimit(ware: Schedule["ware"], ruleCPerHour: number): number {
  return ware.thickestMm === null
    ? ruleCPerHour
    : Math.min(ruleCPerHour, scaledToWall(ware.thickestMm));
}

function scaledToWall(wallMm: number): number {
  return (SANITARY_C_PER_HOUR * SANITARY_WALL_MM) / wallMm;
}
