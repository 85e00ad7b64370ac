import { type Growing, gathered, growingInts } from "./growing.ts";

/** The cells of a column of words; only a few different words are kept, which is all that is asked of them. */
export interface Words {
  /** Place of each row's word in `known`; empty when there are too many different ones. */
  readonly wordOf: Int32Array;
  /** The different words as they first come; null when there are too many. */
  readonly known: readonly string[] | null;
}

/** Different words of a column that are kept; a column that names channels has fewer. */
const MOST_WORDS = 64;

/** The words of a column that holds none. */
export const NO_WORDS: Words = { wordOf: new Int32Array(0), known: [] };

/** Takes the words of a column, row by row. */
export interface WordStore {
  readonly codes: Growing<Int32Array>;
  /** Number of a word; −1 when it is one too many. */
  readonly codeOf: (word: string) => number;
  readonly finish: (count: number) => Words;
}

/** An empty column of words. */
export function wordStore(): WordStore {
  const codes = growingInts();
  const numbers = new Map<string, number>();
  let tooMany = false;
  return {
    codes,
    codeOf: (word) => {
      const known = numbers.get(word);
      if (known !== undefined) return known;
      if (numbers.size === MOST_WORDS) {
        tooMany = true;
        return -1;
      }
      // Joined and split, the word no longer holds on to the text that it was cut from.
      numbers.set(word.split("").join(""), numbers.size);
      return numbers.size - 1;
    },
    finish: (count) =>
      tooMany
        ? { wordOf: new Int32Array(0), known: null }
        : { wordOf: gathered(codes, count), known: [...numbers.keys()] },
  };
}
