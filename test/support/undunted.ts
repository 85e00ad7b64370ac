import { spawnSync } from "node:child_process";
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** The built command. */
const COMMAND = join(import.meta.dirname, "../../dist/bin.js");

/** What a run of the command gave. */
export interface Ran {
  readonly exit: number | null;
  readonly out: string;
  /** Its problems with a line for each of their three parts, however they were broken. */
  readonly err: string;
}

/** Runs the built command as a person would, without colour and with nothing on standard input. */
export function undunted(
  args: readonly string[],
  options: {
    readonly env?: Readonly<Record<string, string>>;
    readonly input?: string;
    readonly cwd?: string;
  } = {},
): Ran & { /** As it was printed. */ readonly brokenErr: string } {
  const { FORCE_COLOR: _, NO_COLOR: __, ...env } = process.env;
  const ran = spawnSync(process.execPath, [COMMAND, ...args], {
    encoding: "utf8",
    env: { ...env, ...options.env },
    input: options.input ?? "",
    maxBuffer: 2 ** 28,
    ...(options.cwd && { cwd: options.cwd }),
  });
  return { exit: ran.status, out: ran.stdout, err: whole(ran.stderr), brokenErr: ran.stderr };
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
