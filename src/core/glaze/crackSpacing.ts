import { type Backing, tableLine } from "./channelCracking.ts";
import {
  FREE_SPACINGS,
  HELD_SPACINGS,
  type SpacingTable,
  THICK_SPACINGS,
} from "./spacingTables.ts";

/** Load that fills cracks in to a spacing, row by row, for one backing. */
export type SpacingLine = readonly (readonly [spacingOverCoat: number, load: number])[];

/** A reading of a spacing line, and which end of it was passed. */
export interface SpacingReading {
  readonly value: number;
  /** `fine`: closer than one coat, by the square-root law; `wide`: beyond 150 coats, the end holds. */
  readonly past: "fine" | "wide" | null;
}

/** Body of the wall tables. */
const WALL_RATIO = 0.7;

/**
 * Mean spacing over least spacing after cracks fell at random between each other: from 1 (just
 * filled in) to 2 (about to), 1.5 on the mean.
 * @see SOURCES["thouless-1990"]
 */
export const MEAN_OVER_LEAST = 1.5;

/** A line through tables for one spacing: place of each table, and a logarithm of its load. */
type RowLine = readonly (readonly [place: number, logarithm: number])[];

const OF_WALL_RATIO = THICK_SPACINGS.filter(({ stiffnessRatio }) => stiffnessRatio === WALL_RATIO);

/** Load of a thick body against the logarithm of its stiffness ratio, spacing by spacing. */
const THICK_LINES = rowLines(THICK_SPACINGS, (table, row) => [
  Math.log(table.stiffnessRatio),
  logLoad(table, row),
]);

/** What a wall adds against coat over wall, spacing by spacing. */
const HELD_LINES = wallLines(HELD_SPACINGS);
const FREE_LINES = wallLines(FREE_SPACINGS);

/**
 * Loads for a body and a wall.
 * Thick bodies between 0.5 and 1 of the glaze's stiffness in logarithms, the nearest outside. What
 * the wall changes is tabled for 0.7 and carried over; walls under five coats count as five.
 */
export function spacingLine(
  { stiffnessRatio, wallOverCoat }: Backing,
  bends: boolean,
): SpacingLine {
  const walls = bends ? FREE_LINES : HELD_LINES;
  const place = Math.log(stiffnessRatio);
  return THICK_LINES.map(([spacing, thick], row) => {
    const wall = walls[row]![1];
    const logarithm = tableLine(thick, place).value + tableLine(wall, 1 / wallOverCoat).value;
    return [spacing, Math.exp(logarithm)] as const;
  });
}

function wallLines(walls: readonly SpacingTable[]): readonly (readonly [number, RowLine])[] {
  const [thick] = OF_WALL_RATIO;
  if (thick === undefined) throw new RangeError("spacingLine: no thick body to compare walls with");
  return rowLines([thick, ...walls.toReversed()], (table, row) => [
    1 / table.wallOverCoat,
    logLoad(table, row) - logLoad(thick, row),
  ]);
}

function rowLines(
  tables: readonly SpacingTable[],
  pointOf: (table: SpacingTable, row: number) => RowLine[number],
): readonly (readonly [spacingOverCoat: number, RowLine])[] {
  const rows = tables[0]?.rows ?? [];
  return rows.map(([spacing], row) => [spacing, tables.map((table) => pointOf(table, row))]);
}

function logLoad(table: SpacingTable, row: number): number {
  return Math.log(table.rows[row]![2]);
}

/** Where `spacingLine` leaves its tables, in words; empty inside them. */
export function spacingTableEnds({ stiffnessRatio, wallOverCoat }: Backing): readonly string[] {
  return [
    ...(stiffnessRatio < 0.5 || stiffnessRatio > 1
      ? [
          `spacing is tabled for bodies of 0.5 to 1 of the glaze's stiffness; the end at ${stiffnessRatio < 0.5 ? "0.5" : "1"} is taken`,
        ]
      : []),
    ...(wallOverCoat < 5 ? ["spacing is tabled for walls of five coats and more"] : []),
  ];
}

/**
 * Least spacing, in coats, to which a load fills the cracks in.
 * The lower bound: chance leaves gaps up to twice as wide, and few starting flaws wider ones.
 */
export function leastSpacing(line: SpacingLine, load: number): SpacingReading {
  const [closest, most] = line[0] as readonly [number, number];
  if (load > most) return { value: closest * Math.sqrt(most / load), past: "fine" };
  const upper = line.findIndex(([, needed]) => needed <= load);
  if (upper < 0) return { value: (line.at(-1) as readonly [number, number])[0], past: "wide" };
  const [wide, less] = line[upper] as readonly [number, number];
  if (upper === 0 || less === load) return { value: wide, past: null };
  const [fine, more] = line[upper - 1] as readonly [number, number];
  const share = Math.log(more / load) / Math.log(more / less);
  return { value: fine * (wide / fine) ** share, past: null };
}

/** The load that fills cracks in to a least spacing, in coats. */
export function loadForSpacing(line: SpacingLine, spacingOverCoat: number): SpacingReading {
  const [closest, most] = line[0] as readonly [number, number];
  if (spacingOverCoat < closest)
    return { value: most * (closest / spacingOverCoat) ** 2, past: "fine" };
  const logs = line.map(([spacing, load]) => [Math.log(spacing), Math.log(load)] as const);
  const { value, past } = tableLine(logs, Math.log(spacingOverCoat));
  return { value: Math.exp(value), past: past === null ? null : "wide" };
}

/** Mean length that a line cuts off in a net of square-cornered cells of this pitch [mm]. */
export function interceptOfPitch(pitchMm: number): number {
  return (Math.PI * pitchMm) / 4;
}

/** Pitch of a net of square-cornered cells from the mean length between cracks along lines [mm]. */
export function pitchOfIntercept(interceptMm: number): number {
  return (4 * interceptMm) / Math.PI;
}
