import type { Layer } from "./chartSpec.ts";
import { type Frame, pixelAt } from "./frame.ts";
import { labelLayers, leaderLayer } from "./layers.ts";
import type { RecordingTime } from "./pingsTime.ts";
import type { Places } from "./places.ts";
import type { Theme } from "./theme.ts";

/** Distance of the words from the line, and of their middle from the upper edge [px]. */
const BESIDE = 6;
const DOWN = 10;

/** A line where the ware was taken out, with its words; nothing when that is not in the recording. */
export function unloadingLayers(
  places: Places,
  frame: Frame,
  { time, atSeconds }: { readonly time: RecordingTime; readonly atSeconds: number | null },
  colours: Theme,
): readonly Layer[] {
  if (atSeconds === null || atSeconds <= 0 || time.shown(atSeconds) >= time.end) return [];
  const { x } = pixelAt(frame, time.shown(atSeconds), 0);
  const isLate = x > frame.width * 0.8;
  const label = {
    text: "taken out of the kiln",
    at: { x: isLate ? x - BESIDE : x + BESIDE, y: DOWN },
    align: isLate ? ("right" as const) : ("left" as const),
  };
  return [
    ...leaderLayer(
      places,
      frame,
      [
        [
          { x, y: 0 },
          { x, y: frame.height },
        ],
      ],
      colours.quiet,
    ),
    ...labelLayers(places, frame, [label], colours.quiet, colours.paper),
  ];
}
