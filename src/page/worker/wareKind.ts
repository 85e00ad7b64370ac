import { firedGlaze } from "../../core/glaze/firedGlaze.ts";
import type { Glaze } from "../../core/glaze/Glaze.ts";
import { parseGlaze } from "../../core/glaze/parseGlaze.ts";
import type { Result } from "../../core/problem.ts";
import { parseBody } from "../../core/ware/bodyFile.ts";
import type { Body } from "../../core/ware/Ware.ts";
import type { KeptFile } from "../bench/KeptFile.ts";
import { textOf } from "./readGroup.ts";

/** What a file of ware tells of. */
export type WareKind = "glaze" | "body";

/** What a file looks to tell of, by the keys that only such files have; null for neither. */
export function wareKind(file: KeptFile): WareKind | null {
  const text = textOf(file);
  if (!text.ok) return null;
  const has = (keys: string) => new RegExp(`^[{,]?\\s*"?(?:${keys})"?\\s*:`, "m").test(text.value);
  if (has("recipe|oxides")) return "glaze";
  return has("base|youngGPa|ruptureMPa|quartzFraction|matrixExpansionPerK") ? "body" : null;
}

/** The fired glaze of a file. */
export function glazeOfFile(file: KeptFile): Result<Glaze> {
  const text = textOf(file);
  if (!text.ok) return text;
  const parsed = parseGlaze(text.value, file.name);
  if (!parsed.ok) return parsed;
  const fired = firedGlaze(parsed.value, file.name);
  return fired.ok ? { ok: true, value: fired.value.glaze } : fired;
}

/** The clay body of a file. */
export function bodyOfFile(file: KeptFile): Result<Body> {
  const text = textOf(file);
  return text.ok ? parseBody(text.value, file.name) : text;
}
