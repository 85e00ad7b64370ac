import type { Evidence } from "../findings/Finding.ts";

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

/** A question to log, record or piece, and how its answer is written down. */
export interface Question {
  readonly ask: string;
  /** How to find out, in the imperative. */
  readonly look: string;
  /** Part of the record that holds the answer; null when only a log can. */
  readonly part: "found" | "heard" | "unloaded" | "trials" | "ware" | null;
  /** The line to add in that part, as YAML, one of its choices filled in; null when only a log can. */
  readonly line: string | null;
}

/** What can be asked, in the order in which it is told. */
export const QUESTIONS: Readonly<Record<QuestionId, Question>> = {
  depth: {
    ask: "Did anything crack or flake, and does the crack pass through the wall?",
    look: "Rub ink into one side and look for it on the other.",
    part: "found",
    line: "what: through-crack        # or crackle, crack, S-crack, shivering",
  },
  edges: {
    ask: "Are the edges of the crack sharp, or rounded with glaze run over them?",
    look: "Look with a lens, and draw a fingernail across it.",
    part: "found",
    line: "edges: sharp               # or rounded under glaze",
  },
  "first seen": {
    ask: "When was the crack first seen?",
    look: "Look at every piece as it leaves the kiln, and again after a week.",
    part: "found",
    line: "when: at unloading         # or before firing, hours later, days later",
  },
  sound: {
    ask: "How hot was the kiln when something was heard?",
    look: "Note the time of each sound; never open the kiln to listen.",
    part: "heard",
    line: '- { what: a crack, at: "07:55" }     # or pinging',
  },
  "cool and still pinging": {
    ask: "Does the ware still ping when it has been evenly cool for hours?",
    look: "Listen two hours after unloading and again the next day.",
    part: "heard",
    line: '- { what: pinging, at: "+26:00" }    # or the clock time',
  },
  quartz: {
    ask: "How fast did it cool through the quartz inversion?",
    look: "Let the log run until the kiln is opened.",
    part: null,
    line: null,
  },
  cristobalite: {
    ask: "How fast did it cool through the cristobalite inversion?",
    look: "Let the log run until the kiln is opened.",
    part: null,
    line: null,
  },
  opening: {
    ask: "How hot was the kiln when it was opened?",
    look: "Read it before the lid moves, a propped lid included.",
    part: "unloaded",
    line: "temperature: 95 C          # what the kiln read",
  },
  heating: {
    ask: "How fast was it heated while water left the clay, and through quartz?",
    look: "Let the log begin with the firing.",
    part: null,
    line: null,
  },
  sides: {
    ask: "Is the cracked piece glazed on one side or on both?",
    look: "Look inside and outside.",
    part: "ware",
    line: "glazedSides: one           # or both, none",
  },
  coat: {
    ask: "Do the cracks stand farther apart where the glaze is thicker?",
    look: "Count the cracks along a line on three coats or more.",
    part: "trials",
    line: "crackSpacing: 4 mm         # for three coats or more",
  },
  pattern: {
    ask: "Is it one long line, a spiral, a network or a star?",
    look: "Ink the crack and follow it all the way.",
    part: "found",
    line: "pattern: one long line     # or spiral, network, star, S",
  },
  place: {
    ask: "Where does the crack begin?",
    look: "It is widest where it began.",
    part: "found",
    line: "where: rim                 # or foot, wall, base, handle",
  },
  ring: {
    ask: "Does the piece ring clear or dull when tapped?",
    look: "Hang it on a finger or stand it on a fingertip, and tap the rim with a knuckle.",
    part: "found",
    line: "rings: dull                # or clear",
  },
  "state of the ware": {
    ask: "Did the ware go in bisqued, or raw and damp?",
    look: "Look for cracks before glazing as well.",
    part: "ware",
    line: "state: glazed on bisque    # or bone dry, damp, bisqued, glazed raw",
  },
};
