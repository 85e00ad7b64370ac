import { differencesFrom, type FactDifference } from "../../trials/differences.ts";
import type { FiringInNumbers } from "../../trials/FiringFact.ts";
import { notNought } from "../../units/print.ts";
import type { TemperatureUnit } from "../../units/temperature.ts";
import type { Block, Cell } from "../Block.ts";
import { factLabel, factText } from "./factWords.ts";

/** Firings beside the one that they are held against, in one table. */
const BESIDE = 3;

/** Firings that are held against one at most; more would be a book of tables. */
const MOST = 12;

/** What the firings are held against, and what they are called. */
interface Against {
  /** Place in the order given. */
  readonly base: number;
  /** Cones reached in words, in the same order. */
  readonly cones: readonly string[];
}

/** Each firing held against one of them, number by number, with what is too little to be told. */
export function againstBlocks(
  firings: readonly FiringInNumbers[],
  against: Against,
  unit: TemperatureUnit,
): readonly Block[] {
  const { base } = against;
  const others = firings.flatMap((_, at) => (at === base ? [] : [at]));
  const shown = others.slice(0, MOST);
  const differences = differencesFrom(firings, base);
  const groups = Array.from({ length: Math.ceil(shown.length / BESIDE) }, (_, at) =>
    shown.slice(at * BESIDE, (at + 1) * BESIDE),
  );
  return [
    ...groups.map((group): Block => tableOf({ firings, differences, group, ...against }, unit)),
    ...(others.length > shown.length
      ? [
          {
            kind: "sentence",
            text: `The first ${shown.length} are held against firing ${base + 1}; ${others.length - shown.length} more are not.`,
          } as const,
        ]
      : []),
  ];
}

interface Given extends Against {
  readonly firings: readonly FiringInNumbers[];
  readonly differences: readonly FactDifference[];
  /** Places of the firings beside the base. */
  readonly group: readonly number[];
}

function tableOf(given: Given, unit: TemperatureUnit): Block {
  const { firings, differences, group, base } = given;
  const facts = firings[base]?.facts ?? [];
  return {
    kind: "table",
    caption: `Against firing ${base + 1}: how much more (+) or less (−), ± one standard deviation`,
    columns: [
      { head: "", align: "left" },
      { head: `firing ${base + 1}`, align: "right" },
      ...group.map((at) => ({ head: `firing ${at + 1}`, align: "right" }) as const),
    ],
    rows: facts.map((fact): readonly Cell[] => [
      factLabel(fact.label, unit),
      baseCell(fact, given, unit),
      ...group.map((at) => {
        const found = differences.find(
          ({ name, low, high }) => name === fact.name && (low === at || high === at),
        );
        return found === undefined ? "not known" : apartCell(found, { at, unit });
      }),
    ]),
  };
}

function baseCell(
  { kind, value }: FiringInNumbers["facts"][number],
  { cones, base }: Given,
  unit: TemperatureUnit,
): Cell {
  if (value === null) return "not known";
  return kind === "cones" ? (cones[base] ?? "") : factText(kind, value, unit);
}

/** How far a firing lies above or below the base. */
function apartCell(
  { kind, apart, sigma, high, verdict }: FactDifference,
  { at, unit }: { readonly at: number; readonly unit: TemperatureUnit },
): Cell {
  const doubt = `± ${notNought(amount(kind, sigma, unit))}`;
  if (verdict === "same") return { lines: ["not to be told", doubt], style: "faint" };
  const much = `${high === at ? "+" : "−"}${amount(kind, apart, unit)}`;
  return { lines: [much, doubt, ...(verdict === "perhaps" ? ["may be none"] : [])] };
}

function amount(kind: FactDifference["kind"], value: number, unit: TemperatureUnit): string {
  if (kind === "cones") return `${value.toFixed(1)} cones`;
  return factText(kind === "temperature" ? "difference" : kind, value, unit);
}
