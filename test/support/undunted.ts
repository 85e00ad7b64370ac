import { spawnSync } from "node:child_process";
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import {
  MessageChannel,
  type MessagePort,
  receiveMessageOnPort,
  Worker,
} from "node:worker_threads";

/** The built command. */
const COMMAND = join(import.meta.dirname, "../../dist/bin.js");

/** What a run of the command gave. */
export interface Ran {
  readonly exit: number | null;
  readonly out: string;
  /** Its problems with a line for each of their three parts, however they were broken. */
  readonly err: string;
}

/** The same, and its problems as they were printed. */
interface RanAsPrinted extends Ran {
  readonly brokenErr: string;
}

/** What stands around a run of the command. */
interface Around {
  readonly env?: Readonly<Record<string, string>>;
  /** What comes on standard input; nothing, unless it is told. */
  readonly input?: string;
  readonly cwd?: string;
}

/** How long a call may take before it counts as one that never ends [ms]; no bound of speed. */
const NEVER_MS = 900_000;

/**
 * Runs the built command as a person would, without colour and with nothing on standard input, but in a
 * thread of this process, which saves starting and warming up another for every call. Standard output and
 * error are no pipes there, and signals do not reach it: for those, and for start and end of a process,
 * `ownProcess`.
 */
export function undunted(args: readonly string[], around: Around = {}): RanAsPrinted {
  // The zone of the clock is settled once for a process.
  if (around.env?.TZ !== undefined) return ownProcess(args, around);
  const { port, done } = commandThread();
  const before = process.cwd();
  if (around.cwd) process.chdir(around.cwd);
  try {
    Atomics.store(done, 0, 0);
    port.postMessage({ args: [...args], env: envOf(around), input: around.input ?? "" });
    if (Atomics.wait(done, 0, 0, NEVER_MS) === "timed-out")
      throw new Error(`undunted ${args.join(" ")} came to no end`);
  } finally {
    process.chdir(before);
  }
  const { message: ran } = receiveMessageOnPort(port) as {
    message: Ran & { readonly isSpent: boolean };
  };
  if (ran.isSpent) endThread();
  return heard(ran);
}

/** Commands whose answer has parts beside its screen. */
const WITH_PARTS = ["review", "draft", "compare", "kiln", "glaze", "measure", "pings"];

/** The same with every part of the answer, where a test is about more than its screen. */
export function inFull(args: readonly string[], around: Around = {}): RanAsPrinted {
  const hasParts = WITH_PARTS.includes(args[0] ?? "");
  return undunted(hasParts ? [...args, "--more", "all"] : args, around);
}

const answers = new Map<string, RanAsPrinted>();

/** What the command answers of files that never change, such as those we ship; worked out once. */
export function answer(args: readonly string[], cwd = process.cwd()): RanAsPrinted {
  const key = JSON.stringify([cwd, ...args]);
  const ran = answers.get(key) ?? undunted(args, { cwd });
  answers.set(key, ran);
  return ran;
}

/** The same as `undunted` in a process of its own. */
export function ownProcess(args: readonly string[], around: Around = {}): RanAsPrinted {
  const ran = spawnSync(process.execPath, [COMMAND, ...args], {
    encoding: "utf8",
    env: envOf(around),
    input: around.input ?? "",
    maxBuffer: 2 ** 28,
    ...(around.cwd && { cwd: around.cwd }),
  });
  return heard({ exit: ran.status, out: ran.stdout, err: ran.stderr });
}

function heard({ exit, out, err }: Ran): RanAsPrinted {
  return { exit, out, err: whole(err), brokenErr: err };
}

function envOf({ env }: Around): Record<string, string | undefined> {
  const { FORCE_COLOR: _, NO_COLOR: __, ...ours } = process.env;
  return { ...ours, ...env };
}

interface CommandThread {
  readonly worker: Worker;
  readonly port: MessagePort;
  /** Becomes 1 when a call has come to its end. */
  readonly done: Int32Array;
}

let thread: CommandThread | null = null;

/** The thread in which the command runs, begun at the first call. */
function commandThread(): CommandThread {
  if (thread) return thread;
  const { port1: port, port2 } = new MessageChannel();
  const done = new Int32Array(new SharedArrayBuffer(4));
  const worker = new Worker(join(import.meta.dirname, "commandThread.mjs"), {
    workerData: { command: COMMAND, port: port2, done },
    transferList: [port2],
    execArgv: [],
    stdin: true,
  });
  worker.unref();
  port.unref();
  thread = { worker, port, done };
  return thread;
}

/** Ends a thread in which something of a call may still go on. */
function endThread(): void {
  void thread?.worker.terminate();
  thread = null;
}

/** Problems that were broken at 80 columns, put together again. */
function whole(err: string): string {
  return err
    .replaceAll(/\n {12}(?=\([a-z-]+\/[a-z\d-]+\)$)/gm, "     ")
    .replaceAll(/\n {12}(?=\S)/g, " ")
    .replaceAll(/\n {4}(?=\S.*(?:\n {4}\S.*)*\n {2}expected {2})/g, " ");
}

/** An empty folder that nobody else uses. */
export function emptyFolder(): string {
  return mkdtempSync(join(tmpdir(), "undunted-"));
}

/** A file with this content in a folder of its own. */
export function fileWith(name: string, content: string | Uint8Array): string {
  const path = join(emptyFolder(), name);
  writeFileSync(path, content);
  return path;
}
