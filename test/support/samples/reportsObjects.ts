import type { LogReading } from "../../../src/core/log/reading/LogReading.ts";
import type { FiringReview } from "../../../src/core/review/FiringReview.ts";
import type { Draft } from "../../../src/core/schedule/draftSchedule.ts";
import type { Segment, TimelineRow } from "../../../src/core/schedule/Schedule.ts";
import {
  hours,
  sampleCautions,
  sampleCrossing,
  sampleCrossings,
  sampleCurve,
  sampleFinding,
  sampleFindings,
  sampleHeatwork,
  sampleZone,
} from "./reports.ts";

/** A log of two thermocouples with a gap, a spike and a dozen rows left out. */
export function sampleReading(overrides: Partial<LogReading> = {}): LogReading {
  const rejected = Array.from({ length: 12 }, (_, index) => ({
    line: 303 + index,
    reason: index === 0 ? "the time goes back by 1 h" : "no number in either temperature column",
    text: index === 0 ? "2026-03-14 21:04:00;548.2;541.0" : "2026-03-14 22:05:00;----;----",
  }));
  return {
    name: "2026-03-14-b.csv",
    decisions: [
      {
        about: "delimiter",
        choice: "semicolon",
        confidence: "certain",
        because: "every line splits into 4 cells",
        runnerUp: null,
        option: "--delimiter",
      },
      {
        about: "day order",
        choice: "year, month, day",
        confidence: "told",
        because: "",
        runnerUp: null,
        option: "--day-first",
      },
      {
        about: "unit",
        choice: "°C",
        confidence: "likely",
        because: "the highest reading is 1187, which in °F would be too cool for a glaze firing",
        runnerUp: "°F",
        option: "--unit C|F",
      },
    ],
    rows: { total: 1560, accepted: 1548, rejected },
    unit: "C",
    channels: [
      { name: "upper", role: "temperature", curve: sampleCurve(), readings: 1546, dropped: 2 },
      { name: "lower", role: "temperature", curve: sampleCurve(-9), readings: 1548, dropped: 0 },
      { name: "target", role: "set-point", curve: null, readings: 1548, dropped: 0 },
    ],
    start: "2026-03-14T17:05:00",
    startOfDaySeconds: hours(17) + 300,
    intervalSeconds: 60,
    gaps: [{ fromSeconds: hours(5), toSeconds: hours(5.25) }],
    faults: [
      {
        kind: "spike",
        channel: "upper",
        fromSeconds: hours(9.1),
        toSeconds: hours(9.15),
        count: 2,
        what: "2 readings jumped by more than 200 °C and back within a minute",
      },
    ],
    ...overrides,
  };
}

/** A firing of two zones with findings of every severity, a plan and a record. */
export function sampleReview(overrides: Partial<FiringReview> = {}): FiringReview {
  return {
    openingInLog: null,
    title: "Crackle tiles, second glaze firing of 14 March",
    reading: sampleReading(),
    zones: [
      sampleZone(),
      sampleZone({
        name: "lower",
        curve: sampleCurve(-9),
        peakC: 1178.1,
        peakAtSeconds: hours(10.45),
        secondsWithinFiveOfPeak: 1500,
        lastReadingC: 61.9,
        heatwork: sampleHeatwork({
          position: { cone: "4", fraction: 0.95, next: "5", label: "cone 4 + 95 %", index: 3.95 },
        }),
        segments: [],
        crossings: [
          sampleCrossing({ meanCPerHour: -66.1, fastestCPerHour: -74.9 }),
          sampleCrossing({
            band: "cristobalite inversion",
            fromC: 280,
            toC: 170,
            measured: "no",
            startSeconds: null,
            endSeconds: null,
            seconds: null,
            meanCPerHour: null,
            fastestCPerHour: null,
            fastestAtSeconds: null,
            windowMinutes: null,
            limitBasis: "weak: no published rate was found for this inversion",
            limitMeantFor: "ware of unknown thickness",
          }),
        ],
      }),
    ],
    spread: { largestC: 33.8, largestAtSeconds: hours(8.1), atPeakC: 9.3 },
    offset: {
      series: "self-supporting",
      offsetK: 6.4,
      sigmaK: 3.9,
      usual: { offsetK: 8, sigmaK: 12 },
      lowK: 1.2,
      highK: 11.9,
      witnesses: [
        { cone: "5", said: "down, tip touching", impliedK: 1.2 },
        { cone: "6", said: "half down (45 degrees)", impliedK: 8.8 },
      ],
    },
    comparison: {
      title: "Cone 5 for crackle tiles, slow through both inversions",
      planned: sampleCurve(2),
      shiftSeconds: 720,
      zone: "upper",
      largestDeviationC: -37.6,
      largestDeviationAtSeconds: hours(13.9),
      areaDeviation: -0.021,
      peakDeviationC: 1.3,
      peakDelaySeconds: 1500,
    },
    heard: [
      { what: "pinging", atSeconds: hours(21.1), tempC: 151.7, note: "from the top shelf" },
      { what: "a crack", atSeconds: null, tempC: null, note: null },
    ],
    diagnosis: [],
    diagnosedPieces: [],
    nextTime: null,
    pieces: [],
    strains: [],
    recordLines: [
      { label: "kiln", text: "front loader, 120 litres" },
      { label: "ware", text: "24 tiles of 8 mm, glazed on both sides" },
    ],
    findings: sampleFindings(),
    cautions: sampleCautions(),
    ...overrides,
  };
}

