import { type Finding, quoted, type Severity } from "../findings/Finding.ts";
import type { LogReading } from "../log/reading/LogReading.ts";
import { dayNumber, weekday } from "../log/text/calendar.ts";
import { clockAt } from "../schedule/clock.ts";
import { basedOn } from "../sources/bibliography.ts";
import { CRISTOBALITE_BAND, hasCristobalite } from "../ware/inversions.ts";
import type { OpeningStrain } from "../ware/openingStrain.ts";
import { strainSeverity } from "../ware/strainRisk.ts";
import { type FiringFacts, hottestZone, zoneNamed } from "./FiringFacts.ts";
import type { OpeningInLog } from "./knownOpening.ts";

/**
 * Opening hotter than this is above even the boldest of common practice [°C].
 * @see SOURCES["opening-practice"]
 */
const BOLDEST_C = 250;

/** Below this the last cristobalite has changed, and what is left is plain shrinkage [°C]. */
const CHANGED_C = 200;

/** Opened hotter than this, a word about waiting is in place [°C]. */
const KINDER_C = 120;

/** Readings that end above this leave the end of cooling unknown [°C]. */
const STILL_HOT_C = 120;

const PRACTICE = basedOn("unloading at or below 100 to 120 °C (210 to 250 °F)", "opening-practice");

/** How hot the kiln was when it was opened, by record and log, or when the readings ended. */
export function openingFindings(facts: FiringFacts): readonly Finding[] {
  const { unloading, opening, logged } = facts;
  const { main } = logged;
  const isRecorded = unloading !== null && unloading.tempC !== null;
  return [
    ...(isRecorded && opening.from !== "log"
      ? [opened(unloading.tempC as number, unloading, worstOpening(facts))]
      : []),
    ...(main !== null && opening.from !== "both" && opening.from !== "record"
      ? [openedByLog(facts, main)]
      : []),
    ...(opening.contradiction === null ? [] : contradicted(facts)),
    ...(main === null && unloading && unloading.tempC === null && unloading.atSeconds !== null
      ? [openedUnknown(unloading.atSeconds)]
      : []),
    ...endedHot(facts),
  ];
}

/** What the log shows where cold air came in. */
function openedByLog(facts: FiringFacts, main: OpeningInLog): Finding {
  const stress = worstOpening(facts);
  const clock = clockSaid(facts.reading, main.atSeconds);
  const isLid = main.how === "opened";
  const severity = isLid ? severityOf(main.tempC, stress) : "note";
  return {
    topic: "opening",
    severity,
    statement: `${
      isLid
        ? "The lid seems to have been opened"
        : "Cold air seems to have come in (a propped lid, a vent, a fan)"
    } at {opened}, ${clock ?? "{at} after the start"}: from there it fell at {after}, before that at {before}.${stressSaid(stress)}`,
    evidence: [
      { name: "opened", value: main.tempC, kind: "temperature" },
      { name: "give or take", value: main.plusMinusK, kind: "difference" },
      { name: "at", value: main.atSeconds, kind: "elapsed" },
      { name: "give or take in time", value: main.plusMinusSeconds, kind: "duration" },
      { name: "after", value: main.afterCPerHour, kind: "rate" },
      { name: "before", value: main.beforeCPerHour, kind: "rate" },
      { name: "by itself", value: main.ownCPerHour, kind: "rate" },
      ...stressEvidence(stress),
    ],
    basis: `the log: a shut kiln without power only slows down as it cools, and nothing in the log explains a fall that quickens; ${PRACTICE}`,
    advice: isLid ? adviceOn(main.tempC, severity) : "",
    zone: null,
    span: { fromSeconds: main.atSeconds, toSeconds: main.atSeconds },
  };
}

/** Record and log say different things of the opening. */
function contradicted({ reading, unloading, opening, logged }: FiringFacts): readonly Finding[] {
  const said = unloading?.tempC ?? null;
  if (said === null || opening.contradiction === null) return [];
  const { main, shutDownToC } = logged;
  const at = main?.atSeconds ?? unloading?.atSeconds ?? null;
  const seen =
    opening.contradiction === "still shut" || main === null
      ? "the log goes on falling as a shut kiln does, down to {shut}"
      : `the log shows the lid opened at {seen}, ${clockSaid(reading, main.atSeconds) ?? "{at} after the start"}`;
  return [
    {
      topic: "opening, record against log",
      severity: "caution",
      statement: `The record says that the kiln was opened at {said}, but ${seen}.`,
      evidence: [
        { name: "said", value: said, kind: "temperature" },
        ...(main === null
          ? []
          : ([
              { name: "seen", value: main.tempC, kind: "temperature" },
              { name: "at", value: main.atSeconds, kind: "elapsed" },
            ] as const)),
        ...(shutDownToC === null
          ? []
          : [{ name: "shut", value: shutDownToC, kind: "temperature" } as const]),
      ],
      basis: "the record held against the log",
      advice:
        opening.contradiction === "opened before"
          ? "Note when the lid was first opened or propped, not only when the ware came out."
          : "Look at your notes: the day, the unit, and which thermocouple was read.",
      zone: null,
      span: at === null ? null : { fromSeconds: at, toSeconds: at },
    },
  ];
}

