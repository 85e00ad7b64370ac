import type { Problem } from "../../problem.ts";
import type { Column } from "../text/table.ts";

const FIX = "export the log again in whole degrees of one unit";

/** Why the numbers of temperature columns are in no one unit: two scales in one column, or parts of a degree. */
export function unitProblem(temperatures: readonly Column[], name: string): Problem | null {
  const mixed = temperatures.find(({ otherSuffix }) => otherSuffix !== null);
  if (mixed !== undefined)
    return {
      code: "log/unit-mixed",
      what: `the cells of "${mixed.name}" are partly in ${sign(mixed.suffix)} and partly in ${sign(mixed.otherSuffix)}`,
      where: name,
      expected: "one unit in the whole column",
      fix: `${FIX}; --log-unit reads all numbers in one, whatever stands beside them`,
    };
  const scaled = temperatures.find((column) => SCALED.test(`${column.name} ${column.unitText}`));
  if (scaled === undefined) return null;
  return {
    code: "log/unit-scaled",
    what: `"${scaled.name}" counts parts of a degree, not degrees`,
    where: name,
    expected: "temperatures in °C, °F or K",
    fix: `${FIX}; --log-unit C, F or K reads the numbers as degrees all the same`,
  };
}

function sign(unit: Column["suffix"]): string {
  return unit === "K" ? "K" : `°${unit}`;
}

/** `0.1 °C`, `1/10 °F`, `°C x 10`, `tenths`. */
const SCALED =
  /(?:0[.,]0?1|1\/100?)\s*(?:[°º˚]|deg|[CFK]\b)|\btenths?\b|[°º˚]\s?[CFK]\s?[x×*]\s?100?\b/i;
