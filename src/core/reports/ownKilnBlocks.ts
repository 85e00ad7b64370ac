import type { Draft } from "../schedule/draftSchedule.ts";
import type { OwnKilnFiring } from "../schedule/ownKilnFiring.ts";
import {
  costFigure,
  printDifference,
  printDuration,
  printRate,
  printSpan,
  printTemperature,
  printTravel,
} from "../text/quantities.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { type Block, type Cell, section } from "./Block.ts";
import { momentColumns, momentLines, momentText } from "./moments.ts";

interface When {
  readonly unit: TemperatureUnit;
  readonly startOfDaySeconds: number | null;
}

/** Cones by plan and kiln that lie this close are the same [cones]. */
const SAME_CONE = 0.1;

/** Less power than this on the way down is none: a rounding of the simulation. */
const LEAST_OUTPUT = 0.01;

/** Waited for after every firing [°C]. */
const COOL_C = [200, 100, 50] as const;

/** How the user's own kiln would go through a draft; empty when none was learned. */
export function ownKilnBlocks(draft: Draft, when: When): readonly Block[] {
  const { own } = draft;
  if (own === null) return [];
  return section("On your kiln", [
    { kind: "sentence", text: reliabilityText(own, when.unit) },
    { kind: "facts", facts: factsOf(draft, own, when) },
    ...(own.segments.length === 0 ? [] : [segmentTable(own, when)]),
    ...listBlocks(poweredItems(own, when.unit)),
  ]);
}

function costText(cost: number | null): string {
  return cost === null ? "" : `, ${costFigure(cost)} at the tariff given`;
}

function reliabilityText({ powerFrom, bricksApart }: OwnKilnFiring, unit: TemperatureUnit): string {
  const [hot, low, lowest] = [1000, 200, 100].map((tempC) => printTemperature(tempC, unit));
  const bricks = bricksApart
    ? ""
    : ` The logs do not tell bricks from ware, so the climb above ${hot} is counted at 85 %.`;
  const least =
    powerFrom === "output"
      ? ""
      : " They carry no output of the controller, so its speed is the least that it can do.";
  return `Simulated from your logs, with their load in their room: every number is about right, not exact.${bricks}${least} In a trial of our own on a simulated kiln, a firing that was not learned from came out within ${printDifference(18, unit)} at its peak, 0.2 h at ${low} and ${lowest}, 7 % in its rates and 1 % in its electricity; a real kiln will differ more.`;
}

function factsOf(draft: Draft, own: OwnKilnFiring, when: When) {
  const { unit } = when;
  return [
    { label: "cone", text: coneText(draft, own) },
    ...(own.stall === null
      ? []
      : [
          {
            label: "gets no further",
            text: `than about ${printTemperature(own.stall.tempC, unit)} in segment ${own.stall.segment + 1}, on its way to ${printTemperature(own.stall.toC, unit)}`,
          },
        ]),
    { label: "programme ends", text: endText(draft, own, when) },
    ...COOL_C.map((tempC) => ({
      label: `at ${printTemperature(tempC, unit)}`,
      text: coolText(own, tempC, when),
    })),
    { label: "electricity", text: electricityText(own) },
  ];
}

function coneText({ heatwork }: Draft, own: OwnKilnFiring): string {
  const [plan, kiln] = [heatwork.position, own.heatwork.position];
  const same =
    plan.index === null || kiln.index === null
      ? plan.label === kiln.label
      : Math.abs(plan.index - kiln.index) < SAME_CONE;
  const off = own.stall?.rising ? ", switched off where it stalls" : "";
  return same
    ? `as planned, ${plan.label}${off}`
    : `${kiln.label}${off}; the plan makes ${plan.label}`;
}

function endText({ expansion }: Draft, own: OwnKilnFiring, when: When): string {
  const { endSeconds } = own.firing;
  if (endSeconds === null) return "never: it waits for a temperature that does not come";
  const late = endSeconds - (expansion.timeline.at(-1)?.endSeconds ?? 0);
  const than =
    Math.abs(late) < 300
      ? "as planned"
      : `about ${printDuration(Math.abs(late))} ${late > 0 ? "later" : "sooner"} than planned`;
  return `about ${momentText(when.startOfDaySeconds, endSeconds)}, ${than}`;
}

function coolText(own: OwnKilnFiring, tempC: number, when: When): string {
  const reached = own.firing.cooledTo.find((each) => each.tempC === tempC);
  return reached === undefined
    ? "not worked out: so near its room the kiln hardly falls any more"
    : `about ${momentText(when.startOfDaySeconds, reached.seconds)}, lid shut`;
}

function electricityText(own: OwnKilnFiring): string {
  const { energyKWh, cost } = own.firing;
  if (energyKWh !== null) {
    const till = own.stall?.rising ? " up to where it stalls" : "";
    const noPrice = own.tariffPerKWh === null ? "; --tariff adds what it costs" : "";
    return `about ${Math.round(energyKWh)} kWh${till}${costText(cost)}, counted at the power on the plate${noPrice}`;
  }
  const missing = [
    ...(own.powerWatt === null
      ? ["the wattage from the plate of the kiln, by --power 10.5kW"]
      : []),
    ...(own.powerFrom === "output" ? [] : ["a log with a column of the controller's output"]),
  ];
  return `not known; missing: ${missing.join(" and ")}`;
}

function segmentTable({ segments }: OwnKilnFiring, { unit, startOfDaySeconds }: When): Block {
  return {
    kind: "table",
    caption: "Segment by segment, as your kiln will go",
    columns: [
      { head: "segment", align: "right" },
      { head: "from → to", align: "right" },
      { head: "asked", align: "right" },
      { head: "goes, about", align: "right" },
      { head: "late by", align: "right" },
      ...momentColumns("ends", startOfDaySeconds),
    ],
    rows: segments.map((went): readonly Cell[] => [
      String(went.segment + 1),
      printSpan(went.fromC, went.toC, unit),
      went.askedCPerHour === "free" ? "free" : printTravel(went.askedCPerHour, unit),
      printRate(Math.abs(went.meanCPerHour), unit),
      went.behindSeconds < 60 ? "" : printDuration(went.behindSeconds),
      ...momentLines(startOfDaySeconds, went.endSeconds),
    ]),
  };
}

/** Falls that power has to slow. */
function poweredItems({ segments, powerFrom }: OwnKilnFiring, unit: TemperatureUnit) {
  return segments.flatMap((went) => {
    const held = went.toC < went.fromC && went.askedCPerHour !== "free";
    if (!held || went.rampOutput < LEAST_OUTPUT) return [];
    const share = `${powerFrom === "output" ? "about" : "at most about"} ${Math.max(1, Math.round(went.rampOutput * 100))} % of full power`;
    const until =
      went.behindFromC === null
        ? ""
        : `, down to about ${printTemperature(went.behindFromC, unit)}; from there it falls more slowly than asked`;
    return [
      `Segment ${went.segment + 1}: left alone the kiln falls faster, so the elements have to slow it, ${share} on the mean${until}.`,
    ];
  });
}

function listBlocks(items: readonly string[]): readonly Block[] {
  return items.length === 0 ? [] : [{ kind: "list", items }];
}
