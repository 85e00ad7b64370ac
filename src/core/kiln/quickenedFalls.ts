import { type Curve, peakOf, temperatureAt } from "../curve/Curve.ts";
import { type SlopeMeter, slopeMeter } from "../curve/slopes.ts";
import {
  ABOVE_ROOM_K,
  freeFalls,
  GROWN,
  isNearSet,
  LED_K,
  type OwnFall,
  ownFall,
  placedHinge,
  TELLING_SECONDS,
} from "./freeFall.ts";
import type { OutputSeries } from "./LearnedKiln.ts";
import { outputMean, scatterK } from "./naturalFall.ts";

/** A moment from which a kiln fell faster than it falls by itself, with nothing in its log to explain it. */
export interface QuickenedFall {
  readonly atSeconds: number;
  /** The moment lies within this of `atSeconds`, as far as the readings can tell [s]. */
  readonly plusMinusSeconds: number;
  readonly tempC: number;
  readonly plusMinusK: number;
  /** Before and after it, positive [°C/h]. */
  readonly beforeCPerHour: number;
  readonly afterCPerHour: number;
  /** What the shut kiln would have fallen at right after, positive [°C/h]. */
  readonly ownCPerHour: number;
}

/** A fall after the peak, watched for what the kiln does not do by itself. */
export interface WatchedFall {
  /** In order of time. */
  readonly quickened: readonly QuickenedFall[];
  /** Down to here the readings go on without a gap and without quickening [°C]; null when they do not fall. */
  readonly calmDownToC: number | null;
}

/** What explains a change of the fall, as far as the log carries it. */
export interface FallExplained {
  readonly output: OutputSeries | null;
  readonly setPoint: Curve | null;
}

/** A first reading below this is taken for the room's, else the room is taken to be the second [°C]. */
const ROOM_BELOW_C = 45;
const USUAL_ROOM_C = 20;
/** After the power goes off the hot face first runs ahead of the brick [s]. */
const SETTLING_SECONDS = 1200;
const LOOK_EVERY_SECONDS = 300;
/** Windows after a moment over which the fall is measured: the first that noise and sampling allow [s]. */
const WINDOWS_SECONDS = [900, 1200, 1800, 2700, 3600] as const;
/** A rate is good enough when it scatters by less [°C/h, one sigma]. */
const RATE_SIGMA = 4;
/** So many sigmas above are no scatter. */
const SIGMAS = 4;
/** A fall that outgrows the kiln's own by less than a share, or by less than so much, may be its own. */
const GROWN_CPERHOUR = 10;
/** What a fitted fall may be out by: near the temperatures it was fitted on, and far below them. */
const FIT_NEAR = 1.5;
const FIT_FAR = 2;
/** A fall of less than this share of the kiln's own is being held by the elements. */
const HELD_SHARE = 0.8;
/** A fall that kept this share of what slowing down takes away may have been held; noise blurs it. */
const MAYBE_HELD = 0.25;
/** Hotter than this, with no word of the power, a fall slower than its height over this is a shut kiln's [°C], [h]. */
const HOT_C = 400;
const SHUT_HOURS = 3;
/** A fall is doubted from a smaller drop on than it is learned from. */
const DOUBTED_SHARE = 0.97;
/** None shut falls as fast as its height above the room over this [h]; our own estimate. */
const FASTEST_HOURS = 0.8;
/** Elements that give less than this share are off. */
const OFF = 0.005;
/** A pause in the readings longer than this may hide an opening [s]. */
const BLIND_SECONDS = 2700;

/**
 * Where a Curve falls faster after its peak than the kiln falls by itself: the lid or a vent was opened,
 * the lid was propped, or a fan came on. Left out is what power that is taken away explains, what a set
 * point leads, and what noise and sampling may feign.
 */
