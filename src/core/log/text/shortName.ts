/** Longest name that is kept whole [characters]. */
const LONGEST = 100;

/** A name from a log without its middle when nobody could read it; a unit stands at the end. */
export function shortName(name: string): string {
  return name.length > LONGEST ? `${name.slice(0, 60)}…${name.slice(-39)}` : name;
}
