/** Readings as a scanner for one format alone finds them: an upper bound of what is possible. */
export interface FixedReadings {
  /** Wall time, counted from 1970 [s]. */
  readonly seconds: Float64Array;
  readonly temps: readonly [Float64Array, Float64Array, Float64Array];
  readonly rows: number;
}

/**
 * Reads rows of exactly `2026-03-14 17:05:00,20.5,19.8,20.1` below one header line. No other format,
 * no check of any kind: a yardstick for the reader that takes every format.
 */
export function fixedScanner(bytes: Uint8Array): FixedReadings {
  const most = Math.ceil(bytes.length / 30);
  const seconds = new Float64Array(most);
  const temps = [new Float64Array(most), new Float64Array(most), new Float64Array(most)] as const;
  let at = bytes.indexOf(10) + 1;
  let row = 0;
  while (at < bytes.length) {
    seconds[row] = secondsAt(bytes, at);
    at += 20;
    for (const column of temps) {
      const end = endOfCell(bytes, at);
      column[row] = numberIn(bytes, at, end);
      at = end + 1;
    }
    row++;
  }
  return { seconds, temps, rows: row };
}

function secondsAt(bytes: Uint8Array, at: number): number {
  const year = two(bytes, at) * 100 + two(bytes, at + 2);
  const days = Date.UTC(year, two(bytes, at + 5) - 1, two(bytes, at + 8)) / 1000;
  return days + two(bytes, at + 11) * 3600 + two(bytes, at + 14) * 60 + two(bytes, at + 17);
}

function two(bytes: Uint8Array, at: number): number {
  return (bytes[at] as number) * 10 + (bytes[at + 1] as number) - 528;
}

function endOfCell(bytes: Uint8Array, from: number): number {
  let at = from;
  while (bytes[at] !== 44 && bytes[at] !== 10) at++;
  return at;
}

function numberIn(bytes: Uint8Array, from: number, to: number): number {
  let value = 0;
  let point = to - 1;
  for (let at = from; at < to; at++) {
    if (bytes[at] === 46) point = at;
    else value = value * 10 + (bytes[at] as number) - 48;
  }
  return value / 10 ** (to - 1 - point);
}
