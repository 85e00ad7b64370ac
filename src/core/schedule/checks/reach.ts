import type { Finding } from "../../findings/Finding.ts";
import { freeSpeed } from "../freeRamp.ts";
import type { TimelineRow } from "../Schedule.ts";
import { finding, type Judged } from "./Judged.ts";
import { ownReach } from "./ownReach.ts";

/** How far over the kiln's speed a ramp may be before it is said. */
const SLACK = 1.05;

/** Programmed ramps that the kiln is not able to follow, up or down; simulated where it was learned. */
export function checkReach(judged: Judged): readonly Finding[] {
  if (judged.own !== null) return ownReach(judged, judged.own);
  return judged.expansion.timeline.flatMap((row) => {
    if (row.kind !== "ramp" || row.assumedRate) return [];
    const limit = slowestOnTheWay(row, judged);
    const wanted = Math.abs(row.rateCPerHour);
    return wanted <= limit.speed * SLACK ? [] : [cannotFollow(row, limit, judged)];
  });
}

interface Limit {
  readonly speed: number;
  readonly atC: number;
}

function slowestOnTheWay(row: TimelineRow, judged: Judged): Limit {
  let slowest: Limit = { speed: Number.POSITIVE_INFINITY, atC: row.fromC };
  const steps = Math.max(1, Math.ceil(Math.abs(row.toC - row.fromC) / 20));
  for (let k = 0; k <= steps; k++) {
    const atC = row.fromC + ((row.toC - row.fromC) * k) / steps;
    const speed = freeSpeed(judged.kiln, atC, row.toC > row.fromC);
    if (speed < slowest.speed) slowest = { speed, atC };
  }
  return slowest;
}

function cannotFollow(row: TimelineRow, limit: Limit, judged: Judged): Finding {
  const rising = row.toC > row.fromC;
  const own = judged.kilnIsKnown;
  const subject = own ? "The kiln" : "A typical loaded kiln";
  return finding({
    topic: rising ? "reach while heating" : "reach while cooling",
    severity: own && rising ? "caution" : "note",
    statement: rising
      ? `${subject} may not keep up with {wanted} from {from} to {to}: at {worst} it manages {able}.`
      : `${subject} falls more slowly than {wanted} from {from} to {to}: at {worst} it falls at {able}, so the controller waits and the firing takes longer.`,
    evidence: [
      { name: "wanted", value: Math.abs(row.rateCPerHour), kind: "rate" },
      { name: "from", value: row.fromC, kind: "temperature" },
      { name: "to", value: row.toC, kind: "temperature" },
      { name: "worst", value: limit.atC, kind: "temperature" },
      { name: "able", value: limit.speed, kind: "rate" },
    ],
    basis: `speed of ${judged.kiln.basis}`,
    advice: rising ? "Look in your own logs for how fast the kiln climbs there." : "",
    span: { fromSeconds: row.startSeconds, toSeconds: row.endSeconds },
  });
}
