#!/usr/bin/env node
import { CommanderError } from "commander";
import { buildProgram } from "./program.ts";

process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code === "EPIPE") process.exit(0);
  // A full disk behind `>`: what was not printed cannot be said there.
  process.stderr.write(
    `standard output: the system says ${error.code}\n  expected  room for the whole answer\n  try       another disk, or make room     (file/cannot-write)\n`,
  );
  process.exit(2);
});
process.stderr.on("error", () => {
  // Nobody listens to the conversation any more; the answer goes on.
});

/** What the option parser says of wrong use; it quotes what was typed. */
let complaint = "";
const program = buildProgram((code) => {
  process.exitCode = code;
});
for (const command of [program, ...program.commands])
  command.exitOverride().configureOutput({
    outputError: (text) => {
      complaint += text;
    },
  });

if (process.argv.length <= 2) {
  process.stderr.write(program.helpInformation());
  process.exitCode = 2;
} else {
  try {
    await program.parseAsync();
  } catch (error) {
    if (error instanceof CommanderError) await usage(error);
    else await ourBug(error);
  }
}

async function usage(error: CommanderError): Promise<void> {
  process.exitCode = error.exitCode === 0 ? 0 : 2;
  if (error.exitCode === 0) return;
  const { answerJson, sayLines } = await import("./conversation.ts");
  sayLines(complaint.trimEnd());
  if (!process.argv.includes("--json")) return;
  const problem = {
    code: "command/usage",
    what: error.message.replace(/^error: /, ""),
    where: "command line",
    expected: "a command and options as listed by undunted --help",
    fix: "undunted --help",
  };
  answerJson({ schemaVersion: 1, ok: false, problems: [problem] });
}

async function ourBug(error: unknown): Promise<void> {
  const message = error instanceof Error ? error.message : String(error);
  const { sayLines } = await import("./conversation.ts");
  sayLines(
    `undunted: a fault of its own (${message.replaceAll("\n", " ")})\n  expected  no such thing\n  try       the same with a smaller file, and report this line`,
  );
  process.exitCode = 70;
}
