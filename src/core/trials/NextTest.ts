import type { Evidence } from "../findings/Finding.ts";
import type { Schedule } from "../schedule/Schedule.ts";
import type { OnThisKiln } from "./onThisKiln.ts";

/** Tiles of one kind for the next firing. */
export interface NextTile {
  readonly clay: string;
  readonly glaze: string;
  /** Fired [mm]. */
  readonly coatMm: number;
  readonly glazedSides: "one" | "both";
  /** Null when the shape of the tiles so far is not noted. */
  readonly shape: "flat" | "closed" | null;
  readonly count: number;
}

/** One comparison that is wanted, and how well it is known before and after. */
export interface WantedContrast {
  readonly cause: string;
  /** `both against one`, `exponent`. */
  readonly contrast: string;
  /** One standard error of ln ratio, or of the exponent; null while nothing tells it. */
  readonly before: number | null;
  readonly after: number;
  /** What it has to come under. */
  readonly needed: number;
}

/** The next tiles. */
export interface NextTiles {
  readonly tiles: readonly NextTile[];
  readonly total: number;
  readonly wanted: readonly WantedContrast[];
  /** All wanted contrasts come under what is needed. */
  readonly isEnough: boolean;
  /** Smallest number with which each wanted contrast is told at all, however badly. */
  readonly fewest: number;
  /** Scatter of ln spacing to be expected from tile to tile, and whether it was measured here. */
  readonly scatter: number;
  readonly scatterIs: "measured" | "assumed";
  /** The ratio of spacings that is to be seen, with a chance of 8 in 10. */
  readonly ratio: number;
  /** Why these, in a sentence. */
  readonly reason: string;
}

/** The next firing. */
export interface NextFiring {
  /** The named schedule as it is, with one thing changed, or a new one because none is named. */
  readonly kind: "repeat" | "one change" | "new";
  /** Null when none can be drafted; then `change` says what to do. */
  readonly schedule: Schedule | null;
  /** Title of the firing that it follows. */
  readonly follows: string;
  /** In the imperative; `{name}` stands for the evidence of that name. */
  readonly change: string;
  readonly evidence: readonly Evidence[];
  readonly reason: string;
  /** How the kiln of the next firing takes the schedule; null without that kiln or a schedule. */
  readonly onKiln: Omit<OnThisKiln, "schedule"> | null;
}

/** Which test would tell apart what cannot be told apart yet. */
export interface NextTest {
  readonly tiles: NextTiles | null;
  readonly firing: NextFiring | null;
  /** What stays open after it, and what was not looked at. */
  readonly open: readonly string[];
}
