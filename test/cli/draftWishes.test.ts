import { describe, expect, it } from "vitest";
import { fileWith, inFull, type Ran } from "../support/undunted.ts";

const NEW = ["draft", "--new", "--cone", "5"];
const TIRED = "logs/2026-06-06-a.csv";
const NATURAL = "logs/2026-02-21-b.csv";
const GLAZED = "schedules/cone-5-glaze.yaml";

/** The whole of standard error; `#` stands for a number of the model, `…` for its reason. */
function expectWhole(ran: Ran, text: string): void {
  const pattern = text
    .trim()
    .replaceAll(/[.*+?^${}()|[\]\\]/g, "\\$&")
    .replaceAll("#", "\\d+")
    .replaceAll("…", "[^\\n]+");
  expect(ran.err.trim()).toMatch(new RegExp(`^${pattern}$`));
  expect(ran).toMatchObject({ exit: 2, out: "" });
}

/** The option and its words in the line of what to try, as they would be typed again. */
function wayOut(ran: Ran, option: string): readonly string[] {
  const said = new RegExp(`${option} (?:"([^"]+)"|([^\\s;,]+))`).exec(tried(ran));
  expect(said, ran.err).not.toBeNull();
  return [option, (said?.[1] ?? said?.[2]) as string];
}

function tried(ran: Ran): string {
  return /\n {2}try {7}(.*)/.exec(ran.err)?.[1] ?? "";
}

/** Not refused: a schedule comes out, whatever there is to warn of. */
function expectDrafted(args: readonly string[]): Ran {
  const ran = inFull(args);
  expect(ran.err).not.toContain("expected");
  expect(ran.out).toContain("Timeline");
  return ran;
}

/** A log of two columns, read every five minutes. */
function log(name: string, hours: number, tempC: (hour: number) => number): string {
  const rows = Array.from({ length: hours * 12 + 1 }, (_, i) => `${i * 300},${tempC(i / 12)}`);
  return fileWith(name, `time s,temp C\n${rows.join("\n")}\n`);
}

describe("a series of cones", () => {
  it.each([
    ["large", "Large cone 5"],
    ["small", "Small cone 5"],
    ["Self-supporting", "Cone 5"],
  ])("%s is drafted for, written into the file and read from it again", (series, title) => {
    const written = inFull([...NEW, "--series", series, "-o", "-"]);
    expect(written.out).toContain(`title: ${title}, up to 8 mm thick\n`);
    expect(written.out.includes("series: ")).toBe(series !== "Self-supporting");
    const again = inFull(["draft", "-", "--json"], { input: written.out });
    expect(JSON.parse(again.out).heatwork).toMatchObject({
      series: series.toLowerCase(),
      cone: "5",
    });
  });

  it("iron-free has cones of its own", () => {
    for (const series of ["self-supporting-iron-free", "large-iron-free"]) {
      const ran = inFull(["draft", "--new", "--cone", "04", "--series", series, "--json"]);
      expect(JSON.parse(ran.out).heatwork).toMatchObject({ series, cone: "04" });
    }
    expectWhole(
      inFull(["draft", "--new", "--cone", "6", "--series", "large-iron-free"]),
      `--cone: "6" is not a cone of the large-iron-free series
  expected  a cone from 010 to 3, with its leading zero: 05 is not 5
  try       write "1" or "3"     (cones/unknown-cone)`,
    );
  });

  it("that is only a table says which can be solved and where the table is", () => {
    const ran = inFull([...NEW, "--series", "pce"]);
    expectWhole(
      ran,
      `--series: no schedule can be worked out for pce cones: their end points are a table to look up, with no model of holds and rates
  expected  one of self-supporting, self-supporting-iron-free, large, large-iron-free, small
  try       --series self-supporting; to see the table, undunted cones --series pce     (command/series-without-model)`,
    );
    expectDrafted([...NEW, ...wayOut(ran, "--series")]);
    expect(inFull(["cones", "--series", "pce"]).exit).toBe(0);
  });

  it("with a typing mistake is named", () => {
    const ran = inFull([...NEW, "--series", "lareg"]);
    expectWhole(
      ran,
      `--series: "lareg" is not a series of cones
  expected  one of self-supporting, self-supporting-iron-free, large, large-iron-free, small
  try       --series large     (command/series)`,
    );
    expectDrafted([...NEW, ...wayOut(ran, "--series")]);
  });

  it("takes the place of the schedule's own, and says so", () => {
    const ran = expectDrafted(["draft", "schedules/cone-6-slow-cool.yaml", "--series", "large"]);
    const flat = ran.out.replaceAll(/\s+/g, " ");
    expect(flat).toContain(
      "The schedule is made for self-supporting cones; large cones are judged here.",
    );
    expect(flat).toContain("held to the published end points of large cones");
    const solved = inFull([
      ...["draft", "schedules/cone-6-slow-cool.yaml", "--series", "large"],
      ...["--solve", "peak", "-o", "-"],
    ]);
    expect(solved.out).toContain("\nseries: large\n");
  });

  it("without the schedule's cone is refused with the cones it has", () => {
    const args = ["draft", "schedules/cone-6-slow-cool.yaml", "--series", "large-iron-free"];
    const ran = inFull(args);
    expectWhole(
      ran,
      `--series: the cone of the schedule, 6, is not one of the large-iron-free series
  expected  a cone from 010 to 3, with its leading zero: 05 is not 5
  try       --cone 1 or 3, or leave --series out     (cones/unknown-cone)`,
    );
    expectDrafted([...args, ...wayOut(ran, "--cone")]);
  });
});

