import { spawn } from "node:child_process";
import { appendFileSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { emptyFolder, fileWith, type Ran, undunted } from "../support/undunted.ts";

const COMMAND = join(import.meta.dirname, "../../dist/bin.js");
const ROWS = readFileSync("logs/2026-03-14-b.csv", "utf8").split("\n");
const QUICK = ["--every", "0.05s", "--until-still", "0.3s"];
/** For a log that grows meanwhile: it is never taken for finished, however slow the machine. */
const PATIENT = ["--every", "0.05s", "--until-still", "24h"];

/** A log with so many rows of the demo firing. */
function rows(from: number, to: number): string {
  return `${ROWS.slice(from, to).join("\n")}\n`;
}

/** Runs the watch; `then` is called whenever it has printed something. */
function watching(
  args: readonly string[],
  then: (printed: string, stop: () => void) => void,
): Promise<Ran> {
  const { FORCE_COLOR: _, NO_COLOR: __, ...env } = process.env;
  const child = spawn(process.execPath, [COMMAND, "watch", ...args], { env });
  let out = "";
  let err = "";
  child.stderr.on("data", (data) => {
    err += data;
  });
  child.stdout.on("data", (data) => {
    out += data;
    then(out, () => child.kill("SIGINT"));
  });
  return new Promise((done) => child.on("close", (exit) => done({ exit, out, err })));
}

describe("undunted watch", () => {
  it("follows a log that another process appends to, one fitting document a look", async () => {
    const path = join(emptyFolder(), "firing.csv");
    writeFileSync(path, rows(0, 500));
    let appended = 0;
    const told = [path, "--cone", "5", "--json-lines"];
    const ran = await watching([...told, ...PATIENT], (printed, stop) => {
      if (appended < 3) appendFileSync(path, rows(500 + 20 * appended, 500 + 20 * ++appended));
      if (/"readings":\s*559\b/.test(printed)) stop();
    });
    expect(ran.exit).toBe(130);
    const validate = new Ajv2020({ strict: false }).compile(
      JSON.parse(undunted(["schema", "watch"]).out),
    );
    const documentsOf = ({ out }: Ran) =>
      out
        .trimEnd()
        .split("\n")
        .map((line) => JSON.parse(line));
    const documents = documentsOf(ran);
    for (const document of documents)
      expect(validate(document), JSON.stringify(validate.errors)).toBe(true);
    const readings = documents.map(({ firing }) => firing.readings);
    // A heading and 499 rows; three times twenty more.
    expect(readings[0]).toBe(499);
    expect(readings.at(-1)).toBe(559);
    const finished = undunted(["watch", ...told, ...QUICK]);
    expect(finished.exit).toBe(0);
    const last = documentsOf(finished).at(-1);
    expect(last).toMatchObject({ isLast: true, status: "watching", firing: { readings: 559 } });
    expect(last.firing.wanted.expected.atSeconds).toBeGreaterThan(9.5 * 3600);
  });

  it("waits for a log that comes later, and says so without a control code", async () => {
    const path = join(emptyFolder(), "firing.csv");
    let come = false;
    const ran = await watching([path, "--log-unit", "C", ...PATIENT], (printed, stop) => {
      if (!come) writeFileSync(path, rows(0, 12));
      come = true;
      if (printed.includes("Now ")) stop();
    });
    expect(ran.exit).toBe(130);
    expect(ran.out).toContain("The file is not there");
    expect(ran.out).toContain("Now       21 °C");
    expect(ran.out).not.toContain("\u001b");
  });

  it("ends cleanly at Ctrl-C, with 130", async () => {
    const path = fileWith("firing.csv", rows(0, 100));
    const ran = await watching([path, "--every", "0.05s"], (_, stop) => stop());
    expect(ran.exit).toBe(130);
    expect(ran.out.endsWith("\n")).toBe(true);
    expect(ran.err).toBe("");
  });

  it("answers no when a warning stands at the end", () => {
    // A relay that sticks: no set point, no output, and it climbs on.
    const climbing = Array.from({ length: 200 }, (_, i) => {
      const isOn = i < 120;
      return `2026-03-01 ${String(8 + Math.floor(i / 60)).padStart(2, "0")}:${String(i % 60).padStart(2, "0")},${(600 + 2 * i).toFixed(1)},${isOn ? 600 + 2 * i : 0},${isOn ? 70 : 0}`;
    });
    const head = "time,temperature (°C),set point (°C),output (%)";
    const path = fileWith("firing.csv", [head, ...climbing, ""].join("\n"));
    const ran = undunted(["watch", path, ...QUICK]);
    expect(ran.exit).toBe(1);
    expect(ran.out.replaceAll(/\s+/g, " ")).toContain("EMERGENCY");
  });

  it("refuses a log that cannot be read once it has enough lines, and waits before", () => {
    const words = (count: number) => fileWith("words.csv", "nothing but words\n".repeat(count));
    const ran = undunted(["watch", words(20), "--json-lines", ...QUICK]);
    expect(ran.exit).toBe(2);
    expect(JSON.parse(ran.out)).toMatchObject({ ok: false });
    const waited = undunted(["watch", words(19), ...QUICK]);
    expect(waited.exit).toBe(2);
    expect(waited.out).toContain("Waiting");
    expect(waited.err).toContain("(watch/nothing-came)");
  });

  it.each([
    [["-"], "command/needs-file"],
    [["x.csv", "--every", "0"], "command/watch-times"],
    [["x.csv", "--until-still", "soon"], "units/not-a-duration"],
    [["x.csv", "--kiln", "no-such.csv"], "file/missing"],
  ])("refuses %j", (args, code) => {
    const ran = undunted(["watch", ...args]);
    expect(ran.exit).toBe(2);
    expect(ran.err).toContain(`(${code})`);
  });
});
