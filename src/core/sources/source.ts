/** Where a number in this program comes from. */
export interface Source {
  readonly title: string;
  /** Who wrote it, where that is better known than who published it; what a citation then names. */
  readonly author?: string;
  readonly publisher: string;
  readonly year: number | null;
  /** Place inside it: table, page, section. */
  readonly locator: string;
  /**
   * How it was seen. `at second hand` was read where somebody else quotes it; `from memory` marks
   * what could not be re-read and is the first to replace; `own computation` was worked out by us.
   */
  readonly seen:
    | "read"
    | "abstract only"
    | "copy"
    | "at second hand"
    | "from memory"
    | "common practice"
    | "own computation";
}