describe("ware that cannot be", () => {
  it.each([
    ["0.5", "0.5", "1"],
    ["120", "120", "100"],
    ["0", "0", "1"],
    ["0.04mm", "0.04", "1"],
    ["5in", "127", "100"],
  ])("of walls of %s is refused with the nearest that can", (wall, mm, nearest) => {
    const ran = inFull([...NEW, "--wall", wall]);
    expectWhole(
      ran,
      `--wall: the wall measures ${mm} mm
  expected  1 to 100 mm
  try       check the number, a bare one is millimetres; the nearest possible is ${nearest} mm     (ware/thickness)`,
    );
    expectDrafted([...NEW, "--wall", nearest]);
  });

  it("narrower than its own clay is refused", () => {
    const ran = inFull(["draft", GLAZED, "--wall", "50", "--width", "20mm"]);
    expectWhole(
      ran,
      `--width: a piece 20 mm wide with clay 50 mm thick
  expected  a width from its thickness, 50 mm, to 3000 mm
  try       give the widest dimension of the largest piece, like --width 150mm     (schedule/ware-width)`,
    );
    expectDrafted(["draft", GLAZED, "--wall", "50", ...wayOut(ran, "--width")]);
  });

  it.each([
    ["stonewear", "stoneware cone 6"],
    ["porcelan", "porcelain cone 6"],
    ["erthenware", "earthenware cone 04"],
  ])("of %s is refused with the word that was meant", (body, meant) => {
    const ran = inFull([...NEW, "--body", body]);
    expect(ran.exit).toBe(2);
    expect(ran.err).toContain(`--body: "${body}" is not a body of the list\n  expected  one of `);
    expect(tried(ran)).toContain(`write "${meant}"`);
    expectDrafted([...NEW, "--body", meant]);
  });

  it("damp and glazed on bisque at once is refused", () => {
    const ran = inFull(["draft", GLAZED, "--damp"]);
    expectWhole(
      ran,
      `--damp: the ware of the schedule is glazed on bisque, so its clay was fired before and cannot be damp
  expected  raw clay, as ware.state of the schedule says it: bone dry, damp, glazed raw
  try       leave --damp out; for raw ware, correct ware.state in the schedule     (command/damp-glazed)`,
    );
    expectDrafted(["draft", GLAZED]);
  });

  it("raw in the schedule goes in damp when that is said", () => {
    const ran = expectDrafted(["draft", "schedules/bisque-cone-04.yaml", "--damp"]);
    expect(ran.out).toMatch(/ware +damp/);
  });
});

