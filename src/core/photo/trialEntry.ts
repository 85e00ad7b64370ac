import type { CorrectedCount, PhotoMeasurement } from "./PhotoMeasurement.ts";

/** What a photograph says of its tile, as the trial of a firing record writes it. */
export interface TrialEntry {
  readonly crackSpacing?: string;
  /** 95 % interval of the spacing. */
  readonly spacingRange?: string[];
  readonly spacingFrom?: "photo";
  /** Left out for a net, which a record takes without a word. */
  readonly pattern?: "parallel";
  readonly cracked: "none" | "crackle";
  readonly note: string;
}

/** The entry for the trial of a tile in a firing record; lengths with the digits they can bear. */
export function trialEntry(measured: PhotoMeasurement): TrialEntry {
  const { cracks, leastVisibleMm, name, corrected } = measured;
  if (cracks === null)
    return {
      cracked: "none",
      note: `no cracks in ${name}; inked ones would be seen from about ${lengthFigure(leastVisibleMm)} mm of width`,
    };
  const { pitchMm, pitchIntervalMm, crossings, pattern } = cracks;
  const { low, high } = pitchIntervalMm;
  const byHand = corrected === null ? "" : `, ${correctedWords(corrected)}`;
  return {
    crackSpacing: mm(pitchMm),
    spacingRange: [mm(low), mm(high)],
    spacingFrom: "photo",
    ...(pattern === "parallel" && { pattern }),
    cracked: "crackle",
    note: `${crossings} crossings in ${name}, taken as ${pattern === "net" ? "a net" : "parallel cracks"}${byHand}`,
  };
}

/** What was corrected, in words: `2 crossings taken away and 1 added by hand`. */
export function correctedWords({ takenAway, added, areas, leftOutShare }: CorrectedCount): string {
  const some = (count: number, what: string) => `${count} ${what}${count === 1 ? "" : "s"}`;
  const away = takenAway > 0 ? `${some(takenAway, "crossing")} taken away` : "";
  const more = takenAway > 0 ? `${added} added` : `${some(added, "crossing")} added`;
  const counts = [away, added > 0 ? more : ""].filter((words) => words !== "").join(" and ");
  const percent = (100 * leftOutShare).toFixed(leftOutShare < 0.1 ? 1 : 0);
  const left = areas === 0 ? "" : `${some(areas, "area")} left out, ${percent} % of the line`;
  const byHand = counts === "" ? "" : `${counts} by hand`;
  return [byHand, left].filter((words) => words !== "").join("; ") || "nothing changed";
}

function mm(lengthMm: number): string {
  return `${lengthFigure(lengthMm)} mm`;
}

/** Lines of YAML for the trial of a tile in a firing record, without indent. */
export function trialLines(measured: PhotoMeasurement): readonly string[] {
  return Object.entries(trialEntry(measured)).map(
    ([key, value]) => `${key}: ${written(key, value)}`,
  );
}

/** Free words stand in quotes, whatever they hold; lists on their line. */
function written(key: string, value: string | readonly string[]): string {
  if (typeof value !== "string") return `[${value.join(", ")}]`;
  return key === "note" ? JSON.stringify(value) : value;
}

/** A length without its unit, with the digits that a count along lines can bear: `6.0`, `12.4`, `108`. */
export function lengthFigure(lengthMm: number): string {
  return lengthMm >= 100 ? lengthMm.toFixed(0) : lengthMm.toPrecision(lengthMm >= 10 ? 3 : 2);
}
