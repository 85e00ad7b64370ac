import { type AsideWork, createKeeper, type Keeper } from "../state/keep.ts";
import type { Bench, Work } from "../state/state.ts";

/** How long the work has to rest before it is kept while the page stays open [ms]. */
const REST_MS = 150;

/** Told to other windows of this page when something was kept. */
const CHANNEL = "undunted-kept";

/**
 * Lays down what this browser kept, then keeps every change, in a place of this window's own.
 * A change that waits is kept at once when the page is hidden or left. Another window of this page
 * that holds the same work follows; work that parted is put aside and offered, never overwritten.
 */
export async function keepOnChange(bench: Bench): Promise<void> {
  const keeper = createKeeper(windowName(), () => Date.now());
  const begin = keepingOf(bench, keeper);
  const opened = await keeper.open();
  if (!opened.ok) bench.show((state) => ({ ...state, problems: opened.problems }));
  else {
    const { work, aside } = opened.value;
    bench.show((state) => ({ ...state, aside, ...(work !== null && { work }) }));
  }
  begin();
}

const KEEPERS = new WeakMap<Bench, { readonly keeper: Keeper; readonly settle: () => void }>();

/** Lays work that lay aside on the bench, where Undo brings back what lay there. */
export async function layAside(bench: Bench, aside: AsideWork): Promise<void> {
  const { work } = aside;
  const kept = KEEPERS.get(bench);
  if (work === null || kept === undefined) return;
  bench.change("opening what lay aside", () => work);
  kept.settle();
  const adopted = await kept.keeper.adopt(aside, work);
  bench.show((state) => ({
    ...state,
    aside: adopted.ok ? without(state.aside, aside) : state.aside,
    problems: adopted.ok ? state.problems : adopted.problems,
    said: "What lay aside lies on the bench.",
  }));
}

/** Takes work that lies aside out of this browser for good. */
export async function throwAway(bench: Bench, aside: AsideWork): Promise<void> {
  const removed = await KEEPERS.get(bench)?.keeper.remove(aside.key);
  if (removed === undefined) return;
  bench.show((state) => ({
    ...state,
    aside: removed.ok ? without(state.aside, aside) : state.aside,
    problems: removed.ok ? state.problems : removed.problems,
  }));
}

/** Takes everything that was kept out of this browser. */
export async function forgetAll(bench: Bench): Promise<void> {
  const kept = KEEPERS.get(bench);
  kept?.settle();
  const forgotten = await kept?.keeper.forget();
  if (forgotten !== undefined && !forgotten.ok)
    bench.show((state) => ({ ...state, problems: forgotten.problems }));
}

/** What begins to keep changes and to follow other windows. */
function keepingOf(bench: Bench, keeper: Keeper): () => void {
  const channel = "BroadcastChannel" in window ? new BroadcastChannel(CHANNEL) : null;
  let timer = 0;
  let waiting: Work | null = null;
  let followed: Work | null = null;

  const keep = () => {
    clearTimeout(timer);
    if (waiting === null) return;
    const work = waiting;
    waiting = null;
    void keeper.keep(work).then((kept) => {
      if (kept.ok) channel?.postMessage("kept");
      showKept(bench, kept.ok ? [] : kept.problems);
    });
  };
  const follow = async () => {
    if (waiting !== null || document.visibilityState === "hidden") return;
    const before = bench.state().work;
    const newer = await keeper.newer();
    if (newer === null || waiting !== null || bench.state().work !== before) return;
    const work = reconciled(before, newer);
    followed = work;
    const said = "Shown as another window of this page left it.";
    bench.show((state) => ({ ...state, work, past: [], ahead: [], said }));
  };
  KEEPERS.set(bench, {
    keeper,
    settle: () => {
      clearTimeout(timer);
      waiting = null;
    },
  });
  return () => {
    bench.listen((before) => {
      const { work } = bench.state();
      if (work === before.work || work === followed) return;
      waiting = work;
      clearTimeout(timer);
      timer = window.setTimeout(keep, REST_MS);
    });
    window.addEventListener("pagehide", keep);
    document.addEventListener("visibilitychange", () => {
      if (document.visibilityState === "hidden") keep();
      else void follow();
    });
    window.addEventListener("focus", () => void follow());
    channel?.addEventListener("message", () => void follow());
  };
}

/** Shows why the work is not kept, or that it is again. */
function showKept(bench: Bench, problems: ReturnType<Bench["state"]>["problems"]): void {
  bench.show((state) => {
    const others = state.problems.filter(({ code }) => code !== "page/not-kept");
    if (problems.length === 0 && others.length === state.problems.length) return state;
    return { ...state, problems: [...problems, ...others] };
  });
}

function without(all: readonly AsideWork[], { key }: AsideWork): readonly AsideWork[] {
  return all.filter((each) => each.key !== key);
}

/** A name that no other window has. */
function windowName(): string {
  const parts = crypto.getRandomValues(new Uint32Array(3));
  return [...parts].map((part) => part.toString(36)).join("");
}

/**
 * The next value with every part of the one before that is equal to its own: what did not change
 * stays the same object, so that nothing is worked out again for it.
 */
function reconciled<T>(before: unknown, next: T): T {
  if (Object.is(before, next)) return next;
  if (next instanceof Uint8Array) return isSameBytes(before, next) ? (before as T) : next;
  if (typeof next !== "object" || next === null || !isLike(before, next)) return next;
  const was = before as Readonly<Record<string, unknown>>;
  const entries = Object.entries(next).map(
    ([key, value]) => [key, reconciled(was[key], value)] as const,
  );
  const isSame =
    entries.length === Object.keys(was).length &&
    entries.every(([key, value]) => key in was && Object.is(value, was[key]));
  if (isSame) return before as T;
  return (
    Array.isArray(next) ? entries.map(([, value]) => value) : Object.fromEntries(entries)
  ) as T;
}

function isLike(before: unknown, next: object): boolean {
  return (
    typeof before === "object" && before !== null && Array.isArray(before) === Array.isArray(next)
  );
}

function isSameBytes(before: unknown, next: Uint8Array): boolean {
  return (
    before instanceof Uint8Array &&
    before.length === next.length &&
    next.every((byte, at) => byte === before[at])
  );
}
