import type { ConeSeries, Heatwork, TableSeries } from "../../cones/cone.ts";
import { printDifference } from "../../units/print.ts";
import type { TemperatureUnit } from "../../units/temperature.ts";

/** Whether a Curve was measured or is planned; the sentences about it change their tense. */
export type Tense = "was" | "will be";

const SERIES_NAMES: Readonly<Record<TableSeries, string>> = {
  "self-supporting": "self-supporting cones",
  "self-supporting-iron-free": "self-supporting cones, iron-free",
  large: "large cones",
  "large-iron-free": "large cones, iron-free",
  small: "small cones",
  "large-legacy": "large cones, older table",
  "fairchild-peters-1926": "cones as measured by Fairchild and Peters, 1926",
  pce: "cones for refractories (PCE)",
  "seger-jis": "Seger cones, Japanese standard",
  "seger-european": "Seger cones, European",
};

/** A cone series in words. */
export function seriesName(series: string): string {
  return SERIES_NAMES[series as ConeSeries] ?? series;
}

/** Where the heat stands among the cones, as a potter would say it. */
export function positionSentence(heatwork: Heatwork, tense: Tense): string {
  const { cone, fraction, next } = heatwork.position;
  const isMeasured = tense === "was";
  const down = isMeasured ? "was down" : "goes down";
  if (cone === null) {
    const softest = heatwork.cones[0]?.cone;
    const which = softest === undefined ? "the softest cone" : `cone ${softest}, the softest`;
    return `Not even ${which} of the series, ${down}.`;
  }
  if (next === null || fraction === null)
    return `Cone ${cone} ${down}; the series has no harder cone to measure the rest by.`;
  if (fraction < 0.1) return `Cone ${cone} ${isMeasured ? "was just down" : "just goes down"}.`;
  const carried = isMeasured ? "carried on" : "carries on";
  return `Cone ${cone} ${down}, and the heat ${carried} ${shareWords(fraction)} of the way to cone ${next}.`;
}

/** What the ± beside a cone means, and what is allowed for; says so when no ± can be given. */
export function plusMinusSentence(heatwork: Heatwork, unit: TemperatureUnit): string {
  const allowed = usualText(heatwork, unit);
  if (heatwork.sigmaCones === null)
    return `How far off this may be is not known, so no ± is given.${allowed}`;
  return `Two firings in three lie within ${plusMinus(heatwork.sigmaCones)} cones of this: cone model, thermocouple and place in the kiln taken together.${allowed}`;
}

/** What kilns are usually out by, where it was allowed for and is worth a word. */
function usualText({ offsetIs, offsetK }: Heatwork, unit: TemperatureUnit): string {
  if (offsetIs !== "usual" || Math.abs(offsetK) < 0.5) return "";
  return ` Kilns usually run a little hotter for the cone than they read; ${printDifference(offsetK, unit)} is allowed for, and witness cones would tell what yours does.`;
}

/** A position with its ±: `cone 5 + 60 % (± 0.6 cones)`. */
export function coneLabel(heatwork: Heatwork): string {
  const { label } = heatwork.position;
  return heatwork.sigmaCones === null
    ? label
    : `${label} (± ${plusMinus(heatwork.sigmaCones)} cones)`;
}

/** One sigma in cones, to a tenth, never shown as nothing. */
export function plusMinus(sigmaCones: number): string {
  return Math.max(0.1, sigmaCones).toFixed(1);
}

function shareWords(fraction: number): string {
  if (fraction < 0.18) return "a little";
  if (fraction < 0.29) return "about a quarter";
  if (fraction < 0.42) return "about a third";
  if (fraction < 0.58) return "about half";
  if (fraction < 0.71) return "about two thirds";
  return fraction < 0.9 ? "about three quarters" : "nearly all";
}
