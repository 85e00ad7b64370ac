/**
 * Computed stress over strength that limits are taken at: half the strength, because the
 * computation is good to a factor of two. Our own estimate.
 */
export const SAFE_RATIO = 0.5;
