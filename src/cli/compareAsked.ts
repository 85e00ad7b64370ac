import { basename, dirname } from "node:path";
import type { Glaze } from "../core/glaze/Glaze.ts";
import type { GlazeWishes } from "../core/glaze/glazeWork.ts";
import { failed, ok, type Problem, type Result } from "../core/problem.ts";
import { type Alignment, AT_PEAK, parseAlignment } from "../core/review/alignment.ts";
import type { PlannedFiring } from "../core/trials/NextTest.ts";
import { type NamedWare, nameKey } from "../core/trials/tileFits.ts";
import { wareBeside } from "../node/filesBeside.ts";
import { logPaths } from "../node/logPaths.ts";
import { readBody } from "../node/readFiring.ts";
import { type CommonOptions, say } from "./conversation.ts";
import type { LogTask } from "./logWork.ts";
import { workersFrom } from "./manyLogs.ts";
import { type LogCommandOptions, logOptionsFrom } from "./options.ts";

/** Options of `undunted compare`. */
export interface CompareOptions extends CommonOptions, LogCommandOptions {
  readonly workers?: string;
  readonly next?: string;
  readonly kiln?: readonly string[];
  readonly glaze?: readonly string[];
  readonly align?: string;
  readonly base?: string;
}

/** Most firings whose trials and differences are studied together. */
export const MOST_STUDIED = 200;

/** What a comparison is asked for. */
interface CompareAsked {
  readonly paths: readonly string[];
  readonly task: LogTask;
  readonly workers: number | null;
  readonly shown: Shown;
}

/** How the firings are laid beside each other. */
interface Shown {
  readonly alignment: Alignment;
  /** Path of the log that the others are held against; null for the first. */
  readonly base: string | null;
}

/** What the arguments and options ask for, or all that is wrong with them. */
export async function compareAsked(
  given: readonly string[],
  options: CompareOptions,
): Promise<Result<CompareAsked>> {
  const logOptions = logOptionsFrom(options);
  const workers = workersFrom(options.workers);
  const files = await logPaths(given);
  const lines = linesAlone(options);
  const alignment = alignmentFrom(options);
  if (!logOptions.ok || !workers.ok || !files.ok || !lines.ok || !alignment.ok)
    return failed(
      ...[logOptions, workers, files, lines, alignment].flatMap((part) =>
        part.ok ? [] : part.problems,
      ),
    );
  for (const remark of files.value.remarks) say(remark, options);
  const { paths } = files.value;
  const isStudied = !options.jsonLines && paths.length <= MOST_STUDIED;
  if (!options.jsonLines && !isStudied)
    say(
      `trial tiles and what differed are studied for at most ${MOST_STUDIED} logs; of these ${paths.length} only the table is shown`,
      options,
    );
  return ok({
    paths,
    task: { kind: "compare", logOptions: logOptions.value, isStudied },
    workers: workers.value,
    shown: { alignment: alignment.value, base: options.base ?? null },
  });
}

function linesAlone(options: CompareOptions): Result<null> {
  const beside = (["json", "html", "chart", "align", "base", "glaze", "kiln"] as const).find(
    (name) => options[name] !== undefined,
  );
  if (!options.jsonLines || beside === undefined) return ok(null);
  return failed({
    code: "command/contradiction",
    where: "command line",
    what: `both --json-lines and --${beside} are given`,
    expected: "one of them: lines of JSON are the whole answer",
    fix: "drop one",
  });
}

function alignmentFrom({ align, unit = "C" }: CompareOptions): Result<Alignment> {
  return align === undefined ? ok(AT_PEAK) : parseAlignment(align, { unit, where: "--align" });
}

/** Place of the log that was named, by its path or its file name. */
export function baseOf(named: string | null, paths: readonly string[]): Result<number> {
  if (named === null) return ok(0);
  const path = paths.indexOf(named);
  const at = path >= 0 ? path : paths.findIndex((each) => basename(each) === basename(named));
  if (at >= 0) return ok(at);
  return failed({
    code: "command/no-such-base",
    where: "--base",
    what: `${named} is not among the logs that were read`,
    expected: "one of the logs that are compared",
    fix: `name one of them: ${paths.slice(0, 5).join(", ")}`,
  });
}

const NO_WISHES: GlazeWishes = {
  batchG: null,
  slipGPerCm3: null,
  bucketLitres: null,
  dryCoatGPerCm2: null,
};

/** Glazes and bodies of the tiles, with what was not read. */
interface FoundNamedWare {
  readonly named: NamedWare;
  /** As sentences. */
  readonly remarks: readonly string[];
}

/**
 * The files of the glazes and clays that the tiles of some firings name: those beside their logs,
 * and before them those given by `--glaze`, which go by their titles.
 *
 * @returns the problems of given files, and `command/glaze-not-on-tiles` for one that no tile names.
 */
export async function namedWare(
  firings: readonly PlannedFiring[],
  from: { readonly logs: readonly string[]; readonly glazes: readonly string[] },
): Promise<Result<FoundNamedWare>> {
  const trials = firings.flatMap(({ record }) => record?.trials ?? []);
  const glazeNames = [...new Set(trials.map(({ glaze }) => glaze))];
  const folders = [...new Set(from.logs.filter((path) => path !== "-").map(dirname))];
  const given = await givenGlazes(from.glazes, glazeNames);
  if (!given.ok) return given;
  const names = glazeNames.filter((name) => !given.value.has(nameKey(name)));
  const glazes = await wareBeside("glaze", { names, folders }, glazeOf);
  const clays = trials.flatMap(({ clay, body }) => (body === null ? [clay] : []));
  const bodies = await wareBeside("body", { names: clays, folders }, readBody);
  return ok({
    named: { glazes: new Map([...glazes.found, ...given.value]), bodies: bodies.found },
    remarks: [...glazes.unread, ...bodies.unread].map(
      ({ path, problems }) =>
        `${path} is left aside: ${problems.map(({ what }) => what).join("; ")}`,
    ),
  });
}

async function givenGlazes(
  paths: readonly string[],
  onTiles: readonly string[],
): Promise<Result<ReadonlyMap<string, Glaze>>> {
  const glazes = new Map<string, Glaze>();
  const problems: Problem[] = [];
  for (const path of paths) {
    const glaze = await glazeOf(path);
    if (!glaze.ok) problems.push(...glaze.problems);
    else if (onTiles.some((name) => nameKey(name) === nameKey(glaze.value.name)))
      glazes.set(nameKey(glaze.value.name), glaze.value);
    else problems.push(onNoTile(path, glaze.value.name, onTiles));
  }
  return problems.length > 0 ? failed(...problems) : ok(glazes);
}

/** What works out glazes is loaded only where there is one. */
async function glazeOf(path: string): Promise<Result<Glaze>> {
  const { readGlaze } = await import("../node/readFiring.ts");
  const work = await readGlaze(path, NO_WISHES);
  return work.ok ? ok(work.value.sheet.glaze) : work;
}

function onNoTile(path: string, title: string, onTiles: readonly string[]): Problem {
  return {
    code: "command/glaze-not-on-tiles",
    where: "--glaze",
    what: `${path} is titled “${title}”, and no tile of these firings has a glaze of that name`,
    expected:
      onTiles.length === 0
        ? "records with trial tiles"
        : `a glaze file titled as the tiles name it: ${onTiles.join(", ")}`,
    fix: "write the same name as title of the glaze file and as glaze of the tiles",
  };
}
