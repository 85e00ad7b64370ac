import type { Comparison } from "../../firing/compareFirings.ts";
import { printDifference, printTemperature } from "../../units/print.ts";
import type { TemperatureUnit } from "../../units/temperature.ts";
import type { Block } from "../Block.ts";

/** A zone that stands otherwise by this much is said [K]; own choice, above what loads do. */
const SAID_K = 5;

/** How thermocouples have come to stand towards one another, first firing to last; empty when alike. */
export function shiftBlocks(
  { firings, thermocoupleShifts }: Comparison,
  unit: TemperatureUnit,
): readonly Block[] {
  const said = thermocoupleShifts.filter(({ shiftK }) => Math.abs(shiftK) >= SAID_K);
  if (said.length === 0) return [];
  const [first, last] = [firings[0], firings.at(-1)];
  return [
    { kind: "heading", text: "Thermocouples towards one another" },
    {
      kind: "list",
      items: said.map(
        ({ zone, shiftK, fromC, toC }) =>
          `From “${first?.title}” to “${last?.title}” ${zone} has come to read ${printDifference(Math.abs(shiftK), unit)} ${shiftK < 0 ? "lower" : "higher"} against ${thermocoupleShifts.length === 1 ? "the other" : "the mean of the others"}, at equal heat of the kiln from ${printTemperature(fromC, unit)} to ${printTemperature(toC, unit)} on the way up.`,
      ),
    },
    {
      kind: "sentence",
      text: "Load, elements or a thermocouple has changed; a log shows the difference and not which of them is right. Witness cones beside each thermocouple would.",
    },
  ];
}
