import type { ThermocoupleType } from "./emf.ts";

/** A tolerance class: two of ASTM E230, three of IEC 60584-1. */
export type WireClass = "standard" | "special" | "class 1" | "class 2" | "class 3";

/** What new wire of a type and class may be off at a temperature. */
export interface NewWireLimit {
  /** Either way [K]; null outside the temperatures for which the class gives one. */
  readonly limitK: number | null;
  /** Temperatures for which the class gives a limit [°C]; null when the type has no such class. */
  readonly range: { readonly fromC: number; readonly toC: number } | null;
}

/** One rule of a class: over a range the greater of a fixed part and a share of |t|, or a straight line. */
interface LimitRule {
  readonly fromC: number;
  readonly toC: number;
  readonly fixedK: number;
  /** Share of the size of the temperature in °C. */
  readonly share: number;
  /** The share is added for each degree above here, and not compared [°C]. */
  readonly addedAboveC?: number;
}

/** A rule over a range. */
function rule(fromC: number, toC: number, [fixedK, share]: readonly [number, number]): LimitRule {
  return { fromC, toC, fixedK, share };
}

const E230_BASE: Readonly<Partial<Record<WireClass, readonly LimitRule[]>>> = {
  standard: [rule(0, 1260, [2.2, 0.0075])],
  special: [rule(0, 1260, [1.1, 0.004])],
};
const IEC_K_N: Readonly<Partial<Record<WireClass, readonly LimitRule[]>>> = {
  "class 1": [rule(-40, 1000, [1.5, 0.004])],
  "class 2": [rule(-40, 1200, [2.5, 0.0075])],
  "class 3": [rule(-200, 40, [2.5, 0.015])],
};
const NOBLE: Readonly<Partial<Record<WireClass, readonly LimitRule[]>>> = {
  standard: [rule(0, 1480, [1.5, 0.0025])],
  special: [rule(0, 1480, [0.6, 0.001])],
  "class 1": [
    rule(0, 1100, [1, 0]),
    { fromC: 1100, toC: 1600, fixedK: 1, share: 0.003, addedAboveC: 1100 },
  ],
  "class 2": [rule(0, 1600, [1.5, 0.0025])],
};

/**
 * Tolerances of new, unused wire [K] by type and class, cold junction at 0 °C.
 * @see SOURCES["astm-e230"] for standard and special, SOURCES["iec-60584-tolerances"] for classes
 */
const RULES: Readonly<
  Record<ThermocoupleType, Readonly<Partial<Record<WireClass, readonly LimitRule[]>>>>
> = {
  K: {
    ...E230_BASE,
    standard: [rule(-200, 0, [2.2, 0.02]), rule(0, 1260, [2.2, 0.0075])],
    ...IEC_K_N,
  },
  N: { ...E230_BASE, ...IEC_K_N },
  S: NOBLE,
  R: NOBLE,
  B: {
    standard: [rule(870, 1700, [0, 0.005])],
    special: [rule(870, 1700, [0, 0.0025])],
    "class 2": [rule(600, 1700, [0, 0.0025])],
    "class 3": [rule(600, 1700, [4, 0.005])],
  },
  J: {
    standard: [rule(0, 760, [2.2, 0.0075])],
    special: [rule(0, 760, [1.1, 0.004])],
    "class 1": [rule(-40, 750, [1.5, 0.004])],
    "class 2": [rule(-40, 750, [2.5, 0.0075])],
  },
  T: {
    standard: [rule(-200, 0, [1, 0.015]), rule(0, 370, [1, 0.0075])],
    special: [rule(0, 370, [0.5, 0.004])],
    "class 1": [rule(-40, 350, [0.5, 0.004])],
    "class 2": [rule(-40, 350, [1, 0.0075])],
    "class 3": [rule(-200, 40, [1, 0.015])],
  },
};

/**
 * New-wire limit of a type and class at a temperature [°C], and where such limits end. It binds the
 * maker of unused wire; what a used thermocouple in a kiln reads may be off by more, and no limit
 * of this kind is the accuracy of a log.
 */
