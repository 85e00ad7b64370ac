import type { Finding, Severity } from "../findings/Finding.ts";

/** A finding about a glaze as a whole: no time, no thermocouple, its numbers written out. */
export function glazeFinding(
  severity: Severity,
  topic: string,
  words: { readonly statement: string; readonly basis: string; readonly advice?: string },
): Finding {
  const { statement, basis, advice = "" } = words;
  return { topic, severity, statement, evidence: [], basis, advice, zone: null, span: null };
}
