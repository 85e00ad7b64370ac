import { describe, expect, it } from "vitest";
import { statementText } from "../../../src/core/findings/Finding.ts";
import { problemText } from "../../../src/core/problem.ts";
import { parseRecord } from "../../../src/core/record/parseRecord.ts";
import { reviewDocument } from "../../../src/core/reports/documents/reviewDocument.ts";
import type { FiringReview } from "../../../src/core/review/FiringReview.ts";
import { reviewFiring } from "../../../src/core/review/reviewFiring.ts";
import { firing, readingOf } from "../../support/firings.ts";

const READING = readingOf({ kiln: firing({}) });
const known = new Map<string, FiringReview>();

function review(lines: string): FiringReview {
  const review = known.get(lines) ?? reviewed(lines);
  known.set(lines, review);
  return review;
}

function reviewed(lines: string): FiringReview {
  const parsed = parseRecord(`formatVersion: 1\ntitle: Tiles\n${lines}`, "firing.yaml");
  if (!parsed.ok) throw new RangeError(parsed.problems.map(problemText).join("\n"));
  const result = reviewFiring({ reading: READING, record: parsed.value, plan: null });
  if (!result.ok) throw new RangeError(result.problems.map(problemText).join("\n"));
  return result.value;
}

const WARE = `ware:
  - { name: cups, clay: own, body: porcelain cone 10, wall: 4, base: 5, state: glazed on bisque }
  - { name: jars, clay: own, body: stoneware cone 6, wall: 14, base: 20, state: bone dry }
  - { name: tests, clay: own }
`;
const OPENED = "unloaded: { temperature: 180 C }\n";

describe("the stress in what was fired", () => {
  it("is told of each piece, named body or not, the one that bears the least first", () => {
    expect(review(WARE).strains.map(({ name, heating }) => [name, heating])).toEqual([
      ["jars", "raw"],
      ["tests", "state not known"],
      ["cups", "computed"],
    ]);
    const [tests] = review("ware: [{ name: tests, clay: own }]\n").strains;
    expect(tests?.ware.body.name).toBe("stoneware cone 6");
  });

  it("agrees with the crossings of the zone it was computed for", () => {
    const { zones, strains } = review(WARE);
    const quartz = zones[0]?.crossings.find(
      ({ band, direction }) => band === "quartz inversion" && direction === "cooling",
    );
    const jars = strains[0]?.passages.find(
      ({ band, direction }) => band === "quartz inversion" && direction === "cooling",
    );
    expect(quartz?.strainRatio).toBe(jars?.computed?.ratio);
    expect(quartz?.strainRatioLow).toBe(jars?.computed?.low);
    expect(quartz?.strainRatioHigh).toBe(jars?.computed?.high);
  });

  it("gives the way up of a crossing only where a piece had been fired before", () => {
    const up = (lines: string) =>
      review(lines).zones[0]?.crossings.find(({ direction }) => direction === "heating");
    expect(up(WARE)?.strainRatio).toBeGreaterThan(0);
    expect(up(WARE)?.limitCPerHour).toBeNull();
    expect(up(WARE.replace("glazed on bisque", "damp"))).toMatchObject({
      strainRatio: null,
      strainRatioLow: null,
      strainRatioHigh: null,
    });
  });

  it("tells both ways of opening where the record says how hot it was, and else neither", () => {
    const openings = (lines: string) => review(lines).strains.map((each) => each.openings.length);
    expect(openings(WARE + OPENED)).toEqual([2, 2, 2]);
    expect(openings(WARE)).toEqual([0, 0, 0]);
    const { findings } = review(WARE + OPENED);
    const said = findings.find(({ topic }) => topic === "opening");
    // 180 °C: all cristobalite has changed, so that practice judges and no stress is told.
    expect(said && statementText(said, "C")).toBe("The kiln was opened at 180 °C.");
  });

  it("stands in the document, and is null there where it was not computed", () => {
    const { strains } = reviewDocument(review(WARE + OPENED));
    expect(strains.map(({ piece }) => piece)).toEqual(["jars", "tests", "cups"]);
    expect(strains[0]?.passages[0]).toMatchObject({
      direction: "heating",
      ratio: null,
      low: null,
      high: null,
      risk: null,
      atSeconds: null,
    });
    expect(strains[2]?.passages[0]?.ratio).toBeGreaterThan(0);
    expect(strains[0]?.openings.map(({ way }) => way)).toEqual(["lid opened", "lifted out"]);
  });
});
