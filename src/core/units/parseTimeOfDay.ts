const TIME = /^(\d{1,2})(?::(\d{2})(?::(\d{2}))?)?(?:\s*([ap])\.?m\.?)?$/i;

/**
 * Seconds after midnight of a time of day as a person writes it: `18:00`, `3:40pm`, `6 pm`,
 * `07:05:30`; null for anything else, a lone number included.
 */
export function parseTimeOfDay(text: string): number | null {
  const [, hour, minutes, seconds = "0", half] = TIME.exec(text.trim()) ?? [];
  if (hour === undefined || (minutes === undefined && half === undefined)) return null;
  const hours = Number(hour);
  if (Number(minutes ?? 0) > 59 || Number(seconds) > 59) return null;
  if (half === undefined ? hours > 23 : hours < 1 || hours > 12) return null;
  const ofDay = half === undefined ? hours : (hours % 12) + (half.toLowerCase() === "p" ? 12 : 0);
  return ofDay * 3600 + Number(minutes ?? 0) * 60 + Number(seconds);
}
