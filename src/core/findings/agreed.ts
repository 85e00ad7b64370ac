import type { Finding } from "./Finding.ts";

/** Evidence by which the worst of several zones is known, the first that a finding has. */
const WORST_BY = ["stress", "fastest", "rate"];

/**
 * Findings about a firing, those of several zones that say the same made one: same topic and same
 * severity become the worst of them, which names all its zones. What differs stays apart, and so
 * does what is said of no zone.
 */
export function agreed(findings: readonly Finding[]): readonly Finding[] {
  const groups = new Map<string, Finding[]>();
  for (const finding of findings) {
    const { topic, severity, zone } = finding;
    const key = zone === null ? `${groups.size}` : `${severity} ${topic}`;
    groups.set(key, [...(groups.get(key) ?? []), finding]);
  }
  return [...groups.values()].map((group) => {
    const worst = group.reduce((a, b) => (badness(b) > badness(a) ? b : a));
    const zones = [...new Set(group.flatMap(({ zone }) => zone ?? []))];
    return zones.length < 2 ? worst : { ...worst, zone: listed(zones) };
  });
}

function badness({ evidence }: Finding): number {
  const values = WORST_BY.flatMap((by) => evidence.find(({ name }) => name === by)?.value ?? []);
  return values[0] ?? 0;
}

function listed(zones: readonly string[]): string {
  return `${zones.slice(0, -1).join(", ")} and ${zones.at(-1)}`;
}
