import { rateDown, temperatureDown, temperatureUp } from "../../../src/core/schedule/paced.ts";
import type { Schedule, Segment } from "../../../src/core/schedule/Schedule.ts";
import { scheduleYaml } from "../../../src/core/schedule/scheduleFile.ts";
import { solvePeak } from "../../../src/core/schedule/solveSchedule.ts";
import type { TemperatureUnit } from "../../../src/core/units/temperature.ts";
import { SHIPPED, type ShippedSchedule } from "./shippedSchedules.ts";

/** Wall that a rule is told for, where one names it [mm]. */
const RULE_WALL_MM = 12;
/** A thicker wall counts as thick [mm]. */
const THICK_MM = 15;
/** Wall of ware whose file names none [mm]: an ordinary mug's. */
const USUAL_MM = 6;

/**
 * Slowest and quickest start that studio ware is given up to 121 °C [°C/h]; published as 60 and
 * 250 °F/h. The quick end is taken for a wall of 6 mm, and the rest by the square of the wall, as
 * steam has to come through it: own choice.
 */
const START = { slow: 33, quick: 139, quickMm: 6 };
/** Steady climb of raw ware from 100 to 900 °C [°C/h], published; for 12 mm and thinner. */
const STEADY = 100;
/** Slow school while carbon burns out, 700 to 900 °C [°C/h]: 60 to 80, common teaching. */
const BURN_OUT = { thick: 60, thin: 80 };
/** Hold at about 816 °C for thick or dark clay [h], published as about 1 h; taken for 25 mm. */
const BURN_OUT_HOLD = { atC: 815, hours: 1, mm: 25, leastMinutes: 20 };
/** Drying of damp ware [h]: published 1 to 4 h, 6 h and more for sculpture; 1 h is taken for 10 mm, by the square of the wall. */
const DRYING = { hours: 1, mm: 10 };
/** The cone chart's middle and quickest column [°C/h], and the stretch that its rates hold for [K]. */
const CHART = { middle: 60, quick: 150, lastK: 100 };
/** Textbook rule through the quartz inversion [°C/h], and sanitary-ware practice at 12 mm. */
const QUARTZ = { rule: 50, practice: 60, fromC: 640, toC: 500 };
/** Nothing is published for the cristobalite inversion: half the rate at quartz, own caution. */
const CRISTOBALITE = { share: 0.5, fromC: 300, toC: 160 };
/** Share of a limit that a schedule goes at, so that a kiln that hunts stays below it. */
const SHARE = 0.8;

/** A shipped schedule as it follows from the cone model, its ware and the published ranges. */
function derivedSchedule(shipped: ShippedSchedule): Schedule {
  const { unit, cone, ware } = shipped;
  const bare: Schedule = {
    title: shipped.title,
    unit,
    cone,
    series: "self-supporting",
    startC: 20,
    ware: { thickestMm: null, widestMm: null, crackle: false, ...ware },
    segments: [],
    notes: shipped.notes ?? null,
    basis: shipped.basis,
  };
  // The peak decides where the stages before it end, and they hardly move the peak.
  let peakC = shipped.aboutC;
  for (let turn = 0; turn < 3; turn++) {
    const solved = solvePeak({ schedule: { ...bare, segments: stages(shipped, peakC) }, cone });
    if (!solved.ok) throw new RangeError(solved.problems.map(({ what }) => what).join());
    peakC = temperatureUp(Math.max(...solved.value.segments.map(({ toC }) => toC)), unit);
  }
  return { ...bare, segments: stages(shipped, peakC) };
}

/** The same as the text of its file. */
export function derivedFiles(): readonly { readonly name: string; readonly text: string }[] {
  return SHIPPED.map((shipped) => ({
    name: shipped.name,
    text: scheduleYaml(derivedSchedule(shipped)),
  }));
}

function stages(shipped: ShippedSchedule, peakC: number): readonly Segment[] {
  const raw = shipped.ware.state === "bone dry" || shipped.ware.state === "damp";
  const up = raw ? rawClimb(shipped, peakC) : glazedClimb(shipped, peakC);
  return joined([...up, ...fall(shipped, peakC)]);
}

/** Raw ware: water, bound water, carbon, the last 100 °C. */
function rawClimb({ unit, ware, peakHoldMinutes }: ShippedSchedule, peakC: number): Segment[] {
  const wallMm = ware.thickestMm ?? USUAL_MM;
  const start = Math.max(START.slow, START.quick * Math.min(1, (START.quickMm / wallMm) ** 2));
  const damp = ware.state === "damp";
  const burnMinutes = minutes(BURN_OUT_HOLD.hours * (wallMm / BURN_OUT_HOLD.mm) ** 2);
  const burns = burnMinutes >= BURN_OUT_HOLD.leastMinutes;
  const burning = wallMm >= THICK_MM ? BURN_OUT.thick : BURN_OUT.thin;
  const bound = STEADY * Math.min(1, RULE_WALL_MM / wallMm);
  return [
    ...(damp
      ? [
          up(unit, 85, start, {
            holdMinutes: minutes(DRYING.hours * (wallMm / DRYING.mm) ** 2, 15),
            why: `${wallMm} mm dry below boiling, 1 h at 10 mm`,
          }),
        ]
      : []),
    up(unit, 130, start, { why: "the last free water leaves as steam" }),
    up(unit, 650, bound, { why: "bound water leaves" }),
    ...(burns
      ? [
          up(unit, BURN_OUT_HOLD.atC, burning, {
            holdMinutes: burnMinutes,
            why: `carbon burns out of ${wallMm} mm: about 1 h is published`,
          }),
        ]
      : []),
    up(unit, peakC - CHART.lastK, burning, { why: burns ? null : "carbon burns out" }),
    last(unit, peakC, peakHoldMinutes),
  ];
}

