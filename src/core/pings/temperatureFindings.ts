import type { Finding } from "../findings/Finding.ts";
import { basedOn } from "../sources/basedOn.ts";
import { QUARTZ_BAND } from "../ware/inversionBands.ts";
import type { Heard } from "./hearingFindings.ts";
import type { PingTemperatures } from "./PingReview.ts";

/** Onset above this speaks for a strong misfit [°C]; "far above 300" made a number, our own choice. */
const STRONG_ONSET_C = 350;

/** The recording must know this much of its temperatures. */
const KNOWN_SHARE = 0.9;

/** Pings at a steady temperature say something after this time [s], and from this number on. */
const STEADY_SECONDS = 3600;
const STEADY_PINGS = 5;

const ONSET_BASIS = `${basedOn("the earlier a glaze cracks on its way down, the stronger the misfit, and the thicker the coat the less misfit it takes", "ping-onset")}; the log reads a thermocouple, not the ware`;

/** What the temperatures at the pings speak for. */
export function temperatureFindings(review: Heard): readonly Finding[] {
  const { temperatures } = review;
  if (temperatures === null) return [];
  return [
    ...knownFindings(temperatures),
    ...onsetFindings(temperatures, review),
    ...inversionFindings(temperatures),
    ...steadyFindings(temperatures),
  ];
}

function knownFindings({ knownShare, logName }: PingTemperatures): readonly Finding[] {
  if (knownShare >= KNOWN_SHARE) return [];
  return [
    {
      ...plain("log beside the recording", "caution"),
      statement: `Only {known} of the recording lies within the readings of ${logName}; pings outside it have no temperature.`,
      evidence: [{ name: "known", value: knownShare, kind: "percent" }],
      basis: "start of the recording placed on the log",
      advice: "Check --started if that surprises you.",
    },
  ];
}

function onsetFindings(
  { firstC, thirdC }: PingTemperatures,
  { isBegun }: Heard,
): readonly Finding[] {
  if (firstC === null) return [];
  const third = thirdC === null ? "" : ", the third at {third}, in case the first was a shelf";
  const begun = isBegun
    ? "; as pings came from the very start of the recording, the true onset may have been hotter"
    : "";
  const strong =
    firstC >= STRONG_ONSET_C && firstC < QUARTZ_BAND.lowC
      ? ". So early an onset speaks for a strong misfit of glaze and clay: more than about 1.5 millionths per kelvin for a coat of 0.4 mm"
      : "";
  return [
    {
      ...plain("onset", "note"),
      statement: `The first ping came at {first}${third}${begun}${strong}.`,
      evidence: [
        { name: "first", value: firstC, kind: "temperature" },
        ...(thirdC === null
          ? []
          : [{ name: "third", value: thirdC, kind: "temperature" } as const]),
      ],
      basis: ONSET_BASIS,
      advice:
        "Write the temperature and the thickness of the fired coat into the record: together they give the misfit.",
    },
  ];
}

function inversionFindings({ inversions }: PingTemperatures): readonly Finding[] {
  return inversions
    .filter(({ count }) => count > 0)
    .map((band) => ({
      ...plain(`pings through the ${band.name}`, "caution"),
      statement: `{count} ${band.count === 1 ? "ping" : "pings"} came between {high} and {low}, where the ${band.name} lies: look for the inversion first, that is for a long crack through the wall, before reading them as crackle.`,
      evidence: [
        { name: "count", value: band.count, kind: "count" },
        { name: "high", value: band.highC, kind: "temperature" },
        { name: "low", value: band.lowC, kind: "temperature" },
        { name: "listened", value: band.seconds, kind: "duration" },
      ],
      basis:
        "bands of the two inversions as in a review; glaze that fits badly can crack there as well",
      advice: "Tap the pieces once they are cold and look for a line from the rim or the foot.",
    }));
}

function steadyFindings({ steady }: PingTemperatures): readonly Finding[] {
  if (steady.seconds < STEADY_SECONDS) return [];
  const span = { name: "steady", value: steady.seconds, kind: "duration" } as const;
  const basis = basedOn(
    "at one temperature only moisture or creeping cracks are left to pull; less than 5 °C/h over half an hour counts as steady, our own choice",
    "wilson-2003",
  );
  if (steady.count === 0)
    return [
      {
        ...plain("steady temperature", "note"),
        statement:
          "No ping came in the {steady} for which the temperature held still: what was heard goes with cooling.",
        evidence: [span],
        basis,
        advice: "",
      },
    ];
  if (steady.count < STEADY_PINGS) return [];
  return [
    {
      ...plain("steady temperature", "note"),
      statement:
        "{count} pings came in {steady} for which the temperature held still; pinging that goes on so for days speaks for moisture or for cracks that creep.",
      evidence: [{ name: "count", value: steady.count, kind: "count" }, span],
      basis,
      advice: "Record again after some days.",
    },
  ];
}

function plain(topic: string, severity: Finding["severity"]) {
  return { topic, severity, zone: null, span: null };
}
