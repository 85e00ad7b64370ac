import { failed, ok, type Result } from "../problem.ts";
import type { Schedule } from "../schedule/Schedule.ts";
import type { Confounding } from "./Confounding.ts";
import type { FiringInNumbers, FiringStudy } from "./FiringStudy.ts";
import { FIRING_CAUSE_WORDS } from "./firingCauses.ts";
import type { KnownKiln, NextTest, NextTile, NextTiles, PlannedFiring } from "./NextTest.ts";
import { nextFiring } from "./nextFiring.ts";
import { nextTiles } from "./nextTiles.ts";
import { tilesPerGroup } from "./sampleSizes.ts";
import type { Tile } from "./Tile.ts";

/** Half as wide again, as for the tiles. */
const RATIO = 1.5;

/** Chance of noticing it. */
const POWER = 0.8;

/** While none is measured; our own estimate. */
const USUAL_SCATTER = 0.25;

/** Tiles that are made again to compare a firing with, when every tile that there was is uncracked. */
const AGAIN = 4;

/**
 * The next tiles and the next firing together. Tiles come first: what they alone can tell needs no
 * change of the firing. Where only parts of the firings are mixed up, the firing changes in one
 * thing, and tiles like most of those so far go in, as many as a comparison of two firings needs.
 */
export function nextTestOf(given: {
  readonly firings: readonly PlannedFiring[];
  readonly facts: readonly FiringInNumbers[];
  readonly tiles: readonly Tile[];
  readonly confounding: Confounding | null;
  readonly scatter: number | null;
  readonly known?: KnownKiln | undefined;
}): NextTest {
  const { tiles, scatter } = given;
  const confounding = given.confounding ?? NOTHING_LOOKED_AT;
  const chosen = nextTiles({ tiles, confounding, scatter });
  const isUncracked = tiles.every(({ spacing }) => spacing.kind !== "measured");
  const firing = nextFiring({
    ...given,
    confounding,
    tilesTell: chosen !== null || isUncracked,
  });
  const followed = tiles.filter(({ firingTitle }) => firingTitle === firing?.follows);
  const telling = chosen ?? sameAgain(followed.length > 0 ? followed : tiles, scatter);
  return { tiles: telling, firing, open: openAfter(telling, confounding, chosen !== null) };
}

const NOTHING_LOOKED_AT: Confounding = {
  tiles: 0,
  causes: [],
  pairs: [],
  together: [],
  jointly: [],
  constant: [],
  everyOwn: [],
  unknown: [],
};

/** Tiles of the kind that most were of; with the coat doubled when none of them cracked. */
function sameAgain(tiles: readonly Tile[], scatter: number | null): NextTiles | null {
  const measured = tiles.filter(({ spacing }) => spacing.kind === "measured");
  const from = measured.length > 0 ? measured : tiles;
  const same = (one: Tile, other: Tile) =>
    one.clay === other.clay &&
    one.glaze === other.glaze &&
    one.glazedSides === other.glazedSides &&
    one.shape === other.shape;
  const most = from
    .map((tile) => from.filter((other) => same(tile, other)))
    .reduce<readonly Tile[]>((best, each) => (each.length > best.length ? each : best), []);
  const [tile] = most;
  if (tile === undefined) return null;
  const coats = most.map(({ coat }) => coat.firedMm).toSorted((a, b) => a - b);
  const usual = coats[Math.floor(coats.length / 2)]!;
  const isUncracked = measured.length === 0;
  const count = isUncracked
    ? AGAIN
    : tilesPerGroup({ ratio: RATIO, tileSigma: scatter ?? USUAL_SCATTER, power: POWER });
  const kind: NextTile = {
    clay: tile.clay,
    glaze: tile.glaze,
    coatMm: Number((isUncracked ? 2 * usual : usual).toPrecision(2)),
    glazedSides: tile.glazedSides,
    shape: tile.shape,
    count,
  };
  return {
    tiles: [kind],
    total: count,
    wanted: [],
    isEnough: !isUncracked,
    fewest: 1,
    scatter: scatter ?? USUAL_SCATTER,
    scatterIs: scatter === null ? "assumed" : "measured",
    ratio: RATIO,
    reason: isUncracked
      ? "No tile has a spacing yet. A thicker coat cracks sooner, so the coat is doubled and all else stays."
      : "Tiles like most of those in that firing, so that the two can be held against each other by them.",
  };
}

function openAfter(
  tiles: NextTiles | null,
  { pairs }: Confounding,
  tilesTell: boolean,
): readonly string[] {
  const parts: readonly string[] = Object.values(FIRING_CAUSE_WORDS);
  const mixed = pairs.filter(
    ({ first, second, telling }) =>
      telling === "cannot" && parts.includes(first) && parts.includes(second),
  );
  const names = [...new Set(mixed.flatMap(({ first, second }) => [first, second]))];
  return [
    ...(tilesTell && names.length > 0
      ? [
          `Of the firings, ${names.join(", ")} changed together as well. That takes a firing with one change, and is left for the test after this one.`,
        ]
      : []),
    ...(tiles !== null && !tiles.isEnough && tiles.wanted.length > 0
      ? [
          `Even ${tiles.total} tiles do not make every comparison sharp enough; a second firing of the same tiles would go on from there.`,
        ]
      : []),
    "A firing is one firing, however many tiles are in it: how far firings of one schedule scatter shows only when one is repeated.",
    "Only clays, glazes, sides and shapes that were used before were looked at.",
  ];
}

/**
 * The schedule of the next test, to be written as a file.
 * @returns `trials/no-next-firing` when there is none to write.
 */
export function nextSchedule({ tiles, next }: FiringStudy): Result<Schedule> {
  const schedule = next?.firing?.schedule;
  if (schedule) return ok(schedule);
  return failed({
    code: "trials/no-next-firing",
    what:
      tiles.tiles.length === 0
        ? "no record of these firings names trial tiles, so there is no next test"
        : "no schedule could be made for the next test",
    where: "--next",
    expected:
      "trial tiles in the records, and a record that names its schedule or a cone that was reached",
    fix: "note trials and schedule in the records beside the logs, or leave --next out",
  });
}

/**
 * Firings whose records can be told apart by name. A firing that is given twice keeps its record the
 * first time only, so that no tile counts twice; records of one name from several folders are numbered.
 */
export function namedApart(firings: readonly PlannedFiring[]): readonly PlannedFiring[] {
  return firings.map((firing, at) => {
    const { record } = firing;
    if (record === null) return firing;
    const before = firings.slice(0, at).filter((other) => other.record?.name === record.name);
    if (before.some((other) => isSame(other, firing))) return { ...firing, record: null };
    return before.length === 0
      ? firing
      : { ...firing, record: { ...record, name: `${record.name} (${before.length + 1})` } };
  });
}

function isSame(one: PlannedFiring, other: PlannedFiring): boolean {
  return (
    one.record?.title === other.record?.title &&
    one.review.reading.name === other.review.reading.name &&
    one.review.reading.start === other.review.reading.start
  );
}