/** Glazed bisque: water of the glaze, the climb, the last 100 °C. */
function glazedClimb({ unit, ware, peakHoldMinutes }: ShippedSchedule, peakC: number): Segment[] {
  const wallMm = ware.thickestMm ?? USUAL_MM;
  const thick = wallMm >= THICK_MM;
  const dryMinutes = minutes(DRYING.hours * Math.min(1, (wallMm / DRYING.mm) ** 2), 10);
  return [
    up(unit, 110, Math.sqrt(START.slow * START.quick), {
      holdMinutes: dryMinutes,
      step: 10,
      why: "water that the bisque took from the glaze leaves",
    }),
    ...(thick
      ? [
          up(unit, 650, (STEADY * RULE_WALL_MM) / wallMm, {
            why: "quartz inversion of thick ware on the way up",
          }),
        ]
      : []),
    up(unit, peakC - CHART.lastK, thick ? STEADY : CHART.quick, { step: 10 }),
    last(unit, peakC, peakHoldMinutes),
  ];
}

function fall({ unit, ware, cooling }: ShippedSchedule, peakC: number): Segment[] {
  const free = (toC: number): Segment => down(unit, toC, "free");
  const end = free(ware.crackle ? 80 : 100);
  if (cooling.kind === "by itself") return [end];
  if (cooling.kind === "held") {
    const atC = temperatureDown(peakC - cooling.belowPeakK, unit, 5);
    return [{ ...free(atC), holdSeconds: cooling.minutes * 60, why: cooling.why }, free(100)];
  }
  if (cooling.kind === "crystals")
    return [
      free(cooling.fromC),
      { ...down(unit, cooling.toC, cooling.rateCPerHour), why: cooling.why },
      end,
    ];
  const wallMm = ware.thickestMm ?? USUAL_MM;
  const practice = (QUARTZ.practice * RULE_WALL_MM) / wallMm;
  const quartz = Math.min(QUARTZ.rule, practice);
  const cristobalite = CRISTOBALITE.share * quartz;
  return [
    free(QUARTZ.fromC),
    { ...down(unit, QUARTZ.toC, SHARE * quartz), why: "quartz inversion" },
    ...(cooling.cristobalite
      ? [
          free(CRISTOBALITE.fromC),
          { ...down(unit, CRISTOBALITE.toC, cristobalite), why: "cristobalite inversion" },
        ]
      : []),
    end,
  ];
}

function last(unit: TemperatureUnit, peakC: number, holdMinutes: number): Segment {
  return {
    toC: peakC,
    rateCPerHour: rateDown(CHART.middle, unit),
    holdSeconds: holdMinutes * 60,
    why: "a rate of the cone chart; it evens out",
  };
}

function up(
  unit: TemperatureUnit,
  toC: number,
  rateCPerHour: number,
  more: {
    readonly holdMinutes?: number;
    readonly why?: string | null;
    /** To which rates are rounded down. */
    readonly step?: number;
  },
): Segment {
  return {
    toC: temperatureDown(toC, unit, 5),
    rateCPerHour: rateDown(rateCPerHour, unit, more.step ?? 5),
    holdSeconds: (more.holdMinutes ?? 0) * 60,
    why: more.why ?? null,
  };
}

function down(unit: TemperatureUnit, toC: number, rateCPerHour: number | "free"): Segment {
  return {
    toC: temperatureDown(toC, unit),
    rateCPerHour: rateCPerHour === "free" ? "free" : -rateDown(rateCPerHour, unit),
    holdSeconds: 0,
    why: null,
  };
}

/** Hours as minutes, down to whole steps. */
function minutes(hours: number, step: number = 5): number {
  return Math.floor((hours * 60) / step + 1e-9) * step;
}

/** Neighbours that go on at the same rate without a hold between them are one segment. */
function joined(segments: readonly Segment[]): readonly Segment[] {
  const all: Segment[] = [];
  for (const next of segments) {
    const before = all.at(-1);
    const same = before?.rateCPerHour === next.rateCPerHour && before.holdSeconds === 0;
    if (same && next.rateCPerHour !== "free")
      all.splice(-1, 1, { ...next, why: next.why ?? before.why });
    else all.push(next);
  }
  return all;
}
