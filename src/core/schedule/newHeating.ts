import type { AssumedKiln } from "../kiln/LearnedKiln.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { rateDown, temperatureDown } from "./paced.ts";
import type { Schedule, Segment } from "./Schedule.ts";

/** The way up of a new schedule. */
export interface Climb {
  readonly segments: readonly Segment[];
  readonly state: Schedule["ware"]["state"];
}

/** What the way up is made for. */
interface ClimbInput {
  readonly unit: TemperatureUnit;
  readonly peakC: number;
  /** Clay goes in raw, not bisqued. */
  readonly raw: boolean;
  readonly damp: boolean;
  readonly thickestMm: number;
  /** Thick or wide. */
  readonly demanding: boolean;
  /** Faster than the easy way by this, where nothing is at stake. */
  readonly factor: number;
  readonly kiln: AssumedKiln;
  /** The cone chart has a column near the last climb's rate. */
  readonly charted: boolean;
}

/** A stage before it is fitted to the kiln and rounded. */
interface Stage {
  readonly toC: number;
  readonly rateCPerHour: number;
  readonly holdMinutes: number;
  readonly why: string;
}

/** The last climb begins this far below the peak [K]: cone charts hold for the last 100 °C. */
const LAST_CLIMB_K = 110;

/** The chart's middle column [°C/h]. */
const LAST_CLIMB_C_PER_HOUR = 60;

/** Walls that dry slowly, and walls that are sculpture [mm]. */
const THICK_MM = 15;
const SCULPTURE_MM = 25;

/** Share of the kiln's full speed that a climb is planned at, so that the controller has room. */
const SPEED_SHARE = 0.9;

/** Stages that end this near to each other are one [K]. */
const NEAR_K = 20;

/** A climb is cut no shorter than this [K]. */
const LEG_K = 50;

/** A climb is cut in two only for a rate that is slower than what a kiln's speed is known to, and for this much time [s]. */
const SURE_SHARE = 0.9;
const WORTH_SECONDS = 600;

/** The way up to a peak: water, quartz, carbon, the climb, the last 100 °C. */
export function climb(input: ClimbInput): Climb {
  const { peakC, raw, damp } = input;
  const lastC = peakC - LAST_CLIMB_K;
  const staged = raw ? rawStages(input) : bisquedStages(input);
  const early = staged.filter((_, index) => (staged[index - 1]?.toC ?? 0) < lastC - NEAR_K);
  const stages = [
    ...early.map((stage) => ({ ...stage, toC: Math.min(stage.toC, lastC) })),
    ...((early.at(-1)?.toC ?? 0) >= lastC - NEAR_K
      ? []
      : [
          {
            toC: lastC,
            rateCPerHour: (raw || input.demanding ? 110 : 150) * input.factor,
            holdMinutes: 0,
            why: "little is at stake here, so the climb is quick",
          },
        ]),
    {
      toC: peakC,
      rateCPerHour: LAST_CLIMB_C_PER_HOUR,
      holdMinutes: input.thickestMm > 12 ? 20 : 15,
      why: input.charted
        ? "the last climb at a rate of the cone chart; the hold evens out the ware"
        : "a steady last climb, slower than the chart of these cones; the hold evens out the ware",
    },
  ];
  let fromC = 20;
  const segments = stages.flatMap((stage, index) => {
    const startC = fromC;
    const isPeak = index === stages.length - 1;
    const toC = isPeak ? stage.toC : temperatureDown(stage.toC, input.unit, 5);
    fromC = toC;
    return fitted({ ...stage, toC }, startC, input);
  });
  const state = damp ? "damp" : raw ? "bone dry" : "glazed on bisque";
  return { segments, state };
}

function rawStages(input: ClimbInput): readonly Stage[] {
  const { damp, thickestMm } = input;
  const thick = thickestMm >= THICK_MM;
  const slow = thick || damp;
  const dryHours =
    thickestMm >= SCULPTURE_MM
      ? 6
      : damp
        ? Math.min(4, Math.max(1, thickestMm / 6))
        : thick
          ? 1
          : 0.25;
  return [
    {
      toC: 80,
      rateCPerHour: slow ? 30 : 60,
      holdMinutes: Math.ceil((dryHours * 60) / 15) * 15,
      why: `${damp ? "damp" : thick ? "thick" : "the"} ware dries below boiling`,
    },
    {
      toC: 130,
      rateCPerHour: slow ? 25 : 50,
      holdMinutes: 0,
      why: "the last free water leaves as steam",
    },
    {
      toC: 650,
      rateCPerHour: slow || input.demanding ? 60 : 100,
      holdMinutes: 0,
      why: "bound water leaves, and quartz inverts on the way up",
    },
    {
      toC: 900,
      rateCPerHour: slow || input.demanding ? 60 : 85,
      holdMinutes: 0,
      why: "carbon and sulphur burn out",
    },
  ];
}

function bisquedStages(input: ClimbInput): readonly Stage[] {
  const { demanding, thickestMm } = input;
  return [
    {
      toC: 110,
      rateCPerHour: demanding ? 50 : 60,
      holdMinutes: thickestMm > 12 ? 45 : 20,
      why: "water of the glaze leaves",
    },
    ...(demanding
      ? [
          {
            toC: 650,
            rateCPerHour: 90,
            holdMinutes: 0,
            why: "quartz inversion of thick or wide ware on the way up",
          },
        ]
      : []),
  ];
}

/** A stage as the kiln can climb it: in two segments when it loses its breath on the way. */
function fitted(stage: Stage, fromC: number, by: ClimbInput): readonly Segment[] {
  const { unit, kiln } = by;
  const { toC, why } = stage;
  const holdSeconds = stage.holdMinutes * 60;
  const rateCPerHour = rateDown(stage.rateCPerHour, unit, 5);
  const able = (tempC: number) => SPEED_SHARE * kiln.fullHeatingCPerHour(tempC);
  if (able(toC) >= rateCPerHour) return [{ toC, rateCPerHour, holdSeconds, why }];
  const slowCPerHour = rateDown(Math.max(1, able(toC)), unit);
  const slow: Segment = {
    toC,
    rateCPerHour: slowCPerHour,
    holdSeconds,
    why: `${why}; no faster, for the kiln loses its breath here`,
  };
  let breathC = fromC;
  while (breathC + LEG_K < toC && able(breathC + LEG_K) >= rateCPerHour) breathC += LEG_K;
  const legC = temperatureDown(breathC, unit, 10);
  const gainedSeconds = (legC - fromC) * (1 / slowCPerHour - 1 / rateCPerHour) * 3600;
  const isWorthIt = slowCPerHour < SURE_SHARE * rateCPerHour && gainedSeconds > WORTH_SECONDS;
  return legC - fromC < LEG_K || !isWorthIt
    ? [slow]
    : [{ toC: legC, rateCPerHour, holdSeconds: 0, why }, slow];
}
