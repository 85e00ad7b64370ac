import { failed, ok, type Result } from "../../problem.ts";
import type { ChannelRole, LogOptions } from "../LogReading.ts";
import { columnList, findColumn } from "../text/columnNames.ts";
import type { Column, Table } from "../text/table.ts";

/** Why a column is what it was told to be. */
export const GIVEN = "given as an option";

/** Roles that are told, by column; a column cannot be measured without numbers, or be the time as well. */
export function rolesToldOf(
  table: Table,
  others: readonly Column[],
  options: LogOptions,
): Result<ReadonlyMap<Column, ChannelRole>> {
  const told = Object.entries(options.roles ?? {}).map(([name, role]) => ({
    name,
    role,
    column: findColumn(table.columns, name),
  }));
  const problems = told
    .filter(
      ({ column, role }) =>
        column === null ||
        !others.includes(column) ||
        (role !== "other" && column.kind !== "number"),
    )
    .map(({ name, role, column }) => ({
      code: "log/unknown-column" as const,
      what: `there is no column "${name}" that could be ${role}${column === null ? "" : `: it holds ${others.includes(column) ? "no numbers" : "the time"}`}`,
      where: options.name,
      expected: `a column, out of: ${columnList(table.columns)}`,
      fix: `give --role one of these names, or its number from 1: --role "${others[0]?.name ?? "1"}=${role}"`,
    }));
  if (problems.length > 0) return failed(...problems);
  return ok(new Map(told.map(({ column, role }) => [column as Column, role])));
}

/** Columns with the roles that were told in place of those found. */
export function asTold<
  Found extends {
    readonly column: Column;
    readonly role: ChannelRole;
    readonly because: string;
    readonly isSure: boolean;
  },
>(found: readonly Found[], roles: ReadonlyMap<Column, ChannelRole>): readonly Found[] {
  return found.map((each) => {
    const role = roles.get(each.column);
    return role === undefined ? each : { ...each, role, because: GIVEN, isSure: true };
  });
}
