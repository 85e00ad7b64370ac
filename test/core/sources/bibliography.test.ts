import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { CONE_TABLES } from "../../../src/core/cones/cone.ts";
import { basedOn, cited, SOURCES, type Source } from "../../../src/core/sources/bibliography.ts";
import { CONES_SOURCES, THERMOCOUPLES_SOURCES } from "../../../src/core/sources/cones.ts";
import { PHOTO_SOURCES, PINGS_SOURCES, TRIALS_SOURCES } from "../../../src/core/sources/crackle.ts";
import {
  FIRING_SOURCES,
  KILN_SOURCES,
  LOGS_SOURCES,
  SCHEDULES_SOURCES,
} from "../../../src/core/sources/firing.ts";
import { GLAZE_SOURCES, GLAZE_STRESS_SOURCES } from "../../../src/core/sources/glaze.ts";
import { COOLING_SOURCES } from "../../../src/core/sources/ware.ts";
import { REFERENCE_GLASSES } from "../../support/referenceGlasses.ts";

const ROOMS = [
  CONES_SOURCES,
  COOLING_SOURCES,
  FIRING_SOURCES,
  GLAZE_SOURCES,
  GLAZE_STRESS_SOURCES,
  KILN_SOURCES,
  LOGS_SOURCES,
  PHOTO_SOURCES,
  PINGS_SOURCES,
  SCHEDULES_SOURCES,
  TRIALS_SOURCES,
  THERMOCOUPLES_SOURCES,
];
const entries: readonly (readonly [string, Source])[] = Object.entries(SOURCES);

describe("the bibliography", () => {
  it("holds every room, and no id twice", () => {
    const ids = ROOMS.flatMap((room) => Object.keys(room));
    const twice = ids.filter((id, i) => ids.indexOf(id) !== i);
    expect(twice).toEqual([]);
    expect(Object.keys(SOURCES).toSorted()).toEqual(ids.toSorted());
  });

  it.each(entries)("%s says where it stands and how it was seen, in words", (_, source) => {
    for (const text of [source.title, source.publisher]) expect(text).toMatch(/\p{L}{3}/u);
    expect(source.locator).toMatch(/[\p{L}\d]{2}/u);
    if (source.year !== null) expect(source.year).toBeGreaterThan(1800);
    if (source.seen === "own computation") expect(source.author).toBeUndefined();
  });

  it("names no shop and no supplier, neither as id nor as publisher", () => {
    const named = entries.flatMap(([id, { title, publisher }]) => [id, title, publisher]);
    expect(named.filter((text) => /retail|supplier|\bshop\b|store\b/i.test(text))).toEqual([]);
  });

  it("calls nothing seen that was worked out here", () => {
    const own = entries.filter(([, { publisher, title }]) =>
      /worked out here|\bour own\b|own computation|own derivation/.test(`${publisher} ${title}`),
    );
    expect(own.length).toBeGreaterThan(2);
    for (const [, { seen }] of own) expect(["own computation", "common practice"]).toContain(seen);
  });
});

describe("a citation", () => {
  it("names the author before the publisher, and the year", () => {
    expect(cited("kihara-1990")).toBe("K. Kihara, 1990");
  });

  it("names the publisher where no author is known", () => {
    expect(cited("imo-ftp-2010")).toBe("International Maritime Organization, 2010");
  });

  it("owns up to what is quoted, remembered or only common practice", () => {
    expect(cited("fraser-1986")).toBe("H. Fraser, 1986, at second hand");
    expect(cited("bisque-carbon")).toBe("common teaching, from memory");
    expect(cited("trial-planning")).toBe("worked out here, 2026, own computation");
    expect(cited("opening-practice")).toBe("teaching notes and potters' lists, common practice");
  });

  it("stands in brackets behind the rule, several with a semicolon between", () => {
    expect(basedOn("slowly", "kihara-1990", "bisque-carbon")).toBe(
      "slowly (K. Kihara, 1990; common teaching, from memory)",
    );
  });
});

describe("what the README says it rests on", () => {
  const readme = readFileSync(new URL("../../../README.md", import.meta.url), "utf8");
  const section = (readme.split("## What it rests on")[1] ?? "").replaceAll(/\s+/g, " ");
  const citations = [...section.matchAll(/\(([^()]*\b(?:1[89]|20)\d\d\b[^()]*)\)/g)]
    .flatMap(([, inside = ""]) => inside.split("; "))
    .map((each) => each.replace(/^[^:]*: /, ""))
    .filter((each) => /\d{4}/.test(each));
  const known = new Set(Object.keys(SOURCES).map((id) => cited(id as keyof typeof SOURCES)));

  it("names many sources", () => {
    expect(citations.length).toBeGreaterThan(15);
  });

  it.each(citations)("%s stands in the bibliography, with its weakness", (citation) => {
    expect([...known]).toContain(citation);
  });

  it("counts the cells of cone charts and the glasses that are from memory", () => {
    const cells = Object.values(CONE_TABLES).flatMap(({ rows }) =>
      rows.flatMap(({ endPoints }) => endPoints.filter((cell) => cell !== null)),
    );
    const remembered = cells.filter(({ confidence }) => confidence === "from-memory");
    const glasses = REFERENCE_GLASSES.filter(({ attested }) => attested !== "seen");
    expect(section).toContain(` ${remembered.length} of ${cells.length} are from memory`);
    expect(section).toContain(
      `${REFERENCE_GLASSES.length} measured glasses, of which ${glasses.length} are in part from memory`,
    );
  });
});
