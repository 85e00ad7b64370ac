import type { LogOptions, LogReading } from "../../core/log/reading/LogReading.ts";
import { logReader } from "../../core/log/readLog.ts";
import { failed, ok, type Result } from "../../core/problem.ts";
import type { FiringRecord } from "../../core/record/FiringRecord.ts";
import { parseRecord } from "../../core/record/parseRecord.ts";
import type { Schedule } from "../../core/schedule/Schedule.ts";
import { parseSchedule } from "../../core/schedule/scheduleFile.ts";
import { fingerprint, type KeptFile } from "../parts/KeptFile.ts";

/** A log with the files that belong to it, as dropped together. */
export interface FiringGroup {
  readonly log: KeptFile;
  /** The record: of the same name, with the ending .yaml, .yml or .json. */
  readonly record: KeptFile | null;
  /** Other YAML and JSON files, among which the record's schedule may be. */
  readonly others: readonly KeptFile[];
}

/** A firing that was read: the log, its record and its schedule as far as they are there. */
export interface ReadFiring {
  readonly reading: LogReading;
  readonly record: FiringRecord | null;
  readonly plan: Schedule | null;
}

const DOCUMENT = /\.(?:ya?ml|json)$/i;

/** Files that lie together, each log with its own record. */
export function firingGroups(files: readonly KeptFile[]): readonly FiringGroup[] {
  const [documents, logs] = [files.filter(isDocument), files.filter((file) => !isDocument(file))];
  const others = documents.filter((file) => !logs.some((log) => isOf(file, log)));
  return logs.map((log) => ({
    log,
    record: documents.find((file) => isOf(file, log)) ?? null,
    others,
  }));
}

/** Whether a document is that of a log: by name, and by the log's content once it was laid with one. */
function isOf(file: KeptFile, log: KeptFile): boolean {
  if (stemOf(file.name) !== stemOf(log.name)) return false;
  return file.of === undefined || file.of === fingerprint(log);
}

/**
 * What lies there once more files are laid down: a file of a name that lies there already takes its
 * place, and documents are bound to their logs.
 */
export function withLaid(
  before: readonly KeptFile[],
  laid: readonly KeptFile[],
): readonly KeptFile[] {
  const all = [...boundFiles(before, laid), ...boundFiles(laid, before)];
  return [...new Map(all.map((file) => [file.name, file])).values()];
}

/**
 * The same files, each document that was not of any log so far now of the one of its name: among
 * these, else among those that lie there already. From then on it stays that log's, so that
 * another log of the same name never takes it over.
 */
function boundFiles(files: readonly KeptFile[], near: readonly KeptFile[]): readonly KeptFile[] {
  return files.map((file) => {
    if (!isDocument(file) || file.of !== undefined) return file;
    const isLogOfIt = (log: KeptFile) => !isDocument(log) && stemOf(log.name) === stemOf(file.name);
    const log = files.find(isLogOfIt) ?? near.find(isLogOfIt);
    return log === undefined ? file : { ...file, of: fingerprint(log) };
  });
}

function isDocument({ name }: KeptFile): boolean {
  return DOCUMENT.test(name);
}

/**
 * Reads a log, its record and the schedule that the record names, among the dropped files or those
 * that come with the page. What a person says in `options` goes before what the record says.
 *
 * @param heard Told how much of the log's bytes is read, 0–1, again and again.
 */
export function readGroup(
  group: FiringGroup,
  options: Omit<LogOptions, "name"> = {},
  heard: (fraction: number) => void = () => {},
): Result<ReadFiring> {
  const record = group.record === null ? ok(null) : recordOf(group.record);
  if (!record.ok) return record;
  const { log, others } = group;
  const known = { ...record.value?.log, ...options, name: log.name };
  const reading = readInParts(log.bytes, known, heard);
  if (!reading.ok) return reading;
  const plan = planOf(record.value?.schedule ?? null, others);
  if (!plan.ok) return plan;
  return ok({ reading: reading.value, record: record.value, plan: plan.value });
}

/** Bytes that are read before it is told how far the reading is. */
const PART_BYTES = 1_000_000;

