import { AXES, type Axis, dealtLevels, type Levels } from "./axes.ts";
import { type GridLog, gridLog } from "./gridLog.ts";
import { type Judged, judgedLog, type Verdict } from "./judgedLog.ts";

/** Verdicts with their numbers of logs. */
export type Tally = Readonly<Record<Verdict, number>>;

/** A log of the grid with its verdict; the log itself can be made again from its number. */
export interface Scored {
  readonly number: number;
  readonly levels: Levels;
  readonly judged: Judged;
}

/** The score of a grid of logs. */
export interface Score {
  readonly all: Tally;
  readonly byLevel: readonly {
    readonly axis: Axis;
    readonly level: string;
    readonly tally: Tally;
  }[];
  /** Logs that were not right, with what happened. */
  readonly faults: readonly Scored[];
}

/** A part of the logs of a seed: every so many, from one on. */
export interface GridPart {
  readonly seed: number;
  readonly count: number;
  readonly from: number;
  readonly every: number;
}

/** Writes, reads and judges a part of the logs of a seed. */
export function judgedPart({ seed, count, from, every }: GridPart): readonly Scored[] {
  const scored: Scored[] = [];
  const all = dealtLevels(seed, count);
  for (let number = from; number < count; number += every) {
    const log = gridLog(all[number] as Levels, logSeed(seed, number));
    scored.push({ number, levels: log.levels, judged: verdictOf(log) });
  }
  return scored;
}

/** A log of a seed by its number among so many. */
export function numberedLog(seed: number, count: number, number: number): GridLog {
  return gridLog(dealtLevels(seed, count)[number] as Levels, logSeed(seed, number));
}

function logSeed(seed: number, number: number): number {
  return seed * 1_000_003 + number * 101;
}

/** The score of judged logs, in all and by the levels of each axis. */
export function scoreOf(scored: readonly Scored[]): Score {
  const byLevel = (Object.keys(AXES) as Axis[]).flatMap((axis) =>
    [...new Set(AXES[axis].map((level) => level.trim()))].map((level) => ({
      axis,
      level,
      tally: tallyOf(scored.filter(({ levels }) => levels[axis] === level)),
    })),
  );
  const isFault = ({ judged }: Scored) => judged.verdict !== "right" && judged.verdict !== "asked";
  return { all: tallyOf(scored), byLevel, faults: scored.filter(isFault) };
}

function verdictOf(log: GridLog): Judged {
  try {
    return judgedLog(log);
  } catch (error) {
    return { verdict: "silently wrong", what: `threw ${String(error)}` };
  }
}

function tallyOf(scored: readonly Scored[]): Tally {
  const count = (verdict: Verdict) =>
    scored.filter(({ judged }) => judged.verdict === verdict).length;
  return {
    right: count("right"),
    asked: count("asked"),
    "asked needlessly": count("asked needlessly"),
    "wrong with a word": count("wrong with a word"),
    "silently wrong": count("silently wrong"),
  };
}

/** Share of logs that were read right, or asked about where the data leave it open. */
export function rightShare(tally: Tally): number {
  const all = Object.values(tally).reduce((sum, each) => sum + each, 0);
  return all === 0 ? 1 : (tally.right + tally.asked) / all;
}
