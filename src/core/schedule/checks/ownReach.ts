import type { Finding } from "../../findings/Finding.ts";
import type { OwnKilnFiring, OwnSegment, OwnStall } from "../ownKilnFiring.ts";
import { checkCone } from "./coneWanted.ts";
import { finding, type Judged } from "./Judged.ts";

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
