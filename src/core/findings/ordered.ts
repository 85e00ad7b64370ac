import { type Finding, RUNAWAY, type Severity } from "./Finding.ts";

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
