import { describe, expect, it } from "vitest";
import { parseRecord } from "../../../src/core/record/parseRecord.ts";
import { recordLines } from "../../../src/core/record/recordLines.ts";

const BASE = "piece: A1, clay: buff, glaze: pond ice, glazedSides: one";

function read(trial: string, more = "") {
  return parseRecord(
    `formatVersion: 1\ntitle: x\n${more}trials:\n  - { ${BASE}, ${trial} }\n`,
    "a.yaml",
  );
}

function trialOf(trial: string, more = "") {
  const record = read(trial, more);
  if (!record.ok) throw new Error(record.problems.map(({ what }) => what).join());
  const [first] = record.value.trials;
  if (first === undefined) throw new Error("no trial");
  return { ...first, line: recordLines(record.value).find(({ label }) => label === "trial A1") };
}

const codesOf = (trial: string) => {
  const record = read(trial);
  return record.ok ? [] : record.problems.map(({ code }) => code);
};

/** Five lines of 100 mm. */
const FIVE = "lines: [18, 22, 19, 25, 20]".replace(
  /\d+/g,
  (count) => `{ length: 100 mm, crossings: ${count} }`,
);

describe("the coat of a trial", () => {
  it("is what was measured on the fired glaze, known to 15 % unless noted", () => {
    expect(trialOf("coat: 0.8 mm").coat).toMatchObject({
      firedMm: 0.8,
      how: "fired",
      sigmaIs: "assumed",
    });
    expect(trialOf("coat: 0.8 mm").coat.sigmaMm).toBeCloseTo(0.12, 9);
    expect(trialOf("coat: 0.8 mm, coatError: 0.1 mm").coat.sigmaMm).toBeCloseTo(0.1, 9);
    expect(trialOf("coat: 0.8 mm, coatError: 5 %").coat.sigmaMm).toBeCloseTo(0.04, 9);
  });

  it("is the mean of several readings with the standard error of that", () => {
    // 0.6, 0.8, 1.0: scatter 0.2, over the root of 3.
    const { coat } = trialOf("coat: [0.6 mm, 0.8 mm, 1 mm]");
    expect(coat.firedMm).toBeCloseTo(0.8, 9);
    expect(coat.sigmaMm).toBeCloseTo(0.2 / Math.sqrt(3), 9);
    expect(coat.sigmaIs).toBe("readings");
  });

  it("comes from the dry mass: 10 g on 100 cm², 10 % lost, 2.45 g/cm³ are 0.367 mm", () => {
    const { coat, line } = trialOf("dryMass: 10 g/100 cm2, loss: 10");
    expect(coat.firedMm).toBeCloseTo(0.367, 3);
    expect(coat).toMatchObject({ how: "mass", taken: ["fired glaze of 2.45 g/cm³"] });
    expect(line?.text).toContain("worked out from the dry mass, taking fired glaze of 2.45 g/cm³");
  });

  it("comes from the dry coat, 1.8 times the fired one unless it was measured", () => {
    expect(trialOf("rawCoat: 1.8 mm").coat.firedMm).toBeCloseTo(1, 9);
    expect(trialOf("rawCoat: 1.8 mm").coat.sharedSigma).toBeGreaterThan(0.05);
    expect(trialOf("rawCoat: 1.8 mm, rawOverFired: 1.5").coat).toMatchObject({
      sharedSigma: 0,
      taken: [],
    });
  });

  it("comes from the wet coat by the density of its slip", () => {
    // 1 mm of 1.5 g/cm³: 0.5 × 2.6/1.6 = 0.8125 g/cm³ dry, 0.08125 g/cm²; × 0.9/2.45.
    const { coat } = trialOf('wetCoat: 1 mm, slip: "1.5", loss: 10');
    expect(coat.firedMm).toBeCloseTo((10 * 0.08125 * 0.9) / 2.45, 6);
    expect(coat.how).toBe("wet");
  });

  it("is asked for where it is missing or cannot be worked out", () => {
    expect(codesOf("cracked: none")).toEqual(["record/no-coat"]);
    expect(codesOf("dryMass: 10 g/100 cm2")).toEqual(["record/no-loss"]);
    expect(codesOf("wetCoat: 1 mm, loss: 10")).toContain("record/no-slip");
    for (const coat of ["0", "0 mm", "-1 mm", "0.8 furlongs", "25 mm"])
      expect(codesOf(`coat: ${coat}`), coat).toEqual(["record/not-a-coat"]);
    expect(codesOf("coat: 0.8 mm, coatError: 150 %")).toEqual(["record/coat-error"]);
    // 0.1 may be millimetres or a tenth of the coat.
    expect(codesOf("coat: 0.8 mm, coatError: 0.1")).toEqual(["record/coat-error"]);
    expect(codesOf("dryMass: 10 g/100 cm2, loss: 10, coatError: 0.1 mm")).toEqual([
      "record/coat-error",
    ]);
  });
});

