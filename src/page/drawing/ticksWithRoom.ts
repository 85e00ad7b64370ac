import { textWidth } from "../../core/charts/textWidth.ts";
import type { AxisRead } from "./ChartRead.ts";
import { shownTick } from "./drawnAxes.ts";

/** Least room between the labels of two ticks [px]. */
const APART = 8;

/** A horizontal axis with every tick, or every second, third …, that there is room for; 0 stays. */
export function ticksWithRoom(axis: AxisRead, widthPx: number, fontSize: number): AxisRead {
  const { values } = axis.axis;
  const first = Math.max(0, values.indexOf(0));
  const [low, high] = axis.scale.domain;
  const kept = (every: number) => values.filter((_, at) => (at - first) % every === 0);
  const hasRoom = (ticks: readonly number[]) =>
    ticks.every((tick, at) => {
      const next = ticks[at + 1];
      if (next === undefined) return true;
      const half = (each: number) => textWidth(shownTick(axis, each), fontSize) / 2;
      return ((next - tick) / (high - low)) * widthPx >= half(tick) + half(next) + APART;
    });
  let every = 1;
  while (every < values.length && !hasRoom(kept(every))) every += 1;
  return { ...axis, axis: { ...axis.axis, values: kept(every) } };
}
