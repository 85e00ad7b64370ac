import type { ConeSeries } from "../core/cones/cone.ts";
import { CONE_MODELS } from "../core/cones/coneModel.ts";
import { CONE_TABLES } from "../core/cones/coneTables.ts";
import { nearWord } from "../core/document/nearWord.ts";
import { failed, ok, type Result } from "../core/problem.ts";

/**
 * A series of cones that schedules can be worked out for, as `--series` names it.
 * @returns the series; `command/series-without-model` for a table that is only to look up,
 * `command/series` with the nearest name for anything else.
 */
export function coneSeries(text: string): Result<ConeSeries> {
  const solvable = Object.keys(CONE_MODELS) as ConeSeries[];
  const name = text.trim().toLowerCase().replaceAll(/\s+/g, "-");
  const found = solvable.find((series) => series === name);
  if (found !== undefined) return ok(found);
  const common = { where: "--series", expected: `one of ${solvable.join(", ")}` };
  if (Object.hasOwn(CONE_TABLES, name))
    return failed({
      ...common,
      code: "command/series-without-model",
      what: `no schedule can be worked out for ${name} cones: their end points are a table to look up, with no model of holds and rates`,
      fix: `--series self-supporting; to see the table, undunted cones --series ${name}`,
    });
  const near = nearWord(name, solvable);
  return failed({
    ...common,
    code: "command/series",
    what: `"${text}" is not a series of cones`,
    fix: `--series ${near ?? "self-supporting"}`,
  });
}