describe("a kiln log that teaches too little", () => {
  const whole = (hour: number) =>
    hour < 8 ? 20 + 150 * hour : 20 + 1200 * Math.exp(-(hour - 8) / 10);
  it.each([
    [
      "too short",
      log("short.csv", 1, (hour) => 20 + 200 * hour),
      `short.csv: the log lasts 60 min
  expected  two hours or more, best from cold to cold
  try       leave this log out, or log a whole firing     (kiln/too-short)`,
    ],
    [
      "too cool",
      log("cool.csv", 5, (hour) => 20 + 80 * hour),
      `cool.csv: the log reaches 420 °C
  expected  a firing to 500 °C or more
  try       leave this log out, or log a whole firing     (kiln/too-short)`,
    ],
    [
      "without cooling",
      log("hot.csv", 8, (hour) => 20 + 135 * hour),
      `hot.csv: no stretch shows the kiln falling by itself, lid shut and power off: hot.csv ends at 1100 °C
  expected  a fall of 120 °C or more after the peak that no programme holds back and no draught hurries
  try       log one firing that cools with the power off and the lid shut, and let the logger run overnight     (kiln/no-natural-cooling)`,
    ],
    [
      "without climb",
      log("late.csv", 14, (hour) => 20 + 1060 * Math.exp(-hour / 10)),
      `late.csv: the log begins at 1080 °C, near its peak of 1080 °C, so it does not show how fast the kiln climbs
  expected  a log that begins 200 °C or more below its peak
  try       …     (kiln/no-climb)`,
    ],
  ])("because it is %s is refused, and a whole firing is not", (_, path, text) => {
    expectWhole(inFull([...NEW, "--kiln", path]), text);
    expectDrafted([...NEW, "--kiln", log("whole.csv", 40, whole)]);
  });

  it("is missed when a schedule was swallowed with the logs", () => {
    const ran = inFull(["draft", "--kiln", NATURAL, GLAZED]);
    expectWhole(
      ran,
      `command line: no schedule is given
  expected  a schedule file, - for standard input, or --new
  try       write the schedule before --kiln, which takes every name after it for a log: undunted draft ${GLAZED} --kiln ${NATURAL}     (command/no-schedule)`,
    );
    expectDrafted(["draft", GLAZED, "--kiln", NATURAL]);
  });

  it("is asked for where only the wattage is given", () => {
    const ran = inFull([...NEW, "--power", "4400W"]);
    expectWhole(
      ran,
      `--power: --power is given without --kiln
  expected  logs of the kiln, from whose output column the electricity is worked out
  try       add --kiln with its logs, or leave --power out     (command/no-kiln)`,
    );
    expectDrafted([...NEW, "--power", "4400W", "--kiln", NATURAL]);
  });
});

describe("a cone out of the kiln's reach", () => {
  it("is refused with how far the kiln gets, the cone it makes and what would help", () => {
    const args = ["draft", "--new", "--kiln", TIRED];
    const ran = inFull([...args, "--cone", "10"]);
    expectWhole(
      ran,
      `--cone: cone 10 needs # °C, and the kiln still climbs at 15 °C/h up to # °C only, which makes cone … here; that is your kiln as learned from 2026-06-06-a.csv
  expected  a peak that the kiln reaches with power to spare
  try       --cone …, which it reaches; or help the kiln: by common practice new elements, a lighter load and fewer shelves     (schedule/kiln-too-weak)`,
    );
    const nearest = wayOut(ran, "--cone");
    expectDrafted([...args, ...nearest]);
    const cones = "04 03 02 01 1 2 3 4 5 6 7 8 9 10".split(" ");
    const harder = cones[cones.indexOf(nearest[1] as string) + 1] as string;
    expect(inFull([...args, "--cone", harder]).err).toContain("(schedule/kiln-too-weak)");
  });
});

