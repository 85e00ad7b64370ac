/**
 * Whether the tiles tell two causes apart: `cannot` when they changed together, `partly` when they
 * lean on each other, `apart` when each has tiles of its own, `contained` when one is part of the other.
 */
export type Telling = "cannot" | "partly" | "apart" | "contained";

/** Two causes, and how far the tiles tell them apart. */
export interface CausePair {
  readonly first: string;
  readonly second: string;
  readonly telling: Telling;
  /** Share of the one that the other explains on these tiles, at its worst [0–1]. */
  readonly shared: number;
  /** What changed with what: `every one-sided tile is Tarrow white`; empty when nothing did. */
  readonly because: readonly string[];
  /** Tiles on which both are known. */
  readonly tiles: number;
}

/** Causes that changed together and stand for one and the same change. */
export interface ChangedTogether {
  readonly causes: readonly string[];
  readonly because: readonly string[];
}

/** Which causes the tiles tell apart. */
export interface Confounding {
  /** Tiles it is worked out from. */
  readonly tiles: number;
  /** Causes that varied, in the order of the grid. */
  readonly causes: readonly { readonly name: string; readonly levels: readonly string[] }[];
  /** Every two of them. */
  readonly pairs: readonly CausePair[];
  /** Groups of causes of which each goes wholly with the others. */
  readonly together: readonly ChangedTogether[];
  /** A cause that no single other explains, but several do together. */
  readonly jointly: readonly { readonly cause: string; readonly others: readonly string[] }[];
  /** Had one level on all tiles, so the tiles say nothing of them. */
  readonly constant: readonly { readonly name: string; readonly level: string }[];
  /** A level of its own on every tile, so nothing can be compared. */
  readonly everyOwn: readonly string[];
  /** Noted on no tile. */
  readonly unknown: readonly string[];
}
