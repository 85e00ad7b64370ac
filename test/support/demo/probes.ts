import type { Probe } from "./fire.ts";

/** Type K in a thin sheath, reading a little high. */
export const THIN_K: Probe = {
  placeK: 0,
  placeLagSeconds: 60,
  sheathLagSeconds: 35,
  readsHighK: 3,
  noiseK: 0.35,
};

/** Type S in a porcelain tube: true, and late. */
export const TUBED_S: Probe = {
  placeK: 0,
  placeLagSeconds: 60,
  sheathLagSeconds: 200,
  readsHighK: 0.5,
  noiseK: 0.2,
};

/** Type K after many firings, reading low. */
export const TIRED_K: Probe = {
  placeK: 0,
  placeLagSeconds: 60,
  sheathLagSeconds: 60,
  readsHighK: -7,
  noiseK: 0.6,
};

/** Type K on the bottom shelf, which is cooler and later. */
export const BOTTOM_K: Probe = {
  placeK: -13,
  placeLagSeconds: 420,
  sheathLagSeconds: 35,
  readsHighK: 2,
  noiseK: 0.35,
};
