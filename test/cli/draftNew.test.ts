import { readFileSync } from "node:fs";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { emptyFolder, fileWith, inFull } from "../support/undunted.ts";

const HASTY = `formatVersion: 1
title: Hasty
unit: C
cone: "5"
ware: { thickest: 16, widest: 380, state: damp }
segments:
  - { to: 1080, rate: 250 }
  - { to: 1150, rate: 180, hold: 90 min }
  - { to: 100, rate: free }
`;

const NEW = "draft --new --cone 5 --body stoneware --wall 6 --base 12 --width 150mm".split(" ");

describe("undunted draft --new", () => {
  it("drafts a new schedule with reasons, and says how to keep it", () => {
    const ran = inFull([...NEW, "--cooling", "slow"]);
    expect(ran.exit).toBe(0);
    expect(ran.out).toContain("Segment 1: water of the glaze leaves.");
    expect(ran.out).toContain("slow as asked: ");
    expect(ran.err).toContain("not written; -o FILE writes it");
    for (const line of ran.out.split("\n")) expect([...line].length).toBeLessThanOrEqual(80);
  });

  it("writes a file that drafts with no warning and reaches the cone", () => {
    const path = join(emptyFolder(), "x.yaml");
    const ran = inFull([...NEW, "--cooling", "hold 900C 1h", "--unit", "F", "-o", path]);
    expect(ran.err).toContain("wrote ");
    expect(readFileSync(path, "utf8")).toContain("unit: F");
    const again = inFull(["draft", path, "--body", "stoneware", "--json"]);
    expect(again.exit).toBe(0);
    expect(JSON.parse(again.out).heatwork.cone).toBe("5");
  });

  it("prints the schedule alone with -o -", () => {
    const ran = inFull([...NEW, "-o", "-"]);
    expect(ran.out.startsWith("formatVersion: 1\n")).toBe(true);
    expect(inFull(["draft", "-", "-q"], { input: ran.out }).exit).toBe(0);
  });

  it("learns the kiln and its thermocouple from logs, and says both", () => {
    const { out, exit } = inFull([...NEW, "--kiln", "logs/2026-03-14-b.csv"]);
    expect(exit).toBe(0);
    const flat = out.replaceAll(/\s+/g, " ");
    expect(flat).toContain("your kiln as learned from 2026-03-14-b.csv");
    expect(flat).toMatch(
      /thermocouple reads (?:right|\d+ °[CF] too (?:low|high)) by the witness cones of one past firing, give or take \d+ °/,
    );
  });

  it.each([
    [["--cone", "5", "--cooling", "slow", "--within", "6h"], "schedule/too-little-time"],
    [["--cone", "5", "--wall", "120"], "ware/thickness"],
    [["--cone", "5", "--body", "granite"], "ware/unknown-body"],
    [["--cone", "5", "--cooling", "fast"], "command/cooling"],
    [[], "command/no-cone"],
    [["--cone", "5", "--repair"], "command/contradiction"],
  ])("refuses %j with a way out: %s", (args, code) => {
    const ran = inFull(["draft", "--new", ...args]);
    expect(ran).toMatchObject({ exit: 2, out: "" });
    expect(ran.err).toContain(`(${code})`);
  });
});

describe("undunted draft --repair and --solve", () => {
  it("shows what changes, why, what it costs and what cannot be mended", () => {
    const { out, exit } = inFull(["draft", fileWith("hasty.yaml", HASTY), "--repair"]);
    expect(exit).toBe(0);
    for (const words of ["− goes, + comes", "kWh more", "dries below boiling"])
      expect(out.replaceAll(/\s+/g, " ")).toContain(words);
  });

  it("writes a mended file in which nothing is left to mend", () => {
    const path = join(emptyFolder(), "mended.yaml");
    inFull(["draft", fileWith("hasty.yaml", HASTY), "--repair", "-o", path]);
    const again = inFull(["draft", path, "--repair", "--json"]);
    const document = JSON.parse(again.out);
    expect(document.mending).toMatchObject({ steps: [], costSeconds: 0 });
    const schema = JSON.parse(inFull(["schema", "draft"]).out);
    expect(new Ajv2020({ strict: false }).compile(schema)(document)).toBe(true);
  });

  it("solves an existing schedule for a cone", () => {
    const path = "schedules/cone-6-drop-and-hold.yaml";
    const ran = inFull(["draft", path, "--solve", "hold"]);
    expect(ran.out).toContain("What was changed");
    expect(ran.out).toMatch(/cone 6: falls .* (?:before the top hold|as the top hold)/);
  });

  it.each([
    [["draft"], "command/no-schedule"],
    [["draft", "schedules/cone-5-glaze.yaml", "-o", "x.yaml"], "command/nothing-to-write"],
    [["draft", "schedules/cone-5-glaze.yaml", "--new", "--cone", "5"], "command/contradiction"],
  ])("refuses %j: %s", (args, code) => {
    const ran = inFull(args);
    expect(ran.exit).toBe(2);
    expect(ran.err).toContain(`(${code})`);
  });
});
