import type { EvidenceKind } from "../findings/Finding.ts";

/** What is compared between firings. */
export type FactName =
  | "peak"
  | "cone"
  | "heatwork"
  | "above1100"
  | "quartzHeatingMean"
  | "quartzMean"
  | "quartzFastest"
  | "cristobaliteMean"
  | "cristobaliteFastest"
  | "coolingHold"
  | "openedAt"
  | "openedAfter"
  | "to100";

/** What a person can change in a firing; several facts show one of them. */
export type FiringCause = "heat" | "quartz" | "cristobalite" | "coolingHold" | "opening";

/** One number of one firing, with how well it is known. */
export interface FiringFact {
  readonly name: FactName;
  /** `quartz, cooling: mean`. */
  readonly label: string;
  readonly kind: EvidenceKind;
  /** Which part of the firing it shows; null for what follows from the other parts. */
  readonly cause: FiringCause | null;
  /** Rates are positive, whichever way they go; null when it was not measured or noted. */
  readonly value: number | null;
  /** One standard deviation of this reading alone, in the unit of the value. */
  readonly sigma: number;
  /** One standard deviation that thermocouple and place add; firings that share both share most of it. */
  readonly sensorSigma: number;
}

/** A firing in numbers. */
export interface FiringInNumbers {
  readonly title: string;
  /** File name of the record, by which tiles name their firing; null without a record. */
  readonly record: string | null;
  /** Kiln and thermocouple in one word, to know whether two firings share them; null when not noted. */
  readonly instrument: string | null;
  readonly facts: readonly FiringFact[];
}
