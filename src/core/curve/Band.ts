/** A temperature interval with a reason: an inversion, water, carbon. */
export interface Band {
  /** Lower-case name that findings and JSON use: `quartz inversion`. */
  readonly name: string;
  readonly lowC: number;
  readonly highC: number;
}

/** Which way a Curve goes through a band. */
export type Direction = "heating" | "cooling";

/**
 * The passage of a Curve through a band, one direction.
 * `measured` is `whole` when both edges were crossed with no gap on the way, `partly` when a gap
 * or the end of the Curve hides some of it, `no` when the band was never entered in this direction.
 * Rates are signed [°C/h], falling negative; null where they were not measured.
 */
export interface BandPassage {
  readonly band: string;
  readonly direction: Direction;
  /** Edge where it enters and edge where it leaves [°C], in the order of travel. */
  readonly fromC: number;
  readonly toC: number;
  readonly measured: "whole" | "partly" | "no";
  readonly startSeconds: number | null;
  readonly endSeconds: number | null;
  /** Time from first entering to last leaving [s]. */
  readonly seconds: number | null;
  readonly meanCPerHour: number | null;
  /** Largest local least-squares slope over the window, in this direction. */
  readonly fastestCPerHour: number | null;
  /** Middle of the window in which it was fastest [s]. */
  readonly fastestAtSeconds: number | null;
  /** Width of that window [min]. */
  readonly windowMinutes: number | null;
  /** How often it turned back over an edge on the way; 0 for a plain passage. */
  readonly recrossings: number;
  /** What limits the numbers above, as plain sentences. */
  readonly notes: readonly string[];
}