function readInParts(
  bytes: Uint8Array,
  options: LogOptions,
  heard: (fraction: number) => void,
): Result<LogReading> {
  const reader = logReader(options, splitQuoted);
  for (let at = 0; at < bytes.length; at += PART_BYTES) {
    if (!reader.push(bytes.subarray(at, at + PART_BYTES))) break;
    heard(Math.min(1, (at + PART_BYTES) / bytes.length));
  }
  return reader.end();
}

/** The text of a UTF-8 file; a byte-order mark is dropped. */
export function textOf(file: KeptFile): Result<string> {
  try {
    return ok(new TextDecoder("utf-8", { fatal: true }).decode(file.bytes));
  } catch {
    return failed({
      code: "file/not-text",
      where: file.name,
      what: "it is not UTF-8 text",
      expected: "a text file in UTF-8",
      fix: "save it as UTF-8 from a text editor",
    });
  }
}

function recordOf(file: KeptFile): Result<FiringRecord> {
  const text = textOf(file);
  return text.ok ? parseRecord(text.value, file.name) : text;
}

function planOf(named: string | null, others: readonly KeptFile[]): Result<Schedule | null> {
  if (named === null) return ok(null);
  const wanted = stemOf(named);
  const dropped = others.find(({ name }) => stemOf(name) === wanted);
  if (dropped !== undefined) {
    const text = textOf(dropped);
    return text.ok ? parseSchedule(text.value, dropped.name) : text;
  }
  const shipped = SHIPPED_SCHEDULES.find(({ name }) => stemOf(name) === wanted);
  return shipped === undefined ? ok(null) : parseSchedule(shipped.text, shipped.name);
}

/** A file's name without its folder and its ending. */
function stemOf(name: string): string {
  return name.replace(/^.*[\\/]/, "").replace(/(\.[^.]+)?(\.gz)?$/, "");
}

const QUOTE = '"';

/**
 * Cells of one record that holds quotes, or null when its quotes do not close. It answers as the
 * command's library for this does, which would make the page larger by more than all its styles;
 * `test/page/splitQuoted.test.ts` holds the two against each other.
 *
 * A quote opens a cell that it begins; two stand for one inside; one that neither ends the cell nor
 * began it stands for itself.
 */
export function splitQuoted(record: string, delimiter: string): readonly string[] | null {
  const cells: string[] = [];
  let at = 0;
  for (;;) {
    const cell =
      record[at] === QUOTE ? quotedCell(record, delimiter, at) : plainCell(record, delimiter, at);
    if (cell === null) return null;
    cells.push(cell.text);
    if (cell.end >= record.length) return record === "" ? null : cells;
    at = cell.end + delimiter.length;
  }
}

interface CellRead {
  readonly text: string;
  /** Where the delimiter after it begins, or the record ends. */
  readonly end: number;
}

function plainCell(record: string, delimiter: string, from: number): CellRead {
  const next = record.indexOf(delimiter, from);
  const end = next < 0 ? record.length : next;
  return { text: record.slice(from, end), end };
}

/** A cell that begins with a quote; null when no quote ends it. */
function quotedCell(record: string, delimiter: string, from: number): CellRead | null {
  let text = "";
  let at = from + 1;
  for (;;) {
    const quote = record.indexOf(QUOTE, at);
    if (quote < 0) return null;
    text += record.slice(at, quote);
    const next = quote + 1;
    if (record[next] === QUOTE) {
      text += QUOTE;
      at = next + 1;
    } else if (next === record.length || record.startsWith(delimiter, next))
      return { text, end: next };
    else {
      const rest = plainCell(record, delimiter, next);
      return { text: QUOTE + text + QUOTE + rest.text, end: rest.end };
    }
  }
}

/** A schedule file that comes with the page. */
interface ShippedFile {
  readonly name: string;
  readonly text: string;
}

const FILES: Readonly<Record<string, string>> = import.meta.glob("../../../schedules/*.yaml", {
  query: "?raw",
  import: "default",
  eager: true,
});

/** The schedule files of the project, as they are. */
export const SHIPPED_SCHEDULES: readonly ShippedFile[] = Object.entries(FILES).map(
  ([path, text]) => ({ name: path.replace(/^.*\//, ""), text }),
);
