import { describe, expect, test } from "vitest";
import type { WitnessOffset } from "../../../src/core/cones/witnessOffset.ts";
import { statementText } from "../../../src/core/findings/Finding.ts";
import { type EarlierLog, historyOf, type PastFiring } from "../../../src/core/history/history.ts";
import { demoFiring } from "../../support/kilns.ts";

const HILDA = "Old Hilda, 180 litre top loader, 10.5 kW";

function offset(middleK: number, halfK = 1): WitnessOffset {
  return {
    series: "self-supporting",
    offsetK: middleK,
    sigmaK: 4,
    usual: { offsetK: 8, sigmaK: 12 },
    lowK: middleK - halfK,
    highK: middleK + halfK,
    witnesses: [],
  };
}

function past(name: string, over: Partial<PastFiring> = {}, withOutput = true): PastFiring {
  return {
    name,
    path: name,
    firing: { ...demoFiring(name, { withOutput }), kiln: HILDA },
    offset: null,
    thermocouple: null,
    ...over,
  };
}

function told(now: PastFiring, earlier: readonly EarlierLog[]) {
  const history = historyOf(now, earlier);
  const findings = new Map(
    history.findings.map((finding) => [
      finding.topic.replace("since earlier firings, ", ""),
      statementText(finding, "C"),
    ]),
  );
  return { history, findings };
}

const TIRED = "2026-06-06-a";
const BISQUE = "2026-02-07-a";

describe("historyOf", () => {
  test("says how much less worn elements pull, with both values and both firings", () => {
    const { history, findings } = told(past(TIRED), [past(BISQUE)]);
    const text = findings.get("elements") ?? "";
    const [, now, then, share] =
      /by (\d+) °C\/h in 2026-06-06-a and by (\d+) °C\/h in 2026-02-07-a, .*: (\d+) % less/.exec(
        text,
      ) ?? [];
    expect(Number(share)).toBeCloseTo(100 * (1 - Number(now) / Number(then)), -0.5);
    // The demo's tired elements give 62 % of full power; the same load would show just that.
    expect(history.weakerBy).toBeGreaterThan(0.3);
    expect(history.weakerBy).toBeLessThan(0.45);
  });

  test("is all notes, for a difference settles nothing", () => {
    const { history } = told(past(TIRED), [past(BISQUE), { name: "x.csv", broken: "it is empty" }]);
    expect(history.findings.length).toBeGreaterThan(1);
    expect(new Set(history.findings.map(({ severity }) => severity))).toEqual(new Set(["note"]));
  });

  test("cannot tell of elements without the output", () => {
    const { history, findings } = told(past(TIRED, {}, false), [past(BISQUE)]);
    expect(findings.get("elements")).toContain("2026-06-06-a has no column");
    expect(history.weakerBy).toBeNull();
    const other = told(past(TIRED), [past(BISQUE, {}, false)]);
    expect(other.findings.get("elements")).toContain("no earlier log has a column");
  });

  test("leaves out and counts what is broken, later, itself, given twice or of another kiln", () => {
    const wren = past("2026-04-11-a");
    const earlier: EarlierLog[] = [
      past(BISQUE),
      past(BISQUE),
      past("2026-05-09-a"),
      past(TIRED),
      { ...wren, firing: wren.firing && { ...wren.firing, kiln: "the Wren" } },
      { name: "x.csv", broken: "it is empty" },
    ];
    const { history, findings } = told(past("2026-05-09-a"), earlier);
    expect(history.used.map(({ name }) => name)).toEqual([BISQUE]);
    expect(history.leftOut.map(({ name, why }) => `${name}: ${why}`)).toEqual([
      `${BISQUE}: it was given twice`,
      "2026-05-09-a: it is this firing itself",
      `${TIRED}: it did not begin before this firing`,
      "2026-04-11-a: its record names another kiln, the Wren",
      "x.csv: it could not be read: it is empty",
    ]);
    expect(findings.get("logs left out")).toContain("5 of 6 earlier logs were left out");
  });

  test("says when nothing is left to compare with, and nothing else", () => {
    const { history } = told(past(TIRED), [{ name: "x.csv", broken: "it is empty" }]);
    expect(history.findings).toHaveLength(1);
    expect(history.findings[0]?.statement).toContain("none is left");
  });

  test("reads the order from the clocks and not from the command line", () => {
    const { history } = told(past(TIRED), [past("2026-03-14-b"), past(BISQUE)]);
    expect(history.used.map(({ name }) => name)).toEqual([BISQUE, "2026-03-14-b"]);
  });

  test("takes a log of an unnamed kiln on your word, and says so", () => {
    const bisque = past(BISQUE);
    const unnamed = { ...bisque, firing: bisque.firing && { ...bisque.firing, kiln: null } };
    const { history, findings } = told(past(TIRED), [unnamed]);
    expect(history.used).toHaveLength(1);
    expect(findings.get("kiln not named")).toContain("2026-02-07-a");
  });

  test("says drift as this offset minus the median of the earlier ones, with its interval", () => {
    const earlier = [
      past(BISQUE, { offset: offset(1) }),
      past("2026-02-21-b", { offset: offset(3, 2) }),
      past("2026-03-14-b", { offset: offset(8) }),
    ];
    const { history, findings } = told(past(TIRED, { offset: offset(10) }), earlier);
    // Median of 1, 3, 8 is 3. Lower ends 0, 1, 7 and upper ends 2, 5, 9 have the medians 1 and 5:
    // so the drift lies between 9 − 5 and 11 − 1.
    expect(history.drift).toMatchObject({ nowK: 10, driftK: 7, lowK: 4, highK: 10 });
    expect(findings.get("thermocouple")).toContain("it reads 7 °C lower than it did");
    expect(findings.get("thermocouple")).toContain("allow 4 °C to 10 °C");
  });

  test("calls a drift within what the cones allow too close to tell", () => {
    const { findings } = told(past(TIRED, { offset: offset(4, 3) }), [
      past(BISQUE, { offset: offset(1, 3) }),
    ]);
    expect(findings.get("thermocouple")).toContain("too close to tell");
    expect(findings.get("thermocouple")).toContain("−3 °C to 9 °C");
  });

  test("holds no thermocouple against one of another type, nor bounds on one side", () => {
    const other = told(past(TIRED, { offset: offset(4), thermocouple: "K" }), [
      past(BISQUE, { offset: offset(-9), thermocouple: "S" }),
    ]);
    expect(other.history.drift).toBeNull();
    expect(other.findings.get("thermocouple")).toContain("another type of thermocouple");
    const bounded = told(past(TIRED, { offset: { ...offset(4), highK: null } }), [
      past(BISQUE, { offset: offset(-9) }),
    ]);
    expect(bounded.history.drift).toBeNull();
  });
});
