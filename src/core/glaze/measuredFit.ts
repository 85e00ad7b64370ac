import { seededNormal } from "../math/distributions.ts";
import { type Spread, spreadOf } from "../math/statistics.ts";
import { drawn } from "../ware/strainSpread.ts";
import { stressAtLoad } from "./channelCracking.ts";
import { crackedWall, crackingMismatch, spacingLineOf } from "./crackedWall.ts";
import { loadForSpacing, MEAN_OVER_LEAST, pitchOfIntercept } from "./crackSpacing.ts";
import type { FitDraw } from "./fitDraws.ts";
import type { FitRun } from "./fitRun.ts";
import type { MeasuredCracks, MeasuredPing } from "./Glaze.ts";
import { expansionForMismatch, type Glazing, mismatchAt } from "./laminate.ts";

/** What a measurement says of the mismatch, beside what the composition says. */
export interface MeasuredFit {
  readonly from: "crack spacing" | "cracks seen" | "no cracks" | "first ping";
  /** Of the piece that was measured [mm]. */
  readonly coatMm: number;
  /** A wide crackle may have too few flaws, a whole coat none at all: then it is only a bound. */
  readonly holds: "about" | "at least" | "at most";
  /** To the room [length over length]. */
  readonly mismatch: Spread;
  /** The same over the fall from the set point to the room [1/K]. */
  readonly mismatchPerK: Spread;
  /** Expansion that the glaze would have to have [1/K]. */
  readonly glazePerK: Spread;
  /** Whether this and the composition lie within each other's spread. */
  readonly agrees: boolean;
  /** Share of draws in which this lies over the composition's mismatch, 0–1. */
  readonly overComputed: number;
  /** Share of draws in which the measurement makes no sense: a ping over the set point. */
  readonly impossible: number;
  /** Mean pitch over coat, for a spacing; else null. */
  readonly pitchOverCoat: number | null;
  /** How far a ping may be used; null for what is no ping. */
  readonly ping: { readonly onsetC: number; readonly use: PingUse } | null;
}

/** Everything that a measurement is read with. */
export interface MeasuredOn {
  readonly draws: readonly FitDraw[];
  /** One for each draw. */
  readonly runs: readonly FitRun[];
  readonly glazing: Glazing;
  readonly roomC: number;
  readonly coatMm: number;
  readonly coatSigma: number;
  readonly seed: number;
}

/** Mean spacing over least spacing, as the mean of many may be; its range is our own estimate. */
const MEAN_FACTOR = { value: MEAN_OVER_LEAST, low: 1.3, high: 1.7 };

/** From so many coats on a spacing hardly depends on the stress any more; our own choice. */
const WIDE_COATS = 10;

/** Share of draws on one side from which on two answers disagree. */
const ONE_SIDED = 0.95;

/** Fewest possible draws that are still an answer. */
const FEWEST = 10;

/** Answers of all measurements, and the pings that gave none. */
export interface MeasuredFits {
  readonly fits: readonly MeasuredFit[];
  readonly leftOut: readonly {
    readonly onsetC: number;
    readonly why: "kiln was opened" | "not between room and set point";
  }[];
}

/**
 * Mismatch from the crack spacing (else from whether it cracked) and every usable first ping.
 * In the order in which they are given; each is drawn with all that it is read through.
 */
export function measuredFits(measured: MeasuredCracks, on: MeasuredOn): MeasuredFits {
  const { spacing, cracked, pings } = measured;
  const read = pings.map((ping, i) => ({
    ping,
    fit: fromPing(ping, { ...on, seed: on.seed + 1 + i }),
  }));
  return {
    fits: [
      spacing === null ? null : fromSpacing(spacing, on),
      cracked !== null && spacing === null ? fromSight(cracked, on) : null,
      ...read.map(({ fit }) => fit),
    ].filter((fit) => fit !== null),
    leftOut: read
      .filter(({ fit }) => fit === null)
      .map(({ ping }) => ({
        onsetC: ping.onsetC,
        why:
          pingUse(ping) === "kiln was opened"
            ? "kiln was opened"
            : "not between room and set point",
      })),
  };
}

/** Room mismatch of one draw, or null when the measurement cannot be. */
type Reading = (draw: FitDraw, normal: () => number) => number | null;

