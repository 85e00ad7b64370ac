import type { Curve } from "../curve/Curve.ts";
import { crossingTimes } from "../curve/crossingTimes.ts";
import type { AssumedKiln } from "../kiln/AssumedKiln.ts";
import { type CourseAhead, secondsToFall } from "./courseAhead.ts";
import type { OwnFall } from "./ownFall.ts";
import type { CooledBy, CoolingExpectation, ExpectedMoment } from "./WatchState.ts";

/** Temperatures to which one waits before opening and unloading [°C]. */
const WAITED_FOR_C = [200, 100, 50] as const;

/**
 * One sigma of the time of a fall, as a factor either way; our own estimates, held against the demo
 * logs by a test. Studio logs of unknown kilns differ by a factor of two.
 */
const FACTORS = { learnedAndSeen: 1.1, learned: 1.2, seen: 1.3, assumed: 2 } as const;

/** What an expectation of the cooling is made from. */
export interface CoolingOutlook {
  readonly curve: Curve;
  readonly peakAtSeconds: number;
  readonly kiln: AssumedKiln;
  readonly isLearned: boolean;
  readonly own: OwnFall | null;
  /** What is programmed and goes before the fall by itself; it may hold nothing. */
  readonly course: CourseAhead;
  readonly from: CoolingExpectation["from"];
  /** When the course ends, where that is itself uncertain; null where the course says it. */
  readonly ends: ExpectedMoment | null;
}

/** When a kiln will have cooled to 200, 100 and 50 °C, lid shut: as programmed, then by itself. */
export function coolingExpectation(outlook: CoolingOutlook): CoolingExpectation {
  const factor = factorOf(outlook);
  return {
    cooledBy: WAITED_FOR_C.flatMap((tempC) => cooledBy(tempC, outlook, factor)),
    from: outlook.from,
    kiln: outlook.isLearned ? "learned" : "reference",
    ownShare: outlook.own?.share ?? null,
    openedAtSeconds: outlook.own?.openedAtSeconds ?? null,
    factor,
    basis: basisOf(outlook),
  };
}

function factorOf({ isLearned, own }: CoolingOutlook): number {
  if (own?.isDoubtful) return FACTORS.assumed;
  if (isLearned) return own === null ? FACTORS.learned : FACTORS.learnedAndSeen;
  return own === null ? FACTORS.assumed : FACTORS.seen;
}

function cooledBy(tempC: number, outlook: CoolingOutlook, factor: number): readonly CooledBy[] {
  const { curve, course } = outlook;
  const read = lastFallTo(curve, tempC);
  if (read !== null && read > outlook.peakAtSeconds && curve.tempsC.at(-1)! < tempC)
    return [
      { tempC, atSeconds: read, earliestSeconds: read, latestSeconds: read, isMeasured: true },
    ];
  const programmed = course.curve && lastFallTo(course.curve, tempC);
  const left = programmed ?? fallenAt(tempC, outlook);
  if (left === null) return [];
  const alone = course.aloneUntil(left) + Math.max(0, left - course.endSeconds);
  const { ends } = outlook;
  const soonerBy = Math.hypot(
    alone - alone / factor,
    ends ? ends.atSeconds - ends.earliestSeconds : 0,
  );
  const laterBy = Math.hypot(alone * factor - alone, ends ? laterEnd(ends) : 0);
  return [
    {
      tempC,
      atSeconds: left,
      earliestSeconds: Math.max(left - soonerBy, curve.timesSeconds.at(-1)!),
      latestSeconds: Number.isFinite(laterBy) ? left + laterBy : null,
      isMeasured: false,
    },
  ];
}

function laterEnd({ atSeconds, latestSeconds }: ExpectedMoment): number {
  return latestSeconds === null ? Number.POSITIVE_INFINITY : latestSeconds - atSeconds;
}

/** By itself from the end of the course on [s]; null when the kiln never quite gets there. */
function fallenAt(tempC: number, { course, kiln }: CoolingOutlook): number | null {
  const alone = secondsToFall(kiln, { fromC: course.endC, toC: tempC });
  return alone === null ? null : course.endSeconds + alone;
}

function lastFallTo(curve: Curve, tempC: number): number | null {
  const falls = crossingTimes(curve, tempC).filter(({ direction }) => direction === "cooling");
  return falls.at(-1)?.seconds ?? null;
}

function basisOf({ kiln, isLearned, own }: CoolingOutlook): string {
  const whose = isLearned ? kiln.basis : "a middling stand-in kiln";
  if (own === null)
    return isLearned ? whose : `${whose}, for yours is not known (--kiln): good to a factor of two`;
  const share = Math.round(100 * own.share);
  if (own.openedAtSeconds !== null)
    return `the speed of the last minutes, ${share} % of that of ${whose}, as an opened kiln falls: good to a factor of two`;
  const doubt = own.isDoubtful ? "; so slow that the elements may be holding it back" : "";
  return `this log's own fall of the last hours, ${share} % of the speed of ${whose}${doubt}`;
}
