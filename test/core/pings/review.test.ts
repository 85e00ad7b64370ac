import { compile } from "vega-lite";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { pingsCharts } from "../../../src/core/charts/pingsCharts.ts";
import { statementText } from "../../../src/core/findings/Finding.ts";
import { seededEven, seededNormal } from "../../../src/core/math/distributions.ts";
import { omoriTimes } from "../../../src/core/pings/omoriLaw.ts";
import type { PingReview } from "../../../src/core/pings/PingReview.ts";
import { pingKinds } from "../../../src/core/pings/pingKinds.ts";
import { FiringRecordFile } from "../../../src/core/record/recordFormat.ts";
import { pingRecordLines } from "../../../src/core/reports/pingRecordLines.ts";
import { pingsHtml, pingsText } from "../../support/reportTexts.ts";

import { fallingLog, listeningTo, pingReviewOf } from "../../support/samples/pings.ts";

const HOUR = 3600;
const DAY = 24 * HOUR;
const every = (step: number, count: number, from = step) =>
  Array.from({ length: count }, (_, i) => from + i * step);

function said(review: PingReview, topic: string): string {
  const finding = review.findings.find((each) => each.topic === topic);
  return finding === undefined ? "" : statementText(finding, "C");
}

describe("what a count is said to be", () => {
  it("a lower bound, always", () => {
    expect(said(pingReviewOf(listeningTo([50, 90], 600)), "count")).toContain("lower bound");
  });

  it("no proof of quiet when there is none", () => {
    const review = pingReviewOf(listeningTo([], 600));
    expect(said(review, "count")).toContain("no proof");
    expect(pingRecordLines(review)).toEqual([]);
  });

  it("missing its beginning when pings come from the very start", () => {
    expect(said(pingReviewOf(listeningTo(every(10, 20), 600)), "beginning")).not.toBe("");
    expect(said(pingReviewOf(listeningTo(every(10, 20, 300), 600)), "beginning")).toBe("");
  });
});

describe("an exponent", () => {
  const times = (count: number, p: number) =>
    omoriTimes({ p, c: 120 }, { count, seconds: DAY, even: seededEven(21) });

  it("is not told of 50 pings, and why is", () => {
    const text = said(pingReviewOf(listeningTo(times(50, 0.75), DAY)), "thinning out");
    expect(text).toContain("no exponent is told");
    expect(text).toContain("more than 50");
  });

  it("of a steady rate speaks for a temperature that changes", () => {
    const text = said(pingReviewOf(listeningTo(every(DAY / 400, 399), DAY)), "thinning out");
    expect(text).toContain("still changes, not for moisture");
  });

  it("of pings that go with moisture allows moisture, if the ware stood at one temperature", () => {
    const text = said(pingReviewOf(listeningTo(times(300, 0.75), DAY)), "thinning out");
    expect(text).toContain("moisture growth (p 0.75");
    expect(text).toContain("if the ware stood at one temperature");
  });

  it("below 0 throughout is pinging that becomes more frequent, its end past what is tried", () => {
    const rising = every(1, 300).map((i) => DAY * Math.sqrt(i / 301));
    const text = said(pingReviewOf(listeningTo(rising, DAY)), "thinning out");
    expect(text).toContain("−0.50 or less to");
    expect(text).toContain("more often with time");
  });

  it("is read as nothing of moisture while the log falls by hundreds of degrees", () => {
    const heard = listeningTo(every(60, 300), 5.5 * HOUR);
    const text = said(pingReviewOf(heard, fallingLog(0)), "thinning out");
    expect(text).toContain("nothing of moisture or creeping cracks");
  });
});

