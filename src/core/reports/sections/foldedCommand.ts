/** Widest line of a command [characters], the indent of a report and the mark at its end left room for. */
const WIDEST = 74;

/** A shell command on lines that fit a report, each but the last ended by the shell's own mark. */
export function foldedCommand(command: string): readonly string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of withValues(command.match(/(?:'[^']*'|\\'|[^\s'\\]+|\\)+/g) ?? [])) {
    if (line !== "" && line.length + 1 + word.length > WIDEST) {
      lines.push(`${line} \\`);
      line = `  ${word}`;
    } else line = line === "" ? word : `${line} ${word}`;
  }
  return [...lines, line];
}

/** Each option together with its first value, so that no line ends between the two. */
function withValues(words: readonly string[]): readonly string[] {
  const kept: string[] = [];
  for (const word of words) {
    const last = kept.at(-1);
    if (last?.startsWith("-") && !last.includes(" ") && !word.startsWith("-"))
      kept[kept.length - 1] = `${last} ${word}`;
    else kept.push(word);
  }
  return kept;
}
