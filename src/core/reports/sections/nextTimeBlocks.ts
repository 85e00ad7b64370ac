import { statementText } from "../../findings/findingText.ts";
import type { NextChange, NextTime, Standing } from "../../firing/nextTime/NextTime.ts";
import type { TemperatureUnit } from "../../units/temperature.ts";
import type { Block } from "../Block.ts";
import { foldedCommand } from "./foldedCommand.ts";

const STANDING: Readonly<Record<Standing, string>> = {
  firm: "Firm",
  "worth trying": "Only worth trying",
  "too close to tell": "Too close to tell",
};

/** What to change in the next firing, most needed first, and the command that drafts it. */
export function nextTimeBlocks(nextTime: NextTime | null, unit: TemperatureUnit): readonly Block[] {
  if (nextTime === null) return [];
  const { changes, advice, command, commandSays } = nextTime;
  return [
    { kind: "heading", text: "What to change next time" },
    ...(changes.length === 0
      ? []
      : ([
          { kind: "list", items: changes.map((change) => changeText(change, unit)) },
        ] satisfies Block[])),
    ...advice.map((text): Block => ({ kind: "sentence", text })),
    { kind: "sentence", text: commandSays },
    ...(command === null
      ? []
      : ([{ kind: "lines", lines: foldedCommand(command) }] satisfies Block[])),
  ];
}

function changeText(change: NextChange, unit: TemperatureUnit): string {
  const placed = (statement: string) =>
    statementText({ topic: change.about, statement, evidence: change.evidence }, unit);
  return `${STANDING[change.standing]}: ${placed(change.change)} ${placed(change.because)}`;
}
