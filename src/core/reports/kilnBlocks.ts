import type { CooledTo, LearnedFiring, LearnedKiln } from "../kiln/LearnedKiln.ts";
import {
  costFigure,
  printDifference,
  printDuration,
  printRate,
  printTemperature,
} from "../text/quantities.ts";
import { fahrenheitDeltaFromCelsiusDelta, type TemperatureUnit } from "../units/temperature.ts";
import {
  type Block,
  type Cell,
  type ChartPair,
  cautionBlocks,
  chartBlocks,
  findingBlocks,
} from "./Block.ts";
import { basisBlocks } from "./basisBlocks.ts";
import type { ReportContext } from "./reviewBlocks.ts";

/** What the report of a kiln needs to know beside its object. */
export interface KilnContext extends Omit<ReportContext, "charts"> {
  readonly charts?: { readonly reach?: ChartPair };
}

/** A learned kiln as blocks: how fast it goes, when it is cool, and what each firing showed. */
export function kilnBlocks(kiln: LearnedKiln, context: KilnContext): readonly Block[] {
  const { unit, charts = {}, sources = [] } = context;
  return [
    { kind: "lead", text: leadText(kiln, unit) },
    { kind: "facts", facts: headlineFacts(kiln, unit) },
    ...chartBlocks("How fast it goes, against temperature", charts.reach),
    ...findingBlocks(kiln.findings, { unit, startOfDaySeconds: null }),
    { kind: "heading", text: "How fast it goes" },
    reachTable(kiln, unit),
    { kind: "heading", text: "Firing by firing" },
    ...kiln.firings.flatMap((firing) => firingBlocks(firing, unit)),
    ...basisBlocks(
      {
        heatwork: null,
        crossings: [],
        findings: kiln.findings,
        sources: [...modelSentences(kiln, unit), ...sources],
      },
      unit,
    ),
    ...cautionBlocks(kiln.cautions),
  ];
}

function leadText(kiln: LearnedKiln, unit: TemperatureUnit): string {
  const near = (tempC: number) => kiln.reach.find((row) => row.tempC === tempC);
  const [red, bright] = [near(600), near(1000)];
  const count = kiln.firings.length === 1 ? "one firing" : `${kiln.firings.length} firings`;
  const orMore = kiln.power.from === "output" ? "" : " or more";
  const climbs = [red, bright]
    .filter((row) => row !== undefined)
    .map(
      ({ climbCPerHour, tempC }) =>
        `${printRate(climbCPerHour, unit)}${orMore} at ${printTemperature(tempC, unit)}`,
    );
  return `Learned from ${count}: at full power it climbs at ${climbs.join(" and ")}`;
}

function headlineFacts(kiln: LearnedKiln, unit: TemperatureUnit) {
  const { power, cooling, ceilingC, twoNode } = kiln;
  return [
    {
      label: "power",
      text:
        power.from === "output"
          ? `from the output column of ${power.firing}`
          : `from the fastest climb, in ${power.firing}`,
    },
    {
      label: "cooling",
      text: `seen by itself from ${printTemperature(cooling.highestC, unit)} down to ${printTemperature(cooling.lowestC, unit)}, in ${cooling.firings.join(", ")}`,
    },
    {
      label: "ceiling",
      text: `${power.from === "output" ? "about" : "at least"} ${printTemperature(ceilingC, unit)} with everything on`,
    },
    {
      label: "brick",
      text:
        twoNode === null
          ? "not told apart from the ware: that needs a firing with its output, from cold to cold"
          : `told apart from the ware in ${twoNode.firing}`,
    },
    ...(twoNode === null
      ? []
      : [
          {
            label: "lag",
            text: `the thermocouple follows about ${printDuration(30 * Math.round(twoNode.lagSeconds / 30))} late, give or take a step of the log`,
          },
        ]),
  ];
}

function reachTable(kiln: LearnedKiln, unit: TemperatureUnit): Block {
  return {
    kind: "table",
    caption: "Speed at a temperature",
    columns: [
      { head: "at", align: "right" },
      {
        head: kiln.power.from === "output" ? "full power" : "full power, at least",
        align: "right",
      },
      { head: "fastest climb seen", align: "right" },
      { head: "falling by itself", align: "right" },
    ],
    rows: kiln.reach
      .filter(({ tempC }) => tempC % 100 === 0)
      .map((row): readonly Cell[] => [
        printTemperature(row.tempC, unit),
        row.climbCPerHour === 0 ? "hardly any" : printRate(row.climbCPerHour, unit),
        row.seenCPerHour === null ? "not seen" : printRate(row.seenCPerHour, unit),
        printRate(row.fallCPerHour, unit),
      ]),
  };
}

function firingBlocks(firing: LearnedFiring, unit: TemperatureUnit): readonly Block[] {
  const rate = (value: number | null) => (value === null ? "not seen" : printRate(value, unit));
  const { fullOnFraction, energyKWh, cost } = firing;
  const when =
    firing.start === null ? "" : `, started ${firing.start.replace("T", " ").slice(0, 16)}`;
  const facts = [
    { label: "peak", text: printTemperature(firing.peakC, unit) },
    {
      label: "by itself",
      text: `${rate(firing.fallAtQuartzCPerHour)} at ${printTemperature(573, unit)}, ${rate(firing.fallAtCristobaliteCPerHour)} at ${printTemperature(226, unit)}`,
    },
    { label: "cool", text: coolText(firing.cooledTo, unit) },
    { label: "readings", text: `scatter by ± ${scatterText(firing.noiseK, unit)}` },
    ...(fullOnFraction === null
      ? []
      : [
          {
            label: "fully on",
            text:
              fullOnFraction < 0.005
                ? "never: what it can do at full power is worked out from its output"
                : `${Math.round(fullOnFraction * 100)} % of the time up to the peak`,
          },
        ]),
    ...(energyKWh === null
      ? []
      : [
          {
            label: "energy",
            text: `${Math.round(energyKWh)} kWh${cost === null ? "" : `, ${costFigure(cost)} at the tariff given`}, or less: worn elements draw less than when new`,
          },
        ]),
  ];
  return [
    { kind: "sentence", text: `${firing.name}${when}`, style: "strong" },
    { kind: "facts", facts },
  ];
}

function coolText(cooledTo: readonly CooledTo[], unit: TemperatureUnit): string {
  if (cooledTo.length === 0) return "the log ends before, and the kiln was opened";
  return cooledTo
    .map(
      ({ tempC, secondsFromPeak, how }) =>
        `${printTemperature(tempC, unit)} ${printDuration(secondsFromPeak)} after the peak${how === "measured" ? "" : " (worked out)"}`,
    )
    .join(", ");
}

/** To a tenth of a degree. */
function scatterText(noiseK: number, unit: TemperatureUnit): string {
  const shown = unit === "C" ? noiseK : fahrenheitDeltaFromCelsiusDelta(noiseK);
  return `${shown.toFixed(1)} °${unit}`;
}

function modelSentences({ twoNode }: LearnedKiln, unit: TemperatureUnit): readonly string[] {
  return [
    "The constants of the balance fit these logs, with their loads in their room; they are no properties of the kiln",
    `Above ${printTemperature(1000, unit)} the climb is counted at 85 % of what the balance gives, for bricks still soaking up heat`,
    ...(twoNode === null
      ? []
      : [
          `With brick and ware told apart, the simulated firing lies within ${printDifference(Math.max(1, twoNode.rmsK), unit)} of the log of ${twoNode.firing}, root mean square`,
        ]),
  ];
}
