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
