import { printMm, printTemperature } from "../units/print.ts";
import type { FiringRecord, FoundOnWare, RecordedWare } from "./FiringRecord.ts";
import { trialText } from "./trialText.ts";

/** One line of a record, to show. */
export interface RecordLine {
  readonly label: string;
  readonly text: string;
}

/** A record as lines to show, in a fixed order; what the record leaves out is left out. */
export function recordLines(record: FiringRecord): readonly RecordLine[] {
  const lines: RecordLine[] = [];
  const add = (label: string, text: string | null): void => {
    if (text !== null && text !== "") lines.push({ label, text });
  };
  add("example", record.invented ? "this firing is invented" : null);
  add("kiln", record.kiln);
  add("schedule", record.schedule);
  add("cone wanted", record.cone);
  add("thermocouple", thermocoupleText(record));
  for (const witness of record.witnesses) add(`witness cone ${witness.cone}`, witness.said);
  for (const ware of record.ware) add("ware", wareText(ware));
  for (const trial of record.trials) add(`trial ${trial.piece}`, trialText(trial));
  for (const sound of record.heard)
    add("heard", joined([sound.what, `at ${sound.said}`, sound.note]));
  add("unloaded", unloadedText(record));
  for (const found of record.found) add("found", foundText(found));
  add("notes", record.notes);
  return lines;
}

function thermocoupleText({ thermocouple }: FiringRecord): string | null {
  if (!thermocouple) return null;
  return joined([
    thermocouple.type && `type ${thermocouple.type}`,
    thermocouple.class && `class ${thermocouple.class.replace(/^class /i, "")}`,
    thermocouple.wireMm ? `wire ${length(thermocouple.wireMm)}` : null,
    thermocouple.sheathMm && `sheath ${length(thermocouple.sheathMm)}`,
  ]);
}

function wareText(ware: RecordedWare): string {
  return joined([
    ware.count === null ? ware.name : `${ware.count} × ${ware.name}`,
    ware.clay,
    ware.state,
    ware.body && `body taken as ${ware.body.name}`,
    ware.wallMm && `wall ${length(ware.wallMm)}`,
    ware.baseMm && `base ${length(ware.baseMm)}`,
    ware.thickestMm && `thickest ${length(ware.thickestMm)}`,
    ware.widestMm && `widest ${length(ware.widestMm)}`,
    ware.heightMm && `${length(ware.heightMm)} high`,
    ware.stands === "on edge" ? ware.stands : null,
    ware.shelfMm && `shelf ${length(ware.shelfMm)}`,
    ware.footGapMm && `${length(ware.footGapMm)} of air under the foot`,
    ware.glazedSides && GLAZED[ware.glazedSides],
  ]);
}

const GLAZED = {
  none: "not glazed",
  one: "glazed on one side",
  both: "glazed on both sides",
} as const;

function unloadedText({ unloaded }: FiringRecord): string | null {
  if (!unloaded) return null;
  const temperature =
    unloaded.temperatureC === null
      ? null
      : `${printTemperature(unloaded.temperatureC, "C")} (${printTemperature(unloaded.temperatureC, "F")})`;
  return joined([unloaded.said, temperature]);
}

function foundText(found: FoundOnWare): string {
  return joined([
    found.piece,
    found.what && FOUND[found.what],
    found.pattern,
    found.where && `begins at the ${found.where}`,
    found.edges && `edges ${found.edges}`,
    found.when && `first seen ${found.when}`,
    found.rings && `rings ${found.rings}`,
    found.note,
  ]);
}

const FOUND: Readonly<Record<NonNullable<FoundOnWare["what"]>, string>> = {
  "through-crack": "cracked through the wall",
  crackle: "glaze crackled",
  crazing: "glaze crazed",
  crack: "cracked, how deep is not known",
  dunt: "dunted",
  "S-crack": "S-crack",
  "drying crack": "drying crack",
  "bisque crack": "bisque crack",
  burst: "burst",
  shivering: "glaze flaked off",
  chip: "chipped",
  blister: "glaze blistered",
  pinhole: "pinholes",
  crawling: "glaze crawled",
};

function joined(parts: readonly (string | 0 | null | "")[]): string {
  return parts.filter((part) => part).join(", ");
}

function length(mm: number): string {
  return printMm(mm);
}
