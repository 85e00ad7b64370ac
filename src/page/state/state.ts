import { z } from "zod";
import type { Problem, Result } from "../../core/problem.ts";
import type { TemperatureUnit } from "../../core/units/temperature.ts";
import { type KeptFile, keptFileShape } from "../parts/KeptFile.ts";
import type { CompareAnswer, ComparedLog } from "../worker/answers.ts";
import type { StudyAnswer } from "../worker/compareJob.ts";
import { type DraftDesk, type DraftWork, EMPTY_DRAFT } from "./draftState.ts";
import type { AsideWork } from "./keep.ts";
import { EMPTY_PHOTO, type PhotoDesk, type PhotoWork } from "./photoState.ts";
import { EMPTY_REVIEW, type ReviewDesk, type ReviewWork } from "./reviewState.ts";

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

/** The three tables of the bench. */
export const TABLES = ["draft", "review", "compare"] as const;

/** Name of a table. */
export type TableName = (typeof TABLES)[number];

/** What a person made: kept over a reload, exported whole, and undone step by step. */
export interface Work {
  /** Unit that temperatures are shown and typed in; what is stored is °C always. */
  readonly unit: TemperatureUnit;
  /** Somebody picked the unit by hand; until then it follows what is laid down. */
  readonly unitChosen: boolean;
  readonly draft: DraftWork;
  readonly review: ReviewWork;
  readonly compare: CompareWork;
  readonly photo: PhotoWork;
}

/** A change that can be taken back: what it was, in words, and the work on the other side of it. */
interface Step {
  readonly what: string;
  readonly work: Work;
}

/** A question before something is lost, or a paper to look at. */
export interface Question {
  readonly title: string;
  readonly text: string;
  readonly yes: string;
  readonly onYes: () => void;
}

/** Everything that the page shows is made from this. */
export interface BenchState {
  readonly table: TableName;
  readonly work: Work;
  readonly past: readonly Step[];
  readonly ahead: readonly Step[];
  readonly question: Question | null;
  /** Said once to everybody, screen readers included. */
  readonly said: string;
  /** What could not be kept or read of the whole bench. */
  readonly problems: readonly Problem[];
  /** Work in this browser's store that does not lie here: of another window, or not to be read. */
  readonly aside: readonly AsideWork[];
  /** The screen is dark. */
  readonly dark: boolean;
  /** The window is as narrow as a telephone's, by its size or by zoom. */
  readonly narrow: boolean;
  /** Worked out from the work, and gone with the page. */
  readonly draft: DraftDesk;
  readonly review: ReviewDesk;
  readonly compare: CompareDesk;
  readonly photo: PhotoDesk;
}

/** An empty bench. */
export const EMPTY_WORK: Work = {
  unit: "C",
  unitChosen: false,
  draft: EMPTY_DRAFT.work,
  review: EMPTY_REVIEW.work,
  compare: EMPTY_COMPARE.work,
  photo: EMPTY_PHOTO.work,
};

/** The bench as it is before anything was read or typed. */
export const EMPTY_BENCH: BenchState = {
  table: "draft",
  work: EMPTY_WORK,
  past: [],
  ahead: [],
  question: null,
  said: "",
  problems: [],
  aside: [],
  dark: false,
  narrow: false,
  draft: EMPTY_DRAFT.desk,
  review: EMPTY_REVIEW.desk,
  compare: EMPTY_COMPARE.desk,
  photo: EMPTY_PHOTO.desk,
};

/** How a change is remembered. */
interface ChangeOptions {
  /** Changes in a row with the same name are one step to undo: a corner that is dragged. */
  readonly merge?: string;
}

/** Holds the one state; every event makes a new one through it. */
export interface Bench {
  readonly state: () => BenchState;
  /** Changes what is only shown; nothing to undo. */
  readonly show: (change: (state: BenchState) => BenchState) => void;
  /** Changes the work, as a step that can be undone; `what` completes "Undo: …". */
  readonly change: (what: string, change: (work: Work) => Work, options?: ChangeOptions) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  /** Ends a run of merged changes. */
  readonly settle: () => void;
  /** Called after every change with the state before it. */
  readonly listen: (listener: (before: BenchState) => void) => void;
}

/** Steps that can be undone at most. */
const MOST_STEPS = 200;

/** A store with this state in it. */
export function createBench(initial: BenchState): Bench {
  let now = initial;
  let merging: string | null = null;
  const listeners: ((before: BenchState) => void)[] = [];
  const set = (next: BenchState) => {
    if (next === now) return;
    const before = now;
    now = next;
    for (const listener of listeners) listener(before);
  };
  const travel = (from: "past" | "ahead") => {
    const step = now[from].at(-1);
    if (step === undefined) return;
    merging = null;
    const back = { what: step.what, work: now.work };
    const said = `${from === "past" ? "Undone" : "Done again"}: ${step.what}.`;
    const rest = now[from].slice(0, -1);
    const other = from === "past" ? "ahead" : "past";
    set({ ...now, work: step.work, said, [from]: rest, [other]: [...now[other], back] });
  };
  return {
    state: () => now,
    show: (change) => set(change(now)),
    change: (what, change, { merge } = {}) => {
      const work = change(now.work);
      if (work === now.work) return;
      const joins = merge !== undefined && merge === merging;
      merging = merge ?? null;
      const past = joins ? now.past : [...now.past, { what, work: now.work }].slice(-MOST_STEPS);
      set({ ...now, work, past, ahead: [] });
    },
    undo: () => travel("past"),
    redo: () => travel("ahead"),
    settle: () => {
      merging = null;
    },
    listen: (listener) => {
      listeners.push(listener);
    },
  };
}

/**
 * The work in the unit of what was laid down: °F is taken up until somebody picks a unit by hand.
 * Nothing goes back to °C by itself, which is what a page shows that knows nothing of its reader.
 */
export function followedUnit(work: Work, found: TemperatureUnit): Work {
  const follows = found === "F" && work.unit !== found && !work.unitChosen;
  return follows ? { ...work, unit: found } : work;
}
