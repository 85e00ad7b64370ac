import type { Caution } from "../../../src/core/cautions/cautions.ts";
import type { ConeState, Heatwork } from "../../../src/core/cones/cone.ts";
import { type Curve, makeCurve } from "../../../src/core/curve/Curve.ts";
import type { Finding } from "../../../src/core/findings/Finding.ts";
import type { FoundSegment, ZoneReview } from "../../../src/core/firing/FiringFacts.ts";
import type { Crossing } from "../../../src/core/ware/inversions.ts";

/** Hours as seconds, so that samples read like a firing log. */
export const hours = (value: number): number => Math.round(value * 3600);

/** A measured firing of 26 h with a gap of 15 min on the way up. */
export function sampleCurve(shiftC = 0): Curve {
  const points: readonly (readonly [number, number])[] = [
    [0, 21],
    [1.5, 110],
    [2, 111],
    [5, 555],
    [5.25, 592],
    [8.5, 1081],
    [10.25, 1186],
    [10.42, 1187],
    [13, 620],
    [14.4, 520],
    [18, 280],
    [20.1, 170],
    [26, 64],
  ];
  return makeCurve(
    points.map(([at]) => hours(at)),
    points.map(([, tempC]) => tempC + shiftC),
    [{ fromSeconds: hours(5), toSeconds: hours(5.25) }],
  );
}

const cone = (
  name: string,
  marginK: number,
  bend: ConeState["bend"],
  downAtSeconds: number | null,
): ConeState => ({
  cone: name,
  heatwork: Math.exp(marginK / 12),
  marginK,
  marginSigmaK: 4.6,
  bend,
  downAtSeconds,
});

/** Heat that put cone 5 down and went some way to cone 6. */
export function sampleHeatwork(overrides: Partial<Heatwork> = {}): Heatwork {
  return {
    series: "self-supporting",
    position: { cone: "5", fraction: 0.4, next: "6", label: "cone 5 + 40 %", index: 4.4 },
    sigmaCones: 0.58,
    modelSigmaCones: 0.21,
    offsetK: 0,
    offsetSigmaK: 12,
    offsetIs: "none",
    peakC: 1187.3,
    lastHundredCPerHour: 59.7,
    effectiveRateCPerHour: 41.2,
    extrapolations: [],
    cones: [
      cone("3", 41.3, "well past down", hours(9.72)),
      cone("4", 22.8, "well past down", hours(9.95)),
      cone("5", 9.4, "down", hours(10.18)),
      cone("6", -13.2, "starting to bend", null),
      cone("7", -31.9, "upright", null),
    ],
    ...overrides,
  };
}

/** A whole passage of the quartz inversion on the way down, too fast by the rule. */
export function sampleCrossing(overrides: Partial<Crossing> = {}): Crossing {
  return {
    band: "quartz inversion",
    direction: "cooling",
    fromC: 620,
    toC: 520,
    measured: "whole",
    startSeconds: hours(13),
    endSeconds: hours(14.4),
    seconds: hours(1.4),
    meanCPerHour: -71.4,
    fastestCPerHour: -83.6,
    fastestAtSeconds: hours(13.2),
    windowMinutes: 10,
    recrossings: 0,
    notes: [],
    limitCPerHour: 50,
    limitFromC: 600,
    limitToC: 540,
    limitBasis: "computed: at this rate the stress in the ware is half its strength",
    limitMeantFor: "stoneware cone 6, wall 14 mm, base 14 mm",
    isCristobalitic: true,
    severity: "caution",
    openedC: null,
    strainRatio: 0.84,
    strainRatioLow: 0.4,
    strainRatioHigh: 1.7,
    ...overrides,
  };
}

/** Both inversions, up and down: one never reached, one hidden in part, one too fast. */
export function sampleCrossings(): readonly Crossing[] {
  const heating = {
    direction: "heating",
    limitCPerHour: null,
    limitFromC: null,
    limitToC: null,
    limitBasis: null,
    limitMeantFor: null,
    severity: null,
    strainRatio: null,
    strainRatioLow: null,
    strainRatioHigh: null,
  } as const;
  return [
    sampleCrossing({
      ...heating,
      band: "cristobalite inversion",
      fromC: 170,
      toC: 280,
      meanCPerHour: 147.9,
      fastestCPerHour: 152.2,
      fastestAtSeconds: hours(2.8),
    }),
    sampleCrossing({
      ...heating,
      fromC: 520,
      toC: 620,
      measured: "partly",
      startSeconds: null,
      endSeconds: null,
      seconds: null,
      meanCPerHour: null,
      fastestCPerHour: 151.1,
      fastestAtSeconds: hours(5.4),
      notes: ["nothing was measured for 15 min of it, so the mean is not given"],
    }),
    sampleCrossing({ strainRatio: 0.62, strainRatioLow: 0.31, strainRatioHigh: 1.2 }),
    sampleCrossing({
      band: "cristobalite inversion",
      fromC: 280,
      toC: 170,
      meanCPerHour: -39.4,
      fastestCPerHour: -46.2,
      fastestAtSeconds: hours(18.4),
      limitBasis: "weak: no published rate was found for this inversion",
      limitMeantFor: "ware of unknown thickness",
    }),
  ];
}

