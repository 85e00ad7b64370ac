import type { Moment } from "../firing/moment.ts";
import type { TrialCoat, TrialSpacing } from "../firing/TrialMeasurements.ts";
import type { Body } from "../ware/Ware.ts";

/** A trial tile of one firing, read and in canonical units: the replicate of all statistics. */
export interface Tile {
  /** File name of the firing record. */
  readonly firing: string;
  readonly firingTitle: string;
  /** As the record writes it. */
  readonly kiln: string | null;
  /** The mark on the piece. */
  readonly piece: string;
  /** In the person's words, spaces and capitals evened out: what tiles are grouped by. */
  readonly clay: string;
  readonly glaze: string;
  /** Body by whose properties the fit is computed; null when the record names none. */
  readonly body: Body | null;
  readonly coat: TrialCoat;
  readonly glazedSides: "one" | "both";
  /** A bowl counts as closed: it cannot bend freely. Null when not noted. */
  readonly shape: "flat" | "closed" | null;
  /** Wall without glaze [mm]. */
  readonly wallMm: number | null;
  readonly spacing: TrialSpacing;
  readonly cracked: "none" | "crackle" | "through" | null;
  /** Null when nobody looked. */
  readonly throughCrack: boolean | null;
  readonly pings: {
    readonly count: number;
    /** When they were heard; empty when only counted. */
    readonly moments: readonly Moment[];
  } | null;
  /** Where it stood in the kiln, in the person's words. */
  readonly place: string | null;
  /** What the cracks were stained with. */
  readonly stain: string | null;
  /** Made up as an example. */
  readonly invented: boolean;
}
