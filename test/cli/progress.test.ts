import { describe, expect, it } from "vitest";
import { progress } from "../../src/cli/tellLogs.ts";

function drawn(total: number, atMs: readonly number[]): readonly string[] {
  const written: string[] = [];
  const clock = [0, ...atMs];
  const shown = progress(total, { write: (text) => written.push(text) }, () => clock.shift() ?? 0);
  for (const _ of atMs) shown.step();
  shown.clear();
  return written;
}

describe("progress", () => {
  it("says nothing of a run that is over within 200 ms", () => {
    expect(drawn(10, [20, 40, 60, 80, 199])).toEqual([]);
  });

  it("says how many are done and how long the rest takes at that pace", () => {
    // 2 of 10 in 3 s: 8 more take 12 s.
    expect(drawn(10, [100, 3000])).toEqual(["2 of 10 logs, about 12 s left", "\r\u001b[K"]);
  });

  it("speaks of minutes from a minute and a half on", () => {
    expect(drawn(1000, [600])[0]).toBe("1 of 1000 logs, about 10 min left");
  });

  it("draws over itself, at most five times a second", () => {
    expect(drawn(9, [300, 350, 501])).toEqual([
      "1 of 9 logs, about 3 s left",
      "\r\u001b[K",
      "3 of 9 logs, about 2 s left",
      "\r\u001b[K",
    ]);
  });

  it("draws nothing where nobody looks", () => {
    const shown = progress(5, null, () => 1e6);
    expect(() => {
      shown.step();
      shown.clear();
    }).not.toThrow();
  });
});
