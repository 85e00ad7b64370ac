import { describe, expect, it } from "vitest";
import { draftCharts } from "../../../src/core/charts/chartsOf.ts";
import { draftDocument } from "../../../src/core/reports/documents/draftDocument.ts";
import { draftSchedule } from "../../../src/core/schedule/draftSchedule.ts";
import { parseSchedule } from "../../../src/core/schedule/scheduleFile.ts";

function draft(ware: string, findingsOnly = false) {
  const parsed = parseSchedule(
    `formatVersion: 1\ntitle: t\nunit: C\nware: { ${ware} }\nsegments:\n  - { to: 900, rate: 150 }\n  - { to: 100, rate: -90 }\n`,
    "s.yaml",
  );
  if (!parsed.ok) throw new RangeError(parsed.problems.map(({ what }) => what).join());
  return draftSchedule({ schedule: parsed.value, start: null, findingsOnly });
}

const BODY = "body: stoneware cone 6, wall: 8, base: 10";
const KNOWN = draft(`${BODY}, state: bisqued`);

describe("the stress that a schedule puts into its ware", () => {
  it("is told on the way up and down, and for opening at 200, 150 and 100 °C, hotter never better", () => {
    const [piece] = KNOWN.strains;
    expect(piece?.heating).toBe("computed");
    expect(piece?.passages.map(({ computed }) => computed === null)).toEqual(Array(4).fill(false));
    const opened = piece?.openings.filter(({ way }) => way === "lid opened") ?? [];
    expect(opened.map(({ tempC }) => tempC)).toEqual([200, 150, 100]);
    for (const way of ["lid opened", "lifted out"]) {
      const ratios = piece?.openings.filter((each) => each.way === way).map(({ ratio }) => ratio);
      expect(ratios).toEqual(ratios?.toSorted((a, b) => b - a));
    }
    expect(draftDocument(KNOWN).strains[0]?.openings).toHaveLength(6);
  });

  it("is drawn beside the computed guide, with a body of its own and without", () => {
    const style = { unit: "C" } as const;
    const charts = draftCharts(KNOWN);
    expect(charts.strain?.(style).description).toContain("the ware");
    expect(JSON.stringify(charts.cooling(style))).toContain("half the strength of the ware");
    const unknown = draft("thickest: 8");
    expect(unknown.strains[0]?.ware.body.name).toBe("stoneware cone 6");
    expect(draftCharts(unknown).strain).not.toBeNull();
    expect(JSON.stringify(draftCharts(unknown).cooling(style))).toContain("half the strength");
  });

  it("changes no finding, so a repair that asks many times may leave it out", () => {
    const quick = draft(`${BODY}, state: bisqued`, true);
    expect(quick.strains).toEqual([]);
    expect(quick.findings).toEqual(KNOWN.findings);
  });
});
