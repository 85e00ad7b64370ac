import { type CrackKind, type DiagnosedCause, type QuestionId, WEIGHTS } from "./DiagnosedCause.ts";
import type { EvidenceRule } from "./EvidenceRule.ts";
import { EVIDENCE_RULES } from "./evidenceRules.ts";
import { QUESTIONS } from "./questions.ts";

/** An open question that would part two kinds of crack. */
export interface TellingApart {
  readonly question: QuestionId;
  readonly ask: string;
  readonly look: string;
  /** Each answer that pulls the two different ways, and what it then speaks for or against. */
  readonly answers: readonly {
    readonly answer: string;
    readonly speaksFor: CrackKind | null;
    readonly speaksAgainst: CrackKind | null;
  }[];
}

/** More questions than this are not asked at once. */
const MOST_QUESTIONS = 4;

/**
 * What would tell the first two kinds apart: the open questions with an answer that speaks for one
 * of them and not for the other, or against one and not the other. Those that part them most come
 * first, four at most.
 */
export function tellingApart(causes: readonly DiagnosedCause[]): readonly TellingApart[] {
  const [first, second] = causes;
  if (!first || !second) return [];
  const pair = [first.kind, second.kind] as const;
  return openQuestions([first, second])
    .map((question) => ({
      question,
      rules: EVIDENCE_RULES.filter((rule) => rule.question === question && parts(rule, pair)),
    }))
    .filter(({ rules }) => rules.length > 0)
    .sort((a, b) => widest(b.rules, pair) - widest(a.rules, pair))
    .slice(0, MOST_QUESTIONS)
    .map(({ question, rules }) => ({
      question,
      ask: QUESTIONS[question].ask,
      look: QUESTIONS[question].look,
      answers: rules.map((rule) => ({
        answer: rule.answer,
        speaksFor: pair.find((kind) => pull(rule, kind) > 0) ?? null,
        speaksAgainst: pair.find((kind) => pull(rule, kind) < 0) ?? null,
      })),
    }));
}

/** Questions that are open for any of these kinds, in the order in which questions are told. */
export function openQuestions(causes: readonly DiagnosedCause[]): readonly QuestionId[] {
  const open = new Set(causes.flatMap(({ unanswered }) => unanswered));
  return (Object.keys(QUESTIONS) as QuestionId[]).filter((question) => open.has(question));
}

function pull(rule: EvidenceRule, kind: CrackKind): number {
  const [pro, contra] = [rule.for[kind], rule.against[kind]];
  return (pro ? WEIGHTS[pro] : 0) - (contra ? WEIGHTS[contra] : 0);
}

function parts(rule: EvidenceRule, [a, b]: readonly [CrackKind, CrackKind]): boolean {
  return Math.sign(pull(rule, a)) !== Math.sign(pull(rule, b));
}

function widest(rules: readonly EvidenceRule[], [a, b]: readonly [CrackKind, CrackKind]): number {
  return Math.max(...rules.map((rule) => Math.abs(pull(rule, a) - pull(rule, b))));
}
