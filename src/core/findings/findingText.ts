import {
  printDifference,
  printDuration,
  printElapsed,
  printRate,
  printTemperature,
} from "../units/print.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import type { Evidence, Finding } from "./Finding.ts";

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
