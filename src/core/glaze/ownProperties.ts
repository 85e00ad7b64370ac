import { failed, ok, type Problem, type Result } from "../problem.ts";
import { cited } from "../sources/bibliography.ts";
import { shown } from "../units/quantity.ts";
import { parseTemperature } from "../units/temperature.ts";
import type { Property } from "../ware/Ware.ts";
import type { ParsedGlaze, SetPoint } from "./Glaze.ts";
import type { GlazeFile } from "./glazeFormat.ts";

type Place = (path: readonly PropertyKey[]) => string;
type OwnProperties = ParsedGlaze["own"];

/** What an expansion of a glaze can be at all [1/K]. */
const EXPANSION_RANGE = [0.1e-6, 30e-6] as const;

/** Where a glaze can stop flowing at all [°C]. */
const SET_RANGE_C = [300, 900] as const;

/** One standard deviation of a dilatometer's coefficient: half of ± 5 % (ASTM C372). */
const DILATOMETER_SHARE = 0.025;

/** One standard deviation of a set point of one's own that says nothing of it [K]. */
const SET_SIGMA_K = 20;

/** Limits of single properties, and the spread of one given alone as a share of it. */
const LIMITS = {
  youngGPa: { least: 20, most: 150, spread: 0.1 },
  poisson: { least: 0.1, most: 0.4, spread: 0.1 },
  toughness: { least: 0.1, most: 5, spread: 0.15 },
  firedDensity: { least: 1.5, most: 7, spread: 0.03 },
} as const;

/**
 * What a glaze file says of the fired glaze itself.
 *
 * @returns All of `glaze/expansion`, `glaze/expansion-range`, `glaze/set-point`,
 * `glaze/property-range`, `glaze/property-order`.
 */
export function ownProperties(file: GlazeFile, at: Place): Result<OwnProperties> {
  const expansion = expansionOf(file.expansion, at);
  const setPoint = setPointOf(file.setPoint, at);
  const young = propertyOf("youngGPa", file, at);
  const poisson = propertyOf("poisson", file, at);
  const toughness = propertyOf("toughness", file, at);
  const density = propertyOf("firedDensity", file, at);
  if (expansion.ok && setPoint.ok && young.ok && poisson.ok && toughness.ok && density.ok)
    return ok({
      expansion: expansion.value,
      setPoint: setPoint.value,
      youngGPa: young.value,
      poisson: poisson.value,
      toughnessMPaRootM: toughness.value,
      firedDensityGPerCm3: density.value,
      solidsDensityGPerCm3: file.solidsDensity ?? null,
    });
  const problems: Problem[] = [];
  for (const part of [expansion, setPoint, young, poisson, toughness, density])
    if (!part.ok) problems.push(...part.problems);
  return failed(...problems);
}

function expansionOf(given: GlazeFile["expansion"], at: Place): Result<OwnProperties["expansion"]> {
  if (given === undefined) return ok(null);
  const { value, how, to, from = 20 } = given;
  const [least, most] = EXPANSION_RANGE;
  if (!(value >= least && value <= most))
    return failed({
      code: "glaze/expansion",
      what: `the expansion is ${shown(value)}`,
      where: at(["expansion", "value"]),
      expected: "a mean linear expansion per kelvin, 0.1e-6 to 30e-6",
      fix: value > 0.1 && value < 30 ? `write ${value}e-6` : "write it like 7.2e-6",
    });
  if (!(to > from))
    return failed({
      code: "glaze/expansion-range",
      what: `the range goes from ${shown(from)} to ${shown(to)} °C`,
      where: at(["expansion", "to"]),
      expected: "an upper end above the lower one",
      fix: "give both in °C: from: 20, to: 500",
    });
  const sigmaPerK = given.plusMinus ?? DILATOMETER_SHARE * value;
  return ok({
    meanPerK: value,
    sigmaPerK,
    relativeSigmaPerK: sigmaPerK,
    fromC: from,
    toC: to,
    from: "measured",
    source:
      given.plusMinus === undefined
        ? `yours: ${how}; its spread is half of what a dilatometer may be off (${cited("astm-c372")})`
        : `yours: ${how}`,
  });
}

function setPointOf(given: GlazeFile["setPoint"], at: Place): Result<SetPoint | null> {
  if (given === undefined) return ok(null);
  const where = at(["setPoint", "value"]);
  const temp = parseTemperature(given.value, { unit: "C", where });
  if (!temp.ok) return temp;
  const [least, most] = SET_RANGE_C;
  if (!(temp.value >= least && temp.value <= most))
    return failed({
      code: "glaze/set-point",
      what: `the set point is ${Math.round(temp.value)} °C`,
      where,
      expected: `${least} to ${most} °C, where a glaze turns stiff on cooling`,
      fix: "check the number and its unit; it is not the firing temperature",
    });
  return ok({
    valueC: temp.value,
    sigmaK: given.plusMinus ?? SET_SIGMA_K,
    from: "given",
    source: `yours: ${given.how}`,
  });
}

function propertyOf(
  name: keyof typeof LIMITS,
  file: GlazeFile,
  at: Place,
): Result<Property | null> {
  const given = file[name];
  if (given === undefined) return ok(null);
  const { least, most, spread } = LIMITS[name];
  const { value, low, high } =
    typeof given === "number"
      ? { value: given, low: given * (1 - spread), high: given * (1 + spread) }
      : given;
  if (!(value >= least && value <= most))
    return failed({
      code: "glaze/property-range",
      what: `${name} is ${shown(value)}`,
      where: at([name]),
      expected: `a number from ${least} to ${most}`,
      fix: "check the unit, or leave it out to take the usual one",
    });
  if (!(low <= value && value <= high))
    return failed({
      code: "glaze/property-order",
      what: `low ${shown(low)}, value ${shown(value)}, high ${shown(high)}`,
      where: at([name]),
      expected: "a value between its low and its high",
      fix: "put the three in order",
    });
  return ok({ value, low, high, source: "yours" });
}
