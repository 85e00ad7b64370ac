import { BODIES } from "./bodies.ts";
import { BODY_PROPERTIES, type BodyProperty } from "./bodyProperties.ts";
import type { GivenBody } from "./userBody.ts";
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
