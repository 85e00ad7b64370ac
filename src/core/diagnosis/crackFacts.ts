import { passagesOf } from "../curve/bandPassage.ts";
import { type Curve, temperatureAt } from "../curve/Curve.ts";
import { slopeMeter } from "../curve/slopes.ts";
import { type FiringFacts, hottestZone } from "../firing/FiringFacts.ts";
import type { KnownOpening } from "../firing/knownOpening.ts";
import type { RecordedTrial, RecordedWare } from "../record/FiringRecord.ts";
import { type SoundKind, soundKind } from "../record/moment.ts";
import { wareOf } from "../ware/givenWare.ts";
import { CRISTOBALITE_BAND, QUARTZ_BAND } from "../ware/inversions.ts";
import { openedAt } from "../ware/openingStrain.ts";
import type { PieceStrain } from "../ware/pieceStrain.ts";
import { wareNumbers } from "../ware/strainNumbers.ts";
import type { Ware } from "../ware/Ware.ts";
import { wareStrain } from "../ware/wareStrain.ts";
import { type CrackCase, crackCases } from "./crackCases.ts";

/** How hard one piece was cooled through an inversion. */
interface InversionStress {
  /** Computed stress over strength. */
  readonly ratio: number;
  /** Fastest sustained rate in the band, positive [°C/h]; null when not measured. */
  readonly fastestCPerHour: number | null;
}

/** What one kind of ware went through. */
interface WareStress {
  /** Null when the log does not go through the band, or goes through it with the lid open. */
  readonly quartz: InversionStress | null;
  readonly cristobalite: InversionStress | null;
  /** Share of cristobalite in the body, 0–1. */
  readonly cristobaliteShare: number;
  /** Computed stress over strength of opening the kiln at a temperature [°C], between lid opened and lifted out. */
  readonly openingAt: (tempC: number) => number;
}

/** All that the probabilities of cracks are worked out from. */
export interface CrackFacts {
  readonly cases: readonly CrackCase[];
  readonly sounds: readonly HeardSound[];
  readonly trials: readonly RecordedTrial[];
  readonly opening: Pick<KnownOpening, "tempC" | "maybe" | "notAboveC">;
  /** Of a ware of the record; of what stands the least, or of an ordinary mug, for none. */
  readonly stressOf: (ware: RecordedWare | null) => WareStress;
  /** Fastest climbs over half an hour [°C/h]; null when not measured. */
  readonly climb: { readonly steamCPerHour: number | null; readonly quartzCPerHour: number | null };
  /** How the ware went in, as far as the record says. */
  readonly states: readonly NonNullable<RecordedWare["state"]>[];
}

/** Where water leaves clay, and where quartz grows on the way up [°C]. */
const STEAM_C = [70, 200] as const;
const QUARTZ_UP_C = [520, 620] as const;
const CLIMB_WINDOW_SECONDS = 1800;

/** The facts of a firing that bear on its cracks. */
export function crackFacts(facts: FiringFacts): CrackFacts {
  const { record, zones } = facts;
  const { curve, peakAtSeconds } = hottestZone(zones);
  const cases = crackCases(record);
  const known = new Map<RecordedWare | null, WareStress>();
  return {
    cases,
    sounds: heardSounds(facts),
    trials: record?.trials ?? [],
    opening: facts.opening,
    stressOf: (ware) => {
      const stress = known.get(ware) ?? stressOfWare(facts, ware);
      known.set(ware, stress);
      return stress;
    },
    climb: {
      steamCPerHour: fastestClimb(curve, peakAtSeconds, STEAM_C),
      quartzCPerHour: fastestClimb(curve, peakAtSeconds, QUARTZ_UP_C),
    },
    states: (record?.ware ?? []).flatMap(({ state }) => (state === null ? [] : [state])),
  };
}

/** Whether anything was heard, or found on the ware, that asks for an explanation. */
export function hasSomethingToWeigh({ sounds, cases }: CrackFacts): boolean {
  return sounds.length > 0 || cases.length > 0;
}

/** What is taken for ware of which nothing is known: an ordinary stoneware mug. */
const ORDINARY_MUG: Ware = wareOf({ wallMm: null, baseMm: null, widestMm: null }).ware;

