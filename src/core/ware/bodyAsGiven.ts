import type { Result } from "../problem.ts";
import { BODIES, bodyNamed } from "./bodies.ts";
import { BODY_PROPERTIES, type BodyProperty } from "./bodyProperties.ts";
import { type GivenBody, userBody } from "./userBody.ts";
import type { Body } from "./Ware.ts";

/**
 * A body as a file writes it, so that reading it gives the same numbers, sources and name: the words
 * for a body of the list, else the nearest body of the list and what is different about it.
 */
export function bodyAsGiven(body: Body): string | GivenBody {
  const nearest = BODIES.map((base) => ({ base, own: differences(body, base) })).reduce(
    (best, each) => (each.own.length < best.own.length ? each : best),
  );
  const { base, own } = nearest;
  if (own.length === 0 && body.name === base.name) return base.name;
  return {
    base: base.name,
    name: body.name,
    ...Object.fromEntries(own.map((name) => [name, { ...body[name] }])),
  };
}

function differences(body: Body, base: Body): readonly BodyProperty[] {
  return BODY_PROPERTIES.filter((name) => {
    const [a, b] = [body[name], base[name]];
    return a.value !== b.value || a.low !== b.low || a.high !== b.high || a.source !== b.source;
  });
}

/**
 * A body from what a file says of it: words for one of the list, or one's own.
 *
 * @param placeOf Name of a place inside the body, for problems.
 * @returns The problems of `bodyNamed` or of `userBody`, each at its place.
 */
export function bodyGiven(
  given: string | GivenBody,
  placeOf: (path: readonly string[]) => string,
): Result<Body> {
  return typeof given === "string" ? bodyNamed(given, placeOf([])) : userBody(given, placeOf);
}
