import { dirname } from "node:path";
import type { Glaze } from "../core/glaze/Glaze.ts";
import type { GlazeWishes } from "../core/glaze/GlazeWork.ts";
import { failed, ok, type Problem, type Result } from "../core/problem.ts";
import { nameKey } from "../core/trials/nameKey.ts";
import type { PlannedFiring } from "../core/trials/PlannedFiring.ts";
import type { NamedWare } from "../core/trials/tileFits.ts";
import { readBody } from "../node/readBody.ts";
import { wareBeside } from "../node/wareBeside.ts";

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
  const { readGlaze } = await import("../node/readGlaze.ts");
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
