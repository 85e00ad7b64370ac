import type { WitnessOffset } from "../cones/witnessOffset.ts";
import type { Finding } from "../findings/Finding.ts";
import type { KilnFiring, LearnedKiln } from "../kiln/LearnedKiln.ts";
import type { PastOffset } from "../schedule/pastOffset.ts";

/** A firing, as far as it says something about its kiln and its thermocouple. */
export interface PastFiring {
  /** Name of its log. */
  readonly name: string;
  /** As a person gave it, to give it on to another command; null when it came from no file. */
  readonly path: string | null;
  /** Null when its log holds no temperature. */
  readonly firing: KilnFiring | null;
  /** From its witness cones; null without them. */
  readonly offset: WitnessOffset | null;
  /** Type of the thermocouple as its record says. */
  readonly thermocouple: string | null;
}

/** A log that was given as an earlier one: what it says, or why it could not be read. */
export type EarlierLog = PastFiring | { readonly name: string; readonly broken: string };

/** A firing with the earlier ones of its kiln. */
export interface FiringHistory {
  /** What was compared with, oldest first where their starts are known. */
  readonly used: readonly PastFiring[];
  readonly leftOut: readonly { readonly name: string; readonly why: string }[];
  /** The kiln by all of them and this firing; null when they do not show it. */
  readonly kiln: LearnedKiln | null;
  /** Share by which the elements pull less than in the strongest earlier firing; null when not told. */
  readonly weakerBy: number | null;
  /** The thermocouple against the earlier firings [K]; null when that cannot be told. */
  readonly drift: ThermocoupleDrift | null;
  /** What has changed, what cannot be told, and what was left out. */
  readonly findings: readonly Finding[];
}

/** The middle of what this firing's cones allow, minus the median of earlier ones. */
export interface ThermocoupleDrift {
  readonly earlier: PastOffset;
  readonly nowK: number;
  /** Median of the earlier firings [K]. */
  readonly beforeK: number;
  readonly driftK: number;
  /** What the witness cones of all these firings allow [K]. */
  readonly lowK: number;
  readonly highK: number;
}
