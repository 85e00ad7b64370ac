import type { Finding, Severity } from "../findings/Finding.ts";
import type { Oxide } from "./oxides.ts";
import type { OutsideRange } from "./setPointModel.ts";

/** A share as people read it, small ones with a second place: `12.4`, `0.35`. */
export function shareText(share: number): string {
  return share < 0.995 ? share.toFixed(2) : share.toFixed(1);
}

/** A coefficient of expansion in millionths per kelvin, without its unit: `7.24`. */
export function expansionText(perK: number): string {
  return (perK * 1e6).toFixed(2).replace("-", "−");
}

/** Shares by oxide as one phrase: `SO3 0.20 and Cl 0.10`. */
export function sharesText(shares: readonly (readonly [Oxide, number])[]): string {
  return joined(shares.map(([oxide, share]) => `${oxide} ${shareText(share)}`));
}

/** What lies outside a range, as one phrase: `ZnO 5.3 (0 to 2.8)`. */
export function outsideText(outside: readonly OutsideRange[]): string {
  return joined(
    outside.map(({ oxide, molPercent, least, most }) =>
      most === 0
        ? `${oxide} ${shareText(molPercent)} (not known to it)`
        : `${oxide} ${shareText(molPercent)} (${least} to ${most})`,
    ),
  );
}

/** Words joined for a sentence: `a, b and c`. */
export function joined(words: readonly string[]): string {
  return words.join(", ").replace(/, ([^,]+)$/, " and $1");
}

/** A finding about a glaze as a whole: no time, no thermocouple, its numbers written out. */
export function glazeFinding(
  severity: Severity,
  topic: string,
  words: { readonly statement: string; readonly basis: string; readonly advice?: string },
): Finding {
  const { statement, basis, advice = "" } = words;
  return { topic, severity, statement, evidence: [], basis, advice, zone: null, span: null };
}
