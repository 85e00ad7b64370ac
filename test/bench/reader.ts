import { fork } from "node:child_process";
import { writeFileSync } from "node:fs";
import { availableParallelism, cpus } from "node:os";
import { fileURLToPath } from "node:url";
import { AXES, type Axis } from "./logGrid/axes.ts";
import {
  type GridPart,
  judgedPart,
  numberedLog,
  rightShare,
  type Score,
  type Scored,
  scoreOf,
  type Tally,
} from "./logGrid/scoredGrid.ts";

/** Prints how the reader scores on the grid of logs: `npm run bench:reader -- [seed] [count]`. */
async function main(): Promise<void> {
  const seed = Number(process.argv[2] ?? 1);
  const count = Number(process.argv[3] ?? 20_000);
  const began = performance.now();
  const score = scoreOf(await judgedInParts(seed, count));
  const seconds = (performance.now() - began) / 1000;
  const machine = `${cpus().length} × ${cpus()[0]?.model ?? "unknown processor"}, Node ${process.version}`;
  console.log(`${count} logs of seed ${seed} in ${seconds.toFixed(0)} s on ${machine}\n`);
  console.log(row("", "right", "asked", "needless", "worded", "silent", "share"));
  console.log(tallyRow("all logs", score.all));
  for (const axis of Object.keys(AXES) as Axis[]) printAxis(score, axis);
  for (const { number, levels, judged } of score.faults.slice(0, 400))
    console.log(
      `\n${number} ${judged.verdict}: ${judged.what}\n  ${Object.values(levels).join(" · ")}`,
    );
  const folder = process.env.KEEP_FAULTS;
  if (folder !== undefined) keepFaults(score.faults, { seed, count, folder });
  process.exitCode = score.all["silently wrong"] > 0 || rightShare(score.all) < 0.99 ? 1 : 0;
}

/** All logs, each processor judging its share of them. */
async function judgedInParts(seed: number, count: number): Promise<readonly Scored[]> {
  const every = availableParallelism();
  const parts = await Promise.all(
    Array.from({ length: every }, (_, from) => judgedElsewhere({ seed, count, from, every })),
  );
  return parts.flat().sort((a, b) => a.number - b.number);
}

function judgedElsewhere(part: GridPart): Promise<readonly Scored[]> {
  return new Promise((resolve, reject) => {
    const child = fork(fileURLToPath(import.meta.url));
    child.once("message", (scored) => resolve(scored as readonly Scored[]));
    child.once("exit", (code) => reject(new Error(`a part of the logs ended with ${code}`)));
    child.send(part);
  });
}

function judgeForParent(): void {
  process.once("message", (part) => {
    process.send?.(judgedPart(part as GridPart), () => process.disconnect());
  });
}

function printAxis(score: Score, axis: Axis): void {
  console.log(`\n${axis}`);
  for (const { level, tally } of score.byLevel.filter((each) => each.axis === axis))
    console.log(tallyRow(`  ${level}`, tally));
}

function tallyRow(label: string, tally: Tally): string {
  return row(
    label,
    ...Object.values(tally).map(String),
    `${(100 * rightShare(tally)).toFixed(2)} %`,
  );
}

function row(label: string, ...cells: readonly string[]): string {
  return label.padEnd(30) + cells.map((cell) => cell.padStart(10)).join("");
}

/** Writes the logs that were not right into a folder, to look at. */
function keepFaults(
  faults: readonly Scored[],
  grid: { readonly seed: number; readonly count: number; readonly folder: string },
): void {
  for (const { number, judged } of faults.slice(0, 400)) {
    const { bytes } = numberedLog(grid.seed, grid.count, number);
    writeFileSync(`${grid.folder}/${judged.verdict.replaceAll(" ", "-")}-${number}.csv`, bytes);
  }
}

if (process.send === undefined) await main();
else judgeForParent();
