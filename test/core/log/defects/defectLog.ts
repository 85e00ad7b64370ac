import { readFileSync } from "node:fs";
import { expect } from "vitest";
import { statementText } from "../../../../src/core/findings/Finding.ts";
import type { LogFault, LogReading } from "../../../../src/core/log/reading/LogReading.ts";
import { problemText } from "../../../../src/core/problem.ts";
import { reviewFiring } from "../../../../src/core/review/reviewFiring.ts";
import { pairs, reading } from "../logBuilder.ts";

/** One log with one defect, and the truth about the invented firing in it, known as it was made. */
export interface DefectLog {
  readonly file: string;
  /** What is wrong with it, as the end of a sentence. */
  readonly is: string;
  /** Rows with a reading; 24 where not given. */
  readonly readings?: number;
  /** Usual step [s]; 300 where not given. */
  readonly step?: number;
  /** Time of the first reading of the first zone [s]; nought where not given. */
  readonly from?: number;
  /** Time of the last reading [s]; where not given, of as many steps as there are readings, less one. */
  readonly lasts?: number;
  /** First and last temperature of the first zone [°C]; 20 and 12.5 more each row where not given. */
  readonly tempsC?: readonly [number, number];
  readonly unit?: LogReading["unit"];
  /** Wall time of the first reading; none where not given. */
  readonly start?: string;
  /** All columns but the time, `name: role`; one temperature of any name where not given. */
  readonly columns?: readonly string[];
  /** Words of the decisions, by what they are about. */
  readonly decided?: Readonly<Record<string, RegExp>>;
  /** All rows left out: their lines and words of the reason. */
  readonly rejected?: readonly (readonly [line: number, reason: RegExp])[];
  /** All faults: their kinds, counts and words. */
  readonly faults?: readonly (readonly [LogFault["kind"], number, RegExp])[];
  /** Words of findings of a review, by topic. */
  readonly found?: Readonly<Record<string, RegExp>>;
}

/** The bytes of a fixture. */
export function bytesOf(file: string): Uint8Array {
  return readFileSync(new URL(`../../../fixtures/logs/${file}`, import.meta.url));
}

/** The reading of a fixture, which must be readable. */
export function readFixture(file: string): LogReading {
  return reading(bytesOf(file), { name: file });
}

/** All that a reading says about one of its decisions, in one line. */
export function decidedText(log: LogReading, about: string): string {
  return log.decisions
    .filter((each) => each.about === about)
    .map(({ choice, confidence, because, runnerUp }) =>
      [choice, confidence, because, ...(runnerUp === null ? [] : [`or ${runnerUp}`])].join("; "),
    )
    .join("\n");
}

/** Reads the log and holds all of it against the truth. */
export function expectAsMade(made: DefectLog): void {
  const log = readFixture(made.file);
  expectFiring(log, made);
  expectColumns(log, made.columns);
  expectLeftOut(log, made);
  for (const [about, words] of Object.entries(made.decided ?? {}))
    expect(decidedText(log, about)).toMatch(words);
  if (made.found !== undefined) expectFindings(log, made.found);
}

function expectFiring(log: LogReading, made: DefectLog): void {
  const { readings = 24, step = 300, tempsC = [20, 20 + 12.5 * (readings - 1)] } = made;
  const lasts = made.lasts ?? (readings - 1) * step;
  expect(log.rows.accepted).toBe(readings);
  expect(log.unit).toBe(made.unit ?? "C");
  expect(log.start).toBe(made.start ?? null);
  // Half a second: days with six decimals are known to a tenth.
  expect(Math.abs(log.intervalSeconds - step)).toBeLessThan(0.5);
  const measured = pairs(log);
  const [from, to] = [measured[0], measured.at(-1)];
  expect(from?.[0]).toBe(made.from ?? 0);
  expect(Math.abs((to?.[0] as number) - lasts)).toBeLessThan(0.5);
  // Kelvins and °F come back to °C with rounding in the last of sixteen digits.
  expect(from?.[1]).toBeCloseTo(tempsC[0], 6);
  expect(to?.[1]).toBeCloseTo(tempsC[1], 6);
}

function expectColumns({ channels }: LogReading, columns: DefectLog["columns"]): void {
  if (columns === undefined) expect(channels.map(({ role }) => role)).toEqual(["temperature"]);
  else expect(channels.map(({ name, role }) => `${name}: ${role}`)).toEqual(columns);
}

/** Each row left out and each fault is foreseen, and none is lacking. */
function expectLeftOut({ rows, faults }: LogReading, made: DefectLog): void {
  const { rejected = [], faults: foreseen = [] } = made;
  expect(rows.rejected.map(({ line, reason }) => ({ line, reason }))).toEqual(
    rejected.map(([line, reason]) => ({ line, reason: expect.stringMatching(reason) })),
  );
  expect(rows.total).toBe(rows.accepted + rejected.length);
  expect(faults.map(({ kind, count, what }) => ({ kind, count, what }))).toEqual(
    foreseen.map(([kind, count, what]) => ({ kind, count, what: expect.stringMatching(what) })),
  );
}

function expectFindings(log: LogReading, found: Readonly<Record<string, RegExp>>): void {
  const review = reviewFiring({ reading: log, record: null, plan: null });
  if (!review.ok) throw new Error(review.problems.map(problemText).join("\n"));
  for (const [topic, words] of Object.entries(found)) {
    const said = review.value.findings.filter((each) => each.topic === topic);
    expect(said.map((each) => statementText(each, "C")).join("\n")).toMatch(words);
  }
}
