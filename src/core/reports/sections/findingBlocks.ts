import type { Finding, Severity } from "../../findings/Finding.ts";
import { adviceText, statementText } from "../../findings/findingText.ts";
import { ordered } from "../../findings/ordered.ts";
import type { TemperatureUnit } from "../../units/temperature.ts";
import type { Block } from "../Block.ts";
import { capitalised } from "../capitalised.ts";
import { stretchText } from "../moments.ts";

const WORST_FIRST: readonly Severity[] = ["warning", "caution", "note"];

/** Findings, worst first, each with its severity as a word, its advice, and where and when it holds. */
export function findingBlocks(
  findings: readonly Finding[],
  context: { readonly unit: TemperatureUnit; readonly startOfDaySeconds: number | null },
): readonly Block[] {
  const { unit, startOfDaySeconds } = context;
  return [
    { kind: "heading", text: "Findings" },
    { kind: "sentence", text: countSentence(findings) },
    ...ordered(findings).map(
      (finding): Block => ({
        kind: "finding",
        severity: finding.severity,
        statement: statementText(finding, unit),
        advice: adviceText(finding, unit),
        where: whereText(finding, startOfDaySeconds),
      }),
    ),
  ];
}

function countSentence(findings: readonly Finding[]): string {
  if (findings.length === 0) return "Nothing stood out in what could be seen.";
  const counts = WORST_FIRST.flatMap((severity) => {
    const count = findings.filter((finding) => finding.severity === severity).length;
    return count === 0 ? [] : [`${count} ${severity}${count === 1 ? "" : "s"}`];
  });
  return `${counts.join(", ")}.`;
}

function whereText(finding: Finding, startOfDaySeconds: number | null): string | null {
  const parts = [
    ...(finding.zone === null ? [] : [`thermocouple ${finding.zone}`]),
    ...(finding.span === null ? [] : [stretchText(startOfDaySeconds, finding.span)]),
  ];
  return parts.length === 0 ? null : `${capitalised(parts.join(", "))}.`;
}
