import type { z } from "zod";
import type { Problem } from "../problem.ts";

/** A kind of file that people write by hand, and the words to speak of it with. */
export interface DocumentFormat {
  /** First part of the problem codes: `schedule` in `schedule/not-yaml`. */
  readonly room: string;
  /** With its article: `a schedule`. */
  readonly thing: string;
  /** Keys that every such file needs: `formatVersion, title, unit and segments`. */
  readonly neededKeys: string;
  /** A file to compare with: `a shipped schedule`. */
  readonly example: string;
  /** The format itself; known keys and listed values are taken from it. */
  readonly schema: z.ZodType;
  /** Code for a key that is needed and not there. */
  readonly missingCode: Problem["code"];
  /** What other people call a key, in lower case, and the key. */
  readonly otherWords: ReadonlyMap<string, string>;
  /**
   * What may stand under a key, for the items of a list under `key[]`.
   * A key that is not here is explained from the schema and its description.
   */
  readonly expected: ReadonlyMap<string, string>;
  /** Keys whose digits count as written, so that 05 is not 5: a bare number is refused. */
  readonly quotedKeys: readonly string[];
  /** How to shorten a list that is too long, by key. */
  readonly shorten: ReadonlyMap<string, string>;
}
