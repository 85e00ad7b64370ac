import {
  printDifference,
  printDuration,
  printElapsed,
  printRate,
  printTemperature,
} from "../text/quantities.ts";
import type { TemperatureUnit } from "../units/temperature.ts";

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

const RANK: Readonly<Record<Severity, number>> = {
  warning: 0,
  caution: 1,
  note: 2,
};

/** Findings, an emergency first, then worst first, then by time; the same findings always come in the same order. */
export function ordered(findings: readonly Finding[]): readonly Finding[] {
  return [...findings].sort(
    (a, b) =>
      Number(b.topic === RUNAWAY) - Number(a.topic === RUNAWAY) ||
      RANK[a.severity] - RANK[b.severity] ||
      (a.span?.fromSeconds ?? -1) - (b.span?.fromSeconds ?? -1) ||
      (a.topic < b.topic ? -1 : a.topic > b.topic ? 1 : 0),
  );
}

/** Whether a firing or a schedule has a finding that makes the answer "no". */
export function hasWarning(findings: readonly Finding[]): boolean {
  return findings.some((finding) => finding.severity === "warning");
}

/** One number of evidence, in the reader's unit and with no digit it cannot carry. */
function evidenceText(evidence: Evidence, unit: TemperatureUnit): string {
  const { value } = evidence;
  switch (evidence.kind) {
    case "temperature":
      return printTemperature(value, unit);
    case "difference":
      return printDifference(value, unit);
    case "rate":
      return printRate(value, unit);
    case "duration":
      return printDuration(value);
    case "elapsed":
      return printElapsed(value);
    case "percent":
      return `${Math.round(value * 100)} %`;
    case "ratio":
      return value.toFixed(value < 0.995 ? 2 : 1);
    case "cones":
      return value.toFixed(1);
    case "count":
      return String(Math.round(value));
  }
}

/** A statement, of a finding or of a like thing, with its evidence in place. */
export function statementText(
  finding: Pick<Finding, "topic" | "statement" | "evidence">,
  unit: TemperatureUnit,
): string {
  return placed(finding.statement, finding, unit);
}

/** A finding's advice with its evidence in place; empty when there is none. */
export function adviceText(finding: Finding, unit: TemperatureUnit): string {
  return placed(finding.advice, finding, unit);
}

/** Stands behind a brace of somebody's words inside a statement: that brace is a brace. */
const KEPT = "\u2060";

/**
 * Words of a person or a file for a statement or an advice: they are shown as they stand, on one
 * line, and their braces place nothing.
 */
export function quoted(text: string): string {
  return text.replaceAll("{", `{${KEPT}`).replaceAll(/\s+/g, " ").trim();
}

/** Each place once, so that what is put in is never looked at again; what names nothing stands. */
function placed(text: string, finding: Pick<Finding, "evidence">, unit: TemperatureUnit): string {
  return text.replaceAll(/\{\u2060|\{([^{}\u2060]+)\}/g, (whole, name: string | undefined) => {
    if (name === undefined) return "{";
    const evidence = finding.evidence.find((item) => item.name === name);
    return evidence === undefined ? whole : evidenceText(evidence, unit);
  });
}

/** Evidence by which the worst of several zones is known, the first that a finding has. */
const WORST_BY = ["stress", "fastest", "rate"];

/**
 * Findings about a firing, those of several zones that say the same made one: same topic and same
 * severity become the worst of them, which names all its zones. What differs stays apart, and so
 * does what is said of no zone.
 */
export function agreed(findings: readonly Finding[]): readonly Finding[] {
  const groups = new Map<string, Finding[]>();
  for (const finding of findings) {
    const { topic, severity, zone } = finding;
    const key = zone === null ? `${groups.size}` : `${severity} ${topic}`;
    groups.set(key, [...(groups.get(key) ?? []), finding]);
  }
  return [...groups.values()].map((group) => {
    const worst = group.reduce((a, b) => (badness(b) > badness(a) ? b : a));
    const zones = [...new Set(group.flatMap(({ zone }) => zone ?? []))];
    return zones.length < 2 ? worst : { ...worst, zone: listed(zones) };
  });
}

function badness({ evidence }: Finding): number {
  const values = WORST_BY.flatMap((by) => evidence.find(({ name }) => name === by)?.value ?? []);
  return values[0] ?? 0;
}

function listed(zones: readonly string[]): string {
  return `${zones.slice(0, -1).join(", ")} and ${zones.at(-1)}`;
}
