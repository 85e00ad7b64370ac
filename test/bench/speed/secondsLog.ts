/** A firing of three zones at one reading a second, as text: `2026-03-14 17:05:00,20.5,19.8,20.1`. */
export function secondsLog(rows: number): string {
  const lines: string[] = ["Time,Top (°C),Middle (°C),Bottom (°C)"];
  const start = Date.UTC(2026, 2, 14, 17, 5);
  for (let i = 0; i < rows; i++) {
    const stamp = new Date(start + i * 1000).toISOString().slice(0, 19).replace("T", " ");
    const middle = firedC((i / rows) * 24);
    const zones = [4, 0, -6].map((off, z) => (middle + off + flicker(i, z)).toFixed(1));
    lines.push(`${stamp},${zones.join(",")}`);
  }
  return `${lines.join("\n")}\n`;
}

/** Up at 140 °C/h, half an hour at 1210 °C, then Newton's cooling to 25 °C. */
function firedC(hours: number): number {
  if (hours < 8.5) return 20 + 140 * hours;
  return hours < 9 ? 1210 : 25 + 1185 * Math.exp(-(hours - 9) / 5);
}

/** Noise of ± 0.3 K that is the same every time. */
function flicker(row: number, zone: number): number {
  return (((row * 7919 + zone * 104_729) % 601) - 300) / 1000;
}
