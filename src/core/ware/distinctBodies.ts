import type { Body, Ware } from "./Ware.ts";

/** The bodies of some ware, each once, in order; two are one when all their numbers and words agree. */
export function distinctBodies(wares: readonly Ware[]): readonly Body[] {
  const bodies = new Map(wares.map(({ body }) => [JSON.stringify(body), body]));
  return [...bodies.values()];
}