export function newWireLimit(
  type: ThermocoupleType,
  wireClass: WireClass,
  tempC: number,
): NewWireLimit {
  const rules = RULES[type][wireClass];
  if (rules === undefined) return { limitK: null, range: null };
  const range = {
    fromC: Math.min(...rules.map(({ fromC }) => fromC)),
    toC: Math.max(...rules.map(({ toC }) => toC)),
  };
  const found = rules.find(({ fromC, toC }) => tempC >= fromC && tempC <= toC);
  return { limitK: found === undefined ? null : sizeOf(found, tempC), range };
}

function sizeOf({ fixedK, share, addedAboveC }: LimitRule, tempC: number): number {
  return addedAboveC === undefined
    ? Math.max(fixedK, share * Math.abs(tempC))
    : fixedK + share * (tempC - addedAboveC);
}

/**
 * A class from what a person wrote: `standard`, `special`, `1`, `class 2`.
 * @returns null for anything else.
 */
export function wireClassOf(written: string): WireClass | null {
  const word = written.trim().toLowerCase();
  if (word === "standard" || word === "special") return word;
  const number = /^(?:iec\s*)?(?:class\s*)?([123])$/.exec(word)?.[1];
  return number === undefined ? null : (`class ${number}` as WireClass);
}

/**
 * One sigma of thermocouple and place in the kiln [K] when type and class of the wire are known.
 * The usual one stands mostly on type K of the standard class, so its new-wire limit over √3 (as for
 * an error that may lie anywhere within it) is taken out of it and that of this wire put in: what
 * place, sheath and wear add stays, whatever the wire.
 *
 * @param usualSigmaK What reported firings scatter by at that temperature [K].
 * @returns null where the class gives no limit at the temperature [°C].
 */
export function sensorSigmaK(
  wire: { readonly type: ThermocoupleType; readonly wireClass: WireClass },
  tempC: number,
  usualSigmaK: number,
): number | null {
  const { limitK } = newWireLimit(wire.type, wire.wireClass, tempC);
  const common = newWireLimit("K", "standard", tempC).limitK ?? 0;
  const rest = Math.max(0, usualSigmaK ** 2 - common ** 2 / 3);
  return limitK === null ? null : Math.sqrt(limitK ** 2 / 3 + rest);
}

/** Wire no thinner than this may go so hot in a protecting tube, day after day. */
interface ServiceLimit {
  /** Diameter of the wire [mm]: American gauges 8, 14, 20, 24, 28 and 30. */
  readonly wireMm: number;
  readonly limitC: number;
}

const GAUGES_MM = [3.25, 1.63, 0.81, 0.51, 0.33, 0.25] as const;

function limits(...tempsC: readonly number[]): readonly ServiceLimit[] {
  return tempsC.map((limitC, at) => ({ wireMm: GAUGES_MM[at]!, limitC }));
}

/**
 * Suggested upper limits by type, thick wire first [°C]. Noble wires are given for one gauge, 0.51 mm.
 * They are suggestions for a long life, not the end of the scale: hotter, wire drifts and breaks early.
 *
 * @see SOURCES["astm-e230-service"]
 */
const SERVICE: Readonly<Record<ThermocoupleType, readonly ServiceLimit[]>> = {
  K: limits(1260, 1090, 980, 870, 870, 760),
  N: limits(1260, 1090, 980, 870, 870, 760),
  J: limits(760, 590, 480, 370, 370, 320),
  T: [
    { wireMm: 1.63, limitC: 370 },
    { wireMm: 0.81, limitC: 260 },
    { wireMm: 0.51, limitC: 200 },
    { wireMm: 0.33, limitC: 200 },
    { wireMm: 0.25, limitC: 150 },
  ],
  R: [{ wireMm: 0.51, limitC: 1480 }],
  S: [{ wireMm: 0.51, limitC: 1480 }],
  B: [{ wireMm: 0.51, limitC: 1700 }],
};

/** A gauge is met by wire that is thinner by no more than this share. */
const SAME_GAUGE = 0.95;

/**
 * How hot a protected thermocouple may be used [°C], by type and diameter of its wire [mm]; that of
 * the thickest wire when its diameter is not known, and of the thinnest listed for still thinner wire.
 */
export function serviceLimitC(type: ThermocoupleType, wireMm: number | null): number {
  const rows = SERVICE[type];
  const row = wireMm === null ? rows[0] : rows.find((each) => wireMm >= SAME_GAUGE * each.wireMm);
  return (row ?? rows.at(-1)!).limitC;
}
