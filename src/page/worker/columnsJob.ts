import { logOpener } from "../../core/log/openLog.ts";
import { ok, type Result } from "../../core/problem.ts";
import type { KeptFile } from "../bench/KeptFile.ts";
import { splitQuoted } from "./splitQuoted.ts";

/** The names of a log's columns, in order, as far as its first lines are given; why it is no log when it is none. */
export function columnsJob(asked: {
  readonly log: KeptFile;
  readonly delimiter: string | null;
  readonly decimal: "." | "," | null;
  readonly encoding: string | null;
}): Result<readonly string[]> {
  const { log, delimiter, decimal, encoding } = asked;
  const opener = logOpener(
    {
      name: log.name,
      ...(delimiter !== null && { delimiter }),
      ...(decimal !== null && { decimal }),
      ...(encoding !== null && { encoding }),
    },
    splitQuoted,
    () => {},
  );
  opener.push(log.bytes);
  const opened = opener.end();
  return opened.ok ? ok(opened.value.table.columns.map(({ name }) => name)) : opened;
}
