import type { FiringFact } from "../../trials/FiringFact.ts";
import {
  notNought,
  printDifference,
  printDuration,
  printRate,
  printTemperature,
} from "../../units/print.ts";
import type { TemperatureUnit } from "../../units/temperature.ts";

/** A fact of a firing in the reader's unit; rates without a sign. */
export function factText(kind: FiringFact["kind"], value: number, unit: TemperatureUnit): string {
  if (kind === "rate") return printRate(value, unit);
  if (kind === "temperature") return printTemperature(value, unit);
  if (kind === "difference") return printDifference(value, unit).replace("-", "−");
  return value === 0 ? "none" : printDuration(value);
}

/** How far a fact may be off, never a bare 0. */
export function factDoubt(kind: FiringFact["kind"], value: number, unit: TemperatureUnit): string {
  return notNought(kind === "duration" ? printDuration(value) : factText(kind, value, unit));
}

/** What a fact is called, its temperatures in the reader's unit. */
export function factLabel(label: string, unit: TemperatureUnit): string {
  return label.replace(/\{(\d+)\}/, (_, tempC) => printTemperature(Number(tempC), unit));
}
