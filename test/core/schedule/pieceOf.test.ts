import { describe, expect, it } from "vitest";
import { limitsFor, pieceOf } from "../../../src/core/schedule/coolingLimits.ts";
import { draftSchedule } from "../../../src/core/schedule/draftSchedule.ts";
import { parseSchedule, scheduleYaml } from "../../../src/core/schedule/scheduleFile.ts";
import { QUARTZ_BAND } from "../../../src/core/ware/inversions.ts";

function schedule(ware: string) {
  const parsed = parseSchedule(
    `formatVersion: 1\ntitle: t\nunit: C\nware: { ${ware} }\nsegments:\n  - { to: 1180, rate: 100 }\n  - { to: 100, rate: free }\n`,
    "s.yaml",
  );
  if (!parsed.ok) throw new RangeError(parsed.problems.map(({ what }) => what).join());
  return parsed.value;
}

describe("the ware of a schedule", () => {
  it("is read back as it was written, body, wall and base included", () => {
    const made = schedule("body: porcelain cone 10, wall: 4, base: 9, widest: 200");
    expect(parseSchedule(scheduleYaml(made), "s.yaml")).toEqual({ ok: true, value: made });
  });

  it("is an ordinary stoneware mug where nothing is said of it, and says so once", () => {
    const piece = pieceOf(schedule("crackle: true").ware);
    expect(piece.ware.geometry).toMatchObject({ wallMm: 6, baseMm: 8, footprintRadiusMm: 42.5 });
    expect(piece.ware.body.name).toBe("stoneware cone 6");
    expect(piece.assumed.filter((each) => /ordinary stoneware mug/.test(each))).toHaveLength(1);
    expect(piece.assumed.join()).toContain("wide or thick pieces bear less");
  });

  it("is filled from that mug where something is said, which is said too", () => {
    const piece = pieceOf(schedule("thickest: 8").ware);
    expect(piece.ware.body.name).toBe("stoneware cone 6");
    expect(piece.assumed.join()).toMatch(/no body is named.*thickest part.*85 mm wide/);
    const walled = pieceOf(schedule("body: porcelain cone 10, wall: 9").ware);
    expect(walled.ware.geometry).toMatchObject({ wallMm: 9, baseMm: 12 });
  });

  it("takes the thickest part for wall and base when neither is given", () => {
    const geometry = pieceOf(schedule("body: stoneware, thickest: 9").ware).ware.geometry;
    expect(geometry).toMatchObject({ wallMm: 9, baseMm: 9 });
  });

  it("gets a limit and a stress of its own body", () => {
    const limit = (body: string) =>
      limitsFor(schedule(`body: ${body}, wall: 8, base: 8`).ware)(QUARTZ_BAND)
        ?.limitCPerHour as number;
    expect(limit("earthenware")).toBeLessThan(limit("porcelain cone 10"));
    const cooling = (body: string) =>
      draftSchedule({
        schedule: schedule(`body: ${body}, wall: 8, base: 8`),
        start: null,
      }).crossings.find(
        ({ band, direction }) => band === "cristobalite inversion" && direction === "cooling",
      )?.strainRatio as number;
    expect(cooling("stoneware cone 10 cristobalitic")).toBeGreaterThan(
      cooling("stoneware cone 10"),
    );
  });

  it.each([
    ["body: plasticine", /plasticine/],
    ["body: stoneware, wall: 400", /400 mm/],
  ])("is refused for %s, with the place", (ware, says) => {
    const parsed = parseSchedule(
      `formatVersion: 1\ntitle: t\nunit: C\nware: { ${ware} }\nsegments: [{ to: 900, rate: 60 }]\n`,
      "s.yaml",
    );
    expect(parsed.ok).toBe(false);
    if (parsed.ok) return;
    expect(parsed.problems[0]?.where).toMatch(/s\.yaml: ware\./);
    expect(parsed.problems[0]?.what).toMatch(says);
  });
});
