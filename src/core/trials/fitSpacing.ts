import { tQuantile } from "../math/distributions.ts";
import { dot, solved } from "../math/linearSystem.ts";
import { failed, ok, type Result } from "../problem.ts";
import type { GroupSlope, SpacingFit } from "./FiringStudy.ts";
import { groupRatios, profileInterval } from "./profileInterval.ts";
import { type FactorName, levelOf } from "./spacingFactors.ts";
import {
  EXPONENT_AT,
  type FittedRows,
  fittedRows,
  type SpacingRows,
  spacingProblems,
  spacingRows,
} from "./spacingRows.ts";
import type { Tile } from "./Tile.ts";
import { censoredFit, informationOf } from "./tobitFit.ts";

/** Measured tiles from which a group has an exponent of its own to show. */
const TILES_FOR_SLOPE = 6;

/** Points of the curve. */
const CURVE_POINTS = 25;

/**
 * Spacing against coat for tiles of one glaze, groups side by side: the exponent is free, the tile
 * is what was repeated, reading error of the coats is taken out, and tiles on which no crack was met
 * count as wider than what they rule out. Tiles without a spacing are to be left out before.
 *
 * Uncracked tiles thinner than all cracked ones count too, and the exponent without them is given.
 *
 * @param seed Of the draws in tests of labels.
 * @returns `trials/too-few-tiles`, `trials/coats-alike` or `trials/groups-uncracked`.
 */
export function fitSpacing(tiles: readonly Tile[], seed: number): Result<SpacingFit> {
  const problems = spacingProblems(tiles);
  if (problems.length > 0) return failed(...problems);
  const data = spacingRows(tiles);
  const fitted = fittedRows(data);
  const asRead = censoredFit(data.asRead);
  if (fitted === null || asRead === null)
    throw new RangeError("fitSpacing: columns say the same twice");
  const coats = tiles.map(({ coat }) => coat.firedMm);
  const measured = tiles.filter(({ spacing }) => spacing.kind === "measured").length;
  return ok({
    glaze: tiles[0]!.glaze,
    tiles: measured,
    uncracked: tiles.length - measured,
    ...thinOnes(tiles),
    firings: new Set(tiles.map(({ firing }) => firing)).size,
    coatsMm: { least: Math.min(...coats), most: Math.max(...coats) },
    exponent: profileInterval(fitted.rows, fitted.fit, EXPONENT_AT),
    exponentAsRead: asRead.coefficients[EXPONENT_AT]!,
    exponentIfExact: profileInterval(data.asRead, asRead, EXPONENT_AT),
    reliability: data.coats.reliability,
    coatErrorAssumed: tiles.filter(({ coat }) => coat.sigmaIs === "assumed").length,
    countingErrorUnknown: data.counting.unknown,
    ...scatterOf(fitted, measured),
    ratios: groupRatios(fitted, seed),
    untold: data.factors.untold.map(({ factor, level, against }) => ({ factor, level, against })),
    slopes: slopesOf(data),
    curve: curveOf(fitted, measured),
    curveIsOf: curveGroups(data),
  });
}

/** A coat too thin to crack does not follow a law of spacing; what is left without them is shown too. */
function thinOnes(
  tiles: readonly Tile[],
): Pick<SpacingFit, "thinUncracked" | "exponentWithoutThin" | "tileSigmaWithoutThin"> {
  const cracked = tiles.filter(({ spacing }) => spacing.kind === "measured");
  const least = Math.min(...cracked.map(({ coat }) => coat.firedMm));
  const rest = tiles.filter(
    ({ spacing, coat }) => spacing.kind === "measured" || coat.firedMm >= least,
  );
  const thinUncracked = tiles.length - rest.length;
  if (thinUncracked === 0 || spacingProblems(rest).length > 0)
    return { thinUncracked, exponentWithoutThin: null, tileSigmaWithoutThin: null };
  const fitted = fittedRows(spacingRows(rest));
  if (fitted === null)
    return { thinUncracked, exponentWithoutThin: null, tileSigmaWithoutThin: null };
  return {
    thinUncracked,
    exponentWithoutThin: profileInterval(fitted.rows, fitted.fit, EXPONENT_AT),
    tileSigmaWithoutThin: scatterOf(fitted, cracked.length).tileSigma,
  };
}

