import { spawnSync } from "node:child_process";
import { join } from "node:path";

/** What one run of a program took. */
export interface Run {
  readonly wallMs: number;
  /** Of all its threads; 0 where it was not asked. */
  readonly cpuMs: number;
  readonly peakMB: number;
  /** What went wrong, when it did not run. */
  readonly failed?: string;
}

/** The built command. */
export const COMMAND = join(import.meta.dirname, "..", "..", "..", "dist", "bin.js");

/** The Python that may have pandas. */
export const PYTHON = process.env.UNDUNTED_PYTHON ?? "python3";

/** At its end a Node program says what it used, on the fourth of its streams. */
const SAYS_USE = `data:text/javascript,${encodeURIComponent(
  'import { writeSync } from "node:fs"; process.on("exit", () => { const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage(); writeSync(3, JSON.stringify({ cpuMs: (userCPUTime + systemCPUTime) / 1000, peakKB: maxRSS })); });',
)}`;

/** The built command with some arguments; an answer of no, as a warning in a log, is a run as well. */
export function commandRun(args: readonly string[]): Run {
  return run(process.execPath, ["--import", SAYS_USE, COMMAND, ...args], { says: 3, most: 1 });
}

/** A TypeScript file, which prints what it took itself: `{ wallMs }` in its last line. */
export function scriptRun(script: string, args: readonly string[]): Run {
  return run(process.execPath, [...process.execArgv, script, ...args], { says: 1, most: 0 });
}

/** Python, which says what it used in the last line of standard error. */
export function pythonRun(args: readonly string[]): Run {
  return run(PYTHON, args, { says: 2, most: 0 });
}

/** Runs a program that says on one of its streams what it used, with an exit code of so much at most. */
function run(
  program: string,
  args: readonly string[],
  { says, most }: { readonly says: 1 | 2 | 3; readonly most: number },
): Run {
  const began = performance.now();
  const child = spawnSync(program, args, {
    stdio: ["ignore", says === 1 ? "pipe" : "ignore", "pipe", "pipe"],
    encoding: "utf8",
    maxBuffer: 1e8,
  });
  const wallMs = performance.now() - began;
  if (child.status === null || child.status > most)
    return { wallMs, cpuMs: 0, peakMB: 0, failed: child.error?.message ?? child.stderr };
  const said = lastLine(child.output[says]);
  return {
    wallMs: said.wallMs ?? wallMs,
    cpuMs: said.cpuMs ?? 0,
    peakMB: (said.peakKB ?? 0) / 1024,
  };
}

/** What a program says that it used. */
interface Said {
  readonly wallMs?: number;
  readonly cpuMs?: number;
  readonly peakKB?: number;
}

function lastLine(text: string | null | undefined): Said {
  const line = text?.trim().split("\n").at(-1) ?? "";
  return line.startsWith("{") ? (JSON.parse(line) as Said) : {};
}

/** Wall time of Node alone or with a command, nothing added to it. */
export function nodeStart(args: readonly string[]): Run {
  const began = performance.now();
  spawnSync(process.execPath, args, { stdio: "ignore" });
  return { wallMs: performance.now() - began, cpuMs: 0, peakMB: 0 };
}

/** Middle value, the upper of two. */
export function middle(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[values.length >> 1] ?? Number.NaN;
}
