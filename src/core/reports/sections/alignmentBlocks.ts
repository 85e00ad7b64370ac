import type { Alignment } from "../../firing/Alignment.ts";
import { alignmentWords } from "../../firing/alignmentWords.ts";
import type { ComparedFiring, Comparison } from "../../firing/Comparison.ts";
import { linedUp } from "../../firing/linedUp.ts";
import { printDuration, printTemperature } from "../../units/print.ts";
import type { TemperatureUnit } from "../../units/temperature.ts";
import type { Block } from "../Block.ts";

/** Where each firing is lined up, and which cannot be; nothing to say of the peak. */
export function alignmentBlocks(
  { firings }: Comparison,
  alignment: Alignment,
  unit: TemperatureUnit,
): readonly Block[] {
  if (alignment.at === "peak") return [];
  const { where } = alignmentWords(alignment, unit);
  return [
    { kind: "sentence", text: `The firings are laid over each other ${where}:` },
    {
      kind: "list",
      items: firings.map((firing, at) => `firing ${at + 1}: ${said(firing, alignment, unit)}`),
    },
  ];
}

function said(firing: ComparedFiring, alignment: Alignment, unit: TemperatureUnit): string {
  const laid = linedUp(firing, alignment);
  if (laid === null) return `not laid over the others: ${whyNot(firing, alignment, unit)}`;
  const { secondsFromPeak, secondsFromStart } = laid;
  const fromPeak = `${printDuration(Math.abs(secondsFromPeak))} ${secondsFromPeak < 0 ? "before" : "after"} its peak`;
  return alignment.at === "start"
    ? fromPeak
    : `${fromPeak}, ${printDuration(secondsFromStart)} after the first reading`;
}

function whyNot(firing: ComparedFiring, alignment: Alignment, unit: TemperatureUnit): string {
  if (!("tempC" in alignment)) return "";
  const { peakC, lastReadingC, aligned } = firing;
  const wanted = printTemperature(alignment.tempC, unit);
  if (peakC < alignment.tempC)
    return `its peak, ${printTemperature(peakC, unit)}, is below ${wanted}`;
  const seen =
    alignment.at === "rising"
      ? `its log begins at ${printTemperature(aligned.tempsC[0] as number, unit)}`
      : `its log ends at ${printTemperature(lastReadingC, unit)}`;
  return `${seen} and has no reading on either side of ${wanted}`;
}
