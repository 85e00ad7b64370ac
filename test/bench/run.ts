import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { cpus, loadavg, tmpdir } from "node:os";
import { join } from "node:path";
import { CONE_MODELS } from "../../src/core/cones/coneModel.ts";
import { manyLogsRow } from "./manyLogs.ts";
import { type BenchRow, benchTable } from "./speed/benchTable.ts";
import {
  COMMAND,
  commandRun,
  middle,
  nodeStart,
  PYTHON,
  pythonRun,
  type Run,
  scriptRun,
} from "./speed/measured.ts";
import { secondsLog } from "./speed/secondsLog.ts";

const DAY_ROWS = 86_400;
const LONG_ROWS = 1_000_000;
const PAIRS = 7;
const LONG_RUNS = 3;
/** Pieces this many e-folds below a cone's end are too cold to count, in the review as in the script. */
const IGNORED_FOLDS = 14;

/**
 * Measures the command against its bars: `npm run build`, then `npm run bench`. What is compared is
 * run in turn, so that both meet the same machine; the middle of the runs is told, never a promise.
 */
function main(): void {
  const folder = mkdtempSync(join(tmpdir(), "undunted-bench-"));
  try {
    const day = written(folder, "day.csv", secondsLog(DAY_ROWS));
    const long = written(folder, "long.csv", secondsLog(LONG_ROWS));
    const cones = written(folder, "cones.json", coneConstants());
    const rows = [
      help(),
      ...reviews(day, long),
      tokens(),
      ...pandas(day, cones),
      duckdb(day),
      manyLogsRow(),
    ];
    console.log(benchTable(rows));
    console.log(machine());
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function written(folder: string, name: string, content: string): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

/** What a cone of the script needs to know: name, E [kJ/mol], ln A [1/h], coldest that counts [K]. */
function coneConstants(): string {
  return JSON.stringify(
    CONE_MODELS["self-supporting"].map((model) => [
      model.cone,
      model.activationKJ,
      model.logPreFactor,
      model.endPoint60K - IGNORED_FOLDS * model.perFoldK,
    ]),
  );
}

/** Runs that were done in turn, first against second, as the middle of their ratios and of each. */
function inTurn(times: number, first: () => Run, second: () => Run) {
  const pairs = Array.from({ length: times }, () => [first(), second()] as const);
  const ratio = (of: (run: Run) => number) => middle(pairs.map(([a, b]) => of(a) / of(b)));
  return {
    first: middleRun(pairs.map(([a]) => a)),
    second: middleRun(pairs.map(([, b]) => b)),
    wall: ratio((run) => run.wallMs),
    cpu: ratio((run) => run.cpuMs),
  };
}

function middleRun(runs: readonly Run[]): Run {
  return {
    wallMs: middle(runs.map((run) => run.wallMs)),
    cpuMs: middle(runs.map((run) => run.cpuMs)),
    peakMB: middle(runs.map((run) => run.peakMB)),
  };
}

function help(): BenchRow {
  const plain = () => nodeStart(["-e", "0"]);
  const { first, second, wall } = inTurn(2 * PAIRS, () => nodeStart([COMMAND, "--help"]), plain);
  return {
    what: "undunted --help",
    took: ms(first),
    against: `node -e 0: ${ms(second)}`,
    ratio: wall,
    bar: { kind: "at most", value: 1.3 },
  };
}

function reviews(day: string, long: string): readonly BenchRow[] {
  const review = (path: string) => commandRun(["review", path]);
  const short = middleRun(Array.from({ length: PAIRS }, () => review(day)));
  const whole = middleRun(Array.from({ length: LONG_RUNS }, () => review(long)));
  const perRow = whole.wallMs / LONG_ROWS / (short.wallMs / DAY_ROWS);
  return [
    {
      what: "review, 86 400 rows: memory",
      took: `${ms(short)}, ${Math.round(short.peakMB)} MB at most`,
      against: "160 MB",
      ratio: short.peakMB / 160,
      bar: { kind: "at most", value: 1 },
    },
    {
      what: "review, 1 000 000 rows: time a row",
      took: ms(whole),
      against: "a row of 86 400",
      ratio: perRow,
      bar: { kind: "at most", value: 1.1 },
    },
    {
      what: "review, 1 000 000 rows: memory",
      took: `${Math.round(whole.peakMB)} MB at most`,
      against: "300 MB",
      ratio: whole.peakMB / 300,
      bar: { kind: "at most", value: 1 },
    },
  ];
}

function tokens(): BenchRow {
  const script = join(import.meta.dirname, "speed", "tokens.ts");
  const way = (how: string) => () => scriptRun(script, [how, String(DAY_ROWS)]);
  const { first, second, wall } = inTurn(PAIRS, way("fixed"), way("ours"));
  return {
    what: "cells and numbers alone, 86 400 rows",
    took: `${second.wallMs.toFixed(0)} ms`,
    against: `a scanner for this one format: ${first.wallMs.toFixed(0)} ms`,
    ratio: wall,
    bar: { kind: "at least", value: 0.5 },
  };
}

function pandas(day: string, cones: string): readonly BenchRow[] {
  const what = "review, 86 400 rows, beside pandas";
  const check = pythonRun(["-c", "import numpy, pandas"]);
  if (check.failed !== undefined)
    return [{ what, skipped: `no ${PYTHON} with pandas; UNDUNTED_PYTHON names one` }];
  const script = join(import.meta.dirname, "review.py");
  const { first, second, wall, cpu } = inTurn(
    PAIRS,
    () => commandRun(["review", day]),
    () => pythonRun([script, day, cones]),
  );
  const against = `pandas: ${ms(second)}, ${Math.round(second.peakMB)} MB`;
  const bar = { kind: "at most", value: 0.8 } as const;
  return [
    { what, took: ms(first), against, ratio: wall, bar },
    { what: "the same, by CPU time of all threads", took: "", against: "", ratio: cpu, bar: null },
  ];
}

function duckdb(day: string): BenchRow {
  const what = "reading and simple features in SQL, beside DuckDB";
  const script = join(import.meta.dirname, "speed", "duckdb.ts");
  const check = scriptRun(script, [day]);
  if (check.failed !== undefined) return { what, skipped: "@duckdb/node-api is not here" };
  const { first, second, wall } = inTurn(
    LONG_RUNS,
    () => commandRun(["review", day]),
    () => scriptRun(script, [day]),
  );
  return {
    what,
    took: `${ms(first)} (the whole review)`,
    against: `DuckDB, without the start of Node: ${second.wallMs.toFixed(0)} ms`,
    ratio: wall,
    bar: null,
  };
}

function ms({ wallMs, cpuMs }: Run): string {
  return `${wallMs.toFixed(0)} ms${cpuMs > 0 ? ` (CPU ${cpuMs.toFixed(0)})` : ""}`;
}

function machine(): string {
  const [first] = cpus();
  const load = loadavg()
    .map((each) => each.toFixed(1))
    .join(", ");
  return [
    `${first?.model ?? "CPU"}, ${cpus().length} cores, Node ${process.version}; load ${load} at the end.`,
    "Both read the same text: times, three temperatures; gaps, impossible values, spikes, noise; heatwork",
    `of all ${CONE_MODELS["self-supporting"].length} self-supporting cones in every zone; ramps and holds from at most 2 000 medians; crossings`,
    "of both inversions by robust edge lines, with the fastest slope over 15 min; spread of the zones. The",
    "review also finds out the format, units and columns, weighs findings and writes them; the script",
    "knows the format, takes trapezoids and merges neighbours where the review is exact.",
  ].join("\n");
}

main();
