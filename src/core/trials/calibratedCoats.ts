import { basisOf, type DesignColumn } from "./columnSpace.ts";
import { dot } from "./linearSystem.ts";

/** A coat as read: its logarithm and the standard error of that. */
export interface ReadCoat {
  readonly logMm: number;
  readonly sigma: number;
}

/** Coats as they are expected to be, given how they were read. */
export interface CalibratedCoats {
  /** Logarithm of the expected coat, one for each. */
  readonly logMm: readonly number[];
  /** Variance left in each. */
  readonly variances: readonly number[];
  /**
   * Share of the scatter of read coats that is scatter of coats, the mean over tiles: an exponent
   * fitted to coats as read comes out too small by about this factor. 0 when all may be error.
   */
  readonly reliability: number;
}

/**
 * Takes reading error out of coats, so that it does not flatten the exponent (regression
 * calibration): each coat is drawn towards the mean of its group by the share of the scatter that
 * is error. Needs the reading error; right to first order whatever the coats' distribution, and
 * exact for normal ones.
 *
 * @param groups Columns of the groups, one number for each coat; the mean is taken out besides.
 * @see SOURCES["fuller-1987"]
 */
export function calibratedCoats(
  coats: readonly ReadCoat[],
  groups: readonly DesignColumn[],
): CalibratedCoats {
  const read = coats.map(({ logMm }) => logMm);
  const basis = basisOf([coats.map(() => 1), ...groups]);
  const means = read.map((_, i) =>
    basis.reduce((sum, unit) => sum + dot(unit, read) * (unit[i] as number), 0),
  );
  const freedom = Math.max(1, coats.length - basis.length);
  const scatter = read.reduce((sum, log, i) => sum + (log - (means[i] as number)) ** 2, 0);
  const error = coats.reduce((sum, { sigma }) => sum + sigma ** 2, 0) / coats.length;
  const variance = Math.max(0, scatter / freedom - error);
  const shares = coats.map(({ sigma }) =>
    variance + sigma ** 2 === 0 ? 0 : variance / (variance + sigma ** 2),
  );
  return {
    logMm: read.map(
      (log, i) => (means[i] as number) + (shares[i] as number) * (log - (means[i] as number)),
    ),
    variances: shares.map((share) => variance * (1 - share)),
    reliability: shares.reduce((sum, share) => sum + share, 0) / coats.length,
  };
}