export function quickenedFalls(curve: Curve, explained: FallExplained): WatchedFall {
  const first = curve.tempsC[0]!;
  const roomC = first < ROOM_BELOW_C ? first : USUAL_ROOM_C;
  const peak = peakOf(curve);
  const end = curve.timesSeconds.at(-1)!;
  const fromSeconds = peak.seconds + SETTLING_SECONDS;
  const { window, sigma } = windowFor(curve, peak.seconds);
  const quickened: QuickenedFall[] = [];
  const falls = freeFalls(curve, { fromSeconds, roomC, setPoint: explained.setPoint });
  const look: Look = {
    curve,
    meter: slopeMeter(curve),
    roomC,
    fromSeconds,
    window,
    leastGrowth: Math.max(GROWN_CPERHOUR, SIGMAS * sigma),
    sigma,
    explained,
    ownFall: (tempC, seconds) =>
      ownFall(falls, {
        tempC,
        roomC,
        beforeSeconds: Math.min(seconds, quickened[0]?.atSeconds ?? seconds),
      }),
  };
  for (let seconds = fromSeconds + window; seconds <= end - window; seconds += LOOK_EVERY_SECONDS) {
    if (quickeningAt(look, seconds) === null) continue;
    const strongest = strongestNear(look, seconds, end - window);
    const placed = placedHinge(curve, { atSeconds: strongest, window, roomC });
    const event = quickeningAt(look, placed.seconds) ?? quickeningAt(look, strongest);
    if (event !== null) quickened.push({ ...event, ...uncertain(event, placed) });
    seconds = Math.max(strongest, placed.seconds) + 2 * window;
  }
  return { quickened, calmDownToC: calmDownTo(curve, peak.seconds, quickened, roomC) };
}

/** All that is asked when one moment is looked at. */
interface Look {
  readonly curve: Curve;
  readonly meter: SlopeMeter;
  readonly roomC: number;
  /** From where on the fall may be the kiln's own [s]. */
  readonly fromSeconds: number;
  readonly window: number;
  /** A fall that outgrows another by less may be noise [°C/h]. */
  readonly leastGrowth: number;
  /** Scatter of a rate [°C/h]. */
  readonly sigma: number;
  readonly explained: FallExplained;
  /** The kiln's own fall at a temperature by what was seen before a moment; null when not seen. */
  readonly ownFall: (tempC: number, beforeSeconds: number) => OwnFall | null;
}

function windowFor(curve: Curve, fromSeconds: number) {
  const times = curve.timesSeconds.filter((time) => time >= fromSeconds);
  const step = times.length < 2 ? 60 : medianStep(times);
  const noiseK = Math.max(scatterK(curve), 0.2);
  const sigmaOf = (window: number) =>
    (3600 * noiseK * Math.sqrt(12 / Math.max(1, window / step))) / window;
  const window =
    WINDOWS_SECONDS.find((each) => each >= 2 * step && sigmaOf(each) <= RATE_SIGMA) ??
    Math.max(WINDOWS_SECONDS.at(-1)!, 2 * step);
  return { window, sigma: sigmaOf(window) };
}

function medianStep(times: Float64Array): number {
  const steps = times.slice(1).map((time, i) => time - times[i]!);
  return steps.sort()[Math.floor(steps.length / 2)]!;
}

/** The quickening at a moment, not yet placed to the minute; null when there is none or it is explained. */
function quickeningAt(look: Look, seconds: number) {
  const { curve, meter, roomC, window } = look;
  const before = meter.slopeAt(seconds - window, 2 * window);
  const after = meter.slopeAt(seconds + window / 2, window);
  const tempC = temperatureAt(curve, seconds);
  const laterC = temperatureAt(curve, seconds + window / 2);
  const earlierC = temperatureAt(curve, seconds - window);
  if (before === null || after === null) return null;
  if (tempC === null || laterC === null || earlierC === null) return null;
  if (tempC < roomC + ABOVE_ROOM_K || laterC <= roomC) return null;
  const [beforeCPerHour, afterCPerHour] = [-before, -after];
  if (beforeCPerHour < 0) return null;
  // By height above the room alone: a shut kiln slows down at least as much.
  const expected = (beforeCPerHour * (laterC - roomC)) / (earlierC - roomC);
  const outgrows = (own: number, share: number) =>
    afterCPerHour > share * own && afterCPerHour > own + look.leastGrowth;
  if (!outgrows(expected, GROWN) || isLed(look, seconds, afterCPerHour)) return null;
  if (mayBeShut(look, laterC, afterCPerHour)) return null;
  const own = look.ownFall(laterC, seconds);
  const isHeld = wasHeld(look, { seconds, earlierC, beforeCPerHour });
  const heldBelow = own === null ? (laterC - roomC) / FASTEST_HOURS : own.cPerHour;
  const share = own === null ? 1 : own.isNear ? FIT_NEAR : FIT_FAR;
  if (isHeld && !outgrows(heldBelow, share)) return null;
  if (!isHeld && own?.isNear && !outgrows(own.cPerHour, GROWN)) return null;
  const ownCPerHour = isHeld ? heldBelow : expected;
  return { atSeconds: seconds, tempC, beforeCPerHour, afterCPerHour, ownCPerHour };
}

