import type { z } from "zod";
import type { DocumentPath } from "../document/readDocument.ts";
import { dryGPerLitre, firedCoatMm } from "../glaze/slipSheet.ts";
import type { TrialCoat } from "./FiringRecord.ts";
import type { RecordValues } from "./recordValues.ts";
import type { Trial } from "./trialFormat.ts";

type Written = z.output<typeof Trial>;

/** One standard deviation of a coat read by hand, as a share of it. @see SOURCES["coat-reading"] */
const USUAL_ERROR = 0.15;

/** Readings that agree better than this are still no better; our own estimate. */
const LEAST_ERROR = 0.02;

/** Dry coat over fired coat, 1.6 to 2 in eight of ten. @see SOURCES["coat-reading"] */
const RAW_OVER_FIRED = { value: 1.8, sigma: 0.087 };

/** Fired glaze [g/cm³], 2.4 to 2.6 in most. @see SOURCES["coat-reading"] */
const FIRED_DENSITY = { value: 2.45, sigma: 0.03 };

/** Solids of a glaze slip [g/cm³], and what their spread does to the dry content; our own estimate. */
const SOLIDS_DENSITY = { value: 2.6, sigma: 0.02 };

/** Stands in after a problem. */
const NONE: TrialCoat = {
  firedMm: 1,
  sigmaMm: USUAL_ERROR,
  sigmaIs: "assumed",
  how: "fired",
  sharedSigma: 0,
  taken: [],
};

/** A reading, worked into fired thickness. */
interface Read {
  readonly how: TrialCoat["how"];
  /** As read [mm]; null for a mass. */
  readonly readMm: number | null;
  readonly firedMm: number;
  /** Standard error of the mean of several readings, as a share; null for one. */
  readonly scatter: number | null;
  readonly sharedSigma: number;
  readonly taken: readonly string[];
}

/**
 * The fired coat of a test piece from what was read on it.
 * Of several, what needs the least working out counts: fired, then mass, raw, wet.
 */
export function trialCoat(trial: Written, path: DocumentPath, values: RecordValues): TrialCoat {
  const read =
    firedRead(trial, path, values) ??
    massRead(trial, path, values) ??
    rawRead(trial, path, values) ??
    wetRead(trial, path, values);
  if (read !== null) return withError(read, { trial, path, values });
  values.refuse({
    code: "record/no-coat",
    what: `trial ${trial.piece} has no coat`,
    where: values.placeOf(path),
    expected: "one of coat (fired), dryMass, rawCoat or wetCoat",
    fix: 'measure the fired glaze and add coat: "0.8 mm"',
  });
  return NONE;
}

function firedRead({ coat }: Written, path: DocumentPath, values: RecordValues): Read | null {
  if (coat === undefined) return null;
  const read = meanOf(coat, [...path, "coat"], values);
  return { ...read, how: "fired", firedMm: read.readMm, sharedSigma: 0, taken: [] };
}

function rawRead(
  { rawCoat, rawOverFired }: Written,
  path: DocumentPath,
  values: RecordValues,
): Read | null {
  if (rawCoat === undefined) return null;
  const read = meanOf(rawCoat, [...path, "rawCoat"], values);
  return {
    ...read,
    how: "raw",
    firedMm: read.readMm / (rawOverFired ?? RAW_OVER_FIRED.value),
    sharedSigma: rawOverFired === undefined ? RAW_OVER_FIRED.sigma : 0,
    taken:
      rawOverFired === undefined ? [`dry coat ${RAW_OVER_FIRED.value} times the fired coat`] : [],
  };
}

function massRead(trial: Written, path: DocumentPath, values: RecordValues): Read | null {
  if (trial.dryMass === undefined) return null;
  const dry = values.coatMass(trial.dryMass, [...path, "dryMass"]);
  return { how: "mass", readMm: null, scatter: null, ...fired(trial, dry, { path, values }) };
}

function wetRead(trial: Written, path: DocumentPath, values: RecordValues): Read | null {
  if (trial.wetCoat === undefined) return null;
  const read = meanOf(trial.wetCoat, [...path, "wetCoat"], values);
  if (trial.slip === undefined) return refuseMissing("slip", "1.45", { path, values });
  const slipGPerCm3 = values.slipDensity(trial.slip, [...path, "slip"]);
  const solidGPerCm3 = SOLIDS_DENSITY.value;
  const dryGPerCm2 = ((read.readMm / 10) * dryGPerLitre({ slipGPerCm3, solidGPerCm3 })) / 1000;
  const coat = fired(trial, dryGPerCm2, { path, values });
  return {
    ...read,
    ...coat,
    how: "wet",
    sharedSigma: Math.hypot(coat.sharedSigma, SOLIDS_DENSITY.sigma),
    taken: [...coat.taken, `solids of ${solidGPerCm3} g/cm³`],
  };
}

interface Place {
  readonly path: DocumentPath;
  readonly values: RecordValues;
}

function fired(trial: Written, dryGPerCm2: number, place: Place) {
  if (trial.loss === undefined) refuseMissing("loss", "10", place);
  const assumed = trial.firedDensity === undefined;
  const coat = {
    lossFraction: (trial.loss ?? 0) / 100,
    firedGPerCm3: trial.firedDensity ?? FIRED_DENSITY.value,
  };
  return {
    firedMm: firedCoatMm(dryGPerCm2, coat),
    sharedSigma: assumed ? FIRED_DENSITY.sigma : 0,
    taken: assumed ? [`fired glaze of ${FIRED_DENSITY.value} g/cm³`] : [],
  };
}

function refuseMissing(key: "loss" | "slip", example: string, { path, values }: Place): null {
  const thing = key === "loss" ? "what the dry glaze loses in the fire" : "the density of the slip";
  values.refuse({
    code: `record/no-${key}`,
    what: `this coat needs ${thing}, and the trial does not say it`,
    where: values.placeOf(path),
    expected: key === "loss" ? "loss, in percent of the dry glaze" : "slip, its density",
    fix: `add ${key}: ${key === "slip" ? `"${example}"` : example}, or measure the fired coat`,
  });
  return null;
}

function meanOf(
  given: NonNullable<Written["coat"]>,
  path: DocumentPath,
  values: RecordValues,
): { readonly readMm: number; readonly scatter: number | null } {
  if (!Array.isArray(given)) return { readMm: values.thickness(given, path) || 1, scatter: null };
  const each = given.map((one, i) => values.thickness(one, [...path, i]));
  const mean = each.reduce((sum, one) => sum + one, 0) / each.length || 1;
  const squares = each.reduce((sum, one) => sum + (one - mean) ** 2, 0);
  const error = Math.sqrt(squares / (each.length - 1) / each.length) / mean;
  return { readMm: mean, scatter: Math.max(error, LEAST_ERROR) };
}

function withError(
  { readMm, scatter, ...read }: Read,
  { trial, path, values }: Place & { readonly trial: Written },
): TrialCoat {
  const noted =
    trial.coatError === undefined
      ? null
      : values.errorShare(trial.coatError, readMm, [...path, "coatError"]);
  return {
    ...read,
    sigmaMm: read.firedMm * (noted ?? scatter ?? USUAL_ERROR),
    sigmaIs: noted !== null ? "noted" : scatter !== null ? "readings" : "assumed",
  };
}
