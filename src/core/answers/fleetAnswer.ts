import { ordered, RUNAWAY, type Severity, statementText } from "../findings/Finding.ts";
import { hottestZone } from "../firing/FiringFacts.ts";
import type { Block, Cell } from "../reports/Block.ts";
import { saidDate } from "../reports/moments.ts";
import type { FiringReview } from "../review/FiringReview.ts";
import { printRate, printTemperature } from "../text/quantities.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { CRISTOBALITE_BAND, QUARTZ_BAND } from "../ware/inversions.ts";
import { type Answer, screenOf } from "./Answer.ts";
import { coneSaid } from "./coneSaid.ts";
import { heading, sentence } from "./rooms.ts";

/** One firing of many: plain data that a worker can send, and small however long its log is. */
export interface FleetRow {
  readonly name: string;
  /** Unit in which its reader reads. */
  readonly unit: TemperatureUnit;
  /** As its record calls it; null without one. */
  readonly kiln: string | null;
  readonly date: string | null;
  readonly cone: string;
  readonly peakC: number | null;
  /** Fastest on the way down [°C/h]; null where it was not seen. */
  readonly quartzCPerHour: number | null;
  readonly lowCPerHour: number | null;
  /** Where the log shows a hot opening [°C]; null where it does not. */
  readonly openedC: number | null;
  readonly severity: Severity;
  /** The worst that was found, as a sentence; empty when it is only notes. */
  readonly why: string;
}

/** What is kept of a review where many firings are looked through. */
export function fleetRow(review: FiringReview, unit: TemperatureUnit): FleetRow {
  const { reading, zones, recordLines, openingInLog } = review;
  const zone = zones.length === 0 ? null : hottestZone(zones);
  const fastest = (band: string) =>
    zone?.crossings.find((each) => each.band === band && each.direction === "cooling")
      ?.fastestCPerHour ?? null;
  const [worst] = ordered(review.findings);
  const isSerious = worst !== undefined && worst.severity !== "note";
  return {
    name: reading.name,
    unit,
    kiln: recordLines.find(({ label }) => label === "kiln")?.text ?? null,
    date: saidDate(reading),
    cone: zone === null ? "not read" : coneSaid(zone.heatwork, "was"),
    peakC: zone?.peakC ?? null,
    quartzCPerHour: fastest(QUARTZ_BAND.name),
    lowCPerHour: fastest(CRISTOBALITE_BAND.name),
    openedC: openingInLog?.tempC ?? null,
    severity: isSerious ? worst.severity : "note",
    why: isSerious
      ? `${worst.topic === RUNAWAY ? "EMERGENCY: " : ""}${statementText(worst, unit)}`
      : "",
  };
}

/** Lines of a screen of many firings. */
const LINES = 40;
/** Firings to look at that are listed. */
const MOST_LISTED = 8;
/** Kilns that are listed. */
const MOST_KILNS = 10;

const WORST_FIRST: readonly Severity[] = ["warning", "caution", "note"];

/** Many firings on one screen: those to look at, the worst first, then a line a kiln. */
export function fleetAnswer(rows: readonly FleetRow[], unit: TemperatureUnit): Answer {
  const serious = rows
    .filter(({ severity }) => severity !== "note")
    .toSorted((a, b) => WORST_FIRST.indexOf(a.severity) - WORST_FIRST.indexOf(b.severity));
  const kilns = kilnsOf(rows);
  const rest = serious.length - Math.min(serious.length, MOST_LISTED);
  const many = (count: number, what: string) => `${count} ${what}${count === 1 ? "" : "s"}`;
  return {
    title: `${many(rows.length, "firing")}, ${many(kilns.length, "kiln")}`,
    when: null,
    screen: screenOf(
      [
        {
          rank: 0,
          blocks: [
            {
              kind: "lead",
              text: `${serious.length === 0 ? "Nothing" : serious.length} to look at, ${rows.length - serious.length} fine.`,
            },
          ],
        },
        ...(serious.length === 0 ? [] : [{ rank: 0, blocks: [heading("Look at these")] }]),
        ...serious.slice(0, MOST_LISTED).map((row, at) => ({
          rank: at < 2 ? 0 : at,
          blocks: [
            {
              kind: "list",
              items: [`${row.name}${row.date === null ? "" : ` (${row.date})`}: ${row.why}`],
            } satisfies Block,
          ],
        })),
        ...(rest === 0 ? [] : [{ rank: 0, blocks: [sentence(`And ${rest} more to look at.`)] }]),
        { rank: 1, blocks: [kilnTable(kilns.slice(0, MOST_KILNS), unit)] },
        ...(kilns.length <= MOST_KILNS
          ? []
          : [{ rank: 1, blocks: [sentence(`And ${kilns.length - MOST_KILNS} kilns more.`)] }]),
      ],
      LINES,
    ),
    rooms: [
      {
        name: "look",
        blocks: serious.map(({ name, date, why }) => ({
          kind: "list",
          items: [`${name}${date === null ? "" : ` (${date})`}: ${why}`],
        })),
      },
      { name: "firings", blocks: [firingTable(rows, unit)] },
    ],
  };
}

interface Kiln {
  readonly name: string;
  readonly rows: readonly FleetRow[];
}

function kilnsOf(rows: readonly FleetRow[]): readonly Kiln[] {
  const kilns = new Map<string, FleetRow[]>();
  for (const row of rows) {
    const name = row.kiln ?? "no kiln named";
    kilns.set(name, [...(kilns.get(name) ?? []), row]);
  }
  return [...kilns].map(([name, held]) => ({ name, rows: held }));
}

function kilnTable(kilns: readonly Kiln[], unit: TemperatureUnit): Block {
  const middle = (values: readonly (number | null)[]) => {
    const known = values.filter((value) => value !== null).toSorted((a, b) => a - b);
    const found = known[Math.floor(known.length / 2)];
    return found === undefined ? "–" : printRate(found, unit);
  };
  return {
    kind: "table",
    caption: "The kilns; how fast a middle firing falls",
    columns: [
      { head: "kiln", align: "left" },
      { head: "firings", align: "right" },
      { head: "to look at", align: "right" },
      { head: "quartz", align: "right" },
      { head: `below ${printTemperature(280, unit)}`, align: "right" },
    ],
    rows: kilns.map(({ name, rows }): readonly Cell[] => [
      name,
      String(rows.length),
      String(rows.filter(({ severity }) => severity !== "note").length),
      middle(rows.map(({ quartzCPerHour }) => quartzCPerHour)),
      middle(rows.map(({ lowCPerHour }) => lowCPerHour)),
    ]),
  };
}

function firingTable(rows: readonly FleetRow[], unit: TemperatureUnit): Block {
  const rate = (value: number | null) => (value === null ? "–" : printRate(value, unit));
  return {
    kind: "table",
    caption: "Every firing",
    columns: [
      { head: "firing", align: "left" },
      { head: "cone", align: "left" },
      { head: "peak", align: "right" },
      { head: "quartz", align: "right" },
      { head: `below ${printTemperature(280, unit)}`, align: "right" },
      { head: "opened", align: "right" },
      { head: "", align: "left" },
    ],
    rows: rows.map((row): readonly Cell[] => [
      row.name,
      row.cone,
      row.peakC === null ? "–" : printTemperature(row.peakC, unit),
      rate(row.quartzCPerHour),
      rate(row.lowCPerHour),
      row.openedC === null ? "" : printTemperature(row.openedC, unit),
      row.severity === "note" ? "" : "look",
    ]),
  };
}
