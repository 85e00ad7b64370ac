import { printTemperature } from "../units/print.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import type { Alignment } from "./Alignment.ts";

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
