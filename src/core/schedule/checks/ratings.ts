import type { Finding } from "../../findings/Finding.ts";
import { basedOn } from "../../sources/basedOn.ts";
import { serviceLimitC } from "../../thermocouple/serviceLimits.ts";
import type { ThermocoupleType } from "../../thermocouple/ThermocoupleType.ts";
import { finding, type Judged } from "./Judged.ts";

/** How hot a firing goes, and what kiln and thermocouple are made for. */
export interface Ratings {
  readonly peakC: number;
  /** Null when not known. */
  readonly type: ThermocoupleType | null;
  /** Diameter of the thermocouple's wire [mm]. */
  readonly wireMm: number | null;
  /** What the kiln's plate says [°C]. */
  readonly kilnRatingC: number | null;
  readonly tense: "plan" | "past";
}

/** So far above its service limit a thermocouple is not only worn but unsafe to trust; our own estimate [K]. */
const FAR_K = 50;
/** Readings and plans are not finer than this [K]. */
const SLACK_K = 1;
/** From here on a kiln whose thermocouple nobody named needs one of platinum [°C]. */
const BASE_METAL_C = 1260;

/** A schedule's top against the ratings that its file gives. */
export function checkRatings({ schedule, peakC }: Judged): readonly Finding[] {
  return ratingFindings({
    peakC,
    type: schedule.thermocouple?.type ?? null,
    wireMm: schedule.thermocouple?.wireMm ?? null,
    kilnRatingC: schedule.kilnRatingC ?? null,
    tense: "plan",
  });
}

/** A top above what kiln or thermocouple is made for. */
export function ratingFindings(ratings: Ratings): readonly Finding[] {
  return [...kilnRating(ratings), ...thermocoupleRating(ratings)];
}

function kilnRating({ peakC, kilnRatingC, tense }: Ratings): readonly Finding[] {
  if (kilnRatingC === null || peakC <= kilnRatingC + SLACK_K) return [];
  return [
    finding({
      topic: "above the kiln's rating",
      severity: "warning",
      statement: `The top of {peak} ${tense === "plan" ? "is" : "was"} {over} above the {rating} that the kiln is rated for.`,
      evidence: [
        { name: "peak", value: peakC, kind: "temperature" },
        { name: "over", value: peakC - kilnRatingC, kind: "difference" },
        { name: "rating", value: kilnRatingC, kind: "temperature" },
      ],
      basis: "the rating in the file, as the plate on the kiln gives it",
      advice:
        tense === "plan"
          ? "Fire to a lower cone, or in a kiln that is rated for this one: elements, bricks and wiring of this one are not."
          : "Have a licensed electrician look at elements, terminals and wiring under your local code before the next firing, and stay below the rating.",
    }),
  ];
}

function thermocoupleRating(ratings: Ratings): readonly Finding[] {
  const { peakC, type, wireMm, tense } = ratings;
  if (type === null) return tense === "plan" ? unknownType(peakC) : [];
  const limitC = serviceLimitC(type, wireMm);
  if (peakC <= limitC + SLACK_K) return [];
  const wire =
    wireMm === null ? "even its thickest wire" : `wire of ${Number(wireMm.toFixed(2))} mm`;
  const isBase = type !== "S" && type !== "R" && type !== "B";
  return [
    finding({
      topic: "above the thermocouple's rating",
      severity: peakC > limitC + FAR_K ? "warning" : "caution",
      statement: `The top of {peak} ${tense === "plan" ? "is" : "was"} above the {limit} up to which a type ${type} thermocouple lasts, with ${wire}, in a tube: hotter, it drifts, and breaks early.`,
      evidence: [
        { name: "peak", value: peakC, kind: "temperature" },
        { name: "limit", value: limitC, kind: "temperature" },
      ],
      basis: basedOn(
        "suggested upper limits of protected thermocouples by type and gauge",
        "astm-e230-service",
      ),
      advice: `${isBase ? "Use type S or R there" : "Use type B there"}, and go by the witness cones: a thermocouple that reads low lets the kiln go on heating.`,
    }),
  ];
}

function unknownType(peakC: number): readonly Finding[] {
  if (peakC <= BASE_METAL_C + SLACK_K) return [];
  return [
    finding({
      topic: "above the thermocouple's rating",
      severity: peakC > BASE_METAL_C + FAR_K ? "caution" : "note",
      statement:
        "The top of {peak} is above the {limit} up to which the usual type K thermocouple lasts; which one this kiln has is not said.",
      evidence: [
        { name: "peak", value: peakC, kind: "temperature" },
        { name: "limit", value: BASE_METAL_C, kind: "temperature" },
      ],
      basis: basedOn(
        "suggested upper limits of protected thermocouples by type and gauge",
        "astm-e230-service",
      ),
      advice:
        "See that kiln and thermocouple are rated for it, and say so in the schedule: kilnRating, thermocouple.",
    }),
  ];
}
