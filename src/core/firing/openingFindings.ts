import type { Finding, Severity } from "../findings/Finding.ts";
import { basedOn } from "../sources/basedOn.ts";
import { CRISTOBALITE_BAND } from "../ware/inversionBands.ts";
import { openingRatio } from "../ware/openingRatio.ts";
import { type FiringFacts, zoneNamed } from "./FiringFacts.ts";
import { firedPieces } from "./firedPieces.ts";
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
      ? [opened(unloading.tempC, unloading, openingStress(facts, unloading.tempC))]
      : []),
    ...(unloading && unloading.tempC === null && unloading.atSeconds !== null
      ? [openedUnknown(unloading.atSeconds)]
      : []),
    ...endedHot(facts),
  ];
}

/** Worst computed stress over strength of the pieces whose body is known; null without any. */
function openingStress(facts: FiringFacts, tempC: number): number | null {
  const ratios = firedPieces(facts.record).map(({ ware }) => openingRatio(ware, tempC));
  return ratios.length === 0 ? null : Math.max(...ratios);
}

function opened(
  tempC: number,
  unloading: NonNullable<FiringFacts["unloading"]>,
  stress: number | null,
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
        : " The stress computed for opening there is {stress} of the strength of the ware, good to a factor of two either way."
    }`,
    evidence: [
      { name: "opened", value: tempC, kind: "temperature" },
      ...(stress === null ? [] : [{ name: "stress", value: stress, kind: "ratio" } as const]),
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
