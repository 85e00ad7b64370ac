import type { LogReading, ReadingSteps } from "../log/LogReading.ts";
import { inert } from "./inert.ts";
import type { Paint } from "./paint.ts";
import { reportText } from "./reportText.ts";
import { explainBlocks, linesToKeep } from "./sections/explainBlocks.ts";

/** How a log was read, or how far, as text for a terminal, at most 80 columns. */
export function explainText(
  log: {
    readonly name: string;
    readonly steps: ReadingSteps;
    /** Null when it ended in a problem. */
    readonly reading: LogReading | null;
  },
  paint: Paint,
): string {
  const { name, steps, reading } = log;
  const blocks = explainBlocks(steps, reading);
  const text = reportText({ title: `How ${name} was read`, blocks }, paint);
  // At the margin, since in YAML an indent has a meaning.
  const lines = linesToKeep(steps).map((line) => `${inert(line)}\n`);
  return lines.length === 0 ? text : `${text}\n${lines.join("")}`;
}