function stressOfWare(facts: FiringFacts, ware: RecordedWare | null): WareStress {
  const { curve } = hottestZone(facts.zones);
  const named = ware === null ? undefined : facts.strains.find(({ name }) => name === ware.name);
  const computed = named === undefined ? facts.strains : [named];
  const [weakest] = computed;
  const piece: Ware = weakest?.ware ?? ORDINARY_MUG;
  const worst = (band: string) =>
    computed.length === 0
      ? (wareStrain(curve, piece).worst.find(
          (each) => each.band === band && each.direction === "cooling",
        )?.ratio ?? null)
      : highest(computed, band);
  const stress = (band: typeof QUARTZ_BAND): InversionStress | null => {
    if (!passedShut(facts, band)) return null;
    const ratio = worst(band.name);
    return ratio === null ? null : { ratio, fastestCPerHour: fastest(facts, band.name) };
  };
  return {
    quartz: stress(QUARTZ_BAND),
    cristobalite: stress(CRISTOBALITE_BAND),
    cristobaliteShare: piece.body.cristobaliteFraction.value,
    openingAt: openingOf(piece),
  };
}

function highest(pieces: readonly PieceStrain[], band: string): number | null {
  const ratios = pieces.flatMap(({ passages }) =>
    passages
      .filter((each) => each.band === band && each.direction === "cooling")
      .flatMap(({ computed }) => (computed === null ? [] : [computed.ratio])),
  );
  return ratios.length === 0 ? null : Math.max(...ratios);
}

/** Whether the readings go through a band on the way down before the lid is off. */
function passedShut(facts: FiringFacts, band: typeof QUARTZ_BAND): boolean {
  const { curve } = hottestZone(facts.zones);
  if (passagesOf(curve)(band, "cooling").measured !== "whole") return false;
  const { tempC, contradiction } = facts.opening;
  // Where the record says that it was opened later, air may only have been let in: the readings tell what it did.
  return tempC === null || tempC <= band.lowC || contradiction === "opened before";
}

function fastest(facts: FiringFacts, band: string): number | null {
  const rates = facts.zones
    .flatMap(({ crossings }) => crossings)
    .filter((crossing) => crossing.band === band && crossing.direction === "cooling")
    .flatMap(({ fastestCPerHour }) => (fastestCPerHour === null ? [] : [-fastestCPerHour]));
  return rates.length === 0 ? null : Math.max(...rates);
}

/** Step between the temperatures at which openings are worked out; straight between them [K]. */
const OPENING_STEP_K = 20;
const ROOM_C = 20;

/** Worked out once for each piece: the mug is asked for again and again. */
const OPENINGS = new WeakMap<Ware, (tempC: number) => number>();

function openingOf(piece: Ware): (tempC: number) => number {
  const known = OPENINGS.get(piece) ?? smoothOpening(piece);
  OPENINGS.set(piece, known);
  return known;
}

/**
 * Stress of an opening as a function without steps: worked out every 20 K, straight between. Opening hotter is
 * never better, since an open kiln falls through all that is below.
 */
function smoothOpening(piece: Ware): (tempC: number) => number {
  const numbers = wareNumbers(piece);
  const worst: number[] = [0];
  const at = (step: number): number => {
    for (let next = worst.length; next <= step; next++) {
      const fromC = ROOM_C + next * OPENING_STEP_K;
      const ratio = Math.sqrt(
        openedAt(numbers, fromC, "lid opened").ratio * openedAt(numbers, fromC, "lifted out").ratio,
      );
      worst.push(Math.max(worst.at(-1)!, ratio));
    }
    return worst[step]!;
  };
  return (tempC) => {
    const steps = Math.max(0, Math.min(tempC, HOTTEST_C) - ROOM_C) / OPENING_STEP_K;
    const low = Math.floor(steps);
    return at(low) * (low + 1 - steps) + at(low + 1) * (steps - low);
  };
}

/** Hotter openings are reckoned as this one [°C]. */
const HOTTEST_C = 700;

function fastestClimb(
  curve: Curve,
  peakSeconds: number,
  [lowC, highC]: readonly [number, number],
): number | null {
  const meter = slopeMeter(curve);
  let best: number | null = null;
  const begin = curve.timesSeconds[0]!;
  for (let seconds = begin; seconds <= peakSeconds; seconds += CLIMB_WINDOW_SECONDS / 6) {
    const tempC = temperatureAt(curve, seconds);
    if (tempC === null || tempC < lowC || tempC > highC) continue;
    const rate = meter.slopeAt(seconds, CLIMB_WINDOW_SECONDS);
    if (rate !== null && (best === null || rate > best)) best = rate;
  }
  return best;
}

