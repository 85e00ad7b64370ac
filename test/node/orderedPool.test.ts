import { Worker } from "node:worker_threads";
import { describe, expect, it } from "vitest";
import { orderedPool } from "../../src/node/orderedPool.ts";

/** Doubles numbers; some batches take longer than others; ends itself on a number below zero. */
const DOUBLING = `data:text/javascript,${encodeURIComponent(`
  import { parentPort } from "node:worker_threads";
  let last = Promise.resolve();
  const turns = (left) => new Promise((done) => {
    const turn = () => (left-- > 0 ? setImmediate(turn) : done());
    turn();
  });
  parentPort.on("message", ({ items }) => {
    last = last.then(async () => {
      if (items.some((item) => item < 0)) process.exit(3);
      await turns(items[0] % 7);
      parentPort.postMessage({ outcomes: items.map((item) => 2 * item) });
    });
  });
`)}`;

function pool(
  items: readonly number[],
  workers: number,
  started: { count: number } = { count: 0 },
) {
  return orderedPool<number, number | string>(items, {
    workers,
    start: () => {
      started.count++;
      return new Worker(new URL(DOUBLING));
    },
    lost: (item, why) => `${item}: ${why}`,
  });
}

async function all<T>(outcomes: AsyncIterable<T>): Promise<readonly T[]> {
  const found: T[] = [];
  for await (const outcome of outcomes) found.push(outcome);
  return found;
}

const upTo = (count: number) => Array.from({ length: count }, (_, i) => i);

describe("orderedPool", () => {
  it.each([1, 2, 5])(
    "gives the outcomes of %d workers in the order of the items",
    async (workers) => {
      expect(await all(pool(upTo(101), workers))).toEqual(upTo(101).map((i) => 2 * i));
    },
  );

  it("gives nothing for no items", async () => {
    expect(await all(pool([], 2))).toEqual([]);
  });

  it("loses only the item by which a worker ends", async () => {
    const items = upTo(60).map((i) => (i === 23 ? -1 : i));
    const found = await all(pool(items, 2));
    expect(found[23]).toBe("-1: a worker ended with 3");
    expect(found.filter((_, i) => i !== 23)).toEqual(
      upTo(60)
        .filter((i) => i !== 23)
        .map((i) => 2 * i),
    );
  });

  it("comes to an end when every item ends its worker, with a worker for each at most twice", async () => {
    const started = { count: 0 };
    const found = await all(pool([-1, -2, -3, -4, -5], 2, started));
    expect(found).toEqual([-1, -2, -3, -4, -5].map((item) => `${item}: a worker ended with 3`));
    expect(started.count).toBeLessThanOrEqual(2 + 2 * 5);
  });

  it("begins no more than may wait for its turn", async () => {
    const items = upTo(1000);
    let greatest = 0;
    const watched = new Proxy(items, {
      get: (target, key) =>
        key === "slice"
          ? (from: number, to: number) => {
              greatest = Math.max(greatest, to);
              return target.slice(from, to);
            }
          : Reflect.get(target, key),
    });
    const outcomes = pool(watched, 2);
    for (let i = 0; i < 10; i++) await outcomes.next();
    await outcomes.return(undefined);
    expect(greatest).toBeLessThanOrEqual(10 + 2 * 4 * 8);
  });
});