const DAYS = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"] as const;

/** A moment of a log as one says it, `Thu 02:54`; null when the log has no date. */
function clockSaid({ start }: LogReading, seconds: number): string | null {
  if (start === null) return null;
  const wall = clockAt(start, seconds);
  const [year, month, day] = wall.slice(0, 10).split("-").map(Number);
  const days = dayNumber(year as number, month as number, day as number);
  return `${DAYS[weekday(days)]} ${wall.slice(11, 16)}`;
}

/** What one piece suffers when the lid is opened, and when it is lifted out. */
interface WorstOpening {
  readonly name: string;
  readonly lid: OpeningStrain;
  readonly lifted: OpeningStrain;
}

/**
 * The piece that suffers most by the opening, of those whose body has cristobalite that has yet to
 * change; null without one: for others the computation is too strict there, and practice judges.
 */
function worstOpening({ strains }: FiringFacts): WorstOpening | null {
  const suffered = strains.flatMap(({ name, ware, openings }): readonly WorstOpening[] => {
    const [lid, lifted] = (["lid opened", "lifted out"] as const).map((way) =>
      openings.find((each) => each.way === way),
    );
    if (!lid || !lifted || lid.tempC <= CHANGED_C || !hasCristobalite(ware.body)) return [];
    return [{ name, lid, lifted }];
  });
  return suffered.toSorted((a, b) => b.lid.ratio - a.lid.ratio)[0] ?? null;
}

function opened(
  tempC: number,
  unloading: NonNullable<FiringFacts["unloading"]>,
  stress: WorstOpening | null,
): Finding {
  const { atSeconds, basis } = unloading;
  const severity = severityOf(tempC, stress);
  const inside =
    stress !== null && tempC <= CRISTOBALITE_BAND.highC ? ", while cristobalite was changing" : "";
  return {
    topic: "opening",
    severity,
    statement: `The kiln was opened at {opened}${inside}${severity === "note" ? "" : "; the draught cools the ware far faster than the kiln does"}.${stressSaid(stress)}`,
    evidence: [{ name: "opened", value: tempC, kind: "temperature" }, ...stressEvidence(stress)],
    basis: `temperature from the ${basis ?? "record"}; ${PRACTICE}`,
    advice: adviceOn(tempC, severity),
    zone: null,
    span: atSeconds === null ? null : { fromSeconds: atSeconds, toSeconds: atSeconds },
  };
}

function adviceOn(tempC: number, severity: Severity): string {
  if (severity !== "note")
    return "Wait until it is below {cool}, and look for cracks that began at a rim or an edge.";
  return tempC > KINDER_C ? "Opening below {cool} would be kinder." : "";
}

function stressSaid(stress: WorstOpening | null): string {
  return stress === null
    ? ""
    : ` By our reckoning that put {stress} of their strength on ${quoted(stress.name)}, and lifting them out there would put {stress lifted}.`;
}

function stressEvidence(stress: WorstOpening | null): Finding["evidence"] {
  const cool = { name: "cool", value: 100, kind: "temperature" } as const;
  if (stress === null) return [cool];
  return [
    cool,
    { name: "stress", value: stress.lid.ratio, kind: "ratio" },
    { name: "stress lifted", value: stress.lifted.ratio, kind: "ratio" },
  ];
}

/** By what it does to the ware where that is fit to judge by, else by common practice. */
function severityOf(tempC: number, stress: WorstOpening | null): Severity {
  if (tempC > BOLDEST_C) return "warning";
  return stress === null ? "note" : strainSeverity(stress.lid.ratio);
}

function openedUnknown(atSeconds: number): Finding {
  return {
    topic: "opening",
    severity: "note",
    statement:
      "The kiln was opened at {opened} by the log's clock, where there are no readings: how hot it was is not known.",
    evidence: [{ name: "opened", value: atSeconds, kind: "elapsed" }],
    basis: "the record's time on the log",
    advice: "Note the temperature when you open the kiln.",
    zone: null,
    span: { fromSeconds: atSeconds, toSeconds: atSeconds },
  };
}

function endedHot(facts: FiringFacts): readonly Finding[] {
  const zone = hottestZone(facts.zones);
  if (zone.lastReadingC <= STILL_HOT_C) return [];
  return [
    {
      topic: "end of the log",
      severity: "note",
      statement:
        "The readings end at {last reading}, {after} after the peak: nothing is known of how it cooled from there.",
      evidence: [
        { name: "last reading", value: zone.lastReadingC, kind: "temperature" },
        {
          name: "after",
          value: zone.lastReadingAtSeconds - zone.peakAtSeconds,
          kind: "duration",
        },
      ],
      basis: "the log itself",
      advice: "Let the log run until the kiln is opened.",
      zone: zoneNamed(facts, zone),
      span: null,
    },
  ];
}
