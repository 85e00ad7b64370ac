import type { Problem } from "../../core/problem.ts";
import type { TemperatureUnit } from "../../core/units/temperature.ts";
import { type CompareDesk, type CompareWork, EMPTY_COMPARE } from "../compare/compareState.ts";
import { type DraftDesk, type DraftWork, EMPTY_DRAFT } from "../draft/draftState.ts";
import { EMPTY_PHOTO, type PhotoDesk, type PhotoWork } from "../photo/photoState.ts";
import { EMPTY_REVIEW, type ReviewDesk, type ReviewWork } from "../review/reviewState.ts";
import type { AsideWork } from "./keep.ts";

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
