import type { Heatwork } from "../../cones/cone.ts";
import { CONE_TABLES, printedEndPoint } from "../../cones/coneTables.ts";
import { USUAL_OFFSET_BASIS } from "../../cones/usualOffset.ts";
import type { Finding } from "../../findings/Finding.ts";
import { printDifference, printRate } from "../../units/print.ts";
import type { TemperatureUnit } from "../../units/temperature.ts";
import type { Crossing } from "../../ware/crossingsOf.ts";
import { type Block, section } from "../Block.ts";
import { capitalised, stopped } from "../capitalised.ts";
import { seriesName } from "./coneWords.ts";

/** What a report rests on: the cone model, the guides, the basis of each finding, sources. */
export function basisBlocks(
  input: {
    readonly heatwork: Heatwork | null;
    readonly crossings: readonly Crossing[];
    readonly findings: readonly Finding[];
    readonly sources: readonly string[];
  },
  unit: TemperatureUnit,
): readonly Block[] {
  const items = [
    ...(input.heatwork === null ? [] : coneItems(input.heatwork, unit)),
    ...guideItems(input.crossings),
    ...input.findings
      .filter((finding) => finding.basis !== "" && !isGuide(finding.basis, input.crossings))
      .map((finding) => `${capitalised(finding.topic)}: ${stopped(finding.basis)}`),
    ...input.sources.map(stopped),
  ];
  return section(
    "What this rests on",
    items.length === 0 ? [] : [{ kind: "list", items: [...new Set(items)] }],
  );
}

function isGuide(basis: string, crossings: readonly Crossing[]): boolean {
  return crossings.some((crossing) => crossing.limitBasis === basis);
}

/** Where the guides come from, once. */
function guideItems(crossings: readonly Crossing[]): readonly string[] {
  const bases = crossings.flatMap(({ limitBasis }) => (limitBasis === null ? [] : [limitBasis]));
  return [...new Set(bases)].map((basis) => `Guides for cooling: ${stopped(basis)}`);
}

/** Which printed end points about the cone reached could not be read again in any copy. */
function memoryItems({ series, position }: Heatwork, unit: TemperatureUnit): readonly string[] {
  const table = CONE_TABLES[series];
  const cones = [position.cone, position.next].filter((cone) => cone !== null);
  return cones.flatMap((cone) => {
    const rates = table.ratesCPerHour.filter(
      (rate) => printedEndPoint(table, cone, rate)?.confidence === "from-memory",
    );
    const said = rates.flatMap((rate) => (rate === null ? [] : [printRate(rate, unit)]));
    return said.length === 0
      ? []
      : [`Cone ${cone}: its end point at ${said.join(" and ")} is from memory, not read again.`];
  });
}

function coneItems(heatwork: Heatwork, unit: TemperatureUnit): readonly string[] {
  const { series, offsetK, offsetIs, extrapolations } = heatwork;
  const shift = Math.abs(offsetK);
  return [
    `Cones: a heatwork model of the whole curve, held to the published end points of ${seriesName(series)}. The ± is one standard deviation.`,
    ...(shift < 0.5
      ? []
      : [
          `${printDifference(shift, unit)} was ${offsetK < 0 ? "taken off" : "added to"} the readings before the cone was worked out, ${offsetIs === "usual" ? `as kilns are usually out. From ${USUAL_OFFSET_BASIS}.` : "after the witness cones."}`,
        ]),
    ...memoryItems(heatwork, unit),
    ...extrapolations.map((reason) => `Beyond what was published: ${stopped(reason)}`),
  ];
}