describe("temperatures from a log that falls by 100 °C in an hour from 700 °C", () => {
  // At 3 h it is 400 °C, at 1.5 h 550 °C (quartz), at 4.5 h 250 °C (cristobalite).
  it("give the first and the third ping, and speak for a strong misfit far above 300 °C", () => {
    const review = pingReviewOf(
      listeningTo([HOUR / 2, HOUR, 1.5 * HOUR], 3 * HOUR),
      fallingLog(2.5 * HOUR),
    );
    expect(review.temperatures?.firstC).toBeCloseTo(400, 6);
    expect(review.temperatures?.thirdC).toBeCloseTo(300, 6);
    expect(said(review, "onset")).toContain("first ping of this recording came at 400 °C");
    // 0.0003065 over 250 and over 150 K.
    expect(said(review, "onset")).toContain("1.2 to 2.0 millionths per °C, a strong one");
  });

  it("send the reader to the inversion first for pings inside one", () => {
    const review = pingReviewOf(listeningTo([10, 20, 30], HOUR), fallingLog(1.5 * HOUR));
    expect(said(review, "pings through the quartz inversion")).toContain(
      "look for the inversion first",
    );
    expect(said(review, "onset")).not.toContain("misfit of glaze and clay");
    const late = pingReviewOf(listeningTo([10, 20], HOUR), fallingLog(4.5 * HOUR));
    expect(said(late, "pings through the cristobalite inversion")).toContain("2 pings");
  });

  it("tell the rate for the time that was listened", () => {
    const review = pingReviewOf(listeningTo(every(360, 10, 180), HOUR), fallingLog(2 * HOUR));
    const { steps = [] } = review.temperatures ?? {};
    expect(steps.reduce((sum, { count }) => sum + count, 0)).toBe(10);
    for (const { perHour } of steps) expect(perHour).toBeCloseTo(10, 0);
  });

  it("were listened for as long as the recording lasts, however short", () => {
    const review = pingReviewOf(listeningTo([3, 20], 36), fallingLog(2 * HOUR));
    const { steps = [] } = review.temperatures ?? {};
    expect(steps.reduce((sum, { seconds }) => sum + seconds, 0)).toBeCloseTo(36, 9);
  });

  it("tell pings at a steady temperature from those of cooling", () => {
    const steady = listeningTo(every(600, 20), 4 * HOUR);
    expect(said(pingReviewOf(steady, fallingLog(7 * HOUR)), "steady temperature")).toContain(
      "moisture",
    );
    const quiet = listeningTo([60], 4 * HOUR);
    expect(said(pingReviewOf(quiet, fallingLog(5.2 * HOUR)), "steady temperature")).toContain(
      "No ping came",
    );
  });

  it("leave out pings after unloading, count them apart and say so", () => {
    // Out of the kiln at 4.5 h of the log, 250 °C: an hour and a half into the recording.
    const review = pingReviewOf(
      listeningTo([HOUR, 2 * HOUR, 2.5 * HOUR], 3 * HOUR),
      fallingLog(3 * HOUR, { seconds: 4.5 * HOUR, tempC: 250 }),
    );
    expect(review.pings.map(({ tempC }) => tempC === null)).toEqual([false, true, true]);
    expect(review.temperatures).toMatchObject({
      thirdC: null,
      unloading: { atSeconds: 1.5 * HOUR, tempC: 250, count: 2, seconds: 1.5 * HOUR },
    });
    expect(review.temperatures?.coldestC).toBeGreaterThan(249);
    const steps = review.temperatures?.steps ?? [];
    expect(steps.reduce((sum, { seconds }) => sum + seconds, 0)).toBeCloseTo(1.5 * HOUR, -2);
    expect(said(review, "after unloading")).toContain(
      "taken out 1 h 30 min after the recording began",
    );
    expect(said(review, "after unloading")).toContain("2 of the 3 pings were heard from then on");
    expect(said(review, "log beside the recording")).toBe("");
    expect(pingRecordLines(review).join("\n")).toContain("2 of them after unloading");
    const text = pingsText(review, { unit: "C", paint: (_, words) => words });
    expect(text).toMatch(/after unloading, not as hot as the kiln +2 +1 h 30 min/);
  });

  it("know nothing of a recording that was made after unloading", () => {
    const review = pingReviewOf(
      listeningTo([HOUR / 2, HOUR], 2 * HOUR),
      fallingLog(7 * HOUR, { seconds: 6.5 * HOUR, tempC: null }),
    );
    expect(review.temperatures).toMatchObject({ firstC: null, steps: [], knownShare: 0 });
    expect(review.temperatures?.steady).toEqual({ count: 0, seconds: 0 });
    expect(said(review, "after unloading")).toContain("before the recording began");
    expect(said(review, "onset")).toBe("");
  });

  it("say that nobody noted the unloading once the kiln is cool enough for it", () => {
    const topic = (started: number) =>
      said(pingReviewOf(listeningTo([60], HOUR), fallingLog(started)), "unloading");
    expect(topic(5.5 * HOUR)).toContain("No record beside fall.csv");
    expect(topic(2 * HOUR)).toBe("");
  });

  it("let an exponent speak for nothing when the ware was taken out meanwhile", () => {
    const heard = listeningTo(every(100, 200), 6 * HOUR);
    const log = fallingLog(6.1 * HOUR, { seconds: 8 * HOUR, tempC: 100 });
    expect(said(pingReviewOf(heard, log), "thinning out")).toContain(
      "speaks for nothing by itself",
    );
  });

  it("warn when the recording runs past the log", () => {
    const review = pingReviewOf(listeningTo([60], 4 * HOUR), fallingLog(11 * HOUR));
    expect(said(review, "log beside the recording")).toContain("25 %");
  });
});

