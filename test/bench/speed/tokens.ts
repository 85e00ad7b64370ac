import { byteTape } from "../../../src/core/log/text/bytes.ts";
import { cellSplitter } from "../../../src/core/log/text/cells.ts";
import { findLayout } from "../../../src/core/log/text/layout.ts";
import { recordScanner } from "../../../src/core/log/text/recordScanner.ts";
import { recordsOf } from "../../../src/core/log/text/records.ts";
import { tableBuilder } from "../../../src/core/log/text/tableBuilder.ts";
import { splitQuoted } from "../../../src/node/readLogChunks.ts";
import { fixedScanner } from "./fixedScanner.ts";
import { secondsLog } from "./secondsLog.ts";

/**
 * What it takes to turn bytes into columns, by one of two ways: `tsx tokens.ts fixed|ours ROWS`. Each
 * run is the first in its own process, as it is for a person; prints milliseconds.
 */
function main(): void {
  const [, , how = "ours", rows = "86400"] = process.argv;
  console.log(JSON.stringify({ wallMs: run(how, Number(rows)) }));
}

/** Milliseconds of one way through a log. */
function run(how: string, rows: number): number {
  const bytes = new TextEncoder().encode(secondsLog(rows));
  const began = performance.now();
  const found = how === "fixed" ? fixedScanner(bytes).rows : rowsByReader(bytes);
  const took = performance.now() - began;
  if (found !== rows) throw new RangeError(`${how}: ${found} of ${rows} rows`);
  return took;
}

function rowsByReader(bytes: Uint8Array): number {
  const split = cellSplitter(",", splitQuoted);
  const { texts } = recordsOf(new TextDecoder().decode(bytes.subarray(0, 10_000)), ",");
  const layout = findLayout(texts, split, ".");
  if (layout === null) throw new RangeError("no table");
  const builder = tableBuilder({
    layout,
    split,
    delimiter: ",",
    decimal: ".",
    openers: ",",
    textAt: () => "",
  });
  let record = 0;
  const scanner = recordScanner(
    {
      quick: (all, from, line) =>
        record < layout.bodyStart ? -1 : builder.addBytes(all, from, line),
      text: (text, line) => {
        if (record++ >= layout.bodyStart) builder.addText(text, line);
      },
      tooLong: () => undefined,
    },
    { decode: (piece) => new TextDecoder().decode(piece), openers: ",", tape: byteTape() },
  );
  scanner.push(bytes);
  scanner.end();
  return builder.finish().rowCount;
}

main();
