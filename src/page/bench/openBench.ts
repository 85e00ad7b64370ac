import "../look/paper.css";
import "../look/bench.css";
import "../look/parts.css";
import "../look/report.css";
import "../look/draft.css";
import "../look/review.css";
import "../look/compare.css";
import "../look/photo.css";
import "../look/print.css";
import { render } from "lit-html";
import { watchCompare } from "../compare/watchCompare.ts";
import { watchDraft } from "../draft/changeDraft.ts";
import { watchPhoto } from "../photo/watchPhoto.ts";
import { watchReview } from "../review/changeReview.ts";
import { type Bench, createBench, EMPTY_BENCH } from "../state/state.ts";
import { benchView } from "./benchView.ts";
import { keepOnChange } from "./keepOnChange.ts";

/** Opens the bench in an element: what this browser kept lies on it again. */
export function openBench(root: HTMLElement): void {
  const bench = createBench({
    ...EMPTY_BENCH,
    dark: darkScreen().matches,
    narrow: narrowScreen().matches,
  });
  showOnChange(bench, root);
  watchScreen(bench);
  watchKeys(bench);
  watchDraft(bench);
  watchReview(bench);
  watchCompare(bench);
  watchPhoto(bench);
  void keepOnChange(bench).then(() => {
    root.dataset.ready = "";
  });
}

/** Draws the bench once a frame at most, however much has changed. */
function showOnChange(bench: Bench, root: HTMLElement): void {
  let waits = false;
  const draw = () => {
    waits = false;
    render(benchView(bench), root);
  };
  root.replaceChildren();
  draw();
  bench.listen(() => {
    if (waits) return;
    waits = true;
    requestAnimationFrame(draw);
  });
}

function darkScreen(): MediaQueryList {
  return matchMedia("(prefers-color-scheme: dark)");
}

/** Where the look of a table becomes that of a telephone. */
function narrowScreen(): MediaQueryList {
  return matchMedia("(max-width: 40rem)");
}

function watchScreen(bench: Bench): void {
  darkScreen().addEventListener("change", ({ matches }) =>
    bench.show((state) => ({ ...state, dark: matches })),
  );
  narrowScreen().addEventListener("change", ({ matches }) =>
    bench.show((state) => ({ ...state, narrow: matches })),
  );
  for (const kind of ["dragover", "drop"] as const)
    window.addEventListener(kind, (event) => event.preventDefault());
}

/** Control+Z takes the last change back, outside of fields, which have their own. */
function watchKeys(bench: Bench): void {
  window.addEventListener("keydown", (event) => {
    const isUndo = event.key.toLowerCase() === "z" && (event.ctrlKey || event.metaKey);
    if (!isUndo || isTyping(event.target) || bench.state().question !== null) return;
    event.preventDefault();
    if (event.shiftKey) bench.redo();
    else bench.undo();
  });
}

function isTyping(target: EventTarget | null): boolean {
  return (
    target instanceof HTMLTextAreaElement ||
    (target instanceof HTMLInputElement && !["radio", "checkbox", "file"].includes(target.type))
  );
}