const segmentOf = (
  toC: number,
  rateCPerHour: number | "free",
  holdSeconds = 0,
  why: string | null = null,
): Segment => ({ toC, rateCPerHour, holdSeconds, why });

const rowOf = (
  segment: number,
  kind: TimelineRow["kind"],
  [fromC, toC]: readonly [number, number],
  [from, to]: readonly [number, number],
  assumedRate = false,
): TimelineRow => ({
  segment,
  kind,
  fromC,
  toC,
  rateCPerHour: kind === "hold" ? 0 : (toC - fromC) / (to - from),
  assumedRate,
  startSeconds: hours(from),
  endSeconds: hours(to),
});

/** A schedule for crackle tiles that starts at six in the evening. */
export function sampleDraft(overrides: Partial<Draft> = {}): Draft {
  return {
    own: null,
    strains: [],
    energyKWh: null,
    schedule: {
      title: "Cone 5 for crackle tiles, slow through both inversions",
      unit: "C",
      cone: "5",
      series: "self-supporting",
      startC: 20,
      segments: [
        segmentOf(110, 60, 1800, "lets the glaze dry through"),
        segmentOf(1080, 150),
        segmentOf(1186, 60, 600),
        segmentOf(620, "free"),
        segmentOf(520, -50, 0, "quartz inversion"),
        segmentOf(280, -80),
        segmentOf(170, -40, 0, "cristobalite inversion"),
      ],
      ware: {
        thickestMm: 8,
        widestMm: 150,
        state: "glazed on bisque",
        crackle: true,
      },
      notes: "Leave the spy hole in.",
    },
    expansion: {
      curve: sampleCurve(),
      timeline: [
        rowOf(0, "ramp", [20, 110], [0, 1.5]),
        rowOf(0, "hold", [110, 110], [1.5, 2]),
        rowOf(1, "ramp", [110, 1080], [2, 8.467]),
        rowOf(2, "ramp", [1080, 1186], [8.467, 10.233]),
        rowOf(2, "hold", [1186, 1186], [10.233, 10.4]),
        rowOf(3, "ramp", [1186, 620], [10.4, 13], true),
        rowOf(4, "ramp", [620, 520], [13, 15]),
        rowOf(5, "ramp", [520, 280], [15, 18]),
        rowOf(6, "ramp", [280, 170], [18, 20.75]),
      ],
      assumptions: [
        "Segment 4 cools as fast as it falls by itself: taken as a kiln of middling insulation, 218 °C/h on average",
      ],
    },
    start: "2026-12-01T18:00:00",
    heatwork: sampleHeatwork(),
    crossings: sampleCrossings().filter((crossing) => crossing.measured === "whole"),
    findings: [
      sampleFinding({
        topic: "cone wanted",
        statement: "Cone 5 goes down {margin} before the end of the hold.",
        evidence: [{ name: "margin", value: 780, kind: "duration" }],
        basis: "cone model",
      }),
    ],
    cautions: sampleCautions(),
    ...overrides,
  };
}