function fromSpacing(
  spacing: NonNullable<MeasuredCracks["spacing"]>,
  on: MeasuredOn,
): MeasuredFit | null {
  const toPitch = spacing.counted === "pitch" ? 1 : pitchOfIntercept(1);
  const range = { value: spacing.meanMm, low: spacing.lowMm, high: spacing.highMm };
  const pitchOverCoat = (spacing.meanMm * toPitch) / on.coatMm;
  return fitOf(on, {
    from: "crack spacing",
    coatMm: on.coatMm,
    holds: pitchOverCoat / MEAN_OVER_LEAST > WIDE_COATS ? "at least" : "about",
    pitchOverCoat,
    ping: null,
    reading: (draw, normal) => {
      const leastMm = (drawn(range, normal()) * toPitch) / drawn(MEAN_FACTOR, normal());
      const wall = { ...draw, glazing: on.glazing };
      const { coatMm } = draw.layers;
      const { value } = loadForSpacing(spacingLineOf(wall), leastMm / coatMm);
      const { toughnessMPaRootM } = draw;
      const stress = stressAtLoad(value, { coatMm, toughnessMPaRootM });
      return stress / crackedWall(wall, 0).stressPerStrainMPa;
    },
  });
}

function fromSight(cracked: boolean, on: MeasuredOn): MeasuredFit | null {
  return fitOf(on, {
    from: cracked ? "cracks seen" : "no cracks",
    coatMm: on.coatMm,
    holds: cracked ? "at least" : "at most",
    pitchOverCoat: null,
    ping: null,
    reading: (draw) => crackingMismatch(crackedWall({ ...draw, glazing: on.glazing }, 0)),
  });
}

function fromPing(ping: MeasuredPing, on: MeasuredOn): MeasuredFit | null {
  const use = pingUse(ping);
  if (use === "kiln was opened") return null;
  const isOwn = ping.coatMm === on.coatMm;
  return fitOf(on, {
    from: "first ping",
    coatMm: ping.coatMm,
    holds: "about",
    pitchOverCoat: null,
    ping: { onsetC: ping.onsetC, use },
    reading: (draw, normal) => {
      const other = ping.coatMm * Math.exp(on.coatSigma * normal());
      const onsetC = ping.onsetC + ping.sigmaK * normal();
      const coatMm = isOwn ? draw.layers.coatMm : other;
      if (onsetC >= draw.pair.setC || onsetC <= on.roomC) return null;
      const wall = { ...draw, layers: { ...draw.layers, coatMm }, glazing: on.glazing };
      const needed = crackingMismatch(crackedWall(wall, 0));
      const glazePerK = expansionForMismatch(draw.pair, needed, onsetC);
      return mismatchAt({ ...draw.pair, glazePerK }, on.roomC);
    },
  });
}

function fitOf(
  on: MeasuredOn,
  what: Pick<MeasuredFit, "from" | "coatMm" | "holds" | "pitchOverCoat" | "ping"> & {
    readonly reading: Reading;
  },
): MeasuredFit | null {
  const normal = seededNormal(on.seed);
  const read = on.draws.flatMap((draw, i) => {
    const mismatch = what.reading(draw, normal);
    return mismatch === null ? [] : [{ draw, run: on.runs[i]!, mismatch }];
  });
  if (read.length < FEWEST) return null;
  const spread = (pick: (each: (typeof read)[number]) => number) =>
    spreadOf(Float64Array.from(read, pick));
  const { reading: _, ...facts } = what;
  const overComputed =
    read.filter((each) => each.mismatch > each.run.mismatch).length / read.length;
  return {
    ...facts,
    mismatch: spread(({ mismatch }) => mismatch),
    mismatchPerK: spread(({ mismatch, draw }) => mismatch / (draw.pair.setC - on.roomC)),
    glazePerK: spread(({ mismatch, draw }) => expansionForMismatch(draw.pair, mismatch, on.roomC)),
    agrees:
      (what.holds === "at least" || overComputed > 1 - ONE_SIDED) &&
      (what.holds === "at most" || overComputed < ONE_SIDED),
    overComputed,
    impossible: 1 - read.length / on.draws.length,
  };
}

/** How far a first ping says something about fit. */
type PingUse =
  | "usable"
  | "near the quartz inversion"
  | "near the cristobalite inversion"
  | "kiln was opened";

/** Where a ping may be the body's quartz, and its cristobalite [°C]. */
const QUARTZ_PINGS = { lowC: 550, highC: 600 };
const CRISTOBALITE_PINGS = { lowC: 200, highC: 250 };

/**
 * Whether the first ping on cooling may be read as fit.
 * Not when the kiln was opened: a draught cracks glaze by itself. At 550 to 600 °C (quartz) and 200 to
 * 250 °C (cristobalite) it may be the body that cracked, and the reader is told.
 */
export function pingUse({ onsetC, kiln }: MeasuredPing): PingUse {
  if (kiln === "opened") return "kiln was opened";
  if (onsetC >= QUARTZ_PINGS.lowC && onsetC <= QUARTZ_PINGS.highC)
    return "near the quartz inversion";
  if (onsetC >= CRISTOBALITE_PINGS.lowC && onsetC <= CRISTOBALITE_PINGS.highC)
    return "near the cristobalite inversion";
  return "usable";
}
