import { describe, expect, test } from "vitest";
import type { NextTimePaths } from "../../../src/core/advice/NextFiring.ts";
import { shellQuoted } from "../../../src/core/advice/nextCommand.ts";
import type { Curve } from "../../../src/core/curve/Curve.ts";
import { statementText } from "../../../src/core/findings/Finding.ts";
import type { FiringRecord } from "../../../src/core/record/FiringRecord.ts";
import { parseRecord } from "../../../src/core/record/parseRecord.ts";
import { foldedCommand } from "../../../src/core/reports/reviewBlocks.ts";
import { reviewFiring } from "../../../src/core/review/reviewFiring.ts";
import type { Schedule } from "../../../src/core/schedule/Schedule.ts";
import { parseSchedule } from "../../../src/core/schedule/scheduleFile.ts";
import { corners, sampled } from "../../support/curves.ts";
import { firing, readingOf } from "../../support/firings.ts";

const PATHS: NextTimePaths = {
  log: "firing.csv",
  recordBeside: true,
  schedule: "plan.yaml",
  output: "plan-next.yaml",
};

function record(text: string): FiringRecord {
  const parsed = parseRecord(`formatVersion: 1\ntitle: A firing\n${text}`, "firing.yaml");
  if (!parsed.ok) throw new RangeError(JSON.stringify(parsed.problems));
  return parsed.value;
}

function plan(peakC: number, quartz: number | "free" = 40): Schedule {
  const parsed = parseSchedule(
    `formatVersion: 1
title: Plan
unit: C
cone: "5"
ware: { body: stoneware cone 6, wall: 12, base: 12, widest: 400, state: glazed on bisque }
segments:
  - { to: ${peakC - 110}, rate: 160 }
  - { to: ${peakC}, rate: 55 }
  - { to: 640, rate: 200 }
  - { to: 500, rate: ${quartz} }
  - { to: 100, rate: free }
`,
    "plan.yaml",
  );
  if (!parsed.ok) throw new RangeError(JSON.stringify(parsed.problems));
  return parsed.value;
}

function fired(
  curve: Curve,
  given: {
    readonly record?: FiringRecord;
    readonly plan?: Schedule;
    readonly paths?: Partial<NextTimePaths>;
  } = {},
) {
  const review = reviewFiring({
    reading: readingOf({ Kiln: curve }),
    record: given.record ?? null,
    plan: given.plan ?? null,
    next: { ...PATHS, ...(given.plan === undefined && { schedule: null }), ...given.paths },
  });
  if (!review.ok || review.value.nextTime === null) throw new RangeError("no review");
  const { nextTime } = review.value;
  const changes = nextTime.changes.map((each) => ({
    ...each,
    text: statementText(
      { topic: each.about, statement: `${each.change} ${each.because}`, evidence: each.evidence },
      "C",
    ),
  }));
  return { ...nextTime, changes, about: changes.map(({ about }) => about) };
}

// Cone 5 at 60 °C/h is printed as 1186 °C for self-supporting cones; 2 h at 55 °C/h end here.
const WITNESSES = `witnessCones:
  - { cone: "4", bent: down }
  - { cone: "5", bent: down }
  - { cone: "6", bent: upright }
`;

