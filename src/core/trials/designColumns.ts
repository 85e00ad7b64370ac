import type { Cause } from "./Cause.ts";
import { centred, type DesignColumn } from "./columnSpace.ts";

/** A cause as centred columns over some tiles: one for an amount, one less than its levels for a kind. */
export function designColumns(cause: Cause, tiles: readonly number[]): readonly DesignColumn[] {
  const { amounts, levels } = cause;
  if (amounts) return [centred(tiles.map((tile) => amounts[tile] as number))];
  const kinds = levelsOn(cause, tiles);
  return kinds
    .slice(1)
    .map((kind) => centred(tiles.map((tile) => (levels[tile] === kind ? 1 : 0))));
}

/** The levels of a cause on some tiles, in the order met; unknown ones are no level. */
export function levelsOn({ levels }: Cause, tiles: readonly number[]): readonly string[] {
  return [...new Set(tiles.flatMap((tile) => levels[tile] ?? []))];
}
