/** Something that may govern the crack spacing, with its level on every tile. */
export interface Cause {
  /** In words: `clay`, `cooling through quartz`. */
  readonly name: string;
  /** What the tile itself has, the firing as a whole, or a part of the firing. */
  readonly of: "tile" | "firing" | "part of the firing";
  /** One for each tile, in order; null where it is not known. */
  readonly levels: readonly (string | null)[];
  /** Of a measured amount, as it enters the analysis (logarithm of the coat); null for kinds. */
  readonly amounts: readonly number[] | null;
  /** A tile of this level in words, to end "every one-sided tile is …": `Tarrow white`. */
  readonly sayOf: (level: string) => string;
  /** The level in front of "tile": `one-sided`, `Tarrow white`. */
  readonly sayTile: (level: string) => string;
}
