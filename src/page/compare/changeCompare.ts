import { parseRecordFile } from "../../core/record/parseRecord.ts";
import { parseSchedule } from "../../core/schedule/scheduleFile.ts";
import { remembered } from "../parts/controls.ts";
import type { KeptFile } from "../parts/KeptFile.ts";
import type { Bench, CompareDesk, CompareWork } from "../state/state.ts";
import { bodyOfFile, glazeOfFile, type WareKind, wareKind } from "../worker/compareJob.ts";
import { type FiringGroup, firingGroups, textOf } from "../worker/readGroup.ts";

/** Changes what lies on the Compare table, as one step to undo. */
export function changeCompare(bench: Bench, what: string, change: Partial<CompareWork>): void {
  showCompare(bench, { refused: [], remark: "" });
  bench.change(what, (work) => ({ ...work, compare: { ...work.compare, ...change } }));
}

/** Changes what is only shown on the Compare table. */
export function showCompare(bench: Bench, change: Partial<CompareDesk>): void {
  bench.show((state) => ({ ...state, compare: { ...state.compare, ...change } }));
}

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
