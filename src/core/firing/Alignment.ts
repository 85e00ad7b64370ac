/** Where firings that are laid over each other have their hour 0. */
export type Alignment =
  | { readonly at: "peak" }
  | { readonly at: "start" }
  /** The first time on the way to the peak, or the first time after it. */
  | { readonly at: "rising" | "falling"; readonly tempC: number };

/** Lined up at the peak, as they are when nothing is said. */
export const AT_PEAK: Alignment = { at: "peak" };
