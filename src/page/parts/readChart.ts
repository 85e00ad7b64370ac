import type { TopLevelSpec } from "vega-lite";
import { type ChartReader, type ChartReading, chartReader } from "./chartReading.ts";
import { remembered } from "./controls.ts";

/** Where each chart was last read. */
const READINGS = new WeakMap<Element, { readonly spec: TopLevelSpec; readonly at: ChartReading }>();

/** What a key or a pointer needs to read a chart. */
export interface ReadOptions {
  readonly spec: TopLevelSpec;
  /** Where reading begins, in the plot; null for the beginning of the curve [px of the plot]. */
  readonly from: number | null;
  /** What Escape does; null for nothing. */
  readonly leave: (() => void) | null;
}

/** Reads a chart by the keyboard: arrows go along its curve, and what is there is said. */
export function readByKey(event: KeyboardEvent, { spec, from, leave }: ReadOptions): void {
  const figure = figureOf(event);
  if (figure === null) return;
  if (event.key === "Escape" && leave !== null) {
    event.preventDefault();
    leave();
    return;
  }
  const last = READINGS.get(figure);
  const now = last?.spec === spec ? last.at : null;
  const reading = readerOf(spec).byKey(now, event, from);
  if (reading === null) return;
  event.preventDefault();
  tell(figure, spec, { reading, isSaid: true });
}

/** Reads a chart where the pointer is; it is shown and not said. */
export function readByPointer(event: PointerEvent, spec: TopLevelSpec): void {
  const figure = figureOf(event);
  const sheet = figure?.querySelector<SVGSVGElement>(".reading-cursor");
  const plot = sheet?.querySelector<SVGGElement>("g")?.getScreenCTM();
  if (figure === null || !plot) return;
  const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(plot.inverse());
  const reading = readerOf(spec).near(x, y);
  if (reading !== null) tell(figure, spec, { reading, isSaid: false });
}

const readerOf = remembered((spec: TopLevelSpec): ChartReader => chartReader(spec));

function figureOf({ currentTarget }: Event): Element | null {
  return (currentTarget as Element).closest("figure");
}

function tell(
  figure: Element,
  spec: TopLevelSpec,
  { reading, isSaid }: { readonly reading: ChartReading; readonly isSaid: boolean },
): void {
  READINGS.set(figure, { spec, at: reading });
  const line = figure.querySelector(".chart-reading");
  line?.setAttribute("aria-live", isSaid ? "polite" : "off");
  if (line) line.textContent = reading.words;
  const cursor = figure.querySelector(".reading-cursor");
  cursor?.classList.add("is-on");
  const place = cursor?.querySelector("g > g");
  place?.setAttribute("transform", `translate(${reading.x},0)`);
  place?.querySelector("circle")?.setAttribute("cy", String(reading.y));
  if (isSaid) place?.scrollIntoView({ block: "nearest", inline: "nearest" });
}
