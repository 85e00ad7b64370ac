import { failed, ok, type Problem, type Result } from "../problem.ts";
import { type LeachAmount, parseLeachAmount } from "../units/leachAmount.ts";
import { parseLength } from "../units/parseLength.ts";
import { parseVolume } from "../units/volume.ts";
import type { GlazeFile } from "./glazeFormat.ts";
import type { LeachTest } from "./LeachTest.ts";

type Given = NonNullable<GlazeFile["leachTests"]>[number];

/**
 * Leach tests as a glaze file gives them.
 *
 * @returns all problems of their lengths, volumes and amounts, and `glaze/leach-nothing` for a test
 * of neither metal.
 */
export function leachTestsOf(
  file: GlazeFile,
  at: (path: readonly PropertyKey[]) => string,
): Result<readonly LeachTest[]> {
  const tests: LeachTest[] = [];
  const problems: Problem[] = [];
  for (const [index, given] of (file.leachTests ?? []).entries()) {
    const test = leachTestOf(given, (key) => at(["leachTests", index, ...key]));
    if (test.ok) tests.push(test.value);
    else problems.push(...test.problems);
  }
  return problems.length > 0 ? failed(...problems) : ok(tests);
}

function leachTestOf(
  given: Given,
  at: (path: readonly PropertyKey[]) => string,
): Result<LeachTest> {
  const depth = parseLength(given.depth, { where: at(["depth"]) });
  const holds = parseVolume(String(given.holds), { where: at(["holds"]) });
  const lead = amountOf(given.lead, at(["lead"]));
  const cadmium = amountOf(given.cadmium, at(["cadmium"]));
  if (!depth.ok || !holds.ok || !lead.ok || !cadmium.ok)
    return failed(
      ...[depth, holds, lead, cadmium].flatMap((part) => (part.ok ? [] : part.problems)),
    );
  if (lead.value === null && cadmium.value === null)
    return failed({
      code: "glaze/leach-nothing",
      where: at([]),
      what: "neither lead nor cadmium is given",
      expected: "what was found of one or both, under lead and cadmium",
      fix: 'write it like lead: "0.42 mg/L"',
    });
  return ok({
    ware: { use: given.ware, depthMm: depth.value, litres: holds.value },
    lead: lead.value,
    cadmium: cadmium.value,
    source: given.source,
  });
}

function amountOf(given: string | undefined, where: string): Result<LeachAmount | null> {
  return given === undefined ? ok(null) : parseLeachAmount(given, { where });
}
