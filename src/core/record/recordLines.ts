import { printMm, printTemperature } from "../text/quantities.ts";
import type {
  FiringRecord,
  FoundOnWare,
  MeasuredSpacing,
  RecordedTrial,
  RecordedWare,
  TrialCoat,
} from "./FiringRecord.ts";

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
    thermocouple.wireMm ? `wire ${lengthText(thermocouple.wireMm)}` : null,
    thermocouple.sheathMm && `sheath ${lengthText(thermocouple.sheathMm)}`,
  ]);
}

function wareText(ware: RecordedWare): string {
  return joined([
    ware.count === null ? ware.name : `${ware.count} × ${ware.name}`,
    ware.clay,
    ware.state,
    ware.body && `body taken as ${ware.body.name}`,
    ware.wallMm && `wall ${lengthText(ware.wallMm)}`,
    ware.baseMm && `base ${lengthText(ware.baseMm)}`,
    ware.thickestMm && `thickest ${lengthText(ware.thickestMm)}`,
    ware.widestMm && `widest ${lengthText(ware.widestMm)}`,
    ware.heightMm && `${lengthText(ware.heightMm)} high`,
    ware.stands === "on edge" ? ware.stands : null,
    ware.shelfMm && `shelf ${lengthText(ware.shelfMm)}`,
    ware.footGapMm && `${lengthText(ware.footGapMm)} of air under the foot`,
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

function lengthText(mm: number): string {
  return printMm(mm);
}

/** A test piece as one line to show; what was worked out says from what, and how well it is known. */
function trialText(trial: RecordedTrial): string {
  return [
    `${trial.glaze} on ${trial.clay}`,
    coatText(trial.coat),
    trial.glazedSides === "one" ? "glazed on one side" : "glazed on both sides",
    trial.shape,
    trial.wallMm && `wall ${sizeText(trial.wallMm)}`,
    trial.place,
    spacingText(trial),
    trial.cracked && CRACKED[trial.cracked],
    trial.stain && `stained with ${trial.stain}`,
    trial.pings && pingsText(trial.pings.count),
    trial.note,
  ]
    .filter((part) => part)
    .join(", ");
}

const CRACKED = {
  none: "no cracks",
  crackle: "glaze crackled",
  through: "cracked through the wall",
} as const;

const HOW = {
  raw: "worked out from the dry coat",
  wet: "worked out from the wet coat",
  mass: "worked out from the dry mass",
} as const;

function coatText({ firedMm, sigmaMm, sigmaIs, how, taken }: TrialCoat): string {
  const known = sigmaIs === "assumed" ? "" : ` ± ${Number(sigmaMm.toPrecision(2))}`;
  const coat = known === "" ? `coat ${sizeText(firedMm)}` : `coat ${figure(firedMm)}${known} mm`;
  if (how === "fired") return coat;
  const because = taken.length > 0 ? `, taking ${taken.join(" and ")}` : "";
  return `${coat} (${HOW[how]}${because})`;
}

function spacingText({ spacing, size }: RecordedTrial): string | null {
  if (spacing.kind === "measured") return measuredText(spacing);
  if (spacing.kind === "not measured") return null;
  return spacing.from === "size" && size !== null
    ? `nothing on ${figure(size.longMm)} by ${figure(size.shortMm)} mm`
    : `no crack met on a line of ${sizeText(spacing.atLeastMm)}`;
}

function measuredText(spacing: MeasuredSpacing): string {
  const { lowMm, highMm, interceptMm } = spacing;
  const range =
    lowMm === null || highMm === null
      ? ""
      : ` (${figure(lowMm)} to ${sizeText(highMm)}, 95 in 100)`;
  const from = spacing.from === "photo" ? ", from a photo" : "";
  const apart = `cracks ${sizeText(spacing.pitchMm)} apart${range}${from}`;
  if (interceptMm === null) return apart;
  const on = spacing.lines === 1 ? "one line" : `${spacing.lines} lines`;
  const counted = `${spacing.crossings} on ${sizeText(spacing.lengthMm)} of ${on}, ${sizeText(interceptMm)} from crack to crack along a line`;
  return `${apart}: ${[counted, waysText(spacing)].filter((part) => part).join("; ")}`;
}

function waysText({ directions, alongOverAcross }: MeasuredSpacing): string | null {
  if (directions.length === 0) return null;
  const ways = directions.map(({ direction, interceptMm }) =>
    interceptMm === null ? `none met ${direction}` : `${sizeText(interceptMm)} ${direction}`,
  );
  const ratio = alongOverAcross === null ? [] : [`ratio ${alongOverAcross.toFixed(2)}`];
  return [...ways, ...ratio].join(", ");
}

function pingsText(count: number): string {
  return count === 1 ? "one ping heard" : `${count} pings heard`;
}

function sizeText(mm: number): string {
  return `${figure(mm)} mm`;
}

function figure(mm: number): string {
  return `${Number(mm.toFixed(mm < 10 ? 2 : 0))}`;
}
