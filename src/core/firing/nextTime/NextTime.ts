import type { Evidence } from "../../findings/Finding.ts";
import type { Schedule } from "../../schedule/Schedule.ts";
import type { WishedPace } from "../../schedule/wishedPace.ts";

/**
 * How well a change stands: `firm` when the reason is far outside its uncertainty, `worth trying`
 * when it is outside it, `too close to tell` when it is within it.
 */
export type Standing = "firm" | "worth trying" | "too close to tell";

/**
 * What a change asks of the next schedule. The schedule that is handed on is made from these, and the
 * sentence is printed from the same numbers.
 */
export type NextAsk =
  | ({ readonly kind: "pace" } & WishedPace)
  | { readonly kind: "cone"; readonly cone: string }
  /** A climb that this kiln can follow. */
  | { readonly kind: "climb" };

/** One thing to change next time. */
export interface NextChange {
  /** What it is about; changes of the firing come before those that only teach more. */
  readonly about:
    | "lid"
    | "cooling"
    | "cone"
    | "climb"
    | "glaze"
    | "clay"
    | "drying"
    | "bisque"
    | "elements"
    | "thermocouple"
    | "hold"
    | "power"
    | "log"
    | "record";
  /** In the imperative; `{name}` stands for the evidence of that name. */
  readonly change: string;
  /** The numbers it rests on, as a sentence. */
  readonly because: string;
  readonly evidence: readonly Evidence[];
  readonly standing: Standing;
  /** What the next schedule has to keep to; null where the schedule is not what has to change. */
  readonly ask: NextAsk | null;
  /** The schedule has to change for it, and the command carries it out. */
  readonly inSchedule: boolean;
}

/** A change before there is a schedule that may carry it out. */
export type WantedChange = Omit<NextChange, "inSchedule">;

/** What to change next time, most needed first, and how to draft it. */
export interface NextTime {
  readonly changes: readonly NextChange[];
  /** One sentence or two: repeat it, or how to learn from a change. */
  readonly advice: readonly string[];
  /** A line for the shell, to be run where the review was run; null when there is none. */
  readonly command: string | null;
  /** What the command does, or why there is none. */
  readonly commandSays: string;
  /** The same where there is no command: what the schedule is, or why there is none. */
  readonly scheduleSays: string;
  /** The schedule that the command lays out; null when there is no command. */
  readonly schedule: Schedule | null;
}

/** Files by the names with which a person gave them. */
export interface NextTimePaths {
  /** The log; null when it came by standard input or is read with options that `draft` has not. */
  readonly log: string | null;
  /** The record lies beside the log, where `draft` finds it too. */
  readonly recordBeside: boolean;
  readonly schedule: string | null;
  /** A file that is not there yet. */
  readonly output: string;
}
