import { describe, expect, it } from "vitest";
import { cures } from "../../../src/core/advice/cures.ts";
import type { NextContext } from "../../../src/core/advice/NextFiring.ts";
import { CRACK_KINDS, type CrackKind } from "../../../src/core/diagnosis/Diagnosis.ts";
import { reviewFiring } from "../../../src/core/review/reviewFiring.ts";
import { firing, readingOf } from "../../support/firings.ts";
import { valued } from "../../support/schedules.ts";

const KINDS = Object.keys(CRACK_KINDS) as readonly CrackKind[];

/** What is done against one kind of crack, after a gentle firing of which nothing else is said. */
function cureOf(kind: CrackKind, record: unknown = null) {
  const reading = readingOf({ Kiln: firing({ peakC: 1192 }) });
  const { zones } = valued(reviewFiring({ reading, record: null, plan: null }));
  const cause = {
    kind,
    name: CRACK_KINDS[kind],
    standing: "speaks for",
    balance: 3,
    evidence: [],
    unanswered: [],
  };
  const facts = { reading, record, plan: null, zones };
  return cures({ facts, diagnosis: [cause] } as unknown as NextContext, []);
}

describe("cures", () => {
  it.each(KINDS)("has one of its own against %s", (kind) => {
    const [cure, ...more] = cureOf(kind);
    expect(more).toEqual([]);
    expect(cure?.because).toContain(CRACK_KINDS[kind]);
    const others = KINDS.filter((other) => other !== kind).map((other) => cureOf(other)[0]?.change);
    expect(others).not.toContain(cure?.change);
  });

  // Each by common practice: what makes a glaze shrink more or less, and where the clay is to blame.
  it.each<readonly [CrackKind, string, RegExp]>([
    ["one-sided glaze", "glaze", /thinner coat.*inside and outside/],
    ["shivering", "glaze", /shrink more.*round the rims/],
    ["delayed crazing", "glaze", /shrink less.*fire the clay tighter/],
    ["drying crack", "drying", /slower and more evenly/],
    ["S-crack", "drying", /Compress the base/],
    ["bisque crack", "bisque", /Tap every piece before it is glazed/],
    ["lid opened hot", "lid", /shut until it is below/],
  ])("against %s is about the %s", (kind, about, words) => {
    const [cure] = cureOf(kind);
    expect(cure?.about).toBe(about);
    expect(cure?.change).toMatch(words);
    expect(cure?.ask).toBeNull();
  });

  it("asks half the rate of a fall or a climb that cracked the ware", () => {
    const reading = readingOf({ Kiln: firing({ peakC: 1192 }) });
    const [zone] = valued(reviewFiring({ reading, record: null, plan: null })).zones;
    const fastest = zone?.crossings.find(
      ({ band, direction }) => band === "quartz inversion" && direction === "cooling",
    )?.fastestCPerHour;
    const ask = cureOf("dunting at quartz")[0]?.ask;
    expect(ask?.kind === "pace" && ask.mostCPerHour).toBe(Math.floor(Math.abs(fastest ?? 0) / 2));
    const climb = cureOf("heating crack")[0]?.ask;
    expect(climb?.kind === "pace" && climb.toC > climb.fromC).toBe(true);
  });

  it("pulls a split glaze the way that its cracks show, and wants no cure for a wanted crackle", () => {
    const tile = { trials: [{ cracked: "crackle" }], found: [] };
    expect(cureOf("one-sided glaze", tile)[0]?.change).toContain("shrinks less");
    expect(cureOf("crackle by fit", tile)).toEqual([]);
  });
});
