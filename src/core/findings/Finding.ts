/** How much a finding matters. A `warning` makes the command's answer "no" (exit code 1). */
export type Severity = "note" | "caution" | "warning";

/** How a number is printed: kind decides unit and digits, the reader's °C or °F is chosen last. */
export type EvidenceKind =
  | "temperature"
  | "difference"
  | "rate"
  | "duration"
  | "elapsed"
  | "ratio"
  | "percent"
  | "count"
  | "cones";

/** One number that a finding rests on, in canonical units (°C, °C/h, s, ratio 0–1 as ratio). */
export interface Evidence {
  /** What it is, in words; also the name by which the statement places it: `{peak}`. */
  readonly name: string;
  readonly value: number;
  readonly kind: EvidenceKind;
}

/** One statement about a Curve, a log or a firing. */
export interface Finding {
  /** What it is about, for grouping and for tests: `cooling through quartz`. Plain words. */
  readonly topic: string;
  readonly severity: Severity;
  /** One sentence; `{name}` stands for the evidence of that name. */
  readonly statement: string;
  readonly evidence: readonly Evidence[];
  /** What it rests on: a published rule with its source, or how it was measured. */
  readonly basis: string;
  /** The next thing to do, in the imperative; may place evidence as well; empty when there is none. */
  readonly advice: string;
  /** Thermocouple or zone, when there are several. */
  readonly zone: string | null;
  /** When it holds [s from start], or null for the whole. */
  readonly span: {
    readonly fromSeconds: number;
    readonly toSeconds: number;
  } | null;
}

/** Topic of a kiln that heats by itself: an emergency, said before all else. */
export const RUNAWAY = "runaway";

/** The finding of an emergency; null when there is none. */
export function runawayIn(findings: readonly Finding[]): Finding | null {
  return findings.find(({ topic }) => topic === RUNAWAY) ?? null;
}
