import { basedOn, cited } from "../sources/bibliography.ts";
import { type CrackKind, KINDS } from "./Diagnosis.ts";

/** One answer to a question: how often it is given under each kind of crack, in the order of `KINDS`. */
interface Answer {
  /** In a few words without numbers, as one would give it beforehand: `sharp edges`. */
  readonly answer: string;
  /** Out of a hundred or so such pieces; a question's answers are scaled to 1 under each kind. */
  readonly shares: Shares;
  /** One sentence with its reason. */
  readonly statement: string;
  readonly basis: string;
}

type Shares = readonly [
  fit: number,
  delayed: number,
  shivering: number,
  quartz: number,
  cristobalite: number,
  opened: number,
  oneSided: number,
  heating: number,
  bisque: number,
  drying: number,
  sCrack: number,
  other: number,
];

/** Shares of everything in the tables that no source gives. */
const OWN = "our own estimate";
const PRACTICE = `${cited("reading-cracks")}; how often is our own estimate`;
const MOISTURE = `${basedOn(
  "fired clay swells for years, fastest in its first hours, and glass under stress cracks with delay",
  "wilson-2003",
  "freiman-1984",
)}; how often is our own estimate`;
const LAYER = `${basedOn(
  "a layer in tension cracks deeper the thicker it is, and a thin wall bears less",
  "hutchinson-suo-1992",
)}; how often is our own estimate`;

/**
 * How often each answer is given under each kind of crack. What two answers say is what their shares differ
 * by, never their size; a question is answered once for each piece, so that nothing counts twice.
 */
