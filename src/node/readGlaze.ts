import { basename } from "node:path";
import type { GlazeWishes, GlazeWork } from "../core/glaze/GlazeWork.ts";
import { glazeWorkOf } from "../core/glaze/glazeWorkOf.ts";
import type { Result } from "../core/problem.ts";
import { readText } from "./readInput.ts";

/** A glaze worked out from its YAML or JSON file, or from standard input for `-`. */
export async function readGlaze(path: string, wishes: GlazeWishes): Promise<Result<GlazeWork>> {
  const text = await readText(path);
  if (!text.ok) return text;
  return glazeWorkOf(text.value, path === "-" ? "standard input" : basename(path), wishes);
}
