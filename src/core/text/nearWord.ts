/**
 * The word of a list that is nearest to a mistyped one, when it is near enough to suggest.
 * Distance counts letters changed, added, dropped or swapped with their neighbour; at most a third
 * of the word's length, and at most 3.
 */
export function nearWord(word: string, known: readonly string[]): string | null {
  const lower = word.toLowerCase();
  let best: string | null = null;
  let bestDistance = Math.min(3, Math.max(1, Math.ceil(word.length / 3))) + 1;
  for (const candidate of known) {
    const distance = editDistance(lower, candidate.toLowerCase());
    if (distance < bestDistance) {
      best = candidate;
      bestDistance = distance;
    }
  }
  return best;
}

function editDistance(a: string, b: string): number {
  if (Math.abs(a.length - b.length) > 3) return Number.POSITIVE_INFINITY;
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, j) => j)];
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    const above = rows[i - 1]!;
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let least = Math.min(above[j]! + 1, row[j - 1]! + 1, above[j - 1]! + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, (rows[i - 2]![j - 2] as number) + 1);
      row.push(least);
    }
    rows.push(row);
  }
  return (rows[a.length] as number[])[b.length]!;
}
