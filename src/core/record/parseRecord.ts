import type { z } from "zod";
import { type DocumentPath, type ReadDocument, readDocument } from "../document/readDocument.ts";
import { schemaProblems } from "../document/schemaProblems.ts";
import { delimiterNamed } from "../log/text/cells.ts";
import { failed, ok, type Result } from "../problem.ts";
import type { Body } from "../ware/Ware.ts";
import type { FiringRecord, FoundOnWare, RecordedTrial, RecordedWare } from "./FiringRecord.ts";
import { FiringRecordFile, type Found, RECORD_DOCUMENT, type Ware } from "./recordFormat.ts";
import { type RecordValues, recordValues } from "./recordValues.ts";
import { trialCoat } from "./trialCoat.ts";
import type { Trial } from "./trialFormat.ts";
import { type PieceSize, trialSpacing } from "./trialSpacing.ts";

/**
 * A firing record from the text of its file (YAML or JSON), in canonical units.
 *
 * @param name File name, for problems.
 * @returns All problems of the file at once, each with the place where it stands.
 */
export function parseRecord(text: string, name: string): Result<FiringRecord> {
  const read = fileRead(text, name);
  return read.ok ? inCanonicalUnits(read.value.file, name, read.value.placeOf) : read;
}

/**
 * A firing record as its file writes it, checked, for an editor to change; `recordYaml` writes it.
 * Values that `parseRecord` would refuse are refused here too.
 */
export function parseRecordFile(text: string, name: string): Result<FiringRecordFile> {
  const read = fileRead(text, name);
  if (!read.ok) return read;
  const { file, placeOf } = read.value;
  const record = inCanonicalUnits(file, name, placeOf);
  return record.ok ? ok(file) : record;
}

function fileRead(
  text: string,
  name: string,
): Result<{ readonly file: FiringRecordFile; readonly placeOf: ReadDocument["placeOf"] }> {
  const document = readDocument(text, name, RECORD_DOCUMENT);
  if (!document.ok) return document;
  const shape = FiringRecordFile.safeParse(document.value.value);
  if (!shape.success)
    return failed(...schemaProblems(shape.error.issues, document.value, RECORD_DOCUMENT));
  return ok({ file: shape.data, placeOf: document.value.placeOf });
}

function inCanonicalUnits(
  file: FiringRecordFile,
  name: string,
  placeOf: ReadDocument["placeOf"],
): Result<FiringRecord> {
  const values = recordValues({
    unit: file.unit,
    series: file.cones ?? "self-supporting",
    placeOf,
  });
  const ware = (file.ware ?? []).map((each, i) => wareOf(each, ["ware", i], values));
  const record: FiringRecord = {
    name,
    title: file.title,
    unit: file.unit,
    schedule: file.schedule ?? null,
    kiln: file.kiln ?? null,
    kilnRatingC:
      file.kilnRating === undefined ? null : values.temperature(file.kilnRating, ["kilnRating"]),
    thermocouple: thermocoupleOf(file.thermocouple, values),
    cone: file.cone === undefined ? null : values.cone(file.cone, ["cone"]),
    series: file.cones ?? null,
    witnesses: (file.witnessCones ?? []).map((witness, i) => ({
      cone: values.cone(witness.cone, ["witnessCones", i, "cone"]),
      said: witness.bent,
      bend: values.bend(witness.bent, ["witnessCones", i, "bent"]),
    })),
    ware,
    trials: (file.trials ?? []).map((trial, i) => trialOf(trial, ["trials", i], { values, ware })),
    log: logOptionsOf(file, values),
    unloaded: file.unloaded ? unloadedOf(file.unloaded, values) : null,
    heard: (file.heard ?? []).map((sound, i) => ({
      what: sound.what,
      at: values.moment(sound.at, ["heard", i, "at"]),
      said: sound.at,
      note: sound.note ?? null,
    })),
    found: (file.found ?? []).map((found, i) => foundOf(found, ["found", i], values)),
    notes: file.notes ?? null,
    invented: file.invented ?? false,
  };
  return values.problems.length > 0 ? failed(...values.problems) : ok(record);
}

function thermocoupleOf(
  given: FiringRecordFile["thermocouple"],
  values: RecordValues,
): FiringRecord["thermocouple"] {
  if (!given) return null;
  return {
    type: given.type ?? null,
    class: given.class === undefined ? null : String(given.class),
    sheathMm: values.maybeLength(given.sheath, ["thermocouple", "sheath"]),
    ...(given.wire !== undefined && {
      wireMm: values.maybeLength(given.wire, ["thermocouple", "wire"]),
    }),
  };
}