describe("wishes that contradict each other", () => {
  it.each([
    [["--cooling", "slow", "--within", "6h"], "slow cooling", "6 h"],
    [["--within", "0"], "natural cooling", "0 s"],
    [["--cooling", "hold 900C 1h", "--within", "6"], "this hold on the way down", "6 h"],
  ])("%j are refused with the nearest that is possible, in hours", (wishes, way, within) => {
    const ran = inFull([...NEW, ...wishes]);
    expectWhole(
      ran,
      `--within: this cone with ${way} takes # h # min from the start to 100 °C at the least, not ${within}
  expected  a limit that ware and kiln allow; at 500 °C the kiln falls at # °C/h by itself; that is a loaded 180 L kiln with 75 mm of firebrick and 10.5 kW, simulated, not measured; a light kiln falls up to twice as fast
  try       --within #h${way === "this hold on the way down" ? "; or --cooling natural --within #h" : ""}     (schedule/too-little-time)`,
    );
    const rest = wishes.slice(0, wishes.indexOf("--within"));
    const [, hours] = wayOut(ran, "--within");
    expectDrafted([...NEW, ...rest, "--within", hours as string]);
    const less = `${Number.parseInt(hours as string, 10) - 1}h`;
    expect(inFull([...NEW, ...rest, "--within", less]).exit).toBe(2);
  });

  it("a hold too long for the time is shortened until it fits", () => {
    const limit = ["--within", "32h"];
    const ran = inFull([...NEW, "--cooling", "hold 900C 8h", ...limit]);
    expect(tried(ran)).toMatch(/^--cooling "hold 900C \d h(?: \d+ min)?"; or --within \d\dh /);
    expectDrafted([...NEW, ...limit, ...wayOut(ran, "--cooling")]);
  });

  it("are judged with the learned kiln, which may fall more slowly than the time allows", () => {
    // Falling by T = 20 + 1180 e^(−t / 20 h), from 1200 to 100 °C takes 20 h · ln(1180 / 80) = 53.8 h.
    const slow = log("slow.csv", 70, (hour) =>
      hour < 8 ? 20 + 147.5 * hour : 20 + 1180 * Math.exp(-(hour - 8) / 20),
    );
    expectDrafted([...NEW, "--within", "50h"]);
    const ran = inFull([...NEW, "--within", "50h", "--kiln", slow]);
    expect(ran.err).toContain("that is your kiln as learned from slow.csv");
    const hours = Number.parseInt(wayOut(ran, "--within")[1] as string, 10);
    expect(hours).toBeGreaterThan(53.8 + 8);
    expect(hours).toBeLessThan(53.8 + 24);
    expectDrafted([...NEW, "--within", `${hours}h`, "--kiln", slow]);
  });

  it.each([
    ["hold 2000C 1h", "1 h at 2000 °C", [], "20 °C"],
    ["hold 1250C 30min", "30 min at 1250 °C", [], "20 °C"],
    ["hold 2200F 1h", "1 h at 2200 °F", ["--unit", "F"], "36 °F"],
  ])(
    "a hold hotter than the peak, %s, is refused with the hottest there is",
    (hold, at, unit, k) => {
      const ran = inFull([...NEW, ...unit, "--cooling", hold]);
      const letter = unit.length > 0 ? "F" : "C";
      expectWhole(
        ran,
        `--cooling: a hold of ${at} on the way down, and the peak of this cone is # °${letter}
  expected  a hold at least ${k} below the peak, for its heat works on the cone too
  try       --cooling "hold #${letter} ${at.split(" at ")[0]}", the hottest that leaves the peak above it     (schedule/hold-too-hot)`,
      );
      expectDrafted([...NEW, ...unit, ...wayOut(ran, "--cooling")]);
    },
  );

  it("a hold so long that it makes the cone by itself is refused with a cooler one", () => {
    const ran = inFull([...NEW, "--cooling", "hold 1150C 8h"]);
    expectWhole(
      ran,
      `--cooling: a hold of 8 h at 1150 °C on the way down makes more of the cone than it may: no peak above it is left
  expected  a hold that leaves the peak above it, which is # °C before the hold is counted
  try       --cooling "hold #C 8 h", the hottest that leaves the peak above it     (schedule/hold-too-hot)`,
    );
    expectDrafted([...NEW, ...wayOut(ran, "--cooling")]);
  });

  it("a hold cooler than the end of the schedule is refused", () => {
    const ran = inFull([...NEW, "--cooling", "hold 10C 1h"]);
    expectWhole(
      ran,
      `--cooling: a hold at 10 °C on the way down
  expected  a temperature above 100 °C, where the schedule ends
  try       crystals in a glaze want a hold like --cooling "hold 900C 1 h"     (schedule/hold-too-cool)`,
    );
    expectDrafted([...NEW, ...wayOut(ran, "--cooling")]);
  });

  it.each([
    ["--within", "6h"],
    ["--cooling", "slow"],
  ])("%s with a schedule that is there already is not dropped silently", (option, value) => {
    expectWhole(
      inFull(["draft", GLAZED, option, value]),
      `${option}: only a new schedule is made by it, and the schedule given is there already
  expected  ${option} together with --new
  try       leave ${option} out, or give --new and --cone in place of the schedule     (command/new-only)`,
    );
  });

  it("--cone without --solve judges by that cone and says how to reach it", () => {
    const ran = expectDrafted(["draft", GLAZED, "--cone", "6"]);
    expect(ran.exit).toBe(1);
    expect(ran.out.replaceAll(/\s+/g, " ")).toContain(
      "The schedule is made for cone 5 and is judged by cone 6 as it stands; --solve peak changes it so that cone 6 goes down.",
    );
    const solved = expectDrafted(["draft", GLAZED, "--cone", "6", "--solve", "peak"]);
    expect(solved.exit).toBe(0);
    expect(solved.out).not.toContain("as it stands");
  });
});

