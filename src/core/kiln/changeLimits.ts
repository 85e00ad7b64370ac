/** Pull at equal temperature that has fallen to this share of an earlier one is said; our own choice. */
export const WEAKER = 0.9;
/** Pull at equal temperature that has risen to this is said; our own choice. */
export const STRONGER = 1.1;
/** A scatter that has grown by this factor is said … */
export const NOISIER = 1.5;
/** … when it is also this large [K]. */
export const NOISY_K = 0.5;
/** A natural fall that differs by this share between firings is said; our own choice. */
export const FALLS_APART = 0.1;
