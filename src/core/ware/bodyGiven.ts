import type { Result } from "../problem.ts";
import { bodyNamed } from "./bodies.ts";
import { type GivenBody, userBody } from "./userBody.ts";
import type { Body } from "./Ware.ts";

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
