import type { z } from "zod";
import type { DocumentPath } from "../document/readDocument.ts";
import type { Body } from "../ware/Ware.ts";
import type { RecordedTrial, RecordedWare } from "./FiringRecord.ts";
import type { RecordValues } from "./recordValues.ts";
import { trialCoat } from "./trialCoat.ts";
import type { Trial } from "./trialFormat.ts";
import { type PieceSize, trialSpacing } from "./trialSpacing.ts";

type Written = z.output<typeof Trial>;

/** A test piece of a record in canonical units; its body is that of the ware of the same clay. */
export function trialOf(
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