/** Where in the firing a sound falls; `unknown` in a gap and outside the readings. */
type SoundPhase =
  | "heating"
  | "above the inversions"
  | "quartz"
  | "between the inversions"
  | "cristobalite"
  | "below the inversions"
  | "after opening"
  | "long after opening"
  | "unknown";

/** A sound as evidence; where its day or its phase is not sure it stands in each, with a share. */
export interface HeardSound {
  readonly kind: SoundKind;
  readonly phase: SoundPhase;
  /** Of the hottest zone [°C]; null when not known. */
  readonly tempC: number | null;
  readonly atSeconds: number;
  /** Since the kiln was opened [s]; null before, and when that is not known. */
  readonly sinceOpeningSeconds: number | null;
  readonly share: number;
}

/** Ware is evenly cool so long after the kiln was opened [s]; our own estimate. */
export const COOL_SECONDS = 7200;

/** What was heard, as evidence, in order of time. */
function heardSounds(facts: FiringFacts): readonly HeardSound[] {
  return facts.heard.flatMap((sound) => {
    const places = sound.orElse === null ? [sound] : [sound, sound.orElse];
    return places.flatMap(({ atSeconds, tempC }) => {
      const opened = openedSeconds(facts);
      const since = opened === null || atSeconds < opened ? null : atSeconds - opened;
      return phasesOf(atSeconds, { tempC, since, facts }).map(({ phase, share }) => ({
        kind: soundKind(sound.what),
        phase,
        tempC,
        atSeconds,
        sinceOpeningSeconds: since,
        share: share / places.length,
      }));
    });
  });
}

/** When the kiln was opened; where nobody says it, a log that ends cool ends with it. */
function openedSeconds({ opening, zones }: FiringFacts): number | null {
  if (opening.atSeconds !== null) return opening.atSeconds;
  const { lastReadingAtSeconds, lastReadingC } = hottestZone(zones);
  return lastReadingC <= COOL_END_C ? lastReadingAtSeconds : null;
}

/** A log that ends below this was followed to the opening of the kiln [°C]; our own estimate. */
const COOL_END_C = 110;

/** The phases that a moment may belong to, the likeliest first; their shares make 1. */
function phasesOf(
  atSeconds: number,
  at: { readonly tempC: number | null; readonly since: number | null; readonly facts: FiringFacts },
): readonly { readonly phase: SoundPhase; readonly share: number }[] {
  const sure = (phase: SoundPhase) => [{ phase, share: 1 }];
  if (at.since !== null)
    return sure(at.since < COOL_SECONDS ? "after opening" : "long after opening");
  if (at.tempC === null) return sure("unknown");
  if (atSeconds < hottestZone(at.facts.zones).peakAtSeconds) return sure("heating");
  return coolingPhases(at.tempC)
    .filter(({ share }) => share > LEAST_SHARE)
    .toSorted((a, b) => b.share - a.share);
}

/** Ware follows the kiln so much later, and an inversion has no sharp edge [K]; our own estimates. */
const BEHIND_K = 20;
const EDGE_K = 8;
const LEAST_SHARE = 0.02;

/** An inversion is left by degrees: the thick parts of the ware are still in it when the kiln is past it. */
function coolingPhases(
  tempC: number,
): readonly { readonly phase: SoundPhase; readonly share: number }[] {
  const below = (edgeC: number) => 1 / (1 + Math.exp((tempC - edgeC) / EDGE_K));
  const intoQuartz = below(QUARTZ_BAND.highC);
  const outOfQuartz = below(QUARTZ_BAND.lowC - BEHIND_K);
  const intoCristobalite = below(CRISTOBALITE_BAND.highC);
  const outOfCristobalite = below(CRISTOBALITE_BAND.lowC - BEHIND_K);
  return [
    { phase: "above the inversions", share: 1 - intoQuartz },
    { phase: "quartz", share: intoQuartz - outOfQuartz },
    { phase: "between the inversions", share: outOfQuartz - intoCristobalite },
    { phase: "cristobalite", share: intoCristobalite - outOfCristobalite },
    { phase: "below the inversions", share: outOfCristobalite },
  ];
}