/** Whether a fall may as well be that of a shut kiln whose power was taken away, in a log that does not tell the power. */
function mayBeShut({ explained, roomC }: Look, tempC: number, fallCPerHour: number): boolean {
  return explained.output === null && tempC > HOT_C && (tempC - roomC) / fallCPerHour > SHUT_HOURS;
}

/** Whether the elements held the fall back before a moment, or may have: by their output or by its shape. */
function wasHeld(
  look: Look,
  at: { readonly seconds: number; readonly earlierC: number; readonly beforeCPerHour: number },
): boolean {
  const { explained, window } = look;
  if (explained.output !== null) {
    const from = at.seconds - 2 * window - SETTLING_SECONDS;
    const mean = outputMean(explained.output, from, at.seconds - 60);
    if (mean !== null) return mean > OFF;
  }
  if (isNearSet(explained.setPoint, { seconds: at.seconds - window, tempC: at.earlierC }))
    return true;
  const own = look.ownFall(at.earlierC, at.seconds);
  if (own?.isNear && at.beforeCPerHour < HELD_SHARE * own.cPerHour) return true;
  const shapes = TELLING_SECONDS.flatMap((ago) => straightSince(look, at, ago));
  return shapes.length === 0 ? !own?.isNear : shapes.includes(true);
}

/** Whether a fall kept its rate since so long ago where one by itself slows down; empty when it cannot tell. */
function straightSince(
  { curve, meter, roomC, window, fromSeconds, sigma }: Look,
  at: { readonly seconds: number; readonly earlierC: number; readonly beforeCPerHour: number },
  agoSeconds: number,
): readonly boolean[] {
  const then = at.seconds - window - agoSeconds;
  if (then - window < fromSeconds) return [];
  const [thenC, rate] = [temperatureAt(curve, then), meter.slopeAt(then, 2 * window)];
  if (thenC === null || rate === null || rate >= 0) return [];
  const slowed = (at.earlierC - roomC) / (thenC - roomC);
  if (slowed > DOUBTED_SHARE) return [];
  const blur = (2 * sigma) / -rate;
  return [at.beforeCPerHour / -rate > slowed + MAYBE_HELD * (1 - slowed) - blur];
}

/** Whether the set point leads the fall after a moment. */
function isLed(
  { curve, explained, window }: Look,
  seconds: number,
  afterCPerHour: number,
): boolean {
  const { setPoint } = explained;
  if (setPoint === null) return false;
  const until = seconds + window;
  const [setC, readC] = [temperatureAt(setPoint, until), temperatureAt(curve, until)];
  if (setC === null || readC === null || Math.abs(setC - readC) > LED_K) return false;
  const led = slopeMeter(setPoint).slopeAt(seconds + window / 2, window);
  return led !== null && -led > 0.7 * afterCPerHour;
}

function strongestNear(look: Look, from: number, last: number): number {
  let [best, most] = [from, 0];
  for (let at = from; at <= Math.min(last, from + 2 * look.window); at += LOOK_EVERY_SECONDS / 5) {
    const found = quickeningAt(look, at);
    const grown = found === null ? 0 : found.afterCPerHour - found.ownCPerHour;
    if (grown > most) [best, most] = [at, grown];
  }
  return best;
}

function uncertain(
  { beforeCPerHour, afterCPerHour }: { beforeCPerHour: number; afterCPerHour: number },
  placed: ReturnType<typeof placedHinge>,
) {
  const { seconds, tempC, plusMinusSeconds } = placed;
  const perSecond = Math.max(beforeCPerHour, afterCPerHour) / 3600;
  return {
    atSeconds: seconds,
    tempC,
    plusMinusSeconds,
    plusMinusK: Math.max(1, perSecond * plusMinusSeconds),
  };
}

/** Where calm readings end: at the first quickening, the first blind stretch, or the last reading. */
function calmDownTo(
  curve: Curve,
  peakSeconds: number,
  [first]: readonly QuickenedFall[],
  roomC: number,
): number | null {
  const blind = curve.gaps.find(
    ({ fromSeconds, toSeconds }) =>
      toSeconds > peakSeconds && toSeconds - fromSeconds > BLIND_SECONDS,
  );
  const until = Math.min(
    first?.atSeconds ?? Number.POSITIVE_INFINITY,
    blind?.fromSeconds ?? Number.POSITIVE_INFINITY,
    curve.timesSeconds.at(-1)!,
  );
  const tempC = temperatureAt(curve, until);
  return tempC === null || until <= peakSeconds ? null : Math.max(roomC, tempC);
}
