import type { Finding, Severity } from "../findings/Finding.ts";
import type { LogReading } from "../log/LogReading.ts";
import { dayNumber, weekday } from "../log/time/calendar.ts";
import { clockAt } from "../schedule/clock.ts";
import { basedOn } from "../sources/basedOn.ts";
import { CRISTOBALITE_BAND } from "../ware/inversionBands.ts";
import type { OpeningStrain } from "../ware/openingStrain.ts";
import { type FiringFacts, zoneNamed } from "./FiringFacts.ts";
import { hottestZone } from "./hottestZone.ts";
import type { OpeningInLog } from "./openingInLog.ts";

/**
 * Opening hotter than this is against common practice [°C].
 * @see SOURCES["opening-practice"]
 */
const FIRST_CRACK_C = 200;

/** Opening hotter than this is above even the boldest of it [°C]. */
const BOLDEST_C = 250;

/** From this computed share of its strength on, ware is more likely than not to be hurt. */
const BREAKS_FROM = 0.9;

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
      ? [opened(unloading.tempC as number, unloading, worstOpenings(facts))]
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
  const stress = worstOpenings(facts);
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
    } at {opened}, ${clock ?? "{at} after the start"}: from there it fell at {after}, before that at {before}.${
      stress === null ? "" : STRESS_SAID
    }`,
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
    advice: severity === "note" ? "" : WAIT,
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

/** The openings of the piece that suffers most by each; null without a piece whose body is known. */
function worstOpenings(facts: FiringFacts): WorstOpenings | null {
  const openings = facts.strains.flatMap((piece) => piece.openings);
  const worst = (way: OpeningStrain["way"]) =>
    openings.filter((each) => each.way === way).toSorted((a, b) => b.ratio - a.ratio)[0];
  const [lid, lifted] = [worst("lid opened"), worst("lifted out")];
  return lid && lifted ? { lid, lifted } : null;
}

/** What the piece that stands the least suffers when the lid is opened, and when it is lifted out. */
interface WorstOpenings {
  readonly lid: OpeningStrain;
  readonly lifted: OpeningStrain;
}

function opened(
  tempC: number,
  unloading: NonNullable<FiringFacts["unloading"]>,
  stress: WorstOpenings | null,
): Finding {
  const { atSeconds, basis } = unloading;
  const severity = severityOf(tempC, stress);
  const inside =
    tempC >= CRISTOBALITE_BAND.lowC && tempC <= CRISTOBALITE_BAND.highC
      ? ", inside the cristobalite inversion"
      : "";
  return {
    topic: "opening",
    severity,
    statement: `The kiln was opened at {opened}${inside}${severity === "note" ? "" : "; the draught cools the ware far faster than the kiln does"}.${
      stress === null ? "" : STRESS_SAID
    }`,
    evidence: [{ name: "opened", value: tempC, kind: "temperature" }, ...stressEvidence(stress)],
    basis: `temperature from the ${basis ?? "record"}; ${PRACTICE}`,
    advice: severity === "note" ? "" : WAIT,
    zone: null,
    span: atSeconds === null ? null : { fromSeconds: atSeconds, toSeconds: atSeconds },
  };
}

const WAIT =
  "Wait until it is below 100 °C (210 °F), and look for cracks that began at a rim or an edge.";

const STRESS_SAID =
  " The stress computed for opening there is {stress} of the strength of the ware, and {stress lifted} for lifting the ware out there; both good to a factor of two either way.";

function stressEvidence(stress: WorstOpenings | null): Finding["evidence"] {
  if (stress === null) return [];
  return [
    { name: "stress", value: stress.lid.ratio, kind: "ratio" },
    { name: "stress lifted", value: stress.lifted.ratio, kind: "ratio" },
  ];
}

/** By what it does to the ware where that is computed, else by common practice. */
function severityOf(tempC: number, stress: WorstOpenings | null): Severity {
  const isRisky = stress !== null && stress.lid.ratio >= BREAKS_FROM;
  if (tempC > BOLDEST_C || isRisky) return "warning";
  return tempC > FIRST_CRACK_C ? "caution" : "note";
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
