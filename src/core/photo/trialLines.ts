import { lengthFigure } from "./lengthFigure.ts";
import type { PhotoMeasurement } from "./PhotoMeasurement.ts";

/** Lines of YAML for the trial of a tile in a firing record, without indent. */
export function trialLines({ cracks, leastVisibleMm, name }: PhotoMeasurement): readonly string[] {
  if (cracks === null)
    return [
      "cracked: none",
      `note: ${quoted(`no cracks in ${name}; inked ones would be seen from about ${lengthFigure(leastVisibleMm)} mm of width`)}`,
    ];
  const { pitchMm, pitchIntervalMm, crossings, pattern } = cracks;
  return [
    `crackSpacing: ${lengthFigure(pitchMm)} mm`,
    "cracked: crackle",
    `note: ${quoted(`spacing ${lengthFigure(pitchIntervalMm.low)} to ${lengthFigure(pitchIntervalMm.high)} mm (95 %) from ${name}, ${crossings} crossings, taken as ${pattern === "net" ? "a net" : "parallel cracks"}`)}`,
  ];
}

function quoted(text: string): string {
  return JSON.stringify(text);
}
