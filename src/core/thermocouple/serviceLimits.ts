import type { ThermocoupleType } from "./ThermocoupleType.ts";

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
  return (row ?? (rows.at(-1) as ServiceLimit)).limitC;
}
