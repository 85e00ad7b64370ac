import type { Curve } from "../curve/Curve.ts";
import { medianInPlace } from "../curve/median.ts";
import { temperatureAt } from "../curve/temperatureAt.ts";
import type { AssumedKiln } from "../kiln/AssumedKiln.ts";
import type { OutputSeries } from "../kiln/LearnedKiln.ts";
import { naturalFall } from "../kiln/naturalFall.ts";
import type { Speed } from "../kiln/speeds.ts";

/** Only the last hours speak for what comes [s]. */
const LAST_SECONDS = 3 * 3600;

const LEAST_MOMENTS = 3;

/** A first reading below this is taken for the room's, otherwise the room for so warm [°C]. */
const ROOM_BELOW_C = 45;
const USUAL_ROOM_C = 20;

/** How a log's own fall stands to that of a kiln. */
export interface OwnFall {
  /** Speed of this log's fall by itself over that kiln's, at the same temperatures. */
  readonly share: number;
  /** First and last moment used [s]. */
  readonly fromSeconds: number;
  readonly toSeconds: number;
  /** So slow that the elements may be holding it back, with nothing in the log or the plan to say so. */
  readonly isDoubtful: boolean;
  /** First sign that the lid or a vent was opened [s]; the share is then that of the last minutes. */
  readonly openedAtSeconds: number | null;
}

/** A fall slower than this share of the kiln's own may be held back; our own estimate. */
const HELD_BACK = 0.8;

/** A set point that the kiln follows this closely leads it [K]; our own estimate. */
const LED_WITHIN_K = 8;

/** What says that a fall is held back. */
export interface HeldBack {
  /** Stretches of temperature in which the plan programmes the fall [°C]. */
  readonly planned: readonly { readonly highC: number; readonly lowC: number }[];
  readonly setPoint: Curve | null;
}

/**
 * How fast a log fell by itself in its last three hours, over what a kiln does at the same
 * temperatures: the middle of the ratios, moment by moment.
 * Once the kiln was opened, only how it falls now counts.
 * @returns null when no such fall was seen for long enough.
 */
export function ownFall(
  log: {
    readonly curve: Curve;
    readonly output: OutputSeries | null;
    readonly held: HeldBack;
    /** Of the last minutes, signed; null where it is not known. */ readonly rateCPerHour:
      | number
      | null;
  },
  kiln: AssumedKiln,
): OwnFall | null {
  const { curve, output, held, rateCPerHour } = log;
  const firstC = curve.tempsC[0]!;
  const roomC = firstC < ROOM_BELOW_C ? firstC : USUAL_ROOM_C;
  const since = curve.timesSeconds.at(-1)! - LAST_SECONDS;
  const fall = naturalFall(curve, output, roomC);
  const nowC = curve.tempsC.at(-1)!;
  if (fall.openedAtSeconds !== null && rateCPerHour !== null && rateCPerHour < 0)
    return {
      share: -rateCPerHour / Math.max(1, kiln.naturalCoolingCPerHour(nowC)),
      fromSeconds: fall.openedAtSeconds,
      toSeconds: curve.timesSeconds.at(-1)!,
      isDoubtful: true,
      openedAtSeconds: fall.openedAtSeconds,
    };
  const moments = fall.samples.filter(
    (moment) => moment.seconds > since && !isHeld(moment, output === null ? held : NOTHING_HOLDS),
  );
  const ratios = moments.flatMap(({ tempC, rateCPerHour }) => {
    const speed = kiln.naturalCoolingCPerHour(tempC);
    return speed > 0 ? [-rateCPerHour / speed] : [];
  });
  const [first, last] = [moments[0], moments.at(-1)];
  if (first === undefined || last === undefined || ratios.length < LEAST_MOMENTS) return null;
  const share = medianInPlace(ratios);
  return {
    share,
    fromSeconds: first.seconds,
    toSeconds: last.seconds,
    isDoubtful: output === null && share < HELD_BACK,
    openedAtSeconds: null,
  };
}

/** With an output column the log itself says where the elements were off. */
const NOTHING_HOLDS: HeldBack = { planned: [], setPoint: null };

function isHeld({ seconds, tempC }: Speed, { planned, setPoint }: HeldBack): boolean {
  if (planned.some(({ highC, lowC }) => tempC <= highC && tempC >= lowC)) return true;
  const setC = setPoint && temperatureAt(setPoint, seconds);
  return setC !== null && Math.abs(setC - tempC) < LED_WITHIN_K;
}
