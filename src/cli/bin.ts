#!/usr/bin/env node
import { CommanderError } from "commander";
import { buildProgram } from "./program.ts";

process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code === "EPIPE") process.exit(0);
  throw error;
});

const program = buildProgram((code) => {
  process.exitCode = code;
});
for (const command of [program, ...program.commands]) command.exitOverride();

if (process.argv.length <= 2) {
  process.stderr.write(program.helpInformation());
  process.exitCode = 2;
} else {
  try {
    await program.parseAsync();
  } catch (error) {
    if (error instanceof CommanderError) usage(error);
    else ourBug(error);
  }
}

function usage(error: CommanderError): void {
  process.exitCode = error.exitCode === 0 ? 0 : 2;
  if (error.exitCode === 0 || !process.argv.includes("--json")) return;
  const problem = {
    code: "command/usage",
    what: error.message.replace(/^error: /, ""),
    where: "command line",
    expected: "a command and options as listed by undunted --help",
    fix: "undunted --help",
  };
  process.stdout.write(
    `${JSON.stringify({ schemaVersion: 1, ok: false, problems: [problem] }, null, 2)}\n`,
  );
}

function ourBug(error: unknown): void {
  const message = error instanceof Error ? error.message : String(error);
  process.stderr.write(
    `undunted: a fault of its own (${message})\n  expected  no such thing\n  try       the same with a smaller file, and report this line\n`,
  );
  process.exitCode = 70;
}
