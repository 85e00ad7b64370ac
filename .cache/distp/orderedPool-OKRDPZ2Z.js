import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import "./chunk-TBHH23HK.js";

// src/node/orderedPool.ts
var MOST_IN_BATCH = 8;
var AT_HAND = 2;
var BATCHES_WAITING = 4;
async function* orderedPool(items, ways) {
  const ready = /* @__PURE__ */ new Map();
  const again = [];
  const hands = /* @__PURE__ */ new Set();
  let begun = 0;
  let given = 0;
  let wake = () => {
  };
  function nextSpan() {
    const redone = again.shift();
    if (redone !== void 0) return redone;
    const open = given + ways.workers * BATCHES_WAITING * MOST_IN_BATCH - begun;
    const left = items.length - begun;
    const size = Math.min(MOST_IN_BATCH, Math.ceil(left / (AT_HAND * 2 * ways.workers)), open);
    if (size <= 0) return null;
    const span = { from: begun, to: begun + size };
    begun = span.to;
    return span;
  }
  function feed(hand) {
    while (hand.spans.length < AT_HAND) {
      const span = nextSpan();
      if (span === null) return;
      hand.spans.push(span);
      hand.worker.postMessage({ items: items.slice(span.from, span.to) });
    }
  }
  function take(hand, { outcomes }) {
    const { from } = hand.spans.shift();
    outcomes.forEach((outcome, i) => {
      ready.set(from + i, outcome);
    });
    feed(hand);
    wake();
  }
  function replace(hand, why) {
    if (!hands.delete(hand)) return;
    const [first, ...rest] = hand.spans;
    if (first !== void 0 && first.to - first.from === 1)
      ready.set(first.from, ways.lost(items[first.from], why));
    else if (first !== void 0) again.push(...singly(first));
    again.push(...rest);
    if (again.length > 0 || begun < items.length) hire();
    wake();
  }
  function hire() {
    const hand = { worker: ways.start(), spans: [] };
    hands.add(hand);
    hand.worker.on("message", (done) => take(hand, done));
    hand.worker.on("error", (error) => replace(hand, messageOf(error)));
    hand.worker.on("exit", (code) => replace(hand, `a worker ended with ${code}`));
    feed(hand);
  }
  try {
    for (let count = 0; count < ways.workers; count++) hire();
    while (given < items.length) {
      if (!ready.has(given)) {
        await new Promise((resolve) => {
          wake = resolve;
        });
        continue;
      }
      const outcome = ready.get(given);
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
function singly({ from, to }) {
  return Array.from({ length: to - from }, (_, i) => ({ from: from + i, to: from + i + 1 }));
}
function messageOf(error) {
  return error instanceof Error ? error.message : String(error);
}
export {
  orderedPool
};
