import type { Finding, Severity } from "../../findings/Finding.ts";
import type { Crossing } from "../../ware/Crossing.ts";
import { crossingsOf } from "../../ware/crossingsOf.ts";
import { QUARTZ_BAND } from "../../ware/inversionBands.ts";
import { finding, type Judged } from "./Judged.ts";
import { cristobaliteLimit, isDemanding, quartzLimit } from "./ware.ts";

/** How far over its limit thick or wide ware, and ordinary ware, is only a caution. */
const DEMANDING_CAUTION = 1.5;
const ORDINARY_CAUTION = 3;

/** Planned rates are exact; a limit of 50 met at 50.01 is met. */
const ROUNDING = 1.01;

/** Cooling through both inversions, the fall by itself after the schedule included. */
export function checkCooling(judged: Judged): readonly Finding[] {
  return crossingsOf(judged.untilCool, ["cooling"]).flatMap((crossing) =>
    crossing.fastestCPerHour === null || crossing.limitCPerHour === null
      ? []
      : [judgedCrossing(judged, crossing, Math.abs(crossing.fastestCPerHour))],
  );
}

function judgedCrossing(judged: Judged, crossing: Crossing, fastest: number): Finding {
  const { ware } = judged.schedule;
  const rule = crossing.limitCPerHour as number;
  const limit =
    crossing.band === QUARTZ_BAND.name ? quartzLimit(ware, rule) : cristobaliteLimit(ware, rule);
  const over = fastest / limit;
  const cautionUpTo = isDemanding(ware) ? DEMANDING_CAUTION : ORDINARY_CAUTION;
  const severity: Severity =
    over <= ROUNDING ? "note" : over <= cautionUpTo ? "caution" : "warning";
  const start = crossing.startSeconds ?? judged.endSeconds;
  const end = crossing.endSeconds ?? judged.endSeconds;
  const byItself = start >= judged.endSeconds - 1 ? ", falling by itself after the schedule" : "";
  const mean = crossing.meanCPerHour === null ? "" : ", {mean} on average";
  return finding({
    topic: `cooling through ${crossing.band.replace(" inversion", "")}`,
    severity,
    statement: `The kiln cools through the ${crossing.band} at up to {fastest}${mean}${byItself}; ${
      severity === "note" ? "that is within the {limit}" : "that is above the {limit}"
    } that can be argued for with ${wareWords(judged)}.`,
    evidence: [
      { name: "fastest", value: fastest, kind: "rate" },
      ...(crossing.meanCPerHour === null
        ? []
        : ([{ name: "mean", value: Math.abs(crossing.meanCPerHour), kind: "rate" }] as const)),
      { name: "limit", value: limit, kind: "rate" },
      { name: "high", value: crossing.fromC, kind: "temperature" },
      { name: "low", value: crossing.toC, kind: "temperature" },
    ],
    basis: `${crossing.limitBasis ?? ""}${
      limit === rule
        ? ""
        : "; scaled to this ware from 60 °C/h at 12 mm, in inverse proportion to thickness"
    }`,
    advice: severity === "note" ? "" : "Programme {limit} or less from {high} to {low}.",
    span: end > start ? { fromSeconds: start, toSeconds: end } : null,
  });
}

function wareWords(judged: Judged): string {
  const { ware } = judged.schedule;
  if (isDemanding(ware)) return "thick or wide ware";
  return ware.thickestMm === null ? "ware of unknown thickness" : "ware of this thickness";
}