describe("what to change next time", () => {
  test("is nothing after a firing that went as wanted: repeat it, and lay it out again", () => {
    const next = fired(firing({ peakC: 1192 }), { record: record(WITNESSES), plan: plan(1192) });
    expect(next.changes).toEqual([]);
    expect(next.advice.join(" ")).toContain("Nothing to change in the firing");
    expect(next.command).toMatch(/^undunted draft plan\.yaml/);
    expect(next.command).not.toContain("-o");
  });

  test("is more heat for a cone that was clearly short", () => {
    const next = fired(firing({ peakC: 1120 }), { plan: plan(1120) });
    const cone = next.changes.find(({ about }) => about === "cone");
    expect(cone).toMatchObject({ standing: "firm", inSchedule: true });
    expect(cone?.text).toContain("Give more heat for cone 5");
    expect(next.command).toContain("draft plan.yaml --solve peak");
    expect(next.command).toMatch(/ -o plan-next\.yaml$/);
  });

  test("is less heat for a cone that was overshot by more than one", () => {
    const next = fired(firing({ peakC: 1270 }), { plan: plan(1270) });
    const cone = next.changes.find(({ about }) => about === "cone");
    expect(cone?.standing).toBe("firm");
    expect(cone?.text).toContain("Give less heat for cone 5");
    expect(next.command).toContain("--solve peak");
  });

  test("is too close to tell for a cone a few degrees short, and drafts nothing for it", () => {
    const next = fired(firing({ peakC: 1164 }), { plan: plan(1164) });
    const cone = next.changes.find(({ about }) => about === "cone");
    expect(cone).toMatchObject({ standing: "too close to tell", inSchedule: false });
    expect(next.command).not.toContain("-o");
  });

  test("is a slower fall where the schedule itself asked for more than the ware stands", () => {
    const next = fired(firing({ peakC: 1192, quartzCPerHour: 300 }), { plan: plan(1192, 300) });
    const cooling = next.changes.find(({ about }) => about === "cooling");
    expect(cooling).toMatchObject({ standing: "firm", inSchedule: true });
    expect(cooling?.text).toMatch(/2\.\d times the guide of 1\d\d °C\/h/);
    expect(next.command).toContain("--repair");
  });

  test("is a shut lid where the kiln fell faster than the schedule asked", () => {
    const next = fired(firing({ peakC: 1192, quartzCPerHour: 300 }), { plan: plan(1192, 40) });
    const cooling = next.changes.find(({ about }) => about === "cooling");
    expect(cooling).toMatchObject({ standing: "firm", inSchedule: false });
    expect(cooling?.text).toContain("lid and vents shut");
    expect(cooling?.text).toContain("no faster than the schedule leads to, 40 °C/h");
    expect(next.command).not.toContain("-o");
  });

  test("is never the same again where something broke and the log is without fault", () => {
    const found = `found:\n  - { piece: mug, what: through-crack, edges: sharp }\n`;
    const next = fired(firing({ peakC: 1192 }), {
      record: record(`${WITNESSES}${found}`),
      plan: plan(1192),
    });
    const told = [...next.advice, ...next.changes.map(({ text }) => text)].join(" ");
    expect(told).not.toMatch(/same way again|repeat it|nothing to change/i);
    expect(told).toMatch(/Something broke|cause of what was heard or found/);
  });

  test("names the peak of the schedule that it hands on", () => {
    const next = fired(firing({ peakC: 1120 }), { plan: plan(1120) });
    expect(next.about).toContain("cone");
    expect(next.changes.find(({ about }) => about === "cone")?.text).toMatch(
      /peak at 11\d\d °C.*where 1120 °C was planned/,
    );
  });

  test("is patience after an opening hotter than anyone advises", () => {
    const opened = (temperature: number) =>
      fired(firing({ peakC: 1192, lastC: 150 }), {
        record: record(`${WITNESSES}unloaded: { temperature: ${temperature} C }\n`),
        plan: plan(1192),
      }).changes.find(({ about }) => about === "lid");
    expect(opened(280)?.standing).toBe("firm");
    expect(opened(220)?.standing).toBe("worth trying");
    expect(opened(90)).toBeUndefined();
  });

  test("is a climb the kiln can follow where it came late and far below its plan", () => {
    const slow = sampled(
      corners([0, 20], [14, 1080], [18, 1192], [21, 640], [25, 500], [40, 100]),
      60,
    );
    const next = fired(slow, { record: record(WITNESSES), plan: plan(1192) });
    expect(next.changes.find(({ about }) => about === "climb")).toMatchObject({
      standing: "firm",
      inSchedule: true,
    });
    expect(next.command).toContain("--repair");
  });

  test("warns of changing two things at once", () => {
    const next = fired(firing({ peakC: 1120, quartzCPerHour: 300 }), { plan: plan(1120, 300) });
    expect(next.advice.join(" ")).toMatch(/the cooling and the heat at the peak together/);
  });

  test("is to reckon with a thermocouple that the witness cones show to be off", () => {
    const witnesses = `witnessCones:\n  - { cone: "7", bent: down }\n  - { cone: "8", bent: 3 o'clock }\n`;
    const next = fired(firing({ peakC: 1192 }), { record: record(witnesses) });
    const probe = next.changes.find(({ about }) => about === "thermocouple");
    expect(probe).toMatchObject({ standing: "firm" });
    expect(probe?.text).toContain("too low");
  });

  test("asks for witness cones where there were none, and for a log that runs on", () => {
    const next = fired(firing({ peakC: 1192, lastC: 400 }));
    expect(next.about).toEqual(["log", "record"]);
    expect(next.advice.join(" ")).toContain("Nothing to change in the firing");
  });

  test("is a sagging hold at the peak", () => {
    const sagging = sampled(
      corners([0, 20], [6, 1082], [8, 1192], [9.5, 1185], [12.5, 640], [16, 500], [35, 60]),
      60,
    );
    const { about } = fired(sagging, { record: record(WITNESSES) });
    expect(about).toContain("hold");
  });

  test("comes firm first, and within that what cracks ware first", () => {
    const next = fired(firing({ peakC: 1120, quartzCPerHour: 300, lastC: 300 }), {
      plan: plan(1120, 300),
    });
    expect(next.about.slice(0, 2)).toEqual(["cooling", "cone"]);
    const order = ["firm", "worth trying", "too close to tell"];
    const ranks = next.changes.map(({ standing }) => order.indexOf(standing));
    expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
  });
});

