import { type CrackFacts, hasSomethingToWeigh } from "./crackFacts.ts";
import {
  CRACK_KINDS,
  type CrackKind,
  type DiagnosedCause,
  type QuestionId,
  WEIGHTS,
  type WeighedEvidence,
} from "./DiagnosedCause.ts";
import type { EvidenceRule } from "./EvidenceRule.ts";
import { EVIDENCE_RULES } from "./evidenceRules.ts";

/** From this balance on the evidence speaks for a kind of crack, or against it; below it is open. */
const SPEAKS_FROM = 2;

/**
 * Every kind of crack with what speaks for and against it, the one most spoken for first.
 * Kinds that stand level keep the order of `CRACK_KINDS`.
 *
 * @returns empty when nothing was heard and nothing was found.
 */
export function diagnosedCauses(facts: CrackFacts): readonly DiagnosedCause[] {
  if (!hasSomethingToWeigh(facts)) return [];
  const seen = EVIDENCE_RULES.flatMap((rule) => {
    const evidence = rule.seen(facts);
    return evidence === null ? [] : [{ rule, evidence }];
  });
  const answered = new Set(seen.map(({ rule }) => rule.question));
  return kinds()
    .map((kind) => {
      const evidence = seen.flatMap((each) => weighed(each, kind));
      const balance = evidence.reduce((sum, each) => sum + signedWeight(each), 0);
      return {
        kind,
        name: CRACK_KINDS[kind],
        standing: standingOf(balance),
        balance,
        evidence: [...evidence].sort((a, b) => WEIGHTS[b.weight] - WEIGHTS[a.weight]),
        unanswered: questionsAbout(kind).filter((question) => !answered.has(question)),
      };
    })
    .sort((a, b) => b.balance - a.balance);
}

function kinds(): readonly CrackKind[] {
  return Object.keys(CRACK_KINDS) as CrackKind[];
}

function weighed(
  seen: { readonly rule: EvidenceRule; readonly evidence: WeighedEvidence["evidence"] },
  kind: CrackKind,
): readonly WeighedEvidence[] {
  const { rule, evidence } = seen;
  return (["for", "against"] as const).flatMap((direction) => {
    const weight = rule[direction][kind];
    if (weight === undefined) return [];
    return [
      {
        question: rule.question,
        direction,
        weight,
        short: rule.short ?? rule.answer,
        statement: rule.statement,
        evidence,
        basis: rule.basis,
      },
    ];
  });
}

function signedWeight({ direction, weight }: WeighedEvidence): number {
  return direction === "for" ? WEIGHTS[weight] : -WEIGHTS[weight];
}

function standingOf(balance: number): DiagnosedCause["standing"] {
  if (balance >= SPEAKS_FROM) return "speaks for";
  return balance <= -SPEAKS_FROM ? "speaks against" : "open";
}

function questionsAbout(kind: CrackKind): readonly QuestionId[] {
  const questions = EVIDENCE_RULES.filter(
    (rule) => rule.for[kind] !== undefined || rule.against[kind] !== undefined,
  ).map(({ question }) => question);
  return [...new Set(questions)];
}
