import { adviceText, type Finding, ordered, RUNAWAY, statementText } from "../findings/Finding.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import type { ScreenPart } from "./Answer.ts";
import { sentence } from "./rooms.ts";

/** More than these are counted, not shown. */
const MOST_SHOWN = 3;

/**
 * Warnings and cautions for a screen, the worst first, each with what to do; what is not shown is
 * counted. Empty when there are none. An emergency is no part of them: it stands above the title.
 */
export function seriousParts(
  findings: readonly Finding[],
  unit: TemperatureUnit,
): readonly ScreenPart[] {
  const serious = ordered(findings).filter(
    ({ severity, topic }) => severity !== "note" && topic !== RUNAWAY,
  );
  const shown = serious.slice(0, MOST_SHOWN);
  const rest = serious.length - shown.length;
  return [
    ...shown.map((finding, at): ScreenPart => {
      const text = `${statementText(finding, unit)} ${adviceText(finding, unit)}`.trim();
      const marked = finding.severity === "warning" ? `Warning: ${text}` : text;
      return { rank: at === 0 ? 0 : 2, blocks: [{ kind: "list", items: [marked] }] };
    }),
    ...(rest === 0 ? [] : [{ rank: 1, blocks: [sentence(`And ${rest} more, in the findings.`)] }]),
  ];
}
