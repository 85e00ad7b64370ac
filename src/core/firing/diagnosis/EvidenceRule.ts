import type { Evidence } from "../../findings/Finding.ts";
import type { CrackFacts } from "./crackFacts.ts";
import type { CrackKind, QuestionId, WeightName } from "./DiagnosedCause.ts";

/** How much an answer says for some kinds of crack and against others. */
export type Pull = Readonly<Partial<Record<CrackKind, WeightName>>>;

/** One possible answer to one question, and what it speaks for and against. */
export interface EvidenceRule {
  readonly question: QuestionId;
  /** The answer in a few words without numbers, as one would give it beforehand: `sharp edges`. */
  readonly answer: string;
  /** The same as it was seen, with its numbers; the answer itself when it has none. */
  readonly short?: string;
  /** What the numbers are when the facts give this answer; null when they do not give it. */
  readonly seen: (facts: CrackFacts) => readonly Evidence[] | null;
  /** One sentence with its reason; `{name}` stands for the evidence of that name. */
  readonly statement: string;
  readonly for: Pull;
  readonly against: Pull;
  /** A source, `common practice`, or `our own judgement`. */
  readonly basis: string;
}
