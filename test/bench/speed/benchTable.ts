/** A line of the table: what was measured beside what, or why it was not. */
export type BenchRow =
  | {
      readonly what: string;
      readonly took: string;
      readonly against: string;
      readonly ratio: number;
      /** What the ratio should be; null where nothing is asked. */
      readonly bar: { readonly kind: "at most" | "at least"; readonly value: number } | null;
    }
  | { readonly what: string; readonly skipped: string };

/** Rows of a bench as a Markdown table. */
export function benchTable(rows: readonly BenchRow[]): string {
  const lines = [["what", "took", "beside", "ratio", "bar", ""], ...rows.map(cellsOf)];
  const widths = lines[0]?.map((_, c) => Math.max(...lines.map((cells) => cells[c]?.length ?? 0)));
  const padded = lines.map((cells) => cells.map((cell, c) => cell.padEnd(widths?.[c] ?? 0)));
  const rule = (widths ?? []).map((width) => "-".repeat(Math.max(3, width)));
  return [padded[0], rule, ...padded.slice(1)]
    .map((cells) => `| ${(cells ?? []).join(" | ")} |`)
    .join("\n");
}

function cellsOf(row: BenchRow): readonly string[] {
  if ("skipped" in row) return [row.what, `skipped: ${row.skipped}`, "", "", "", ""];
  const { what, took, against, ratio, bar } = row;
  const shown = ratio.toFixed(2);
  if (bar === null) return [what, took, against, shown, "", ""];
  const isMet = bar.kind === "at most" ? ratio <= bar.value : ratio >= bar.value;
  return [what, took, against, shown, `${bar.kind} ${bar.value}`, isMet ? "met" : "missed"];
}