/** A finding; a note without advice unless told otherwise. */
export function sampleFinding(overrides: Partial<Finding> = {}): Finding {
  return {
    topic: "hold at the peak",
    severity: "note",
    statement: "It held within {tolerance} of the peak for {held}.",
    evidence: [
      { name: "tolerance", value: 5, kind: "difference" },
      { name: "held", value: 1320, kind: "duration" },
    ],
    basis: "measured on the cleaned readings",
    advice: "",
    zone: null,
    span: null,
    ...overrides,
  };
}

/** One finding of each severity. */
export function sampleFindings(): readonly Finding[] {
  return [
    sampleFinding(),
    sampleFinding({
      topic: "cooling through quartz",
      severity: "warning",
      statement:
        "It cooled through the quartz inversion at up to {fastest}, and the limit for ware of unknown make is {limit}.",
      evidence: [
        { name: "fastest", value: -83.6, kind: "rate" },
        { name: "limit", value: 50, kind: "rate" },
        { name: "top", value: 620, kind: "temperature" },
        { name: "bottom", value: 520, kind: "temperature" },
      ],
      basis: "textbook rule of 50 °C/h through 573 °C (Fraser 1986, at second hand)",
      advice: "Slow the cooling from {top} to {bottom} to {limit} or less.",
      zone: "upper",
      span: { fromSeconds: hours(13), toSeconds: hours(14.4) },
    }),
    sampleFinding({
      topic: "gap in the log",
      severity: "caution",
      statement: "Nothing was measured for {gap} while the quartz inversion was on its way up.",
      evidence: [{ name: "gap", value: 900, kind: "duration" }],
      basis: "times of the readings",
      advice: "Check the logger's battery and its cable before the next firing.",
      span: { fromSeconds: hours(5), toSeconds: hours(5.25) },
    }),
  ];
}

/** What can hurt after a crackle firing, one of them said twice by two rooms. */
export function sampleCautions(): readonly Caution[] {
  const opening = {
    topic: "opening",
    text: "Leave the kiln shut until it is under 60 °C: hot ware dunts in cold air, and it burns.",
  };
  return [
    opening,
    {
      topic: "crackle and food",
      text: "A crazed surface holds food and germs. Keep crackle ware for show unless a laboratory has tested it.",
    },
    opening,
  ];
}

const segment = (
  kind: FoundSegment["kind"],
  [from, to]: readonly [number, number],
  [fromC, toC]: readonly [number, number],
): FoundSegment => ({
  kind,
  startSeconds: hours(from),
  endSeconds: hours(to),
  fromC,
  toC,
  rateCPerHour: (toC - fromC) / (to - from),
  stable: kind === "hold" && from > 10,
});

/** One thermocouple of the sample firing. */
export function sampleZone(overrides: Partial<ZoneReview> = {}): ZoneReview {
  return {
    name: "upper",
    curve: sampleCurve(),
    peakC: 1187.3,
    peakAtSeconds: hours(10.42),
    secondsWithinFiveOfPeak: 1320,
    lastReadingC: 64.2,
    lastReadingAtSeconds: hours(26),
    heatwork: sampleHeatwork(),
    segments: [
      segment("ramp", [0, 1.5], [21.2, 110.3]),
      segment("hold", [1.5, 2], [110.3, 111.1]),
      segment("ramp", [2, 8.5], [111.1, 1081]),
      segment("ramp", [8.5, 10.25], [1081, 1186]),
      segment("hold", [10.25, 10.42], [1186.9, 1187.1]),
      segment("ramp", [10.42, 13], [1187.1, 620]),
      segment("ramp", [13, 14.4], [620, 520]),
      segment("ramp", [14.4, 26], [520, 64.2]),
    ],
    crossings: sampleCrossings(),
    ...overrides,
  };
}