describe("words and units on the command line", () => {
  it.each([
    ["slwo", "slow"],
    ["hold 900C", "hold 900C 1h"],
    ["hold 2h", "hold 900C 2h"],
  ])("--cooling %s is refused with what was meant", (cooling, meant) => {
    const ran = inFull([...NEW, "--cooling", cooling]);
    const written = meant.includes(" ") ? `"${meant}"` : meant;
    expectWhole(
      ran,
      `--cooling: "${cooling}" is no way of cooling that is known
  expected  natural, slow, or a hold on the way down with its length: "hold 900C 1h"
  try       --cooling ${written}     (command/cooling)`,
    );
    expectDrafted([...NEW, ...wayOut(ran, "--cooling")]);
  });

  it.each([
    ["hold 1650F 1h", "F", /to: 1650, rate: \w+, hold: 1 h/],
    ["hold 1650 1h", "F", /to: 1650, rate: \w+, hold: 1 h/],
    // 900 °C · 9/5 + 32 = 1652 °F; (1652 − 32) · 5/9 = 900 °C
    ["hold 900C 1h", "F", /to: 1652, rate: \w+, hold: 1 h/],
    ["hold 1652F 1h", "C", /to: 900, rate: \w+, hold: 1 h/],
  ])("--cooling %s is written in °%s", (cooling, unit, segment) => {
    const ran = inFull([...NEW, "--unit", unit, "--cooling", cooling, "-o", "-"]);
    expect(ran.out).toMatch(segment);
    expect(ran.out).toContain("why: crystals grow in the glaze");
  });

  it("--within that is no time is refused", () => {
    const ran = inFull([...NEW, "--within", "soon"]);
    expectWhole(
      ran,
      `--within: "soon" is not a span of time
  expected  "36 h", "30 h 30 min", "30:30" (hours and minutes), or a bare number of hours
  try       --within 36h     (units/not-a-duration)`,
    );
    expectDrafted([...NEW, ...wayOut(ran, "--within")]);
  });

  it("--offset 200C is refused as a temperature rather than a difference", () => {
    const ran = inFull([...NEW, "--offset", "200C"]);
    expectWhole(
      ran,
      `--offset: "200C" is not an offset of a thermocouple
  expected  what to add to its readings, with its unit: 8C, -12F; at most 100 °C (180 °F) either way
  try       --offset 8C, the difference and not the temperature; a thermocouple further out than that wants replacing     (command/offset)`,
    );
    expectDrafted([...NEW, ...wayOut(ran, "--offset")]);
  });
});
