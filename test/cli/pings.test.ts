import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { beforeAll, describe, expect, it } from "vitest";
import { addClicks, addHiss, clicksAt, silence } from "../support/clicks.ts";
import { emptyFolder, fileWith, inFull } from "../support/undunted.ts";
import { waveFile } from "../support/waves.ts";

const RATE = 8000;
const LOG = "logs/2026-03-14-b.csv";
let path = "";

beforeAll(() => {
  const sound = silence(60, RATE);
  addHiss(sound, 0.005, 3);
  const made = clicksAt({
    count: 60,
    fromSeconds: 5,
    toSeconds: 59,
    apartSeconds: 0.3,
    peak: 0.4,
    pitchesHz: [1000, 2500],
    seed: 2,
  });
  addClicks(sound, RATE, made);
  path = fileWith("shelf.wav", waveFile([sound], { sampleRateHz: RATE }));
});

describe("undunted pings", () => {
  it("counts what was put in, and ends with lines for the record and its cautions", () => {
    const { exit, out } = inFull(["pings", path, "--started", "21:05"]);
    expect(exit).toBe(0);
    expect(out).toContain("60 pings or more in 1 min");
    expect(out).toContain('heard:\n    - what: pinging\n      at: "21:05"');
    expect(out.replaceAll(/\s+/g, " ")).toContain("Never open a kiln to listen");
  });

  it("answers with a document that fits its schema, log and all", () => {
    const schema = JSON.parse(inFull(["schema", "pings"]).out);
    const validate = new Ajv2020({ strict: false }).compile(schema);
    const ran = inFull(["pings", path, "--json", "--log", LOG, "--started", "+19:30"]);
    expect(ran.exit).toBe(0);
    const document = JSON.parse(ran.out);
    expect(validate(document), JSON.stringify(validate.errors)).toBe(true);
    expect(document.pings).toHaveLength(60);
    expect(document.temperatures.channel).toBe("kiln_C");
  });

  it("refuses a recording in which most pings reach full scale, and counts them when told to", () => {
    const sound = silence(20, RATE);
    addHiss(sound, 0.005, 5);
    const loud = { count: 12, fromSeconds: 2, toSeconds: 18, apartSeconds: 1, seed: 4 };
    addClicks(sound, RATE, clicksAt({ ...loud, peak: 6, pitchesHz: [1000, 2500] }));
    const cut = sound.map((value) => Math.max(-1, Math.min(1, value)));
    const file = fileWith("loud.wav", waveFile([cut], { sampleRateHz: RATE }));
    const refused = inFull(["pings", file]);
    expect(refused.exit).toBe(2);
    expect(refused.err).toContain("pings/clipped");
    expect(refused.err).toMatch(/12 of 12 pings reach full scale/);
    const counted = inFull(["pings", file, "--clipped"]);
    expect(counted.exit).toBe(0);
    expect(counted.out).toContain("12 pings or more");
    expect(counted.out.replaceAll(/\s+/g, " ")).toContain("their loudness is a lower bound");
  });

  it("gives no temperature to what was heard after the record's unloading", () => {
    const { exit, out } = inFull([
      "pings",
      path,
      "--json",
      "--log",
      LOG,
      "--started",
      "2026-03-16 08:10",
    ]);
    expect(exit).toBe(0);
    const { temperatures, pings } = JSON.parse(out);
    // Taken out at 07:52, 18 min before.
    expect(temperatures.unloading).toMatchObject({ atSeconds: -1080, tempC: 75, count: 60 });
    expect(pings.every(({ tempC }: { tempC: number | null }) => tempC === null)).toBe(true);
  });

  it("takes a time of day that comes before and after the peak as the later one, and says so", () => {
    const of = (started: string) =>
      JSON.parse(inFull(["pings", path, "--json", "--log", LOG, "--started", started]).out)
        .recording;
    const told = of("2026-03-16 06:52");
    const taken = of("06:52");
    expect(taken.startedElapsedSeconds).toBe(told.startedElapsedSeconds);
    expect(taken.notes.join()).toContain("on the way down");
    expect(told.notes.join()).not.toContain("on the way down");
  });

  it("writes a page and a chart", () => {
    const folder = emptyFolder();
    const [html, chart] = [join(folder, "pings.html"), join(folder, "pings.svg")];
    expect(inFull(["pings", path, "--html", html, "--chart", chart]).exit).toBe(0);
    expect([html, chart].map((each) => existsSync(each))).toEqual([true, true]);
    expect(readFileSync(html, "utf8")).toContain("How the pings add up");
  });

  it("takes a threshold of one's own", () => {
    const { out } = inFull(["pings", path, "--threshold", "25dB"]);
    expect(out.replaceAll(/\s+/g, " ")).toContain("by 25 dB, as told");
  });

  it.each([
    [["--log", LOG], "pings/no-start"],
    [["--started", "nine"], "pings/not-a-moment"],
    [["--log", "logs/2026-04-11-a.csv", "--started", "21:05"], "pings/no-clock"],
    [["--threshold", "much"], "command/ping-setting"],
    [["--apart", "1h"], "command/ping-setting"],
    [["--channel", "right"], "sound/no-such-channel"],
  ])("refuses %j", (options, code) => {
    const ran = inFull(["pings", path, ...options]);
    expect(ran.exit).toBe(2);
    expect(ran.err).toContain(`(${code})`);
  });
});
