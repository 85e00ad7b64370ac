/** Toughness [MPa·√m], stiffness [MPa], Poisson's ratio of a glaze, and Z of a crack in a thin coat on a body as stiff. */
const TOUGHNESS = 0.7;
const STIFFNESS = 65_000;
const POISSON = 0.2;
const Z = 1.976;

/**
 * Misfit of glaze and body that cracks a coat after a fall from the set point [1/K].
 * A thin coat on a stout body of its own stiffness; thin walls and soft bodies take other amounts.
 *
 * @param fallK From the set point to the first ping, above 0.
 * @see SOURCES["ping-onset"]
 */
export function misfitOfOnset(fallK: number, coatMm: number): number {
  if (!(fallK > 0 && coatMm > 0)) throw new RangeError(`misfitOfOnset: ${fallK} K, ${coatMm} mm`);
  const crackingMPa = TOUGHNESS / Math.sqrt((Z * coatMm) / 1000);
  return (crackingMPa * (1 - POISSON)) / STIFFNESS / fallK;
}
