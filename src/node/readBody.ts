import { basename } from "node:path";
import type { Result } from "../core/problem.ts";
import { parseBody } from "../core/ware/bodyFile.ts";
import type { Body } from "../core/ware/Ware.ts";
import { readText } from "./readInput.ts";

/** A clay body of one's own from its YAML or JSON file. */
export async function readBody(path: string): Promise<Result<Body>> {
  const text = await readText(path);
  return text.ok ? parseBody(text.value, basename(path)) : text;
}
