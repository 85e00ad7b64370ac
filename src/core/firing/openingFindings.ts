import type { Finding, Severity } from "../findings/Finding.ts";
import { basedOn } from "../sources/basedOn.ts";
import { CRISTOBALITE_BAND } from "../ware/inversionBands.ts";
import type { OpeningStrain } from "../ware/openingStrain.ts";
import { type FiringFacts, zoneNamed } from "./FiringFacts.ts";
import { hottestZone } from "./hottestZone.ts";

/**
 * Opening hotter than this is against common practice [°C].
 * @see SOURCES["opening-practice"]
 */
const FIRST_CRACK_C = 200;

/** Opening hotter than this is above even the boldest of it [°C]. */
const BOLDEST_C = 250;

/** Readings that end above this leave the end of cooling unknown [°C]. */
const STILL_HOT_C = 120;

const PRACTICE = `${basedOn(
  "first crack at or below 200 to 250 °C (390 to 480 °F), unloading at or below 100 to 120 °C (210 to 250 °F)",
  "opening-practice",
)}; some unload hotter without loss`;

/** How hot the kiln was when it was opened, or when the readings ended. */
export function openingFindings(facts: FiringFacts): readonly Finding[] {
  const { unloading } = facts;
  return [
    ...(unloading && unloading.tempC !== null
      ? [opened(unloading.tempC, unloading, worstOpenings(facts))]
      : []),
    ...(unloading && unloading.tempC === null && unloading.atSeconds !== null
      ? [openedUnknown(unloading.atSeconds)]
      : []),
    ...endedHot(facts),
  ];
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
  const severity: Severity =
    tempC > BOLDEST_C ? "warning" : tempC > FIRST_CRACK_C ? "caution" : "note";
  const inside =
    tempC >= CRISTOBALITE_BAND.lowC && tempC <= CRISTOBALITE_BAND.highC
      ? ", inside the cristobalite inversion"
      : "";
  return {
    topic: "opening",
    severity,
    statement: `The kiln was opened at {opened}${inside}${severity === "note" ? "" : "; the draught cools the ware far faster than the kiln does"}.${
      stress === null
        ? ""
        : " The stress computed for opening there is {stress} of the strength of the ware, and {stress lifted} for lifting the ware out there; both good to a factor of two either way."
    }`,
    evidence: [
      { name: "opened", value: tempC, kind: "temperature" },
      ...(stress === null
        ? []
        : ([
            { name: "stress", value: stress.lid.ratio, kind: "ratio" },
            { name: "stress lifted", value: stress.lifted.ratio, kind: "ratio" },
          ] as const)),
    ],
    basis: `temperature from the ${basis ?? "record"}; ${PRACTICE}`,
    advice:
      severity === "note"
        ? ""
        : "Wait until it is below 100 °C (210 °F), and look for cracks that began at a rim or an edge.",
    zone: null,
    span: atSeconds === null ? null : { fromSeconds: atSeconds, toSeconds: atSeconds },
  };
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
