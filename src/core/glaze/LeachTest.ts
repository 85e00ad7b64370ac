import type { LeachedWare } from "../cautions/leachLimits.ts";
import type { LeachAmount } from "../units/leachAmount.ts";

/** What a laboratory found given off by one fired piece. */
export interface LeachTest {
  readonly ware: LeachedWare;
  readonly lead: LeachAmount | null;
  readonly cadmium: LeachAmount | null;
  /** Who tested it, and when. */
  readonly source: string;
}