/** What the record says to the reader of its log, the thermocouple's type among it. */
function logOptionsOf(
  { log, thermocouple }: FiringRecordFile,
  values: RecordValues,
): FiringRecord["log"] {
  const { coldJunction, delimiter, ...others } = log ?? {};
  return {
    ...withoutUndefined(others),
    ...(delimiter !== undefined && { delimiter: delimiterNamed(delimiter) }),
    ...(thermocouple?.type && { thermocouple: thermocouple.type }),
    ...(coldJunction !== undefined && {
      coldJunctionC: values.temperature(coldJunction, ["log", "coldJunction"]),
    }),
  };
}

function wareOf(
  ware: z.output<typeof Ware>,
  path: DocumentPath,
  values: RecordValues,
): RecordedWare {
  return {
    name: ware.name,
    clay: ware.clay,
    state: ware.state ?? null,
    body: values.maybeBody(ware.body, [...path, "body"]),
    wallMm: values.maybeWareLength("wall", ware.wall, path),
    baseMm: values.maybeWareLength("base", ware.base, path),
    thickestMm: values.maybeWareLength("thickest", ware.thickest, path),
    widestMm: values.maybeWareLength("widest", ware.widest, path),
    heightMm: values.maybeWareLength("height", ware.height, path),
    stands: ware.stands ?? null,
    shelfMm: values.maybeWareLength("shelf", ware.shelf, path),
    footGapMm: values.maybeWareLength("footGap", ware.footGap, path),
    glazedSides: ware.glazedSides ?? null,
    count: ware.count ?? null,
  };
}

function foundOf(
  found: z.output<typeof Found>,
  path: DocumentPath,
  values: RecordValues,
): FoundOnWare {
  return {
    piece: found.piece ?? null,
    what: found.what === undefined ? null : values.foundWord(found.what, [...path, "what"]),
    edges: found.edges ?? null,
    where: found.where ?? null,
    pattern: found.pattern ?? null,
    when: found.when ?? null,
    rings: found.rings ?? null,
    note: found.note ?? null,
  };
}

function unloadedOf(
  given: NonNullable<FiringRecordFile["unloaded"]>,
  values: RecordValues,
): FiringRecord["unloaded"] {
  return {
    at: given.at === undefined ? null : values.moment(given.at, ["unloaded", "at"]),
    said: given.at ?? null,
    temperatureC:
      given.temperature === undefined
        ? null
        : values.temperature(given.temperature, ["unloaded", "temperature"]),
  };
}

/** The same keys but those that are undefined, which an exact optional property may not be. */
function withoutUndefined<T extends object>(
  given: T,
): { [K in keyof T]: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]: Exclude<T[K], undefined>;
  };
}

type Written = z.output<typeof Trial>;

/** A test piece of a record in canonical units; its body is that of the ware of the same clay. */
function trialOf(
  trial: Written,
  path: DocumentPath,
  { values, ware }: { readonly values: RecordValues; readonly ware: readonly RecordedWare[] },
): RecordedTrial {
  const coat = trialCoat(trial, path, values);
  const size = sizeOf(trial, path, values);
  const spacing = trialSpacing(trial, path, { values, size });
  return {
    piece: trial.piece,
    clay: trial.clay,
    body: values.maybeBody(trial.body, [...path, "body"]) ?? bodyOfClay(trial.clay, ware),
    glaze: trial.glaze,
    coatMm: coat.firedMm,
    coat,
    glazedSides: trial.glazedSides,
    shape: trial.shape ?? null,
    wallMm: values.maybeWareLength("wall", trial.wall, path),
    size,
    place: trial.place ?? null,
    crackSpacingMm: spacing.kind === "measured" ? spacing.pitchMm : null,
    spacing,
    cracked: trial.cracked ?? null,
    stain: trial.stain ?? null,
    pings: pingsOf(trial, path, values),
    note: trial.note ?? null,
  };
}

/** Null unless all ware of that clay that names a body names the same. */
function bodyOfClay(clay: string, ware: readonly RecordedWare[]): Body | null {
  const same = (a: string, b: string) => a.trim().toLowerCase() === b.trim().toLowerCase();
  const bodies = ware.flatMap((each) =>
    each.body !== null && same(each.clay, clay) ? [each.body] : [],
  );
  const [first] = bodies;
  return first !== undefined && bodies.every(({ name }) => name === first.name) ? first : null;
}

function sizeOf({ size }: Written, path: DocumentPath, values: RecordValues): PieceSize | null {
  if (size === undefined) return null;
  const sides = [
    values.length(size.length, [...path, "size", "length"]),
    values.length(size.width, [...path, "size", "width"]),
  ];
  return { longMm: Math.max(...sides), shortMm: Math.min(...sides) };
}

function pingsOf(
  { pings }: Written,
  path: DocumentPath,
  values: RecordValues,
): RecordedTrial["pings"] {
  if (pings === undefined) return null;
  if ("count" in pings) return { count: pings.count, moments: [] };
  const moments = pings.at.map((text, i) => values.moment(text, [...path, "pings", "at", i]));
  return { count: moments.length, moments };
}
