import { type Curve, makeCurve } from "../curve/Curve.ts";
import { compensated } from "./compensated.ts";
import { emfMillivolts } from "./emf.ts";
import type { ThermocoupleType } from "./ThermocoupleType.ts";

/** A thermocouple at an instrument that is set to another type. */
export interface WrongType {
  /** What the wire is. */
  readonly wire: ThermocoupleType;
  /** What the instrument takes it for. */
  readonly setTo: ThermocoupleType;
  /** Temperature of the instrument's terminals [°C]. */
  readonly coldJunctionC: number;
}

/**
 * What an instrument shows [°C] for a wire of another type at a true temperature [°C].
 * @returns null when the instrument is over or under its range, or the wire is.
 */
export function shownC(tempC: number, { wire, setTo, coldJunctionC }: WrongType): number | null {
  return carried(tempC, { from: wire, to: setTo, coldJunctionC });
}

/**
 * The true temperature [°C] behind what an instrument shows [°C] that is set to another type.
 * @returns null where neither type gives one.
 */
export function trueC(tempC: number, { wire, setTo, coldJunctionC }: WrongType): number | null {
  return carried(tempC, { from: setTo, to: wire, coldJunctionC });
}

/** A Curve as it would be if the wire were of another type; null with under two points left. */
export function trueCurve(curve: Curve, wrong: WrongType): Curve | null {
  const times: number[] = [];
  const temps: number[] = [];
  for (const [i, tempC] of curve.tempsC.entries()) {
    const real = trueC(tempC, wrong);
    if (real === null) continue;
    times.push(curve.timesSeconds[i]!);
    temps.push(real);
  }
  if (times.length < 2) return null;
  const gaps = curve.gaps.filter(({ fromSeconds, toSeconds }) => {
    const at = times.indexOf(fromSeconds);
    return at >= 0 && times[at + 1] === toSeconds;
  });
  return makeCurve(times, temps, gaps);
}

/** A temperature by the emf that one type gives at the terminals, read by the other. */
function carried(
  tempC: number,
  way: {
    readonly from: ThermocoupleType;
    readonly to: ThermocoupleType;
    readonly coldJunctionC: number;
  },
): number | null {
  const hotMv = emfMillivolts(way.from, tempC);
  const coldMv = emfMillivolts(way.from, way.coldJunctionC);
  if (hotMv === null || coldMv === null) return null;
  const read = compensated(way.to, { emfMv: hotMv - coldMv, coldJunctionC: way.coldJunctionC });
  return read.kind === "temperature" ? read.tempC : null;
}
