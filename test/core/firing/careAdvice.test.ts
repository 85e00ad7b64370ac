import { describe, expect, it } from "vitest";
import { parseRecord } from "../../../src/core/record/parseRecord.ts";
import { reviewFiring } from "../../../src/core/review/reviewFiring.ts";
import { corners, sampled } from "../../support/curves.ts";
import { firing, readingOf } from "../../support/firings.ts";
import { PLAN } from "../../support/samples/plan.ts";
import { valued } from "../../support/schedules.ts";
import { samplesOf, strayReading, until } from "../../support/strayHeat.ts";
import { watchedAt, watchedReading } from "../../support/watching.ts";

/** What a person with a screwdriver might take as a call to open the kiln. */
const ELECTRIC = /\b(?:mains|relays?|elements?|wiring|terminals)\b/i;

describe("advice about mains, relays and elements", () => {
  const late = sampled(corners([0, 20], [18, 1150], [40, 60]), 60);
  const dropped = sampled(corners([0, 20], [5, 700], [6, 600], [10, 1190], [30, 60]), 60);
  const review = [late, dropped].flatMap(
    (kiln) =>
      valued(reviewFiring({ reading: readingOf({ kiln }), record: null, plan: PLAN })).findings,
  );
  const standing = strayReading(until(samplesOf(), 6), {
    changed: (sample, row) =>
      (sample.readingsC[0] as number) > 600
        ? { ...sample, readingsC: [600 + (row % 3)], output: 1 }
        : sample,
  });
  const watched = [
    ...watchedReading(standing).findings,
    ...watchedAt(late, 12, { plan: PLAN }).findings,
  ];

  it("names an electrician and the local code, in reviews and on watch", () => {
    const electric = [...review, ...watched].filter(({ advice }) => ELECTRIC.test(advice));
    expect(new Set(electric.map(({ topic }) => topic)).size).toBeGreaterThanOrEqual(4);
    for (const { advice } of electric) {
      expect(advice).toContain("licensed electrician");
      expect(advice).toContain("local code");
    }
  });

  it("does not trust a reading that stands while the elements are fully on", () => {
    const stalled = watchedReading(standing).findings.find(
      ({ topic }) => topic === "stalled climb",
    );
    expect(stalled?.advice).toContain("do not trust the reading");
  });
});

describe("the caution about food", () => {
  it.each([
    ["found:\n  - { what: crackle }", true],
    ["found:\n  - { what: crazing }", true],
    ["found:\n  - { what: chip }", false],
  ])("with %s: %s", (lines, isSaid) => {
    const record = valued(parseRecord(`formatVersion: 1\ntitle: Test\n${lines}\n`, "firing.yaml"));
    const { cautions } = valued(
      reviewFiring({ reading: readingOf({ kiln: firing({}) }), record, plan: null }),
    );
    expect(cautions.some(({ topic }) => topic === "crackle and food")).toBe(isSaid);
  });
});
