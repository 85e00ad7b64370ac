import { type AxisDef, acrossAxis } from "./places.ts";
import { evenTicks } from "./quantities.ts";

/** How the time of a recording is shown: seconds up to three minutes, minutes up to three hours, then hours. */
export interface RecordingTime {
  readonly field: string;
  readonly axis: AxisDef;
  /** Right edge of the plot. */
  readonly end: number;
  readonly shown: (seconds: number) => number;
}

const HOURS = { field: "elapsedHours", name: "h", seconds: 3600 };

/** Units, each up to a length of recording [s]. */
const UNITS = [
  { field: "elapsedSeconds", name: "s", seconds: 1, upTo: 180 },
  { field: "elapsedMinutes", name: "min", seconds: 60, upTo: 3 * 3600 },
];

/** Time axis for a recording of a length [s]. */
export function recordingTime(seconds: number): RecordingTime {
  const unit = UNITS.find(({ upTo }) => seconds <= upTo) ?? HOURS;
  const end = seconds / unit.seconds;
  return {
    field: unit.field,
    axis: acrossAxis(
      `Time from the start of the recording (${unit.name})`,
      [0, end],
      evenTicks(0, end, 12),
    ),
    end,
    shown: (at) => at / unit.seconds,
  };
}
