import { ANSWERS } from "./answerTable.ts";
import {
  type CrackKind,
  type DiagnosedCause,
  KINDS,
  QUESTIONS,
  type Question,
  type QuestionId,
} from "./Diagnosis.ts";
import { type ByKind, normalised, tablesOf } from "./diagnose.ts";

/** An open question whose answer would move the probabilities. */
export interface TellingApart {
  readonly question: QuestionId;
  readonly ask: string;
  readonly look: string;
  /** How much uncertainty its answer takes away, on the whole [bits]. */
  readonly gainBits: number;
  /** Each answer that moves a kind of crack that is still in the running. */
  readonly answers: readonly {
    readonly answer: string;
    readonly speaksFor: CrackKind | null;
    readonly speaksAgainst: CrackKind | null;
  }[];
}

/** More questions than this are not asked at once. */
const MOST_QUESTIONS = 2;
/** A question that tells less than this is not asked [bits]. */
const LEAST_BITS = 0.02;
/** A kind of crack is moved when its probability changes by this much. */
const MOVED = 0.05;
/** Kinds from this probability on are in the running, and always the first two. */
const RUNNING_FROM = 0.15;

/**
 * The open questions whose answers would tell most about the first causes listed: by how much uncertainty
 * an answer takes away, weighed by how probable it is. The two that tell most, first the better.
 */
export function tellingApart(causes: readonly DiagnosedCause[]): readonly TellingApart[] {
  if (causes.length === 0) return [];
  const now = posteriorOf(causes);
  const running = causes.filter(({ posterior }, at) => at < 2 || posterior >= RUNNING_FROM);
  const isGlaze = now["crackle by fit"] + now["delayed crazing"] + now.shivering > 0.5;
  return openQuestions(causes)
    .flatMap((question) => tablesOf(question, isGlaze).map((table) => asked(question, table, now)))
    .map(({ question, answers, gainBits }) => ({
      question,
      ask: QUESTIONS[question].ask,
      look: QUESTIONS[question].look,
      gainBits,
      answers: answers.flatMap(({ answer, after }) => {
        const moves = running.map(({ kind }) => ({ kind, by: after[kind] - now[kind] }));
        const up = moves.reduce((a, b) => (b.by > a.by ? b : a));
        const down = moves.reduce((a, b) => (b.by < a.by ? b : a));
        const speaksFor = up.by >= MOVED ? up.kind : null;
        const speaksAgainst = down.by <= -MOVED ? down.kind : null;
        return speaksFor === null && speaksAgainst === null
          ? []
          : [{ answer, speaksFor, speaksAgainst }];
      }),
    }))
    .filter(({ gainBits, answers }) => gainBits >= LEAST_BITS && answers.length > 0)
    .sort((a, b) => b.gainBits - a.gainBits)
    .slice(0, MOST_QUESTIONS);
}

/** Questions that are open for any of these kinds, in the order in which questions are told. */
function openQuestions(causes: readonly DiagnosedCause[]): readonly QuestionId[] {
  const open = new Set(causes.flatMap(({ unanswered }) => unanswered));
  return (Object.keys(QUESTIONS) as QuestionId[]).filter((question) => open.has(question));
}

function asked(question: QuestionId, table: keyof typeof ANSWERS, now: ByKind) {
  const answers = Object.values(ANSWERS[table]).map(({ answer, probability }) => {
    const joint = Object.fromEntries(
      KINDS.map((kind) => [kind, now[kind] * probability[kind]]),
    ) as Record<CrackKind, number>;
    const chance = KINDS.reduce((sum, kind) => sum + joint[kind], 0);
    return { answer, chance, after: normalised(joint) };
  });
  const left = answers.reduce((sum, { chance, after }) => sum + chance * bits(after), 0);
  return { question, answers, gainBits: bits(now) - left };
}

function posteriorOf(causes: readonly DiagnosedCause[]): ByKind {
  return Object.fromEntries(
    KINDS.map((kind) => [kind, causes.find((cause) => cause.kind === kind)?.posterior ?? 0]),
  ) as Record<CrackKind, number>;
}

function bits(posterior: ByKind): number {
  return KINDS.reduce((sum, kind) => {
    const p = posterior[kind];
    return p > 0 ? sum - p * Math.log2(p) : sum;
  }, 0);
}

/** What opens each part of a record, and how far its lines stand in. */
const PARTS: readonly (readonly [
  part: NonNullable<Question["part"]>,
  opening: readonly string[],
  indent: string,
])[] = [
  ["found", ["found:", "  - piece: mark or name of the piece"], "    "],
  ["heard", ["heard:"], "  "],
  ["unloaded", ["unloaded:"], "  "],
  [
    "trials",
    [
      "trials:",
      "  - piece: mark of the test piece",
      "    clay: your name for it",
      "    glaze: your name for it",
      "    coat: 0.8 mm",
      "    glazedSides: one           # or both",
    ],
    "    ",
  ],
  ["ware", ["ware:", "  - name: what was in the kiln", "    clay: your name for it"], "    "],
];

/**
 * What the record leaves open about the kinds of crack that are not spoken against, as the lines of YAML that would answer it, with an example filled in
 * and the other choices beside it. Empty when nothing is open.
 */
export function linesToRecord(causes: readonly DiagnosedCause[]): readonly string[] {
  const open = openQuestions(contenders(causes)).map((question) => QUESTIONS[question]);
  return PARTS.flatMap(([part, opening, indent]) => {
    const lines = open.flatMap((question) =>
      question.part === part && question.line !== null ? [`${indent}${question.line}`] : [],
    );
    return lines.length === 0 ? [] : [...opening, ...lines];
  });
}

/** What only a longer log could tell, in the imperative. */
export function onlyInLogs(causes: readonly DiagnosedCause[]): readonly string[] {
  return openQuestions(contenders(causes))
    .map((question) => QUESTIONS[question])
    .filter(({ part }) => part === null)
    .map(({ ask, look }) => `${ask} ${look}`);
}

/** Kinds of crack that are not spoken against; all of them when all are. */
function contenders(causes: readonly DiagnosedCause[]): readonly DiagnosedCause[] {
  const left = causes.filter(({ standing }) => standing !== "speaks against");
  return left.length === 0 ? causes : left;
}
