/** What the lines above the table say about it. */
export interface PreambleFacts {
  /** Sampling step [s], or null. */
  readonly intervalSeconds: number | null;
  /** Scale of temperature that is named, when only one is. */
  readonly unit: "C" | "F" | "K" | null;
  readonly text: string;
}

const SECONDS_PER: Readonly<Record<string, number>> = { ms: 0.001, s: 1, m: 60, h: 3600 };

/** Facts from the lines above the table, whatever their form. */
export function preambleFacts(lines: readonly string[]): PreambleFacts {
  const text = lines.join("\n");
  return { intervalSeconds: intervalIn(text), unit: temperatureUnitIn(text), text };
}

function intervalIn(text: string): number | null {
  const clock =
    /(?:interval|period|sampl\w*|logg\w*|record\w*|step|cycle)\W{0,20}?(\d{1,2}):(\d{2}):(\d{2})(?!\d)/i.exec(
      text.replace(/\d{4}-\d{2}-\d{2}[ T]\d{2}:\d{2}(:\d{2})?/g, ""),
    );
  if (clock !== null) {
    const seconds = Number(clock[1]) * 3600 + Number(clock[2]) * 60 + Number(clock[3]);
    if (seconds > 0) return seconds;
  }
  const unitBefore =
    /(?:interval|period|rate|cycle|step|every)\w*\W{0,4}[([]?(ms|s|secs?|seconds?|m|mins?|minutes?|h|hours?)[)\]]?\W{1,6}(\d+(?:[.,]\d+)?)[\s,;|"]*$/im.exec(
      text,
    );
  if (unitBefore !== null) return spanOf(unitBefore[2] as string, unitBefore[1] as string);
  const unitAfter =
    /(?:interval|period|rate|cycle|step|every|sampl\w*)[^\d\n]{0,24}(\d+(?:[.,]\d+)?)[\s;,"\t|]*(ms|s|secs?|seconds?|m|mins?|minutes?|h|hrs?|hours?|hz)\b/i.exec(
      text,
    );
  return unitAfter === null ? null : spanOf(unitAfter[1] as string, unitAfter[2] as string);
}

function spanOf(amount: string, unit: string): number | null {
  const value = Number(amount.replace(",", "."));
  const word = unit.toLowerCase();
  if (!(value > 0)) return null;
  if (word === "hz") return 1 / value;
  const factor = SECONDS_PER[word === "ms" ? "ms" : (word[0] as string)];
  return factor === undefined ? null : value * factor;
}

/** The one scale of temperature that a text names, or null when it names none or several. */
export function temperatureUnitIn(text: string): "C" | "F" | "K" | null {
  const found = new Set<"C" | "F" | "K">();
  if (/[°º˚�]\s?C\b|℃|\bdeg\.?\s?C\b|celsius|centigrade|[([]\s?C\s?[)\]]|\b_?degC\b/i.test(text))
    found.add("C");
  if (/[°º˚�]\s?F\b|℉|\bdeg\.?\s?F\b|fahrenheit|[([]\s?F\s?[)\]]|\b_?degF\b/i.test(text))
    found.add("F");
  if (/\bkelvin\b|[([]\s?K\s?[)\]]/i.test(text)) found.add("K");
  if (/\bunits?\W{1,4}C\b|\btemp\w*\W{1,6}C\b/i.test(text)) found.add("C");
  if (/\bunits?\W{1,4}F\b|\btemp\w*\W{1,6}F\b/i.test(text)) found.add("F");
  return found.size === 1 ? ([...found][0] as "C" | "F" | "K") : null;
}
