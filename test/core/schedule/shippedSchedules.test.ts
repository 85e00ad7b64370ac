import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { topEndSeconds } from "../../../src/core/schedule/coneAim.ts";
import { draftSchedule } from "../../../src/core/schedule/draftSchedule.ts";
import { parseSchedule } from "../../../src/core/schedule/scheduleFile.ts";
import { solvePeak } from "../../../src/core/schedule/solveSchedule.ts";
import { valued } from "../../support/schedules.ts";
import { derivedFiles } from "../../support/shipped/derivedSchedules.ts";

const FOLDER = new URL("../../../schedules/", import.meta.url);
const FILES = readdirSync(FOLDER).filter((name) => name.endsWith(".yaml"));

const read = (name: string) => readFileSync(new URL(name, FOLDER), "utf8");
const draftOf = (name: string) =>
  draftSchedule({ schedule: valued(parseSchedule(read(name), name)), start: null });

describe("schedules we ship", () => {
  it("are at least eight, and one is in Fahrenheit", () => {
    const units = FILES.map((name) => valued(parseSchedule(read(name), name)).unit);
    expect(FILES.length).toBeGreaterThanOrEqual(8);
    expect(units).toContain("F");
  });

  it("are what follows from cone model, ware and published ranges: npm run schedules", () => {
    const derived = derivedFiles();
    expect(derived.map(({ name }) => name).toSorted()).toEqual(FILES.toSorted());
    for (const { name, text } of derived) expect(text, name).toBe(read(name));
  });

  it("have names and titles that describe, with no word of speed beside bisque or glaze", () => {
    const speed = "(?:slow|slowly|medium|fast|quick|quickly|rapid)(?: speed)?";
    const joined = new RegExp(`${speed}[- ](?:bisque|glaze)|(?:bisque|glaze),?[- ]${speed}`, "i");
    for (const name of FILES)
      for (const words of [name, draftOf(name).schedule.title, draftOf(name).schedule.basis])
        expect(words).not.toMatch(joined);
    for (const words of ["slow-bisque-cone-06", "Cone 5 glaze, medium speed", "fast glaze"])
      expect(words).toMatch(joined);
  });

  it.each(FILES)("%s says why it holds below its peak, and needs every segment", (name) => {
    const { segments, ware } = draftOf(name).schedule;
    const peakC = Math.max(...segments.map(({ toC }) => toC));
    for (const { toC, holdSeconds, why } of segments)
      if (toC < peakC && holdSeconds > 0) expect(why, `${name} ${toC}`).toBeTruthy();
    for (const [i, segment] of segments.entries()) {
      const before = segments[i - 1];
      if (before?.holdSeconds === 0) expect(segment.rateCPerHour).not.toBe(before.rateCPerHour);
    }
    expect(ware.state).not.toBeNull();
  });

  it.each(FILES)("%s reaches its cone and not the next", (name) => {
    const draft = draftOf(name);
    expect(draft.heatwork.position.cone).toBe(draft.schedule.cone);
  });

  it.each(FILES)("%s lets its cone fall by the end of the top hold, not long before", (name) => {
    const { schedule, heatwork, expansion } = draftOf(name);
    const top = topEndSeconds(schedule, expansion) as number;
    const down = heatwork.cones.find(({ cone }) => cone === schedule.cone)?.downAtSeconds as number;
    expect(down).toBeLessThanOrEqual(top);
    expect(down).toBeGreaterThan(top - 10 * 60);
  });

  it.each(FILES)("%s has nothing worse than a caution, and says its basis", (name) => {
    const draft = draftOf(name);
    expect(draft.findings.filter((finding) => finding.severity === "warning")).toEqual([]);
    expect(draft.schedule.basis).toBeTruthy();
  });

  it.each(FILES)("%s has the peak that its cone asks for, within 3 °C", (name) => {
    const { schedule } = draftOf(name);
    const solved = valued(solvePeak({ schedule, cone: schedule.cone as string }));
    const peakOf = (each: typeof schedule) => Math.max(...each.segments.map(({ toC }) => toC));
    expect(Math.abs(peakOf(schedule) - peakOf(solved))).toBeLessThan(3);
  });

  it.each(FILES)("%s has its row in the README", (name) => {
    expect(read("README.md")).toContain(`| [${name}](${name}) |`);
  });

  it("cool slowly through both inversions where they say so", () => {
    const { crossings, heatwork } = draftOf("cone-5-slow-cool.yaml");
    const fastest = (band: string) =>
      Math.abs(
        crossings.find((each) => each.band === band && each.direction === "cooling")
          ?.fastestCPerHour as number,
      );
    expect(fastest("quartz inversion")).toBeLessThanOrEqual(50);
    expect(fastest("cristobalite inversion")).toBeLessThanOrEqual(40);
    expect(heatwork.cones.find((state) => state.cone === "5")?.downAtSeconds).not.toBeNull();
    expect(heatwork.cones.find((state) => state.cone === "6")?.downAtSeconds).toBeNull();
  });
});
