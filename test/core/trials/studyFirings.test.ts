import { describe, expect, it } from "vitest";
import { bandPassage } from "../../../src/core/curve/bandPassage.ts";
import { parseRecord } from "../../../src/core/record/parseRecord.ts";
import { comparisonDocument } from "../../../src/core/reports/documents/comparisonDocument.ts";
import { trialBlocks } from "../../../src/core/reports/trialBlocks.ts";
import { reviewFiring } from "../../../src/core/review/reviewFiring.ts";
import { draftSchedule } from "../../../src/core/schedule/draftSchedule.ts";
import { expandSchedule } from "../../../src/core/schedule/expandSchedule.ts";
import type { Schedule } from "../../../src/core/schedule/Schedule.ts";
import { parseSchedule, scheduleYaml } from "../../../src/core/schedule/scheduleFile.ts";
import type { FiringStudy } from "../../../src/core/trials/FiringStudy.ts";
import type { PlannedFiring } from "../../../src/core/trials/NextTest.ts";
import { nextSchedule } from "../../../src/core/trials/nextTestOf.ts";
import { studyFirings } from "../../../src/core/trials/studyFirings.ts";
import { QUARTZ_BAND } from "../../../src/core/ware/inversions.ts";
import { firing, readingOf } from "../../support/firings.ts";
import { schedule, segment, valued } from "../../support/schedules.ts";

/** A trial as a line of a record. */
function trial(piece: string, told: Readonly<Record<string, string>>): string {
  const fields = {
    clay: "Tarrow white",
    glaze: "pond ice",
    coat: "0.8 mm",
    glazedSides: "one",
    cracked: "crackle",
    crackSpacing: "5 mm",
    ...told,
  };
  return `  - { piece: ${piece}, ${Object.entries(fields)
    .filter(([, value]) => value !== "")
    .map(([key, value]) => `${key}: ${value}`)
    .join(", ")} }`;
}

function fired(
  name: string,
  given: {
    readonly curve?: Parameters<typeof firing>[0];
    readonly trials?: readonly string[];
    readonly plan?: Schedule | null;
    readonly opened?: string;
  },
): PlannedFiring {
  const { curve = {}, trials = [], plan = null, opened = "" } = given;
  const yaml = [
    "formatVersion: 1",
    `title: ${name}`,
    "kiln: Old Hilda",
    "thermocouple: { type: K }",
    opened,
    ...(trials.length > 0 ? ["trials:", ...trials] : []),
  ];
  const record = valued(parseRecord(yaml.join("\n"), `${name}.yaml`));
  const review = valued(
    reviewFiring({ reading: readingOf({ kiln: firing(curve) }), record, plan }),
  );
  return { review, record, plan };
}

const PLAN = schedule({
  title: "Cone 5, natural cooling",
  cone: "5",
  segments: [segment(1080, 150), segment(1190, 55), segment(100, "free")],
});

function wordsOf(study: FiringStudy): string {
  return JSON.stringify(
    trialBlocks(study, {
      unit: "C",
      charts: {},
      hasCommands: true,
      against: { base: 0, cones: [] },
    }),
  );
}

const MIXES = (["one", "both"] as const).flatMap((glazedSides) =>
  ["0.4 mm", "0.6 mm", "0.9 mm", "1.4 mm"].map((coat) => ({ glazedSides, coat })),
);

/** Both sides and four coats, each crackled as the square root of the coat says. */
function crossed(mark: string): readonly string[] {
  return [...MIXES, ...MIXES].map(({ glazedSides, coat }, at) =>
    trial(`${mark}${at}`, {
      glazedSides,
      coat,
      crackSpacing: `${(7 * Math.sqrt(Number.parseFloat(coat)) * (1 + 0.2 * Math.sin(5 * at))).toFixed(2)} mm`,
    }),
  );
}

describe("a study of firings whose tiles changed in two things at once", () => {
  const study = studyFirings([
    fired("white", {
      plan: PLAN,
      trials: [1, 2, 3].map((at) => trial(`A${at}`, { glazedSides: "one" })),
    }),
    fired("buff", {
      plan: PLAN,
      trials: [1, 2, 3].map((at) => trial(`B${at}`, { clay: "Mere buff", glazedSides: "both" })),
    }),
  ]);

  it("says which, in words", () => {
    expect(study.confounding?.together[0]?.causes).toEqual(["firing", "clay", "sides"]);
    expect(wordsOf(study)).toContain("every Tarrow white tile is glazed on one side");
  });

  it("repeats the named schedule exactly, since tiles alone can tell", () => {
    expect(study.next?.firing?.kind).toBe("repeat");
    expect(nextSchedule(study)).toEqual({ ok: true, value: PLAN });
    expect(study.next?.tiles?.wanted.map(({ cause }) => cause).sort()).toEqual(["clay", "sides"]);
  });

  it("always warns of crackle and food", () => {
    expect(study.cautions.map(({ topic }) => topic)).toEqual(["crackle and food"]);
  });
});