describe("two kinds of ping", () => {
  const normal = seededNormal(5);
  const tones = (apart: number) =>
    listeningTo(every(20, 120), HOUR, {
      pitchHz: (i) => 2 ** (11 + (i % 3 === 0 ? -apart / 2 : apart / 2) + 0.25 * normal()),
    }).pings;

  it("are told apart two octaves from each other, a third of them deep", () => {
    const { kinds, mixedShare } = pingKinds(tones(2));
    expect(kinds.map(({ count }) => count)).toEqual([40, 80]);
    expect(mixedShare).toBeLessThan(0.01);
  });

  it("are one where they are not apart, or too few", () => {
    expect(pingKinds(tones(0)).kinds).toHaveLength(1);
    expect(pingKinds(tones(2).slice(0, 15)).kinds).toHaveLength(1);
  });
});

describe("faults of the recording", () => {
  it.each([
    ["noise", { noisySeconds: 200 }],
    ["gaps of silence", { zeroShare: 0.5 }],
    ["sample rate", { sampleRateHz: 6000 }],
  ])("%s is said as a caution, and is not said of a good one", (topic, fault) => {
    const bad = pingReviewOf(listeningTo([60], 600, fault));
    expect(bad.findings.find((each) => each.topic === topic)?.severity).toBe("caution");
    expect(said(pingReviewOf(listeningTo([60], 600)), topic)).toBe("");
  });
});

describe("lines for the record", () => {
  it("are such as the record takes, with a second burst too", () => {
    const even = seededEven(3);
    const base = omoriTimes({ p: 0.75, c: 120 }, { count: 80, seconds: DAY, even });
    const extra = Array.from({ length: 30 }, () => 50_000 + 600 * even());
    const times = [...base, ...extra].sort((a, b) => a - b);
    const lines = pingRecordLines(pingReviewOf(listeningTo(times, DAY)));
    const { heard } = parse(lines.join("\n"));
    expect(FiringRecordFile.shape.heard.parse(heard)).toHaveLength(2);
    expect(heard[0].note).toContain("110 pings in 24 h of recording");
  });

  it("give the first ping by the clock, 21:05 plus 50 minutes", () => {
    expect(pingRecordLines(pingReviewOf(listeningTo([50 * 60], HOUR)))).toContain(
      '    at: "21:55"',
    );
  });

  it("give it since the start of the log where there is one", () => {
    const review = pingReviewOf(listeningTo([HOUR / 2], HOUR), fallingLog(2 * HOUR));
    expect(pingRecordLines(review)).toContain('    at: "+2:30"');
  });
});

describe("the report", () => {
  const review = pingReviewOf(
    listeningTo(every(60, 200), 5.5 * HOUR, { pitchHz: (i) => (i % 2 === 0 ? 900 : 5000) }),
    fallingLog(0),
  );
  const text = pingsText(review, { unit: "C", paint: (_, words) => words });

  it("keeps within 80 columns", () => {
    expect(Math.max(...text.split("\n").map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  it("says never to open a kiln to listen, and states its threshold", () => {
    const flat = text.replaceAll(/\s+/g, " ");
    expect(flat).toContain("Never open a kiln to listen");
    expect(flat).toContain("6.5 times its scatter");
  });

  it("makes a page of the same sentences", () => {
    expect(pingsHtml(review, { unit: "F" })).toContain("Never open a kiln to listen");
  });

  it.each([
    ["C", false],
    ["F", true],
  ] as const)("draws three charts that compile, °%s", (unit, dark) => {
    const charts = Object.values(pingsCharts(review, unit));
    expect(charts).toHaveLength(3);
    for (const chart of charts) {
      const spec = chart(dark);
      expect(JSON.parse(JSON.stringify(spec))).toEqual(spec);
      expect(() => compile(spec)).not.toThrow();
    }
  });
});
