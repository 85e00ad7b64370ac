import { z } from "zod";
import type { Problem, Result } from "../../core/problem.ts";
import { type KeptFile, keptFileShape } from "../bench/KeptFile.ts";
import type { CompareAnswer, ComparedLog } from "../worker/CompareAnswer.ts";
import type { StudyAnswer } from "../worker/studyJob.ts";

const alignShape = z.strictObject({
  at: z.enum(["peak", "start", "rising", "falling"]),
  /** Kept while another way is chosen [°C]. */
  tempC: z.number().min(0).max(1500),
});

/** Where the firings are laid over each other. */
export type ChosenAlignment = z.infer<typeof alignShape>;

/** Lined up at the peak; another way begins in the quartz inversion. */
const AT_PEAK: ChosenAlignment = { at: "peak", tempC: 573 };

/** How the work of the Compare table is stored. */
export const compareWorkShape = z.strictObject({
  /** Logs in the order of the comparison, each record, schedule, glaze and body wherever it was dropped. */
  files: z.array(keptFileShape).readonly(),
  /** Name of the log that the others are held against; null for the first. */
  base: z.string().nullable().default(null),
  align: alignShape.default(AT_PEAK),
  /** The next test is fitted to the kiln that the Draft table knows, when it knows one. */
  onKiln: z.boolean().default(true),
});

/** What lies on the Compare table: logs, records and ware, as dropped, and how they are compared. */
export type CompareWork = z.infer<typeof compareWorkShape>;

/** What the Compare table works out from it, and what is only on the way. */
export interface CompareDesk {
  /** What was read so far, by the log. */
  readonly reads: ReadonlyMap<KeptFile, Result<ComparedLog>>;
  /** The comparison of what was read; null until then, and when there is too little. */
  readonly answer: CompareAnswer | null;
  /** Glazes and clays that a file stands for, by its name; null before the tiles were studied. */
  readonly uses: StudyAnswer["uses"] | null;
  /** How many parts of the report are laid out; they come one a frame, so that no frame takes long. */
  readonly parts: number;
  /** How far the reading is; null when nothing is being read. */
  readonly busy: { readonly fraction: number; readonly at: string } | null;
  /** The reading was stopped by hand. */
  readonly isStopped: boolean;
  /** Why there is no comparison. */
  readonly problems: readonly Problem[];
  /** Why something that was dropped does not lie on the table. */
  readonly refused: readonly Problem[];
  /** What a drop did beside laying files down; empty for nothing. */
  readonly remark: string;
}

/** The table with nothing on it. */
export const EMPTY_COMPARE: { readonly work: CompareWork; readonly desk: CompareDesk } = {
  work: { files: [], base: null, align: AT_PEAK, onKiln: true },
  desk: {
    reads: new Map(),
    answer: null,
    uses: null,
    parts: 0,
    busy: null,
    isStopped: false,
    problems: [],
    refused: [],
    remark: "",
  },
};