describe("a study of firings that differed in two things while the tiles were crossed", () => {
  const study = studyFirings([
    fired("fast", {
      plan: PLAN,
      curve: { quartzCPerHour: 90, cristobaliteCPerHour: 45 },
      trials: crossed("A"),
    }),
    fired("slow", {
      curve: { quartzCPerHour: 40, cristobaliteCPerHour: 20 },
      trials: crossed("B"),
    }),
  ]);

  it("names both parts as changed together", () => {
    expect(study.confounding?.pairs).toContainEqual(
      expect.objectContaining({
        first: "cooling through quartz",
        second: "cooling near the end",
        telling: "cannot",
      }),
    );
  });

  it("changes one thing in the next firing: the quartz rate, to that of the slow one", () => {
    const { firing: next } = study.next as NonNullable<FiringStudy["next"]>;
    expect(next).toMatchObject({ kind: "one change", follows: "fast" });
    expect(next?.reason).toContain("Only one thing changes");
    const after = next?.schedule as Schedule;
    const mean = bandPassage(expandSchedule(after).curve, QUARTZ_BAND, "cooling").meanCPerHour;
    // Rounded down to a whole degree an hour.
    expect(Math.abs(mean as number)).toBeGreaterThan(38);
    expect(Math.abs(mean as number)).toBeLessThanOrEqual(40);
    // Up to the quartz inversion nothing is touched.
    expect(after.segments.slice(0, 2)).toEqual(PLAN.segments.slice(0, 2));
  });

  it("writes a schedule that can be read and drafted again", () => {
    const written = scheduleYaml(valued(nextSchedule(study)));
    const read = valued(parseSchedule(written, "next.yaml"));
    expect(read).toMatchObject({ title: "Cone 5, natural cooling, slower through quartz" });
    expect(draftSchedule({ schedule: read, start: null }).findings.length).toBeGreaterThan(0);
  });
});

describe("a firing that cooled faster than its plan", () => {
  it("is not the one to slow, for its plan is slow already", () => {
    const slowPlan = schedule({
      ...PLAN,
      title: "Slow",
      segments: [
        ...PLAN.segments.slice(0, 2),
        segment(640, "free"),
        segment(500, -38),
        segment(100, "free"),
      ],
    });
    const study = studyFirings([
      fired("hurried", {
        plan: slowPlan,
        curve: { quartzCPerHour: 200, cristobaliteCPerHour: 90 },
        trials: crossed("A"),
      }),
      fired("slow", {
        plan: slowPlan,
        curve: { quartzCPerHour: 40, cristobaliteCPerHour: 20 },
        trials: crossed("B"),
      }),
    ]);
    expect(study.next?.firing?.change).not.toContain("through quartz");
  });
});

describe("studies with little in them", () => {
  it("compare the firings alone when no record has tiles", () => {
    const study = studyFirings([fired("a", {}), fired("b", { curve: { quartzCPerHour: 90 } })]);
    expect(study.next).toBeNull();
    expect(wordsOf(study)).toContain("No record names trial tiles");
    expect(study.cautions).toEqual([]);
    const refused = nextSchedule(study);
    expect(refused.ok ? "" : refused.problems[0]?.code).toBe("trials/no-next-firing");
  });

  it("double the coat when no tile cracked, and never divide by none", () => {
    const uncracked = {
      cracked: "none",
      crackSpacing: "",
      size: "{ length: 80 mm, width: 80 mm }",
    };
    const study = studyFirings([
      fired("a", {
        plan: PLAN,
        trials: [1, 2].map((at) => trial(`A${at}`, { ...uncracked, coat: "0.4 mm" })),
      }),
    ]);
    expect(study.next?.tiles?.tiles).toEqual([
      expect.objectContaining({ coatMm: 0.8, glazedSides: "one" }),
    ]);
    expect(wordsOf(study)).not.toMatch(/NaN|Infinity|undefined/);
  });

  it("say of one tile a group how many it takes", () => {
    const study = studyFirings([
      fired("a", {
        trials: [trial("A1", {}), trial("A2", { glazedSides: "both", crackSpacing: "7 mm" })],
      }),
    ]);
    expect(wordsOf(study)).toContain("2 tiles to compare at all");
    // No schedule is named, so one is made for the cone that was down.
    expect(study.next?.firing?.kind).toBe("new");
    expect(study.next?.firing?.schedule?.cone).toBe("5");
  });

  it("look at tiles without any spacing as tiles, and say that they tell nothing", () => {
    const study = studyFirings([
      fired("a", { trials: [trial("A1", { cracked: "crackle", crackSpacing: "" })] }),
    ]);
    expect(study.confounding).toBeNull();
    expect(wordsOf(study)).toContain("No tile says anything of spacing");
  });

  it("count no tile twice when a firing is given twice", () => {
    const once = fired("a", { trials: crossed("A") });
    const study = studyFirings([once, once]);
    expect(study.tiles.tiles).toHaveLength(16);
    expect(study.firings.map(({ record }) => record)).toEqual(["a.yaml", null]);
  });

  it("keep two firings apart whose records have one name in two folders", () => {
    const first = fired("a", { trials: [trial("A1", {})] });
    const other = fired("a", { trials: [trial("A1", {})], curve: { quartzCPerHour: 90 } });
    const later = {
      ...other,
      review: {
        ...other.review,
        reading: { ...other.review.reading, start: "2026-04-01T17:00:00" },
      },
    };
    const study = studyFirings([first, later]);
    expect(study.tiles.tiles.map(({ firing: name }) => name)).toEqual(["a.yaml", "a.yaml (2)"]);
  });

  it("make documents without a number that JSON cannot hold", () => {
    const study = studyFirings([fired("a", { trials: crossed("A") })]);
    const document = comparisonDocument(
      { firings: [], thermocoupleShifts: [], cautions: [] },
      { study },
    );
    expect(JSON.parse(JSON.stringify(document))).toEqual(document);
    expect(document.study?.tiles).toHaveLength(16);
  });
});
