/** Where a number in this program comes from. */
export interface Source {
  readonly title: string;
  readonly publisher: string;
  readonly year: number | null;
  /** Place inside it: table, page, section. */
  readonly locator: string;
  /** `from memory` marks what could not be re-read and is the first to replace. */
  readonly seen: "read" | "abstract only" | "copy" | "from memory" | "common practice";
}
