import { type Curve, peakOf } from "./Curve.ts";
import { type Band, type BandPassage, type Direction, type Edge, edgeTimes } from "./edgeTimes.ts";
import { type SlopeMeter, slopeMeter } from "./slopes.ts";

/** Window of the fastest sustained rate [s]: long enough to bury noise, short against a passage. */
const SUSTAINED_WINDOW_SECONDS = 15 * 60;

/** Narrowest window that is still called sustained [s]. */
const NARROWEST_WINDOW_SECONDS = 2 * 60;

/** Step between the moments at which the fastest rate is looked for [s]. */
const LOOK_STEP_SECONDS = 30;

/**
 * The passage of a Curve through a band: heating before its peak, cooling after it.
 * Mean rate = width of the band over the time from first entering to last leaving. Fastest
 * sustained rate = largest least-squares slope over a window of 15 min (or the whole passage when
 * that is shorter) whose middle lies in the passage. Nothing is measured across a gap.
 */
export function bandPassage(curve: Curve, band: Band, direction: Direction): BandPassage {
  return passagesOf(curve)(band, direction);
}

/** The same for several bands of one Curve, whose slopes are summed up once. */
export function passagesOf(curve: Curve): (band: Band, direction: Direction) => BandPassage {
  const meter = slopeMeter(curve);
  const peak = peakOf(curve);
  return (band, direction) => passage({ curve, meter, peak }, band, direction);
}

interface Measured {
  readonly curve: Curve;
  readonly meter: SlopeMeter;
  readonly peak: ReturnType<typeof peakOf>;
}

function passage(measured: Measured, band: Band, direction: Direction): BandPassage {
  const { curve, peak } = measured;
  const heating = direction === "heating";
  const [fromC, toC] = heating ? [band.lowC, band.highC] : [band.highC, band.lowC];
  const range = heating
    ? { first: 0, last: peak.index }
    : { first: peak.index, last: curve.tempsC.length - 1 };
  const edges = edgeTimes(curve, { ...range, fromC, toC });
  const base = {
    band: band.name,
    direction,
    fromC,
    toC,
    recrossings: edges.recrossings,
  };
  const start = edges.enter.seconds;
  const end = edges.leave.seconds;
  const whole = start !== null && end !== null && end > start;
  const fastest = fastestBetween(
    measured.meter,
    start ?? edges.enter.insideFrom,
    end ?? edges.leave.insideTo,
    heating,
  );
  const notes = [...edgeNotes("entered", edges.enter), ...edgeNotes("left", edges.leave)];
  const hidden = gapWithin(curve, start, end);
  if (hidden > 0) notes.push(`no readings for ${Math.round(hidden / 60)} min on the way`);
  if (edges.recrossings > 0)
    notes.push("it turned back on the way: time and mean are from first entering to last leaving");
  const touched =
    start !== null ||
    end !== null ||
    fastest.rate !== null ||
    edges.enter.hidden ||
    edges.leave.hidden;
  return {
    ...base,
    measured: !touched ? "no" : whole && hidden === 0 ? "whole" : "partly",
    startSeconds: start,
    endSeconds: end,
    seconds: whole ? end - start : null,
    meanCPerHour: whole ? ((toC - fromC) * 3600) / (end - start) : null,
    fastestCPerHour: fastest.rate,
    fastestAtSeconds: fastest.at,
    windowMinutes: fastest.rate === null ? null : fastest.window / 60,
    notes: touched ? notes : [],
  };
}

function edgeNotes(verb: "entered" | "left", edge: Edge): readonly string[] {
  if (edge.seconds !== null) return [];
  if (edge.hidden) return [`the moment it ${verb} the band lies in a gap`];
  return [
    verb === "entered" ? "the readings begin inside the band" : "the readings end inside the band",
  ];
}

function gapWithin(curve: Curve, start: number | null, end: number | null): number {
  if (start === null || end === null) return 0;
  return curve.gaps
    .filter((gap) => gap.fromSeconds >= start && gap.toSeconds <= end)
    .reduce((sum, gap) => sum + gap.toSeconds - gap.fromSeconds, 0);
}

function fastestBetween(
  meter: SlopeMeter,
  start: number | null,
  end: number | null,
  heating: boolean,
) {
  const none = { rate: null, at: null, window: 0 } as const;
  if (start === null || end === null || !(end > start)) return none;
  const window = Math.min(
    SUSTAINED_WINDOW_SECONDS,
    Math.max(end - start, NARROWEST_WINDOW_SECONDS),
  );
  let best: { rate: number; at: number; window: number } | null = null;
  const steps = Math.max(1, Math.ceil((end - start) / LOOK_STEP_SECONDS));
  for (let k = 0; k <= steps; k++) {
    const at = start + ((end - start) * k) / steps;
    const slope = meter.slopeAt(at, window);
    if (slope === null || slope > 0 !== heating) continue;
    if (best === null || Math.abs(slope) > Math.abs(best.rate)) best = { rate: slope, at, window };
  }
  return best ?? none;
}
