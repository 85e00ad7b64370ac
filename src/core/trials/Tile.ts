import type {
  FiringRecord,
  RecordedTrial,
  TrialCoat,
  TrialSpacing,
} from "../record/FiringRecord.ts";
import type { Moment } from "../record/moment.ts";
import type { Body } from "../ware/Ware.ts";

/** A trial tile of one firing, read and in canonical units: the replicate of all statistics. */
export interface Tile {
  /** File name of the firing record. */
  readonly firing: string;
  readonly firingTitle: string;
  /** As the record writes it. */
  readonly kiln: string | null;
  /** The mark on the piece. */
  readonly piece: string;
  /** In the person's words, spaces and capitals evened out: what tiles are grouped by. */
  readonly clay: string;
  readonly glaze: string;
  /** Body by whose properties the fit is computed; null when the record names none. */
  readonly body: Body | null;
  readonly coat: TrialCoat;
  readonly glazedSides: "one" | "both";
  /** A bowl counts as closed: it cannot bend freely. Null when not noted. */
  readonly shape: "flat" | "closed" | null;
  /** Wall without glaze [mm]. */
  readonly wallMm: number | null;
  readonly spacing: TrialSpacing;
  readonly cracked: "none" | "crackle" | "through" | null;
  /** Null when nobody looked. */
  readonly throughCrack: boolean | null;
  readonly pings: {
    readonly count: number;
    /** When they were heard; empty when only counted. */
    readonly moments: readonly Moment[];
  } | null;
  /** Where it stood in the kiln, in the person's words. */
  readonly place: string | null;
  /** What the cracks were stained with. */
  readonly stain: string | null;
  /** Made up as an example. */
  readonly invented: boolean;
}

/** A trial that gives no tile, or a tile that says less than it might. */
export interface TileLeftOut {
  readonly firing: string;
  readonly piece: string;
  readonly from: "everything" | "crack spacing" | "through cracks";
  /** In words, after "left out because". */
  readonly why: string;
}

/** Tiles of some firings. */
export interface TileSet {
  readonly tiles: readonly Tile[];
  /** Counted and named, so that nothing is dropped silently. */
  readonly leftOut: readonly TileLeftOut[];
}

/**
 * Tiles of firing records, in the order of the records and their trials.
 * The tile is what was repeated, not its readings: of several rows for one mark in one firing the
 * first counts. Clays and glazes are the same when they differ in capitals and spaces only.
 */
export function tilesOf(records: readonly FiringRecord[]): TileSet {
  const named = { clay: nameStore(), glaze: nameStore() };
  const tiles: Tile[] = [];
  const leftOut: TileLeftOut[] = [];
  for (const record of records) {
    const seen = new Set<string>();
    for (const trial of record.trials) {
      const at = { firing: record.name, piece: trial.piece };
      const mark = trial.piece.trim().toLowerCase();
      if (seen.has(mark)) {
        leftOut.push({
          ...at,
          from: "everything",
          why: "the firing has a row for this piece already, and a second reading is no second tile",
        });
        continue;
      }
      seen.add(mark);
      const tile = tileOf(record, trial, named);
      tiles.push(tile);
      leftOut.push(...lessSaid(tile).map((less) => ({ ...at, ...less })));
    }
  }
  return { tiles, leftOut };
}

function tileOf(
  record: FiringRecord,
  trial: RecordedTrial,
  named: { readonly clay: NameStore; readonly glaze: NameStore },
): Tile {
  const { piece, body, coat, glazedSides, wallMm, spacing, cracked, pings, place, stain } = trial;
  return {
    firing: record.name,
    firingTitle: record.title,
    kiln: record.kiln,
    piece,
    clay: named.clay(trial.clay),
    glaze: named.glaze(trial.glaze),
    body,
    coat,
    glazedSides,
    shape: trial.shape === null ? null : trial.shape === "flat tile" ? "flat" : "closed",
    wallMm,
    spacing,
    cracked,
    throughCrack: cracked === null ? null : cracked === "through",
    pings,
    place,
    stain,
    invented: record.invented,
  };
}

function lessSaid({ spacing, throughCrack }: Tile): readonly Pick<TileLeftOut, "from" | "why">[] {
  return [
    ...(spacing.kind === "not measured"
      ? [{ from: "crack spacing" as const, why: spacing.why }]
      : []),
    ...(throughCrack === null
      ? [{ from: "through cracks" as const, why: "cracked is not noted" }]
      : []),
  ];
}

/** Gives a name the spelling in which it was met first. */
type NameStore = (name: string) => string;

function nameStore(): NameStore {
  const met = new Map<string, string>();
  return (name) => {
    const words = name.trim().replace(/\s+/g, " ");
    const key = words.toLowerCase();
    const first = met.get(key) ?? words;
    met.set(key, first);
    return first;
  };
}
