import type { ParsedGlaze } from "../../../src/core/glaze/Glaze.ts";
import { parseGlaze } from "../../../src/core/glaze/glazeFile.ts";
import { type GlazeSheet, workOutGlaze } from "../../../src/core/glaze/glazeSheet.ts";
import { problemText } from "../../../src/core/problem.ts";

/** A glaze file from its lines after version and title. */
export function glazeFile(...lines: readonly string[]): string {
  return ["formatVersion: 1", "title: Test glaze", ...lines, ""].join("\n");
}

/** A glaze file, understood; throws with its problems. */
export function parsed(text: string): ParsedGlaze {
  const result = parseGlaze(text, "g.yaml");
  if (!result.ok) throw new Error(result.problems.map(problemText).join("\n"));
  return result.value;
}

/** A glaze file, worked out; throws with its problems. */
export function workedOut(text: string): GlazeSheet {
  const result = workOutGlaze(parsed(text), "g.yaml");
  if (!result.ok) throw new Error(result.problems.map(problemText).join("\n"));
  return result.value;
}

/** The problems of a glaze file as people read them; throws when there are none. */
export function problemsOf(text: string): string {
  const result = parseGlaze(text, "g.yaml");
  if (result.ok) throw new Error("the glaze was accepted");
  return result.problems.map(problemText).join("\n");
}
