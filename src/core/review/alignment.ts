import { type Curve, shifted } from "../curve/Curve.ts";
import { type CrossingTime, crossingTimes } from "../curve/edgeTimes.ts";
import { failed, ok, type Result } from "../problem.ts";
import { printTemperature } from "../text/quantities.ts";
import { parseTemperature, type TemperatureUnit } from "../units/temperature.ts";
import type { ComparedFiring } from "./compareFirings.ts";

/** Where firings that are laid over each other have their hour 0. */
export type Alignment =
  | { readonly at: "peak" }
  | { readonly at: "start" }
  /** The first time on the way to the peak, or the first time after it. */
  | { readonly at: "rising" | "falling"; readonly tempC: number };

/** Lined up at the peak, as they are when nothing is said. */
export const AT_PEAK: Alignment = { at: "peak" };

/** What a way to line firings up is called, for chart and report. */
interface AlignmentWords {
  readonly title: string;
  readonly subtitle: string;
  /** To end "time from …". */
  readonly zero: string;
  /** To end "the firings laid over each other …". */
  readonly where: string;
}

/** A way to line firings up, in words. */
export function alignmentWords(alignment: Alignment, unit: TemperatureUnit): AlignmentWords {
  if (alignment.at === "peak")
    return {
      title: "Firings aligned at the peak",
      subtitle: "Each firing with its peak at 0 h",
      zero: "the peak",
      where: "at their peaks",
    };
  if (alignment.at === "start")
    return {
      title: "Firings aligned at the start",
      subtitle: "Each log with its first reading at 0 h",
      zero: "the first reading",
      where: "from the first readings of their logs",
    };
  const { at, tempC } = alignment;
  const temp = printTemperature(tempC, unit);
  const way = at === "rising" ? "rises" : "falls";
  return {
    title: `Firings aligned at ${temp}, ${at}`,
    subtitle: `Each firing at 0 h as it first ${way} through ${temp}${at === "falling" ? " after its peak" : ""}`,
    zero: `${temp}, ${at}`,
    where: `where they first ${at === "rising" ? "rise" : "fall"} through ${temp}${at === "falling" ? " after the peak" : ""}`,
  };
}

/** Temperatures that firings can be lined up at [°C]: what a kiln has. */
const LOWEST_C = 0;
const HIGHEST_C = 1500;

/**
 * Where firings are lined up, from what a person wrote: `peak`, `start`, `600C`, `"1100 F rising"`.
 * A temperature without a direction is meant on the way down, where cracks are made.
 *
 * @returns `firing/not-an-alignment` for anything else, and outside of 0 to 1500 °C.
 */
export function parseAlignment(
  text: string,
  context: { readonly unit: TemperatureUnit; readonly where: string },
): Result<Alignment> {
  const said = text.trim().toLowerCase();
  if (said === "peak" || said === "start") return ok({ at: said });
  const tempC = parseAlignmentTemperature(
    text.replace(/\b(?:rising|falling)\b/i, "").trim(),
    context,
  );
  if (!tempC.ok) return tempC;
  return ok({ at: /\brising\b/.test(said) ? "rising" : "falling", tempC: tempC.value });
}

/**
 * A temperature that firings are lined up at [°C], from what a person wrote.
 * @returns `firing/not-an-alignment` for anything else, and outside of 0 to 1500 °C.
 */
export function parseAlignmentTemperature(
  text: string,
  context: { readonly unit: TemperatureUnit; readonly where: string },
): Result<number> {
  const tempC = parseTemperature(text, context);
  if (tempC.ok && tempC.value >= LOWEST_C && tempC.value <= HIGHEST_C) return tempC;
  return failed({
    code: "firing/not-an-alignment",
    where: context.where,
    what: `firings cannot be lined up at “${text}”`,
    expected: "peak, start, or a temperature from 0 to 1500 °C",
    fix: 'write 600C, or "600C rising" for the way up',
  });
}

/** A firing laid where others are laid over it. */
export interface LinedUp {
  /** Its hour 0, from its peak [s]; negative before the peak. */
  readonly secondsFromPeak: number;
  /** Its hour 0, from its first reading [s]. */
  readonly secondsFromStart: number;
  /** With time 0 there. */
  readonly curve: Curve;
}

/** A firing lined up; null when its log never passes that temperature on that way. */
export function linedUp({ aligned }: ComparedFiring, alignment: Alignment): LinedUp | null {
  const start = aligned.timesSeconds[0]!;
  const zero = zeroOf(aligned, alignment);
  if (zero === null) return null;
  return {
    secondsFromPeak: zero,
    secondsFromStart: zero - start,
    curve: zero === 0 ? aligned : shifted(aligned, -zero),
  };
}

/** On a Curve with its peak at 0. */
function zeroOf(curve: Curve, alignment: Alignment): number | null {
  switch (alignment.at) {
    case "peak":
      return 0;
    case "start":
      return curve.timesSeconds[0]!;
    case "rising":
      return firstOf(curve, alignment.tempC, ({ seconds, direction }) => {
        return direction === "heating" && seconds <= 0;
      });
    case "falling":
      return firstOf(curve, alignment.tempC, ({ seconds, direction }) => {
        return direction === "cooling" && seconds >= 0;
      });
  }
}

function firstOf(
  curve: Curve,
  tempC: number,
  isMeant: (crossing: CrossingTime) => boolean,
): number | null {
  return crossingTimes(curve, tempC).find(isMeant)?.seconds ?? null;
}
