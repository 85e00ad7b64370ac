import { describe, expect, it } from "vitest";
import { answer, undunted } from "../support/undunted.ts";

/** Lines of a screen, and where many segments or firings have to be listed. */
const LINES = 30;
const LONGER = 40;

const SCREENS: readonly { readonly args: readonly string[]; readonly lines?: number }[] = [
  ...["2026-02-21-b", "2026-04-11-a", "2026-05-23-b", "2026-06-06-a"].map((stem) => ({
    args: ["review", `logs/${stem}.csv`],
  })),
  { args: ["review", "logs/2026-03-28-a.csv", "--heard", "pinging +14:30"] },
  { args: ["draft", "schedules/cone-5-crackle-tiles.yaml", "--start", "2026-12-01 18:00"] },
  { args: ["draft", "schedules/cone-5-glaze.yaml", "--repair"] },
  { args: ["draft", "schedules/cone-5-glaze.yaml", "--solve", "peak", "--cone", "6"] },
  { args: ["draft", "--new", "--cone", "5", "--body", "porcelain", "--wall", "4mm"] },
  { args: ["draft", "schedules/cone-5-glaze.yaml", "--kiln", "logs/2026-02-21-b.csv"] },
  {
    args: [
      "compare",
      ...["2026-02-21-b", "2026-03-14-b", "2026-04-11-a"].map((stem) => `logs/${stem}.csv`),
    ],
  },
  {
    args: [
      "compare",
      ...["2026-02-07-a", "2026-03-28-a", "2026-05-09-a", "2026-06-06-a"].map(
        (stem) => `logs/${stem}.csv`,
      ),
    ],
    lines: LONGER,
  },
  { args: ["kiln", "logs/2026-02-21-b.csv", "logs/2026-03-14-b.csv"] },
  { args: ["glaze", "logs/glaze-crackle.yaml"] },
  { args: ["glaze", "logs/glaze-crackle.yaml", "logs/glaze-pond-ice.yaml"] },
  { args: ["pings", "logs/pinging-shelf.wav"] },
  { args: ["measure", "logs/inked-tile.png", "--width", "100mm"] },
  { args: ["cones", "5"] },
];

describe("one screen", () => {
  it.each(SCREENS)("is what $args prints, in 80 columns", ({ args, lines = LINES }) => {
    const ran = answer([...args, "-q"]);
    expect([0, 1]).toContain(ran.exit);
    const printed = ran.out.trimEnd().split("\n");
    expect(printed.length).toBeGreaterThan(5);
    expect(printed.length).toBeLessThanOrEqual(lines);
    for (const line of printed) expect([...line].length, line).toBeLessThanOrEqual(80);
    if (args[0] !== "cones") expect(ran.out).toMatch(/^More by --more NAME: /m);
  });

  it("says what was cracked by the cooling, and what to do, before any table", () => {
    const { out } = answer(["review", "logs/2026-05-23-b.csv", "-q"]);
    const places = ["Cone 5", "the cooling, not the glaze", "Next time", "How fast it cooled"].map(
      (words) => out.indexOf(words),
    );
    expect(places).not.toContain(-1);
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    expect(out).toContain("Crackled ware is not for food or drink.");
  });
});

describe("--more", () => {
  const log = "logs/2026-05-23-b.csv";

  it("prints the part that it names, and nothing else", () => {
    const { out } = undunted(["review", log, "--more", "cooling", "-q"]);
    expect(out).toContain("Through the inversions");
    expect(out).not.toMatch(/Next time|Findings|--more/);
  });

  it("takes several, by commas or again", () => {
    const commas = undunted(["review", log, "--more", "cooling,cones", "-q"]).out;
    expect(undunted(["review", log, "--more", "cones", "--more", "cooling", "-q"]).out).toBe(
      commas,
    );
  });

  it("holds nothing back with all", () => {
    const { out } = answer(["review", log, "--more", "all", "-q"]);
    const [, named = ""] = /--more NAME: ([\s\S]*)$/.exec(answer(["review", log, "-q"]).out) ?? [];
    const rooms = named.split(/[\s,]+/).filter((name) => name !== "" && name !== "all");
    expect(rooms.length).toBeGreaterThan(8);
    for (const room of [rooms[0]!, rooms[5]!, rooms.at(-1)!])
      expect(out).toContain(
        undunted(["review", log, "--more", room, "-q"]).out.split("\n").slice(1).join("\n").trim(),
      );
  });

  it("refuses a part that is not there, with those that are", () => {
    const ran = undunted(["review", log, "--more", "colling"]);
    expect(ran.exit).toBe(2);
    expect(ran.err).toContain("answer/room");
    expect(ran.err).toContain("write cooling");
  });
});
