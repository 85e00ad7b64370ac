import type { Column } from "./table.ts";

/** A column by its name, without regard to case, or by its number from 1; null when there is none. */
export function findColumn(columns: readonly Column[], told: string): Column | null {
  const wanted = told.trim().toLowerCase();
  const named = columns.find((column) => column.name.toLowerCase() === wanted);
  if (named !== undefined) return named;
  return /^\d+$/.test(wanted) ? (columns[Number(wanted) - 1] ?? null) : null;
}

/** The columns with their numbers, for a message: `1 "Time", 2 "Temp"`. */
export function columnList(columns: readonly Column[]): string {
  const shown = columns.slice(0, 12).map((column) => `${column.index + 1} "${column.name}"`);
  const more = columns.length - shown.length;
  return shown.join(", ") + (more > 0 ? ` and ${more} more` : "");
}