describe("a coat without a unit", () => {
  it.each([
    "coat: 0.8",
    'coat: "0.8"',
    'coat: "1/32"',
    "coat: [0.8 mm, 0.7]",
    "rawCoat: 1.4",
    'wetCoat: 1, slip: "1.5", loss: 10',
  ])("is asked back and never taken for millimetres: %s", (coat) => {
    expect(codesOf(coat)).toEqual(["record/coat-without-unit"]);
  });
});

describe("the crack spacing of a trial", () => {
  it("comes from counts along lines: 104 on 500 mm", () => {
    // 500/104 = 4.8077 along a line; × 4/π = 6.121 from crack to crack of a net.
    const { spacing, crackSpacingMm, line } = trialOf(`coat: 1 mm, ${FIVE}, cracked: crackle`);
    expect(spacing).toMatchObject({ kind: "measured", lines: 5, crossings: 104, from: "lines" });
    expect(crackSpacingMm).toBeCloseTo(6.121, 3);
    expect(line?.text).toContain("cracks 6.12 mm apart (");
    expect(line?.text).toContain("104 on 500 mm of 5 lines, 4.81 mm from crack to crack");
  });

  it("keeps two directions apart and gives their ratio", () => {
    const ways =
      "lines: [{ length: 100, crossings: 10, direction: along }, { length: 100, crossings: 12, direction: along }, { length: 100, crossings: 22, direction: across }, { length: 100, crossings: 20, direction: across }]";
    const { spacing, line } = trialOf(`coat: 1 mm, ${ways}`);
    if (spacing.kind !== "measured") throw new Error(spacing.kind);
    // 200/22 along over 200/42 across.
    expect(spacing.alongOverAcross).toBeCloseTo(42 / 22, 9);
    expect(line?.text).toContain("9.09 mm along, 4.76 mm across, ratio 1.91");
  });

  it("of parallel cracks is right at any slant when both directions were counted", () => {
    // Cracks 5 mm apart at 3-4-5: 12 and 16 on 100 mm; 1/sqrt(0.12² + 0.16²) = 5.
    const ways =
      "pattern: parallel, lines: [{ length: 100, crossings: 12, direction: along }, { length: 100, crossings: 16, direction: across }]";
    expect(trialOf(`coat: 1 mm, ${ways}`).crackSpacingMm).toBeCloseTo(5, 9);
  });

  it("has the interval of a count when one line was counted", () => {
    const { spacing } = trialOf("coat: 1 mm, lines: [{ length: 100, crossings: 16 }]");
    if (spacing.kind !== "measured") throw new Error(spacing.kind);
    expect((spacing.highMm as number) / spacing.pitchMm).toBeCloseTo(Math.exp(1.96 / 4), 9);
  });

  it("has the interval of a count when one line was counted each way", () => {
    const way = (direction: string) => `{ length: 100, crossings: 16, direction: ${direction} }`;
    const { spacing } = trialOf(`coat: 1 mm, lines: [${way("along")}, ${way("across")}]`);
    if (spacing.kind !== "measured") throw new Error(spacing.kind);
    // 32 cracks in all: one part in √32.
    expect((spacing.highMm as number) / spacing.pitchMm).toBeCloseTo(
      Math.exp(1.96 / Math.sqrt(32)),
      9,
    );
  });

  it("is never known without error, though lines agree by luck", () => {
    const line = "{ length: 50, crossings: 20 }";
    const { spacing } = trialOf(`coat: 1 mm, lines: [${line}, ${line}, ${line}]`);
    if (spacing.kind !== "measured") throw new Error(spacing.kind);
    // Each line's count varies by a sixth at least: √(3/6)/60, times Student's 4.303 of 2 degrees.
    const reach = 4.303 * (Math.sqrt(3 / 6) / 60);
    expect((spacing.highMm as number) / spacing.pitchMm).toBeCloseTo(Math.exp(reach), 4);
  });

  it("takes a spacing with its range, from a photo", () => {
    const { spacing, line } = trialOf(
      "coat: 1 mm, crackSpacing: 6 mm, spacingRange: [5 mm, 7.2 mm], spacingFrom: photo",
    );
    expect(spacing).toMatchObject({ pitchMm: 6, lowMm: 5, highMm: 7.2, from: "photo" });
    expect(line?.text).toContain("cracks 6 mm apart (5 to 7.2 mm, 95 in 100), from a photo");
  });

  it("of a piece without cracks is wider than its shorter side, and not known without a size", () => {
    expect(trialOf("coat: 1 mm, cracked: none, size: { length: 100, width: 60 }").spacing).toEqual({
      kind: "uncracked",
      atLeastMm: 60,
      from: "size",
    });
    expect(trialOf("coat: 1 mm, cracked: none").spacing.kind).toBe("not measured");
    expect(trialOf("coat: 1 mm, lines: [{ length: 80, crossings: 0 }]").spacing).toEqual({
      kind: "uncracked",
      atLeastMm: 80,
      from: "lines",
    });
  });

  it("may not contradict itself", () => {
    const size = "size: { length: 60 mm, width: 50 mm }";
    expect(codesOf(`coat: 1 mm, crackSpacing: 80 mm, ${size}`)).toEqual([
      "record/spacing-wider-than-piece",
    ]);
    // The diagonal of 60 by 50 mm is 78.1 mm.
    const lineOf = (mm: number) => `lines: [{ length: ${mm} mm, crossings: 9 }]`;
    expect(codesOf(`coat: 1 mm, ${lineOf(78)}, ${size}`)).toEqual([]);
    expect(codesOf(`coat: 1 mm, ${lineOf(79)}, ${size}`)).toEqual([
      "record/line-longer-than-piece",
    ]);
    expect(codesOf("coat: 1 mm, crackSpacing: 5 mm, cracked: none")).toEqual([
      "record/uncracked-with-spacing",
    ]);
    expect(codesOf(`coat: 1 mm, crackSpacing: 5 mm, ${FIVE}`)).toEqual(["record/two-spacings"]);
    expect(codesOf("coat: 1 mm, spacingRange: [1, 2]")).toEqual(["record/range-without-spacing"]);
    expect(codesOf("coat: 1 mm, crackSpacing: 5, spacingRange: [6, 8]")).toEqual([
      "record/spacing-outside-range",
    ]);
    expect(codesOf("coat: 1 mm, lines: [{ length: 0, crossings: 3 }]")).toEqual([
      "units/not-a-length",
    ]);
    expect(
      codesOf(
        "coat: 1 mm, lines: [{ length: 9, crossings: 3, direction: along }, { length: 9, crossings: 3 }]",
      ),
    ).toEqual(["record/line-without-direction"]);
  });
});

describe("a trial", () => {
  it("has the body of the ware of its clay, unless it names its own", () => {
    const ware = "ware: [{ name: tiles, clay: BUFF, body: stoneware cone 6 }]\n";
    expect(trialOf("coat: 1 mm", ware).body?.name).toContain("stoneware");
    expect(trialOf("coat: 1 mm, body: earthenware", ware).body?.name).toContain("earthenware");
    expect(trialOf("coat: 1 mm").body).toBeNull();
  });

  it("counts pings, or places them", () => {
    expect(trialOf("coat: 1 mm, pings: { count: 12 }").pings).toEqual({ count: 12, moments: [] });
    expect(trialOf('coat: 1 mm, pings: { at: ["+14:05"] }').pings).toEqual({
      count: 1,
      moments: [{ kind: "elapsed", seconds: 50_700 }],
    });
  });

  it("is shown with what was noted of it", () => {
    const { line } = trialOf(
      "coat: 1 mm, shape: flat tile, wall: 6 mm, place: top shelf, stain: ink, pings: { count: 1 }",
    );
    expect(line?.text).toBe(
      "pond ice on buff, coat 1 mm, glazed on one side, flat tile, wall 6 mm, top shelf, stained with ink, one ping heard",
    );
  });
});
