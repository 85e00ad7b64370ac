import { readdirSync, readFileSync } from "node:fs";
import { isDeepStrictEqual } from "node:util";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { makeCurve } from "../../../src/core/curve/Curve.ts";
import { type LogReading, rejectedCount } from "../../../src/core/log/reading/LogReading.ts";
import { logReader } from "../../../src/core/log/readLog.ts";
import type { Result } from "../../../src/core/problem.ts";
import { reviewDocument } from "../../../src/core/reports/documents/reviewDocument.ts";
import { reviewFiring } from "../../../src/core/review/reviewFiring.ts";
import { splitQuoted } from "../../../src/node/readLogChunks.ts";
import { dealtLevels } from "../../bench/logGrid/axes.ts";
import { gridLog } from "../../bench/logGrid/gridLog.ts";
import { mutantOf } from "../../support/mutations.ts";
import { reviewText } from "../../support/reportTexts.ts";
import { readText } from "./logBuilder.ts";

const SEED = Number(process.env.SEED ?? 20_261_125);
/** Mutants that are read; `FUZZ_RUNS=100000` reads more. */
const RUNS = Number(process.env.FUZZ_RUNS ?? 250);
/** The first of them; with `FUZZ_RUNS=1` one is read again. */
const FIRST = Number(process.env.FUZZ_FIRST ?? 0);

/** A mutant has at most some hundred kilobytes; usual are 2 ms, and a busy machine may take long. */
const MOST_SECONDS = 3;
/** The whole run may not hold on to more than this; a reading of a mutant takes under 1 MB. */
const MOST_GROWTH_BYTES = 700 * 2 ** 20;
/** Absolute zero, and the end of the type B table with room [°C]. */
const POSSIBLE_C = { least: -273.15, most: 1850 };
/** A problem is read by a person; it lists twelve names of columns of 100 characters at most. */
const LONGEST_WORDS = 2000;
/** One mutant of so many is also reviewed. */
const REVIEWED_EVERY = 25;
const DECIDED = ["encoding", "delimiter", "decimal mark", "header", "columns", "unit"];

interface Base {
  readonly name: string;
  readonly bytes: Uint8Array;
}

function filesIn(folder: string, most: number): readonly Base[] {
  return readdirSync(folder)
    .filter((name) => /\.(csv|txt|tsv)$/.test(name))
    .map((name) => ({ name, bytes: readFileSync(`${folder}/${name}`).subarray(0, most) }));
}

/** Demo logs cut to what is read quickly, every fixture, and small logs of the grid. */
function bases(): readonly Base[] {
  const grid = dealtLevels(SEED, 120).map((levels, i) => {
    const { bytes } = gridLog({ ...levels, rows: i % 2 === 0 ? "20" : "60" }, SEED + i);
    return { name: `grid log ${i}`, bytes };
  });
  return [...filesIn("logs", 3000), ...filesIn("test/fixtures/logs", 4000), ...grid];
}

function inParts(bytes: Uint8Array, sizes: readonly number[]): Result<LogReading> {
  const reader = logReader({ name: "log.csv" }, splitQuoted);
  const memory = new Uint8Array(Math.max(...sizes));
  for (let at = 0, i = 0; at < bytes.length; i++) {
    const part = bytes.subarray(at, at + (sizes[i % sizes.length] as number));
    memory.set(part);
    reader.push(memory.subarray(0, part.length));
    at += part.length;
  }
  return reader.end();
}

/** What is wrong with a result, whatever its log; null when every law holds. */
function brokenLaw(result: Result<LogReading>): string | null {
  if (!result.ok) return brokenProblem(result);
  const { rows, decisions, intervalSeconds } = result.value;
  if (rows.accepted + rejectedCount(rows) !== rows.total) return "rows are not accounted for";
  if (!(intervalSeconds > 0 && Number.isFinite(intervalSeconds))) return "no interval";
  for (const about of DECIDED)
    if (!decisions.some((each) => each.about === about)) return `nothing said of ${about}`;
  if (decisions.some(({ choice, because }) => choice === "" || because === ""))
    return "a decision without choice or reason";
  return brokenChannel(result.value);
}

