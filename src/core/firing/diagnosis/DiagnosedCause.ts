import type { Evidence } from "../../findings/Finding.ts";

/**
 * What may have cracked or flaked a piece, and how that is called in a sentence.
 * Their order decides between kinds that stand level; `something else` is all that has no name here.
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
  | "sides"
  | "coat"
  | "pattern"
  | "place"
  | "ring"
  | "state of the ware";

/** How much an observation says, on our own coarse scale, in the manner of log-odds. */
export const WEIGHTS = { weak: 1, fair: 2, strong: 3 } as const;

/** Name of a weight. */
export type WeightName = keyof typeof WEIGHTS;

/** One observation of a firing, and which way it pulls for one kind of crack. */
export interface WeighedEvidence {
  readonly question: QuestionId;
  readonly direction: "for" | "against";
  readonly weight: WeightName;
  /** In a few words, `{name}` standing for the evidence of that name. */
  readonly short: string;
  /** The whole sentence, with its reason. */
  readonly statement: string;
  readonly evidence: readonly Evidence[];
  /** A source, `common practice`, or `our own judgement`. */
  readonly basis: string;
}

/** What speaks for and against one kind of crack in a firing; a standing, never a probability. */
export interface DiagnosedCause {
  readonly kind: CrackKind;
  /** In words for a sentence. */
  readonly name: string;
  readonly standing: "speaks for" | "open" | "speaks against";
  /** Weights for it minus weights against it. */
  readonly balance: number;
  /** Strongest first. */
  readonly evidence: readonly WeighedEvidence[];
  /** Questions that bear on it and that neither log nor record answers. */
  readonly unanswered: readonly QuestionId[];
}
