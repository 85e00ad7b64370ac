/** A firing at one reading a minute over a day, as text; each number of a kiln's firings is another one. */
export function minuteLog(number: number, rows = 1440): string {
  const start = Date.UTC(2024, 0, 1 + (number % 700), 17, 5);
  const lines: string[] = ["Time,Kiln (°C)"];
  for (let i = 0; i < rows; i++) {
    const stamp = new Date(start + i * 60_000).toISOString().slice(0, 19).replace("T", " ");
    lines.push(`${stamp},${(firedC(i / 60, number) + flicker(i, number)).toFixed(1)}`);
  }
  return `${lines.join("\n")}\n`;
}

/** Up at 100 to 160 °C/h to 1150 to 1230 °C, half an hour there, then Newton's cooling to 25 °C. */
function firedC(hours: number, number: number): number {
  const rateCPerHour = 100 + ((number * 7) % 61);
  const peakC = 1150 + ((number * 13) % 81);
  const top = (peakC - 20) / rateCPerHour;
  if (hours < top) return 20 + rateCPerHour * hours;
  return hours < top + 0.5 ? peakC : 25 + (peakC - 25) * Math.exp(-(hours - top - 0.5) / 5);
}

/** Noise of ± 0.3 K that is the same every time. */
function flicker(row: number, number: number): number {
  return (((row * 7919 + number * 104_729) % 601) - 300) / 1000;
}
