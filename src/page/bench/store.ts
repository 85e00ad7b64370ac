import type { BenchState, Work } from "./state.ts";

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
