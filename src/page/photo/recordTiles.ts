import { parseRecordFile } from "../../core/firing/record.ts";
import type { FiringRecordFile } from "../../core/firing/recordFormat.ts";
import { recordYaml } from "../../core/firing/recordYaml.ts";
import type { TrialEntry } from "../../core/photo/trialEntry.ts";
import { failed, ok, type Result } from "../../core/problem.ts";
import type { KeptFile } from "../bench/KeptFile.ts";
import type { Work } from "../bench/state.ts";
import { textOf } from "../worker/readGroup.ts";

/** A test piece of a record that lies on the bench. */
export interface RecordTile {
  readonly record: KeptFile;
  readonly at: number;
  readonly piece: string;
}

interface ReadRecord {
  readonly text: string;
  readonly file: FiringRecordFile;
}

const READ = new WeakMap<KeptFile, Result<ReadRecord>>();

function readRecord(record: KeptFile): Result<ReadRecord> {
  const known = READ.get(record);
  if (known !== undefined) return known;
  const text = textOf(record);
  const file = text.ok ? parseRecordFile(text.value, record.name) : text;
  const read = text.ok && file.ok ? ok({ text: text.value, file: file.value }) : file;
  READ.set(record, read as Result<ReadRecord>);
  return read as Result<ReadRecord>;
}

/** All test pieces of the records on the Compare table and the Review table. */
export function recordTiles({ compare, review }: Work): readonly RecordTile[] {
  const records = [...compare.files, ...(review.record === null ? [] : [review.record])];
  return records
    .filter(({ name }) => /\.(ya?ml|json)$/i.test(name))
    .flatMap((record) => {
      const read = readRecord(record);
      const trials = read.ok ? (read.value.file.trials ?? []) : [];
      return trials.map(({ piece }, at) => ({ record, at, piece }));
    });
}

/** The work with a photograph's spacing on a test piece; the problems that its record would have. */
export function withEntry(work: Work, tile: RecordTile, entry: TrialEntry): Result<Work> {
  const read = readRecord(tile.record);
  if (!read.ok) return read;
  const { text, file } = read.value;
  const trials = (file.trials ?? []).map((trial, at) =>
    at === tile.at ? withSpacing(trial, entry) : trial,
  );
  const next = recordYaml({ ...file, trials }, text);
  const check = parseRecordFile(next, tile.record.name);
  if (!check.ok) return failed(...check.problems);
  const record = { name: tile.record.name, bytes: new Uint8Array(new TextEncoder().encode(next)) };
  const swapped = (each: KeptFile) => (each === tile.record ? record : each);
  return ok({
    ...work,
    compare: { ...work.compare, files: work.compare.files.map(swapped) },
    review: { ...work.review, record: work.review.record && swapped(work.review.record) },
  });
}

type WrittenTrial = NonNullable<FiringRecordFile["trials"]>[number];

/** Earlier counts of the piece give way, since a record takes one spacing of a piece. */
function withSpacing(trial: WrittenTrial, entry: TrialEntry): WrittenTrial {
  const { crackSpacing, spacingRange, spacingFrom, pattern, lines, note, ...rest } = trial;
  const notes = note === undefined || note === entry.note ? entry.note : `${note}; ${entry.note}`;
  return { ...rest, ...entry, note: notes };
}

/** Whether the piece has a spacing already, which the photograph's would replace. */
export function hasSpacing({ record, at }: RecordTile): boolean {
  const read = readRecord(record);
  const trial = read.ok ? read.value.file.trials?.[at] : undefined;
  return trial?.crackSpacing !== undefined || trial?.lines !== undefined;
}