function scatterOf(
  { data, fit }: FittedRows,
  measured: number,
): Pick<SpacingFit, "tileSigma" | "lineSigma" | "icc" | "effectiveLines"> {
  const freedom = Math.max(1, measured - fit.coefficients.length);
  const tileSigma = fit.tileSigma * Math.sqrt(measured / freedom);
  const { perLine } = data.counting;
  if (perLine === null) return { tileSigma, lineSigma: null, icc: null, effectiveLines: null };
  const icc = tileSigma ** 2 / (tileSigma ** 2 + perLine);
  const lines = data.tiles.flatMap(({ spacing }) =>
    spacing.kind === "measured" && spacing.lines > 0 ? [spacing.lines] : [],
  );
  return {
    tileSigma,
    lineSigma: Math.sqrt(perLine),
    icc,
    effectiveLines: lines.reduce(
      (sum, linesPerTile) => sum + effectiveLines({ tiles: 1, linesPerTile, icc }),
      0,
    ),
  };
}

/** Exponents of groups by themselves, for every factor that tells two groups with enough tiles. */
function slopesOf({ tiles, factors }: SpacingRows): readonly GroupSlope[] {
  const names = [...new Set(factors.columns.map(({ factor }) => factor))];
  return names.flatMap((factor) => {
    const levels = [...new Set(tiles.flatMap((tile) => levelOf(tile, factor) ?? []))];
    const slopes = levels.flatMap((level) => slopeOf(tiles, factor, level));
    return slopes.length > 1 ? slopes : [];
  });
}

function slopeOf(tiles: readonly Tile[], factor: FactorName, level: string): readonly GroupSlope[] {
  const own = tiles.filter((tile) => levelOf(tile, factor) === level);
  const measured = own.filter(({ spacing }) => spacing.kind === "measured").length;
  if (measured < TILES_FOR_SLOPE || spacingProblems(own).length > 0) return [];
  const fitted = fittedRows(spacingRows(own));
  if (fitted === null) return [];
  const exponent = profileInterval(fitted.rows, fitted.fit, EXPONENT_AT);
  return [{ factor, level, exponent, tiles: measured }];
}

function curveOf({ data, rows, fit }: FittedRows, measured: number): SpacingFit["curve"] {
  const coats = data.tiles.map(({ coat }) => coat.firedMm);
  const [least, most] = [Math.min(...coats), Math.max(...coats)];
  const information = informationOf(rows, fit);
  const t = tQuantile(0.95, Math.max(1, measured - fit.coefficients.length));
  return Array.from({ length: CURVE_POINTS }, (_, i) => {
    const coatMm = least * (most / least) ** (i / (CURVE_POINTS - 1));
    const columns = fit.coefficients.map((__, at) =>
      at === 0 ? 1 : at === 1 ? Math.log(coatMm) : 0,
    );
    const log = dot(columns, fit.coefficients);
    const reach = t * Math.sqrt(dot(columns, solved(information, columns) ?? []));
    return {
      coatMm,
      pitchMm: Math.exp(log),
      lowMm: Math.exp(log - reach),
      highMm: Math.exp(log + reach),
    };
  });
}

function curveGroups({ factors }: SpacingRows): SpacingFit["curveIsOf"] {
  const against = new Map(factors.columns.map(({ factor, against: level }) => [factor, level]));
  return [...against].map(([factor, level]) => ({ factor, level }));
}

/**
 * What lines on several tiles are worth as independent lines: lines of one tile share its luck.
 * Four tiles of five lines with an icc of 0.3 are worth 9.1.
 *
 * @param icc Share of the scatter of single lines that is scatter between tiles, 0–1.
 * @see SOURCES["kish-1965"]
 */
export function effectiveLines({
  tiles,
  linesPerTile,
  icc,
}: {
  readonly tiles: number;
  readonly linesPerTile: number;
  readonly icc: number;
}): number {
  return (tiles * linesPerTile) / (1 + (linesPerTile - 1) * icc);
}
