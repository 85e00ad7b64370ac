import { parseRecordFile } from "../../core/firing/record.ts";
import { parseSchedule } from "../../core/schedule/scheduleFile.ts";
import type { KeptFile } from "../bench/KeptFile.ts";
import { remembered } from "../parts/remembered.ts";
import { type FiringGroup, firingGroups, textOf } from "../worker/readGroup.ts";
import { bodyOfFile, glazeOfFile, type WareKind, wareKind } from "../worker/wareKind.ts";

/** What a file that is neither a log nor the record of one is. */
export type OtherKind = "schedule" | "record" | WareKind | "nothing";

const KINDS = new WeakMap<KeptFile, OtherKind>();

/** What a document is, by its own text. */
export function otherKind(file: KeptFile): OtherKind {
  const known = KINDS.get(file) ?? lookedAt(file);
  KINDS.set(file, known);
  return known;
}

function lookedAt(file: KeptFile): OtherKind {
  const text = textOf(file);
  if (!text.ok) return "nothing";
  if (parseSchedule(text.value, file.name).ok) return "schedule";
  if (parseRecordFile(text.value, file.name).ok) return "record";
  const ware = wareKind(file);
  if (ware === null) return "nothing";
  return (ware === "glaze" ? glazeOfFile(file) : bodyOfFile(file)).ok ? ware : "nothing";
}

/** The firings on the table: each log with its record, and the schedules that lie beside them. */
export const compareGroups = remembered((files: readonly KeptFile[]): readonly FiringGroup[] =>
  firingGroups(files).map((group) => ({
    ...group,
    others: group.others.filter((file) => otherKind(file) === "schedule"),
  })),
);

/** Files of glazes and bodies; a record of a log on the table is none, whatever is in it. */
export const wareFiles = remembered((files: readonly KeptFile[]): readonly KeptFile[] =>
  looseFiles(files).filter((file) => ["glaze", "body"].includes(otherKind(file))),
);

/** Files that belong to no log. */
export const looseFiles = remembered((files: readonly KeptFile[]): readonly KeptFile[] => {
  const own = new Set(compareGroups(files).flatMap(({ log, record }) => [log, record]));
  return files.filter((file) => !own.has(file));
});