const WRITTEN = {
  depth: {
    through: {
      answer: "cracks through the wall",
      shares: [3, 2, 6, 54, 54, 48, 76, 58, 45, 30, 22, 35],
      statement: "It is cracked through the wall: more than its glaze gave way.",
      basis: PRACTICE,
    },
    crackle: {
      answer: "crackle in the glaze",
      shares: [88, 88, 2, 1, 1, 3, 1.5, 0.5, 0.5, 0.5, 0.3, 12],
      statement: "The glaze has crackled, as it does when it shrinks more than the clay.",
      basis: PRACTICE,
    },
    crack: {
      answer: "a crack, how deep is not known",
      shares: [8, 9, 6, 13, 13, 18, 11, 30, 30, 26, 20, 26],
      statement: "It is cracked; how deep is not known.",
      basis: OWN,
    },
    dunt: {
      answer: "called a dunt",
      shares: [0.5, 0.3, 0.3, 30, 30, 28, 9, 2, 1.5, 1, 1, 5],
      statement: "It was called a dunt: a crack through the wall from cooling.",
      basis: OWN,
    },
    "S-crack": {
      answer: "an S-crack",
      shares: [0.1, 0.1, 0.1, 0.3, 0.3, 0.3, 0.3, 1, 2, 4, 55, 0.5],
      statement:
        "It was called an S-crack, which a base thrown without pressing it together gets in drying.",
      basis: PRACTICE,
    },
    "drying crack": {
      answer: "called a drying crack",
      shares: [0.1, 0.1, 0.1, 0.3, 0.3, 0.3, 0.3, 2, 4, 40, 2, 1],
      statement: "It was called a drying crack.",
      basis: OWN,
    },
    "bisque crack": {
      answer: "called a bisque crack",
      shares: [0.1, 0.1, 0.1, 0.3, 0.3, 0.3, 0.3, 3, 22, 4, 1, 0.8],
      statement: "It was called a bisque crack, or seen in the bisque.",
      basis: OWN,
    },
    burst: {
      answer: "burst into bits",
      shares: [0.1, 0.1, 0.2, 0.6, 0.6, 1, 0.7, 30, 6, 0.2, 0.2, 2],
      statement: "It burst, as steam does it to clay that is not dry.",
      basis: PRACTICE,
    },
    shivering: {
      answer: "glaze flakes off",
      shares: [0.3, 0.3, 72, 0.2, 0.2, 0.2, 0.4, 0.4, 0.4, 0.4, 0.4, 4],
      statement:
        "Glaze flakes off: it is squeezed rather than pulled, the opposite of what makes crackle.",
      basis: PRACTICE,
    },
    chip: {
      answer: "chips off edges",
      shares: [0.4, 0.4, 14, 0.4, 0.4, 0.6, 0.4, 0.6, 0.6, 0.6, 0.6, 14],
      statement: "Edges are chipped: by a knock, or by glaze that is squeezed off them.",
      basis: PRACTICE,
    },
  },
  edges: {
    sharp: {
      answer: "sharp edges",
      shares: [96, 97, 92, 96, 97, 97, 96, 30, 14, 14, 16, 70],
      statement: "Edges are sharp: the crack is younger than the glaze, which had set by then.",
      basis: PRACTICE,
    },
    "rounded under glaze": {
      answer: "edges rounded under glaze",
      shares: [4, 3, 8, 4, 3, 3, 4, 70, 86, 86, 84, 30],
      statement: "Edges are rounded under glaze: the crack was there before the glaze melted.",
      basis: PRACTICE,
    },
  },
  "first seen": {
    "before firing": {
      answer: "seen before the firing",
      shares: [0.3, 0.3, 0.3, 0.4, 0.4, 0.4, 0.4, 0.6, 34, 34, 28, 2],
      statement: "It was seen before the firing, in the bisque or in the dry pot.",
      basis: OWN,
    },
    "before unloading": {
      answer: "seen before unloading",
      shares: [8, 0.5, 5, 16, 16, 24, 12, 12, 5, 4, 3, 8],
      statement: "It was seen before the kiln was unloaded.",
      basis: OWN,
    },
    "at unloading": {
      answer: "seen at unloading",
      shares: [76, 7, 54, 74, 74, 68, 54, 80, 55, 56, 62, 60],
      statement: "It was seen when the kiln was unloaded, too early for moisture to have done it.",
      basis: MOISTURE,
    },
    "hours later": {
      answer: "first seen hours later",
      shares: [11, 24, 25, 6, 6, 5, 14, 4, 3, 3, 3, 14],
      statement: "It was first seen hours after unloading, though it may have been there unseen.",
      basis: MOISTURE,
    },
    "days later": {
      answer: "first seen days later",
      shares: [5, 68, 16, 3.5, 3.5, 3, 20, 3, 3, 3, 4, 16],
      statement: "It was first seen days after unloading, long after all heat was out of the ware.",
      basis: MOISTURE,
    },
  },
  pattern: {
    "one long line": {
      answer: "one long line",
      shares: [4, 3, 6, 72, 72, 72, 45, 62, 58, 48, 6, 40],
      statement: "It runs as one long line, as a wall gives way; glaze alone cracks as a net.",
      basis: PRACTICE,
    },
    spiral: {
      answer: "a spiral",
      shares: [8, 6, 2, 4, 4, 4, 40, 1, 1, 1, 1, 8],
      statement:
        "It winds round the piece, which glaze thick inside and thin outside is known for; crackle follows the throwing too.",
      basis: PRACTICE,
    },
    network: {
      answer: "a network",
      shares: [87, 90, 6, 2, 2, 6, 4, 2, 3, 4, 1, 15],
      statement: "It forms a network, as cracks do in a layer that is pulled everywhere at once.",
      basis: PRACTICE,
    },
    star: {
      answer: "a star",
      shares: [1, 1, 1, 3, 3, 3, 2, 10, 12, 15, 6, 10],
      statement: "A star in a base points to drying, to the first firing or to a foot that stuck.",
      basis: OWN,
    },
    S: {
      answer: "an S",
      shares: [0.1, 0.1, 0.1, 0.4, 0.4, 0.4, 0.2, 0.5, 1.5, 4, 82, 2],
      statement:
        "It has the form of an S, as a base has that was thrown without pressing it together.",
      basis: PRACTICE,
    },
  },
  place: {
    rim: {
      answer: "it begins at the rim",
      shares: [14, 14, 76, 25, 22, 48, 18, 30, 32, 38, 1, 25],
      statement:
        "It begins at a rim, which cold air reaches first, and which dries and heats first.",
      basis: PRACTICE,
    },
    foot: {
      answer: "it begins at the foot",
      shares: [7, 7, 8, 22, 22, 8, 8, 12, 14, 12, 9, 15],
      statement: "It begins at a foot, which stays hot on its shelf as the wall cools.",
      basis: PRACTICE,
    },
    base: {
      answer: "it begins in the base",
      shares: [10, 10, 3, 27, 27, 10, 14, 22, 26, 22, 86, 20],
      statement: "It begins in a base, which cools last, and dries last.",
      basis: PRACTICE,
    },
    wall: {
      answer: "it begins in the wall",
      shares: [64, 64, 8, 23, 25, 28, 52, 24, 14, 12, 3, 25],
      statement: "It begins in the wall, where the glaze pulls.",
      basis: OWN,
    },
    handle: {
      answer: "it begins at a handle",
      shares: [5, 5, 5, 3, 4, 6, 8, 12, 14, 16, 1, 15],
      statement: "It begins at a handle, where joints part in drying and in the first firing.",
      basis: PRACTICE,
    },
  },
  ring: {
    dull: {
      answer: "a dull ring",
      shares: [8, 10, 15, 88, 88, 88, 86, 80, 76, 75, 70, 45],
      statement: "It rings dull, as with a crack through the wall, seen or not.",
      basis: PRACTICE,
    },
    clear: {
      answer: "a clear ring",
      shares: [92, 90, 85, 12, 12, 12, 14, 20, 24, 25, 30, 55],
      statement: "It rings clear: its wall is whole.",
      basis: PRACTICE,
    },
  },
  sides: {
    one: {
      answer: "glazed on one side",
      shares: [45, 45, 42, 40, 40, 40, 90, 40, 40, 40, 42, 40],
      statement:
        "It is glazed on one side. In a closed shape such as a mug a crack that the glaze pulls open runs on; a flat tile, free to bend, tends to stop it.",
      basis: LAYER,
    },
    both: {
      answer: "glazed on both sides",
      shares: [54, 54, 56, 45, 45, 45, 9, 45, 45, 45, 44, 45],
      statement: "It is glazed on both sides, where glaze pulls evenly.",
      basis: LAYER,
    },
    none: {
      answer: "not glazed",
      shares: [0.5, 0.5, 0.5, 15, 15, 15, 0.5, 15, 15, 15, 14, 15],
      statement: "It is not glazed.",
      basis: OWN,
    },
  },
  "crack heard": {
    heating: {
      answer: "a crack on the way up",
      shares: [2, 2, 2, 2, 2, 1, 2, 84, 18, 14, 14, 20],
      statement: "A crack was heard at {heat} on the way up, though shelves make such sounds too.",
      basis: OWN,
    },
    "above the inversions": {
      answer: "a crack hotter than both inversions",
      shares: [2, 1, 3, 3, 1, 1, 3, 4, 20, 20, 20, 20],
      statement:
        "A crack was heard at {heat}, hotter than both inversions; kiln and shelves make such sounds too.",
      basis: OWN,
    },
    quartz: {
      answer: "a crack while passing quartz",
      shares: [3, 1, 6, 74, 2, 2, 6, 3, 14, 14, 14, 14],
      statement:
        "A crack was heard at {heat}, while the kiln passed the quartz inversion and was still shut.",
      basis: OWN,
    },
    "between the inversions": {
      answer: "a crack between the inversions",
      shares: [22, 2, 22, 6, 5, 3, 22, 2, 12, 12, 12, 10],
      statement: "A crack was heard at {heat}, between the inversions, the kiln still shut.",
      basis: OWN,
    },
    cristobalite: {
      answer: "a crack while passing cristobalite, the kiln shut",
      shares: [20, 4, 20, 3, 74, 5, 18, 2, 11, 12, 12, 10],
      statement:
        "A crack was heard at {heat}, while the kiln passed the cristobalite inversion and was still shut.",
      basis: OWN,
    },
    "below the inversions": {
      answer: "a crack below the inversions, the kiln shut",
      shares: [18, 8, 18, 2, 4, 4, 18, 1, 8, 9, 9, 8],
      statement: "A crack was heard at {heat} with the kiln shut, below both inversions.",
      basis: OWN,
    },
    "after opening": {
      answer: "a crack soon after opening",
      shares: [16, 16, 17, 6, 9, 80, 13, 2, 10, 11, 11, 11],
      statement:
        "A crack was heard {since} after the kiln was opened, while cold air met the ware.",
      basis: OWN,
    },
    "long after opening": {
      answer: "a crack long after unloading",
      shares: [12, 66, 10, 4, 3, 4, 17, 2, 7, 8, 8, 7],
      statement: "A crack was heard {since} after the kiln was opened, when the ware was cool.",
      basis: MOISTURE,
    },
  },
  "pinging heard": {
    quartz: {
      answer: "pinging while passing quartz",
      shares: [5, 0.5, 6, 12, 3, 1, 3, 8, 8, 8, 8, 10],
      statement:
        "Pinging was heard at {heat}, while the kiln passed the quartz inversion: clay, or a glaze that fits very badly.",
      basis: OWN,
    },
    "between the inversions": {
      answer: "pinging well above the last inversion",
      shares: [24, 1, 20, 6, 5, 2, 14, 10, 10, 10, 10, 12],
      statement:
        "Pinging was heard as hot as {heat}: the earlier glaze begins to crack, the worse it fits.",
      basis: LAYER,
    },
    cristobalite: {
      answer: "pinging while passing cristobalite, the kiln shut",
      shares: [22, 3, 20, 6, 16, 3, 18, 12, 12, 12, 12, 14],
      statement:
        "Pinging was heard at {heat}, while the kiln passed the cristobalite inversion: glaze or clay.",
      basis: OWN,
    },
    "below the inversions": {
      answer: "pinging below both inversions, the kiln shut",
      shares: [22, 10, 20, 8, 8, 4, 18, 16, 16, 16, 16, 16],
      statement:
        "Pinging was heard at {heat} with the kiln shut, below both inversions, where glaze that shrinks more than the clay gives way.",
      basis: LAYER,
    },
    "after hot opening": {
      answer: "pinging soon after a hot opening",
      shares: [14, 8, 15, 20, 20, 60, 18, 20, 20, 20, 20, 20],
      statement:
        "Pinging began {since} after the kiln was opened at {opened}: such a burst comes of the draught and says little about the fit of the glaze.",
      basis: OWN,
    },
    "after cool opening": {
      answer: "pinging soon after a cool opening",
      shares: [18, 20, 18, 18, 18, 20, 18, 18, 18, 18, 18, 18],
      statement:
        "Pinging was heard {since} after the kiln was opened, while the ware cooled the last of its way.",
      basis: OWN,
    },
    "long after opening": {
      answer: "pinging long after unloading",
      shares: [3, 64, 8, 12, 12, 6, 15, 12, 12, 12, 12, 10],
      statement: "Pinging was first heard {since} after the kiln was opened.",
      basis: MOISTURE,
    },
  },
  "cool and still pinging": {
    "hours later": {
      answer: "still pinging hours after unloading",
      shares: [26, 34, 14, 5, 5, 6, 12, 4, 4, 4, 4, 8],
      statement:
        "Pinging was still heard {since} after the kiln was opened, in ware that is by then evenly cool (two hours are our own estimate).",
      basis: MOISTURE,
    },
    "next day": {
      answer: "still pinging the next day",
      shares: [9, 48, 6, 2, 2, 2, 8, 2, 2, 2, 2, 4],
      statement:
        "Pinging was heard {since} after the kiln was opened: cracks still grow in ware that is long cool.",
      basis: MOISTURE,
    },
    quiet: {
      answer: "quiet once it is cool",
      shares: [65, 18, 80, 93, 93, 92, 80, 94, 94, 94, 94, 88],
      statement: "It was quiet once it was evenly cool.",
      basis: MOISTURE,
    },
  },
  "what sounds": {
    pinging: {
      answer: "pinging",
      shares: [60, 50, 30, 5, 5, 10, 10, 3, 2, 2, 2, 12],
      statement: "What was heard was pinging, as glaze does it.",
      basis: PRACTICE,
    },
    crack: {
      answer: "a single crack",
      shares: [8, 7, 10, 45, 45, 45, 40, 50, 6, 6, 6, 45],
      statement: "What was heard was a single crack, as a wall or a shelf gives way.",
      basis: PRACTICE,
    },
    silent: {
      answer: "nothing",
      shares: [32, 43, 60, 50, 50, 45, 50, 47, 92, 92, 92, 43],
      statement: "Nothing was heard; what cracked before the firing makes no sound in it.",
      basis: OWN,
    },
  },
  opening: {
    cool: {
      answer: "opened at about 100 °C (210 °F)",
      shares: [55, 55, 55, 55, 55, 6, 55, 55, 55, 55, 55, 55],
      statement: "",
      basis: OWN,
    },
    warm: {
      answer: "opened at about 160 °C (320 °F)",
      shares: [33, 33, 33, 33, 33, 30, 33, 33, 33, 33, 33, 33],
      statement: "",
      basis: OWN,
    },
    hot: {
      answer: "opened at 220 °C (430 °F) or hotter",
      shares: [12, 12, 12, 12, 12, 64, 12, 12, 12, 12, 12, 12],
      statement: "",
      basis: OWN,
    },
  },
  "state of the ware": {
    raw: {
      answer: "raw or damp ware",
      shares: [4, 4, 4, 12, 12, 12, 4, 70, 5, 30, 26, 15],
      statement: "It went in unfired, and such ware cracks on the way up as water leaves it.",
      basis: PRACTICE,
    },
    bisqued: {
      answer: "bisqued ware",
      shares: [96, 96, 96, 88, 88, 88, 96, 30, 95, 70, 74, 85],
      statement: "It had been through a first firing, which drove the water out of it.",
      basis: OWN,
    },
  },
  coat: {
    grows: {
      answer: "cracks farther apart on thicker coats",
      shares: [75, 55, 50, 50, 50, 50, 50, 50, 50, 50, 50, 45],
      statement:
        "On {pieces} test pieces the cracks stand farther apart the thicker the coat, as cracks in a pulled layer do.",
      basis: `${cited("thouless-1990")}; how often is our own estimate`,
    },
    "does not grow": {
      answer: "no wider cracks on thicker coats",
      shares: [25, 45, 50, 50, 50, 50, 50, 50, 50, 50, 50, 55],
      statement:
        "On {pieces} test pieces the cracks do not stand farther apart on thicker coats; near the least thickness that cracks they need not.",
      basis: OWN,
    },
  },
} as const satisfies Readonly<Record<string, Readonly<Record<string, Answer>>>>;

/** Name of a table of answers. */
export type TableName = keyof typeof WRITTEN;

/** An answer with the probability of being given under each kind of crack. */
export interface WeighedAnswer extends Omit<Answer, "shares"> {
  /** 0–1; over the answers of one question they make 1 under each kind. */
  readonly probability: Readonly<Record<CrackKind, number>>;
}

/** The answers of every question, weighed. */
export const ANSWERS = Object.fromEntries(
  Object.entries(WRITTEN).map(([name, answers]) => [name, weighed(answers)]),
) as {
  readonly [T in TableName]: {
    readonly [A in keyof (typeof WRITTEN)[T]]: WeighedAnswer;
  };
};

function weighed(answers: Readonly<Record<string, Answer>>): Record<string, WeighedAnswer> {
  const all = Object.values(answers);
  const sums = KINDS.map((_, k) => all.reduce((sum, { shares }) => sum + shares[k]!, 0));
  return Object.fromEntries(
    Object.entries(answers).map(([name, { shares, ...told }]) => [
      name,
      {
        ...told,
        probability: Object.fromEntries(
          KINDS.map((kind, k) => [kind, shares[k]! / sums[k]!]),
        ) as Record<CrackKind, number>,
      },
    ]),
  );
}
