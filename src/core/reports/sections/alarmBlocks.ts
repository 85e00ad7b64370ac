import type { Finding } from "../../findings/Finding.ts";
import { adviceText, statementText } from "../../findings/findingText.ts";
import { runawayIn } from "../../findings/runaway.ts";
import type { TemperatureUnit } from "../../units/temperature.ts";
import type { Block } from "../Block.ts";

/** A kiln that heats by itself, said before the title; empty when there is none. */
export function alarmBlocks(findings: readonly Finding[], unit: TemperatureUnit): readonly Block[] {
  const found = runawayIn(findings);
  if (found === null) return [];
  return [{ kind: "alarm", text: `${statementText(found, unit)} ${adviceText(found, unit)}` }];
}
