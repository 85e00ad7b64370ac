import type { Bench } from "../bench/store.ts";
import type { CompareDesk, CompareWork } from "./compareState.ts";

/** Changes what lies on the Compare table, as one step to undo. */
export function changeCompare(bench: Bench, what: string, change: Partial<CompareWork>): void {
  showCompare(bench, { refused: [], remark: "" });
  bench.change(what, (work) => ({ ...work, compare: { ...work.compare, ...change } }));
}

/** Changes what is only shown on the Compare table. */
export function showCompare(bench: Bench, change: Partial<CompareDesk>): void {
  bench.show((state) => ({ ...state, compare: { ...state.compare, ...change } }));
}
