import type { Finding } from "../findings/Finding.ts";
import { basedOn } from "../sources/bibliography.ts";
import type { ThermocoupleType } from "../thermocouple/emf.ts";
import { serviceLimitC } from "../thermocouple/wireLimits.ts";
import { checkCone } from "./coneCheck.ts";
import { finding, type Judged } from "./Judged.ts";
import type { OwnKilnFiring, OwnSegment, OwnStall } from "./ownKilnFiring.ts";

/** A climb this much later than programmed is worth a caution [s]; an own choice. */
export const LATE_SECONDS = 900;

/** Where the user's own kiln, simulated, does not do what the schedule asks. */
export function ownReach(judged: Judged, own: OwnKilnFiring): readonly Finding[] {
  return [
    ...(own.stall === null ? [] : [stalls(own.stall, judged, own)]),
    ...own.segments.flatMap((went) =>
      went.behindFromC === null ? [] : [behind(went, went.behindFromC, judged, own)],
    ),
    ...coneOnTheKiln(judged, own),
  ];
}

function stalls(stall: OwnStall, judged: Judged, own: OwnKilnFiring): Finding {
  const { rising, beforePeak } = stall;
  const common = {
    evidence: [
      { name: "segment", value: stall.segment + 1, kind: "count" },
      { name: "stalled", value: stall.tempC, kind: "temperature" },
      { name: "to", value: stall.toC, kind: "temperature" },
    ],
    basis: basisOf(judged),
  } as const;
  if (!rising)
    return finding({
      ...common,
      topic: "reach while cooling",
      severity: "note",
      statement:
        "In segment {segment} your kiln all but stops falling at about {stalled}, above {to}: that is near the temperature of its room.",
    });
  return finding({
    ...common,
    topic: "reach while heating",
    severity: beforePeak && own.powerFrom === "output" ? "warning" : "caution",
    statement: `Your kiln stalls in segment {segment}: with everything on it gets to about {stalled}, short of {to}.${atLeast(own)}`,
    advice: `${STALL_HELP} Or draft for a softer cone.`,
  });
}

/** From workshop practice, not from a published measurement. */
const STALL_HELP =
  "By common practice fewer shelves, a lighter load, a slower climb before it so that the bricks soak, or new elements, fitted by a licensed electrician under your local code, help.";

function behind(went: OwnSegment, fromC: number, judged: Judged, own: OwnKilnFiring): Finding {
  const rising = went.toC > went.fromC;
  const isLate = rising && went.behindSeconds > LATE_SECONDS;
  return finding({
    topic: rising ? "reach while heating" : "reach while cooling",
    severity: isLate ? "caution" : "note",
    statement: rising
      ? `Your kiln falls behind in segment {segment}, from about {behind} on: it climbs to {to} at about {able}, not {wanted}, and is about {late} late.${atLeast(own)}`
      : "Your kiln falls more slowly than segment {segment} asks, from about {behind} on: to {to} at about {able}, not {wanted}, so the controller waits and it takes about {late} longer.",
    evidence: [
      { name: "segment", value: went.segment + 1, kind: "count" },
      { name: "behind", value: fromC, kind: "temperature" },
      { name: "to", value: went.toC, kind: "temperature" },
      { name: "able", value: Math.abs(went.meanCPerHour), kind: "rate" },
      { name: "wanted", value: Math.abs(Number(went.askedCPerHour)), kind: "rate" },
      { name: "late", value: went.behindSeconds, kind: "duration" },
    ],
    basis: basisOf(judged),
    advice: isLate ? "Ask for a rate that it manages, or for free; --repair does." : "",
    span: { fromSeconds: went.startSeconds, toSeconds: went.rampEndSeconds },
  });
}

/** The cone wanted, where the plan makes it and the kiln does not. */
function coneOnTheKiln(judged: Judged, own: OwnKilnFiring): readonly Finding[] {
  const { cone } = judged.schedule;
  const onPlan = judged.heatwork.cones.find((state) => state.cone === cone);
  const onKiln = own.heatwork.cones.find((state) => state.cone === cone);
  if (onPlan === undefined || onKiln === undefined) return [];
  const isShort = onKiln.marginK < 0;
  const saidAlready = isWarned(judged) && onPlan.marginK < 0 === isShort;
  if (saidAlready || !isWarned({ ...judged, heatwork: own.heatwork })) return [];
  const gets = `it gets to ${own.heatwork.position.label}`;
  return [
    finding({
      topic: "cone on your kiln",
      severity: "warning",
      statement: isShort
        ? `On your kiln cone ${cone} is not reached, short by about {margin}: ${gets}${own.stall?.rising ? ", switched off where it stalls" : ""}.${atLeast(own)}`
        : `On your kiln cone ${cone} is overshot by a whole cone, about {margin} above its end point, for it lingers: ${gets}.`,
      evidence: [{ name: "margin", value: Math.abs(onKiln.marginK), kind: "difference" }],
      basis: basisOf(judged),
      advice: isShort
        ? own.stall === null
          ? STALL_HELP
          : ""
        : "Lower the peak, hold for less, or ask for a rate that it manages.",
    }),
  ];
}

function isWarned(judged: Judged): boolean {
  return checkCone(judged).some(({ severity }) => severity === "warning");
}

function atLeast({ powerFrom }: OwnKilnFiring): string {
  return powerFrom === "output"
    ? ""
    : " The logs carry no output of the controller, so this is the least that it can do.";
}

function basisOf({ kiln }: Judged): string {
  return `simulated with ${kiln.basis}`;
}

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
