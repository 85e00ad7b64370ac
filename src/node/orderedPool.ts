import type { Worker } from "node:worker_threads";

/** What a worker is sent: items of one batch. */
export interface Batch<Item> {
  readonly items: readonly Item[];
}

/** What a worker answers a batch with: one outcome an item, in their order. */
export interface BatchDone<Outcome> {
  readonly outcomes: readonly Outcome[];
}

/** How a pool works. */
export interface PoolWays<Item, Outcome> {
  readonly workers: number;
  /** Starts a worker that answers each {@link Batch} with a {@link BatchDone}, first come, first served. */
  readonly start: () => Worker;
  /** Stands for an item by which a worker ended, and why it did. */
  readonly lost: (item: Item, why: string) => Outcome;
}

/** Items in one batch at most: few enough that no worker is left with a long tail. */
const MOST_IN_BATCH = 8;
/** Batches that a worker has at hand, so that it need not wait for the next one. */
const AT_HAND = 2;
/** Outcomes that may wait for those before them, for each worker, in batches. */
const BATCHES_WAITING = 4;

interface Span {
  readonly from: number;
  readonly to: number;
}

interface Hand {
  readonly worker: Worker;
  /** Batches it was sent, the one it works on first. */
  readonly spans: Span[];
}

/**
 * The outcomes of a pure map over items by workers, in the order of the items. No more is begun than
 * what may wait for its turn, so that memory is bounded however many items there are. When a worker
 * ends, its batch is done again item by item; the item by which it ends again is `lost`.
 */
export async function* orderedPool<Item, Outcome>(
  items: readonly Item[],
  ways: PoolWays<Item, Outcome>,
): AsyncGenerator<Outcome> {
  const ready = new Map<number, Outcome>();
  const again: Span[] = [];
  const hands = new Set<Hand>();
  let begun = 0;
  let given = 0;
  let wake = (): void => {};

  function nextSpan(): Span | null {
    const redone = again.shift();
    if (redone !== undefined) return redone;
    const open = given + ways.workers * BATCHES_WAITING * MOST_IN_BATCH - begun;
    const left = items.length - begun;
    // Smaller batches towards the end, so that all workers end at about the same time.
    const size = Math.min(MOST_IN_BATCH, Math.ceil(left / (AT_HAND * 2 * ways.workers)), open);
    if (size <= 0) return null;
    const span = { from: begun, to: begun + size };
    begun = span.to;
    return span;
  }

  function feed(hand: Hand): void {
    while (hand.spans.length < AT_HAND) {
      const span = nextSpan();
      if (span === null) return;
      hand.spans.push(span);
      hand.worker.postMessage({ items: items.slice(span.from, span.to) } satisfies Batch<Item>);
    }
  }

  function take(hand: Hand, { outcomes }: BatchDone<Outcome>): void {
    const { from } = hand.spans.shift() as Span;
    outcomes.forEach((outcome, i) => {
      ready.set(from + i, outcome);
    });
    feed(hand);
    wake();
  }

  function replace(hand: Hand, why: string): void {
    if (!hands.delete(hand)) return;
    const [first, ...rest] = hand.spans;
    if (first !== undefined && first.to - first.from === 1)
      ready.set(first.from, ways.lost(items[first.from]!, why));
    else if (first !== undefined) again.push(...singly(first));
    again.push(...rest);
    if (again.length > 0 || begun < items.length) hire();
    wake();
  }

  function hire(): void {
    const hand: Hand = { worker: ways.start(), spans: [] };
    hands.add(hand);
    hand.worker.on("message", (done: BatchDone<Outcome>) => take(hand, done));
    hand.worker.on("error", (error) => replace(hand, messageOf(error)));
    hand.worker.on("exit", (code) => replace(hand, `a worker ended with ${code}`));
    feed(hand);
  }

  try {
    for (let count = 0; count < ways.workers; count++) hire();
    while (given < items.length) {
      if (!ready.has(given)) {
        await new Promise<void>((resolve) => {
          wake = resolve;
        });
        continue;
      }
      const outcome = ready.get(given) as Outcome;
      ready.delete(given++);
      for (const hand of hands) feed(hand);
      yield outcome;
    }
  } finally {
    const ending = [...hands];
    hands.clear();
    await Promise.all(ending.map(({ worker }) => worker.terminate()));
  }
}

function singly({ from, to }: Span): readonly Span[] {
  return Array.from({ length: to - from }, (_, i) => ({ from: from + i, to: from + i + 1 }));
}

function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
