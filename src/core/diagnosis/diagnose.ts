import { ANSWERS } from "./answerTable.ts";
import { type CaseEvidence, caseEvidence } from "./caseEvidence.ts";
import type { CrackCase } from "./crackCases.ts";
import { type CrackFacts, hasSomethingToWeigh } from "./crackFacts.ts";
import {
  CRACK_KINDS,
  type CrackKind,
  type DiagnosedCause,
  type DiagnosedPiece,
  type Diagnosis,
  KINDS,
  likelihoodOf,
  type QuestionId,
  WEIGHTS,
  type WeighedEvidence,
  type WeightName,
} from "./Diagnosis.ts";
import { USUAL } from "./hazards.ts";

/** Probability of every kind of crack. */
export type ByKind = Readonly<Record<CrackKind, number>>;

/** An observation says nothing worth telling of a kind within this factor. */
const SAYS_FROM = 1.2;
const FAIR_FROM = 2;
const STRONG_FROM = 4;

/** Questions that only a log answers. */
const LOG_QUESTIONS: readonly QuestionId[] = ["quartz", "cristobalite", "heating"];

/** One case with its probabilities. */
interface WeighedCase {
  readonly piece: CrackCase | null;
  readonly evidence: readonly CaseEvidence[];
  readonly posterior: ByKind;
}

/**
 * How probable every kind of crack is, for each piece or kind of piece by itself and for the worst of them
 * together: how often each comes in a usual firing, times how much more often what is known here is seen
 * with it. Everything counts once, and all kinds with `something else` make 1.
 *
 * @returns empty lists when nothing was heard and nothing was found.
 */
export function diagnosisOf(facts: CrackFacts): Diagnosis {
  if (!hasSomethingToWeigh(facts)) return { causes: [], pieces: [] };
  const cases = (facts.cases.length === 0 ? [null] : facts.cases).map((piece) =>
    weighedCase(facts, piece),
  );
  const worst = worstOf(cases);
  const posterior = byKind((kind) => mean(worst.map((each) => each.posterior[kind])));
  return {
    causes: ranked(posterior).map((kind) => causeOf(kind, posterior, worst)),
    pieces: cases.map(pieceOf),
  };
}

function weighedCase(facts: CrackFacts, piece: CrackCase | null): WeighedCase {
  const evidence = caseEvidence(facts, piece);
  const posterior = normalised(
    byKind((kind) => evidence.reduce((sum, { times }) => sum * times[kind], USUAL[kind])),
  );
  return { piece, evidence, posterior };
}

/** Broken and flaked pieces; where there are none, crackled ones; else what was only heard. */
function worstOf(cases: readonly WeighedCase[]): readonly WeighedCase[] {
  const broken = cases.filter(({ piece }) => piece !== null && whatOf(piece) !== "crackled");
  const chipped = broken.filter(({ piece }) => piece?.what === "chip");
  if (broken.length > chipped.length) return broken.filter(({ piece }) => piece?.what !== "chip");
  return broken.length > 0 ? broken : cases;
}

function whatOf({ what, pattern }: CrackCase): DiagnosedPiece["what"] {
  if (what === "crackle" || what === "crazing") return "crackled";
  if (what === "shivering" || what === "chip") return "flaked";
  return what === "crack" && pattern === "network" ? "crackled" : "cracked";
}

function pieceOf({ piece, posterior }: WeighedCase): DiagnosedPiece {
  return {
    piece: piece?.piece ?? null,
    what: piece === null ? "not known" : whatOf(piece),
    count: piece?.count ?? 1,
    causes: ranked(posterior).map((kind) => ({
      kind,
      name: CRACK_KINDS[kind],
      posterior: posterior[kind],
      likelihood: likelihoodOf(posterior[kind]),
    })),
  };
}

function causeOf(
  kind: CrackKind,
  posterior: ByKind,
  cases: readonly WeighedCase[],
): DiagnosedCause {
  const all = cases.flatMap((each) => weighedFor(kind, each));
  const heaviest = all.toSorted((a, b) => WEIGHTS[b.weight] - WEIGHTS[a.weight]);
  const evidence = heaviest.filter(
    (each, at) => heaviest.findIndex((other) => isSame(each, other)) === at,
  );
  const likelihood = likelihoodOf(posterior[kind]);
  const answered = new Set(cases.flatMap(answeredBy));
  return {
    kind,
    name: CRACK_KINDS[kind],
    posterior: posterior[kind],
    likelihood,
    standing: STANDINGS[likelihood],
    balance: evidence.reduce((sum, each) => sum + signedWeight(each), 0),
    evidence,
    unanswered: questionsAbout(kind).filter((question) => !answered.has(question)),
  };
}