describe("the command for the next firing", () => {
  test("writes a new schedule when none is known, for the ware and the cone of the record", () => {
    const ware = `ware:\n  - { name: mugs, clay: x, body: stoneware cone 6, wall: 7 mm, base: 9 mm, widest: 120 mm }\n`;
    const { command } = fired(firing({ peakC: 1192 }), {
      record: record(`${WITNESSES}cone: "5"\n${ware}`),
    });
    expect(command).toContain(
      "undunted draft --new --cone 5 --body 'stoneware cone 6' --wall 7mm --base 9mm --width 120mm --cooling ",
    );
  });

  test("names no log that came by standard input", () => {
    const { command } = fired(firing({ peakC: 1192 }), { paths: { log: null } });
    expect(command).not.toContain("--kiln");
  });

  test("keeps paths as they were given, and a dash from looking like an option", () => {
    const { command } = fired(firing({ peakC: 1192 }), {
      plan: plan(1192),
      paths: { schedule: "-my plan.yaml" },
    });
    expect(command).toContain("undunted draft './-my plan.yaml'");
  });

  test.each([
    ["a.csv", "a.csv"],
    ["../logs/a-b_c.csv", "../logs/a-b_c.csv"],
    ["two words", "'two words'"],
    ["Hilda's", String.raw`'Hilda'\''s'`],
    ["$HOME", "'$HOME'"],
    ["", "''"],
  ])("quotes %j for a shell", (word, quoted) => {
    expect(shellQuoted(word)).toBe(quoted);
  });

  test("folds between words and never inside quotes", () => {
    const word = `'${"long name ".repeat(6)}'`;
    const lines = foldedCommand(`undunted draft ${word} --kiln ${word} -o x.yaml`);
    expect(lines.length).toBeGreaterThan(1);
    expect(lines.every((line) => (line.match(/'/g) ?? []).length % 2 === 0)).toBe(true);
    expect(lines.slice(0, -1).every((line) => line.endsWith(" \\"))).toBe(true);
  });
});

describe("what a finding warns of is never left out of what to change", () => {
  test("raw ware that steam was driven out of too fast: the next schedule goes slower there", () => {
    const curve = sampled(corners([0, 20], [1, 66], [7, 66], [9, 640], [14, 1060], [26, 60]), 60);
    const next = fired(curve, {
      record: record("ware: [{ name: slabs, clay: any, state: damp, thickest: 25 mm }]"),
    });
    const asks = next.changes.flatMap(({ ask }) => (ask?.kind === "pace" ? [ask] : []));
    expect(asks).toContainEqual(expect.objectContaining({ fromC: 60, toC: 120 }));
    expect(asks[0]?.mostCPerHour).toBeLessThan(60);
    expect(next.advice.join(" ")).not.toContain("Nothing to change");
    expect(next.command).toContain("from 60C to 120C");
  });

  test("a lid that only the log shows opened hot is asked to stay shut", () => {
    const shut = Array.from({ length: 60 }, (_, i): [number, number] => {
      const hours = 8 + i * 0.3;
      return [hours, 20 + 1160 * Math.exp(-(hours - 8) / 8)];
    }).filter(([, tempC]) => tempC > 300);
    const [hours] = shut.at(-1) as [number, number];
    const open = [0.2, 0.4, 0.6, 0.9].map((after): [number, number] => [
      hours + after,
      20 + 280 * Math.exp(-after * 1.6),
    ]);
    const curve = sampled(corners([0, 20], ...shut, ...open), 60);
    const next = fired(curve);
    const lid = next.changes.find(({ about }) => about === "lid");
    expect(lid?.because).toContain("seems to have been opened");
    expect(next.advice.join(" ")).not.toContain("Nothing to change");
  });
});
