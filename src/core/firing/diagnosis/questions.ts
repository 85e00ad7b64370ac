import type { QuestionId } from "./DiagnosedCause.ts";

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
