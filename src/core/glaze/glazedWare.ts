import { failed, ok, type Problem, type Result } from "../problem.ts";
import { isBareNumber, parseLength } from "../units/quantity.ts";
import { parseTemperature } from "../units/temperature.ts";
import { bodyGiven } from "../ware/ownBody.ts";
import type { Body } from "../ware/Ware.ts";
import type { GlazedWare, MeasuredCracks, MeasuredPing } from "./Glaze.ts";
import type { GlazeFile } from "./glazeFormat.ts";
import type { Glazing } from "./laminate.ts";

/** Above these a length is a slip of the pen [mm]. */
const THICKEST_WALL_MM = 100;
const THICKEST_COAT_MM = 10;
const WIDEST_SPACING_MM = 1000;

type Place = (path: readonly PropertyKey[]) => string;
type GivenPing = NonNullable<NonNullable<GlazeFile["cracks"]>["pings"]>[number];

/**
 * The piece under a glaze, as its file gives it, and what was measured of its cracks.
 *
 * @returns All problems of its body, lengths and temperatures, `glaze/too-thick` and
 * `glaze/coat-without-unit`, `glaze/uncracked-with-spacing` and `glaze/spacing-order` among them.
 */
export function glazedWare(file: GlazeFile, at: Place): Result<GlazedWare> {
  const body = bodyOf(file.body, at);
  const wall = lengthOf(file.wall, at(["wall"]), THICKEST_WALL_MM);
  const coat = coatOf(file.coat, at(["coat"]));
  const spacing = spacingOf(file, at);
  const pings = (file.cracks?.pings ?? []).map((ping, i) => pingOf(ping, at, i));
  const problems: Problem[] = [];
  for (const part of [body, wall, coat, spacing, ...pings])
    if (!part.ok) problems.push(...part.problems);
  if (!body.ok || !wall.ok || !coat.ok || !spacing.ok || problems.length > 0)
    return failed(...problems);
  return ok({
    body: body.value,
    wallMm: wall.value,
    coatMm: coat.value,
    glazing: glazingOf(file),
    absorptionPercent: file.absorption ?? null,
    cracks: {
      cracked: file.cracks?.cracked ?? null,
      spacing: spacing.value,
      pings: pings.flatMap((ping) => (ping.ok ? [ping.value] : [])),
    },
  });
}

function bodyOf(given: GlazeFile["body"], at: Place): Result<Body | null> {
  return given === undefined ? ok(null) : bodyGiven(given, (path) => at(["body", ...path]));
}

function glazingOf({ glazedSides, shape }: GlazeFile): Glazing | null {
  if (glazedSides === undefined) return null;
  if (glazedSides === "both") return "both faces";
  return shape === "flat" ? "one face, free to bend" : "one face, wall held";
}

function spacingOf(file: GlazeFile, at: Place): Result<MeasuredCracks["spacing"]> {
  const given = file.cracks?.spacing;
  if (given === undefined) return ok(null);
  if (file.cracks?.cracked === false)
    return failed({
      code: "glaze/uncracked-with-spacing",
      what: "the glaze is not cracked and yet has a crack spacing",
      where: at(["cracks", "cracked"]),
      expected: "cracked: false, or a spacing",
      fix: "write cracked: true, or take the spacing out",
    });
  const place = (key: string) => at(["cracks", "spacing", key]);
  const mean = lengthOf(given.mean, place("mean"), WIDEST_SPACING_MM);
  const low = lengthOf(given.low, place("low"), WIDEST_SPACING_MM);
  const high = lengthOf(given.high, place("high"), WIDEST_SPACING_MM);
  if (!mean.ok || !low.ok || !high.ok)
    return failed(...[mean, low, high].flatMap((part) => (part.ok ? [] : part.problems)));
  const [meanMm, lowMm, highMm] = [mean.value ?? 0, low.value ?? 0, high.value ?? 0];
  if (lowMm <= meanMm && meanMm <= highMm)
    return ok({ meanMm, lowMm, highMm, counted: given.counted });
  return failed({
    code: "glaze/spacing-order",
    what: `low ${lowMm} mm, mean ${meanMm} mm, high ${highMm} mm`,
    where: at(["cracks", "spacing"]),
    expected: "a mean between its low and its high",
    fix: "put the three in order",
  });
}

function pingOf(given: GivenPing, at: Place, index: number): Result<MeasuredPing> {
  const place = (key: string) => at(["cracks", "pings", index, key]);
  const coat = coatOf(given.coat, place("coat"));
  const onset = parseTemperature(given.at, { unit: "C", where: place("at") });
  if (!coat.ok) return coat;
  if (!onset.ok) return onset;
  return ok({
    coatMm: coat.value ?? 0,
    onsetC: onset.value,
    sigmaK: given.plusMinus,
    kiln: given.kiln,
  });
}

/** A bare number may be millimetres or thousandths of an inch: it is asked back, never guessed. */
function coatOf(value: number | string | undefined, where: string): Result<number | null> {
  const coat = lengthOf(value, where, THICKEST_COAT_MM);
  if (value === undefined || !coat.ok || !isBareNumber(value)) return coat;
  return failed({
    code: "glaze/coat-without-unit",
    what: `the coat is written as ${value}, without a unit`,
    where,
    expected: `a thickness with its unit, above 0 and at most ${THICKEST_COAT_MM} mm`,
    fix: `write "${value} mm", if millimetres are meant`,
  });
}

function lengthOf(
  value: number | string | undefined,
  where: string,
  mostMm: number,
): Result<number | null> {
  if (value === undefined) return ok(null);
  const length = parseLength(value, { where });
  if (!length.ok || length.value <= mostMm) return length;
  return failed({
    code: "glaze/too-thick",
    what: `it measures ${Math.round(length.value)} mm`,
    where,
    expected: `at most ${mostMm} mm`,
    fix: "check the number; a bare number is millimetres",
  });
}
