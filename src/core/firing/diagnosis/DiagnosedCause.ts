import type { Evidence } from "../../findings/Finding.ts";

/**
 * What may have cracked or flaked a piece, and how that is called in a sentence.
 * Their order is that of the columns of `ANSWERS`, and decides between kinds that stand level;
 * `something else` is all that has no name here.
 */
export const CRACK_KINDS = {
  "crackle by fit": "crackle: the glaze shrinks more than the clay",
  "delayed crazing": "crazing that comes later, as the clay takes up moisture",
  shivering: "shivering: the clay squeezes the glaze until it flakes off",
  "dunting at quartz": "dunting at the quartz inversion",
  "dunting at cristobalite": "dunting at the cristobalite inversion",
  "lid opened hot": "opened too hot",
  "one-sided glaze": "pot split by thick glaze on one side",
  "heating crack": "cracked while heating",
  "bisque crack": "cracked in the bisque already",
  "drying crack": "cracked in drying",
  "S-crack": "S-crack in the base",
  "something else": "something else",
} as const;

/** One of the kinds of crack. */
export type CrackKind = keyof typeof CRACK_KINDS;

/** All kinds, in their order. */
export const KINDS = Object.keys(CRACK_KINDS) as CrackKind[];

/** What can be asked of a log, a record or a piece, in the order in which it is told. */
export type QuestionId =
  | "depth"
  | "edges"
  | "first seen"
  | "sound"
  | "cool and still pinging"
  | "quartz"
  | "cristobalite"
  | "opening"
  | "heating"
  | "sides"
  | "coat"
  | "pattern"
  | "place"
  | "ring"
  | "state of the ware";

/** How much an observation says, in words: strong from a factor of 4, fair from 2, weak below. */
export const WEIGHTS = { weak: 1, fair: 2, strong: 3 } as const;

/** Name of a weight. */
export type WeightName = keyof typeof WEIGHTS;

/** How likely a kind of crack is, in the only words for it: from 60 %, from 15 %, below. */
export type Likelihood = "likely" | "possible" | "unlikely";

/** Where nothing reaches this, nothing can be said. */
export const SAYABLE_FROM = 0.4;
const LIKELY_FROM = 0.6;
const POSSIBLE_FROM = 0.15;

/** The word for a probability. */
export function likelihoodOf(posterior: number): Likelihood {
  if (posterior >= LIKELY_FROM) return "likely";
  return posterior >= POSSIBLE_FROM ? "possible" : "unlikely";
}

/** One observation of a firing, and which way it pulls for one kind of crack. */
export interface WeighedEvidence {
  readonly question: QuestionId;
  readonly direction: "for" | "against";
  readonly weight: WeightName;
  /** How many times as probable it is under this kind as under all others, as they stood before. */
  readonly ratio: number;
  /** In a few words, `{name}` standing for the evidence of that name. */
  readonly short: string;
  /** The whole sentence, with its reason. */
  readonly statement: string;
  readonly evidence: readonly Evidence[];
  /** A source, `common practice`, or `our own estimate`. */
  readonly basis: string;
}

/** How probable one kind of crack is, and why. */
export interface DiagnosedCause {
  readonly kind: CrackKind;
  /** In words for a sentence. */
  readonly name: string;
  /** Probability 0–1; all kinds together make 1. */
  readonly posterior: number;
  readonly likelihood: Likelihood;
  /** `likelihood` in the words of older documents. */
  readonly standing: "speaks for" | "open" | "speaks against";
  /** Weights for it minus weights against it. */
  readonly balance: number;
  /** Strongest first. */
  readonly evidence: readonly WeighedEvidence[];
  /** Questions that bear on it and that neither log nor record answers. */
  readonly unanswered: readonly QuestionId[];
}

/** One piece or kind of piece with its own probabilities. */
export interface DiagnosedPiece {
  /** As the record names it; null for what was only heard. */
  readonly piece: string | null;
  readonly what: "cracked" | "flaked" | "crackled" | "not known";
  /** How many such pieces it stands for. */
  readonly count: number;
  /** Most probable first; together 1. */
  readonly causes: readonly {
    readonly kind: CrackKind;
    readonly name: string;
    readonly posterior: number;
    readonly likelihood: Likelihood;
  }[];
}

/** What may have happened to a firing's ware. */
export interface Diagnosis {
  /** Of the broken and flaked pieces together; of crackled ones where none is broken; most probable first. */
  readonly causes: readonly DiagnosedCause[];
  readonly pieces: readonly DiagnosedPiece[];
}
