/**
 * Conventional atomic weights of the elements that glazes hold, to five figures where they have
 * them [g/mol].
 *
 * @see SOURCES["iupac-atomic-weights"]
 */
export const ATOMIC_WEIGHTS: Readonly<Record<string, number>> = {
  H: 1.008,
  Li: 6.94,
  Be: 9.0122,
  B: 10.81,
  C: 12.011,
  O: 15.999,
  F: 18.998,
  Na: 22.99,
  Mg: 24.305,
  Al: 26.982,
  Si: 28.085,
  P: 30.974,
  S: 32.06,
  Cl: 35.45,
  K: 39.098,
  Ca: 40.078,
  Ti: 47.867,
  V: 50.942,
  Cr: 51.996,
  Mn: 54.938,
  Fe: 55.845,
  Co: 58.933,
  Ni: 58.693,
  Cu: 63.546,
  Zn: 65.38,
  As: 74.922,
  Sr: 87.62,
  Zr: 91.224,
  Cd: 112.41,
  Sn: 118.71,
  Sb: 121.76,
  Ba: 137.33,
  Ce: 140.12,
  Pb: 207.2,
  Bi: 208.98,
};