/** What a case leaves no need to ask: a ring says nothing more beside a crack whose depth is known. */
function answeredBy({ piece, evidence }: WeighedCase): readonly QuestionId[] {
  const known = evidence.flatMap(({ question, short }) => (short === "" ? [] : [question]));
  const deep = piece !== null && piece.what !== null && piece.what !== "crack";
  return deep || piece?.rings ? [...known, "ring"] : known;
}

const STANDINGS = {
  likely: "speaks for",
  possible: "open",
  unlikely: "speaks against",
} as const;

/** What a case's evidence says of one kind, against all the others as they stood before it. */
function weighedFor(kind: CrackKind, { evidence }: WeighedCase): readonly WeighedEvidence[] {
  const depth = evidence.find(({ question }) => question === "depth");
  const prior = normalised(byKind((each) => USUAL[each] * (depth?.times[each] ?? 1)));
  return evidence.flatMap((each) => {
    const before = each === depth ? normalised(USUAL) : prior;
    const others = KINDS.filter((other) => other !== kind);
    const expected =
      others.reduce((sum, other) => sum + before[other] * each.times[other], 0) /
      others.reduce((sum, other) => sum + before[other], 0);
    const ratio = each.times[kind] / expected;
    const size = Math.max(ratio, 1 / ratio);
    if (each.short === "" || size < SAYS_FROM) return [];
    const { question, short, statement, basis } = each;
    return [
      {
        question,
        direction: ratio > 1 ? "for" : "against",
        weight: weightOf(size),
        ratio,
        short,
        statement,
        evidence: each.evidence,
        basis,
      } as const,
    ];
  });
}

function weightOf(size: number): WeightName {
  if (size >= STRONG_FROM) return "strong";
  return size >= FAIR_FROM ? "fair" : "weak";
}

/** The same said of two pieces; what one log does to each of several wares is told once, by the worst hit. */
function isSame(a: WeighedEvidence, b: WeighedEvidence): boolean {
  if (a.statement !== b.statement || a.direction !== b.direction) return false;
  return (
    a.evidence.some(({ name }) => name === "stress") ||
    a.evidence.every(({ value }, at) => b.evidence[at]?.value === value)
  );
}

function signedWeight({ direction, weight }: WeighedEvidence): number {
  return direction === "for" ? WEIGHTS[weight] : -WEIGHTS[weight];
}

/** Which tables answer a question. */
export function tablesOf(
  question: QuestionId,
  isGlaze: boolean,
): readonly (keyof typeof ANSWERS)[] {
  if (question === "sound") return [isGlaze ? "pinging heard" : "crack heard"];
  return question in ANSWERS ? [question as keyof typeof ANSWERS] : [];
}

/** Questions of which one answer at least says something of a kind. */
function questionsAbout(kind: CrackKind): readonly QuestionId[] {
  const tabled = (Object.keys(ANSWERS) as (keyof typeof ANSWERS)[]).flatMap((table) => {
    const says = Object.values(ANSWERS[table]).some(({ probability }) => {
      const middle = mean(Object.values(probability));
      const ratio = probability[kind] / middle;
      return Math.max(ratio, 1 / ratio) >= SAYS_FROM;
    });
    return says ? [QUESTION_OF[table] ?? (table as QuestionId)] : [];
  });
  const logged = LOG_QUESTIONS.filter((question) => LOGGED[question] === kind);
  return [...new Set([...tabled, ...logged])];
}

const QUESTION_OF: Readonly<Partial<Record<keyof typeof ANSWERS, QuestionId>>> = {
  "crack heard": "sound",
  "pinging heard": "sound",
  "what sounds": "sound",
};

const LOGGED: Readonly<Partial<Record<QuestionId, CrackKind>>> = {
  quartz: "dunting at quartz",
  cristobalite: "dunting at cristobalite",
  heating: "heating crack",
};

/** Kinds by their probability, most probable first; those that stand level in their own order. */
function ranked(posterior: ByKind): readonly CrackKind[] {
  return KINDS.toSorted((a, b) => posterior[b] - posterior[a]);
}

/** Probabilities that make 1. */
export function normalised(weights: ByKind): ByKind {
  const sum = KINDS.reduce((total, kind) => total + weights[kind], 0);
  return byKind((kind) => weights[kind] / sum);
}

function byKind(of: (kind: CrackKind) => number): ByKind {
  return Object.fromEntries(KINDS.map((kind) => [kind, of(kind)])) as Record<CrackKind, number>;
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
