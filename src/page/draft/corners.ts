import type { Draft } from "../../core/schedule/draftSchedule.ts";
import { FASTEST_C_PER_HOUR, HOTTEST_C } from "../../core/schedule/parseSegments.ts";
import type { Schedule } from "../../core/schedule/Schedule.ts";
import {
  celsiusDeltaFromFahrenheitDelta,
  celsiusFromFahrenheit,
  fahrenheitDeltaFromCelsiusDelta,
  fahrenheitFromCelsius,
  type TemperatureUnit,
} from "../../core/units/temperature.ts";
import type { Bench } from "../bench/store.ts";
import { changeSchedule, deskDraft } from "./changeDraft.ts";
import type { EditorFrame } from "./editorFrame.ts";
import { type SegmentChange, withSegment } from "./editSegments.ts";

/** A corner of the curve that can be moved: the end of a ramp, or of a hold. */
export interface Corner {
  readonly segment: number;
  readonly kind: "ramp" | "hold";
  readonly seconds: number;
  readonly tempC: number;
  /** Where its ramp or hold begins. */
  readonly fromSeconds: number;
  readonly fromC: number;
}

/** Every corner of a drafted schedule, in the order of the firing. */
export function cornersOf({ expansion }: Draft): readonly Corner[] {
  return expansion.timeline.map((row) => ({
    segment: row.segment,
    kind: row.kind,
    seconds: row.endSeconds,
    tempC: row.toC,
    fromSeconds: row.startSeconds,
    fromC: row.fromC,
  }));
}

/** Nearest that a corner comes to where its ramp begins [K]: a ramp has to lead somewhere. */
const NEAREST_K = 1;

/** Longest hold that can be dragged to [s]; longer ones are typed. */
const LONGEST_HOLD_SECONDS = 24 * 3600;

/** Follows the pointer with a corner until it is let go; the whole way is one step to undo. */
export function dragCorner(
  bench: Bench,
  corner: Corner,
  { event, frame }: { readonly event: PointerEvent; readonly frame: EditorFrame },
): void {
  const element = event.currentTarget as SVGGElement;
  const sheet = element.ownerSVGElement;
  if (sheet === null || event.button !== 0) return;
  event.preventDefault();
  element.focus();
  element.setPointerCapture(event.pointerId);
  deskDraft(bench, { heldFrame: frame });
  const toSheet = sheet.getScreenCTM()?.inverse();
  const move = (moved: PointerEvent) => {
    const { x, y } = new DOMPoint(moved.clientX, moved.clientY).matrixTransform(toSheet);
    moveTo(bench, corner, frame.from(x, y));
  };
  const drop = () => {
    element.removeEventListener("pointermove", move);
    bench.settle();
    deskDraft(bench, { heldFrame: null });
  };
  element.addEventListener("pointermove", move);
  element.addEventListener("lostpointercapture", drop, { once: true });
}

function moveTo(
  bench: Bench,
  corner: Corner,
  to: { readonly seconds: number; readonly tempC: number },
): void {
  const { unit, draft } = bench.state().work;
  if (draft.schedule === null) return;
  const lasts = to.seconds - corner.fromSeconds;
  if (corner.kind === "hold") {
    const minutes = Math.max(0, Math.round(lasts / 60));
    move(bench, corner, { holdSeconds: Math.min(LONGEST_HOLD_SECONDS, minutes * 60) });
    return;
  }
  const toC = targetFor(draft.schedule, corner, wholeTemperature(to.tempC, unit));
  const isFree = draft.schedule.segments[corner.segment]?.rateCPerHour === "free";
  const rate = (Math.abs(toC - corner.fromC) * 3600) / Math.max(60, lasts);
  move(bench, corner, isFree ? { toC } : { toC, rateCPerHour: wholeRate(rate, unit) });
}

type Step = (schedule: Schedule, corner: Corner, size: number) => SegmentChange;

