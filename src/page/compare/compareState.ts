import { z } from "zod";
import { type KeptFile, keptFileShape } from "../bench/KeptFile.ts";

/** What lies on the Compare table: logs and their records, as dropped. */
export interface CompareWork {
  readonly files: readonly KeptFile[];
}

/** What the Compare table works out from it. */
export type CompareDesk = Readonly<Record<string, never>>;

/** How the work of the Compare table is stored. */
export const compareWorkShape = z.strictObject({ files: z.array(keptFileShape) });

/** The table with nothing on it. */
export const EMPTY_COMPARE: { readonly work: CompareWork; readonly desk: CompareDesk } = {
  work: { files: [] },
  desk: {},
};