function brokenProblem({ problems }: Extract<Result<unknown>, { ok: false }>): string | null {
  if (problems.length === 0) return "no problem";
  for (const problem of problems) {
    if (!/^log\/[a-z-]+$/.test(problem.code)) return `code ${problem.code}`;
    for (const part of ["what", "where", "expected", "fix"] as const) {
      if (problem[part].trim() === "") return `${problem.code} without ${part}`;
      if (problem[part].length > LONGEST_WORDS) return `${problem.code}: ${part} without end`;
      if (/\bundefined\b|\[object/.test(problem[part].replaceAll(/"[^"]*"/g, "")))
        return `${problem.code}: ${problem[part]}`;
    }
  }
  return null;
}

function brokenChannel({ channels, rows }: LogReading): string | null {
  if (!channels.some(({ role, curve }) => role === "temperature" && curve !== null))
    return channels.some(({ role }) => role === "temperature") ? null : "no temperature";
  for (const { name, curve, readings, dropped } of channels) {
    if (curve === null) continue;
    try {
      makeCurve(curve.timesSeconds, curve.tempsC, curve.gaps);
    } catch (error) {
      return `${name}: ${error}`;
    }
    if (readings + dropped !== rows.accepted) return `${name}: cells are not accounted for`;
    if (!curve.tempsC.every((tempC) => tempC >= POSSIBLE_C.least && tempC <= POSSIBLE_C.most))
      return `${name}: a temperature that cannot be`;
  }
  return null;
}

/** What a review of a reading does wrong. */
function brokenReview(reading: LogReading): string | null {
  const review = reviewFiring({ reading, record: null, plan: null, heard: [] } as never);
  if (!review.ok) return null;
  const text = reviewText(review.value, { unit: "C", paint: (_, words) => words });
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these must not be in it
  if (/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/.test(text))
    return "the report holds a control character";
  if (/\bundefined\b|\[object/.test(text.replaceAll(/"[^"]*"/g, ""))) return "undefined";
  JSON.stringify(reviewDocument(review.value));
  return null;
}

/** Whether one mutant is read, and what is wrong with that; null when nothing is. */
function tried(
  bytes: Uint8Array,
  run: number,
): { readonly fault: string | null; readonly isRead: boolean } {
  const began = process.cpuUsage();
  try {
    const whole = readText(bytes);
    // Of the processor, so that what else the machine does counts for nothing.
    const { user, system } = process.cpuUsage(began);
    const seconds = (user + system) / 1e6;
    if (seconds > MOST_SECONDS) return { fault: `took ${seconds.toFixed(1)} s`, isRead: whole.ok };
    return { fault: faultOf(whole, bytes, run), isRead: whole.ok };
  } catch (error) {
    return { fault: error instanceof Error ? (error.stack ?? "") : String(error), isRead: false };
  }
}

function faultOf(whole: Result<LogReading>, bytes: Uint8Array, run: number): string | null {
  const broken = brokenLaw(whole);
  if (broken !== null) return broken;
  const sizes = [[1 + (run % 97)], [1000, 1, 2], [3 + (run % 4099), 7]][run % 3] as number[];
  if (!isDeepStrictEqual(inParts(bytes, sizes), whole))
    return `reads otherwise in parts of ${sizes}`;
  return whole.ok && run % REVIEWED_EVERY === 0 ? brokenReview(whole.value) : null;
}

describe(`${RUNS} damaged logs (seed ${SEED})`, () => {
  it(
    "give a reading or problems by every law, the same in any parts, in bounded time and memory",
    () => {
      const all = bases();
      const before = process.memoryUsage().rss;
      const faults: string[] = [];
      let read = 0;
      for (let run = FIRST; run < FIRST + RUNS && faults.length < 10; run++) {
        const base = all[run % all.length] as Base;
        const { bytes, steps } = mutantOf(base.bytes, SEED + run);
        const { fault, isRead } = tried(bytes, run);
        if (isRead) read++;
        if (fault !== null)
          faults.push(`FUZZ_FIRST=${run}: ${base.name}, ${steps.join(", ")}: ${fault}`);
      }
      expect(faults.join("\n\n")).toBe("");
      expect(process.memoryUsage().rss - before).toBeLessThan(MOST_GROWTH_BYTES);
      // The fuzzer is worth something only when many of its logs are still read.
      if (RUNS >= 250) expect(read / RUNS).toBeGreaterThan(0.2);
    },
    Math.max(900_000, RUNS * 100),
  );
});

describe("for any damage and any parts", () => {
  const all = bases();
  it("the parts in which a log comes make no difference", () => {
    const part = fc.integer({ min: 1, max: 5000 });
    fc.assert(
      fc.property(
        fc.constantFrom(...all),
        fc.nat(),
        fc.array(part, { minLength: 1, maxLength: 6 }),
        (base, seed, sizes) => {
          const { bytes } = mutantOf(base.bytes, seed);
          expect(isDeepStrictEqual(inParts(bytes, sizes), readText(bytes))).toBe(true);
        },
      ),
      { numRuns: 100 },
    );
  });

  it("the same seed makes the same mutant", () => {
    const [base] = all as [Base];
    expect(mutantOf(base.bytes, 7)).toEqual(mutantOf(base.bytes, 7));
    expect(mutantOf(base.bytes, 7).bytes).not.toEqual(mutantOf(base.bytes, 8).bytes);
  });
});