const UP: Step = (schedule, corner, size) => ({
  toC: targetFor(schedule, corner, (schedule.segments[corner.segment]?.toC ?? corner.tempC) + size),
});
const FASTER: Step = (schedule, { segment }, size) => {
  const { rateCPerHour } = schedule.segments[segment] ?? {};
  return typeof rateCPerHour !== "number"
    ? {}
    : { rateCPerHour: clamp(Math.abs(rateCPerHour) + size, 1, FASTEST_C_PER_HOUR) };
};
const LONGER: Step = (schedule, { segment }, size) => {
  const { holdSeconds = 0 } = schedule.segments[segment] ?? {};
  return { holdSeconds: clamp(holdSeconds + size * 60, 0, LONGEST_HOLD_SECONDS) };
};
const SHORTER: Step = (schedule, corner, size) => LONGER(schedule, corner, -size);
const SLOWER: Step = (schedule, corner, size) => FASTER(schedule, corner, -size);
const DOWN: Step = (schedule, corner, size) => UP(schedule, corner, -size);

const RAMP_KEYS: Readonly<Record<string, Step>> = {
  ArrowUp: UP,
  ArrowDown: DOWN,
  ArrowLeft: FASTER,
  ArrowRight: SLOWER,
};
const HOLD_KEYS: Readonly<Record<string, Step>> = {
  ArrowUp: LONGER,
  ArrowRight: LONGER,
  ArrowDown: SHORTER,
  ArrowLeft: SHORTER,
};

/** Keys that stand for an arrow with Shift. */
const LARGE_KEYS: Readonly<Record<string, string>> = { PageUp: "ArrowUp", PageDown: "ArrowDown" };

/** Moves a corner with the arrow keys: by a degree, a degree an hour or a minute; with Shift or a Page key by ten. */
export function keyCorner(bench: Bench, corner: Corner, event: KeyboardEvent): void {
  const { unit, draft } = bench.state().work;
  const large = LARGE_KEYS[event.key];
  const step = (corner.kind === "hold" ? HOLD_KEYS : RAMP_KEYS)[large ?? event.key];
  if (step === undefined || draft.schedule === null) return;
  event.preventDefault();
  const many = event.shiftKey || large !== undefined ? 10 : 1;
  const size =
    corner.kind === "hold" || unit === "C" ? many : celsiusDeltaFromFahrenheitDelta(many);
  move(bench, corner, step(draft.schedule, corner, size));
}

function move(bench: Bench, corner: Corner, change: SegmentChange): void {
  const { schedule } = bench.state().work.draft;
  if (schedule === null) return;
  const what = `moving the end of ${corner.kind === "hold" ? "the hold of " : ""}segment ${corner.segment + 1}`;
  const merge = `corner ${corner.segment} ${corner.kind}`;
  changeSchedule(bench, withSegment(schedule, corner.segment, change), { what, merge });
}

/** A target that keeps its ramp, and the one after it, going the way they went. */
function targetFor(schedule: Schedule, corner: Corner, wantedC: number): number {
  const { segments } = schedule;
  const here = segments[corner.segment]?.toC ?? corner.tempC;
  const next = segments[corner.segment + 1];
  const rises = here > corner.fromC;
  let low = rises ? corner.fromC + NEAREST_K : -20;
  let high = rises ? HOTTEST_C : corner.fromC - NEAREST_K;
  if (next !== undefined && next.toC > here) high = Math.min(high, next.toC - NEAREST_K);
  if (next !== undefined && next.toC < here) low = Math.max(low, next.toC + NEAREST_K);
  return clamp(wantedC, low, high);
}

function clamp(value: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, value));
}

function wholeTemperature(tempC: number, unit: TemperatureUnit): number {
  return unit === "C"
    ? Math.round(tempC)
    : celsiusFromFahrenheit(Math.round(fahrenheitFromCelsius(tempC)));
}

function wholeRate(rateCPerHour: number, unit: TemperatureUnit): number {
  const rate = clamp(rateCPerHour, 1, FASTEST_C_PER_HOUR);
  return unit === "C"
    ? Math.round(rate)
    : celsiusDeltaFromFahrenheitDelta(
        Math.max(1, Math.round(fahrenheitDeltaFromCelsiusDelta(rate))),
      );
}
