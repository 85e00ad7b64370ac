import type { DiagnosedCause } from "../diagnosis/Diagnosis.ts";
import type { Evidence } from "../findings/Finding.ts";
import type { FiringFacts, ZoneReview } from "../firing/FiringFacts.ts";
import type { FiringHistory, PastFiring } from "../history/history.ts";
import type { AssumedKiln } from "../kiln/LearnedKiln.ts";
import { learnKiln } from "../kiln/learnKiln.ts";
import { asAssumedKiln } from "../kiln/reach.ts";
import type { Problem } from "../problem.ts";
import type { FiringRecord, RecordedWare } from "../record/FiringRecord.ts";
import { pastOffset } from "../schedule/coneAim.ts";
import { kilnReachC } from "../schedule/ownKilnFiring.ts";
import type { Schedule } from "../schedule/Schedule.ts";
import { solveSchedule } from "../schedule/solveSchedule.ts";
import type { WishedPace } from "../schedule/wishedPace.ts";
import { bodyNamed } from "../ware/bodies.ts";
import type { Body } from "../ware/Ware.ts";

/**
 * How well a change stands: `firm` when the reason is far outside its uncertainty, `worth trying`
 * when it is outside it, `too close to tell` when it is within it.
 */
export type Standing = "firm" | "worth trying" | "too close to tell";

/**
 * What a change asks of the next schedule. The schedule that is handed on is made from these, and the
 * sentence is printed from the same numbers.
 */
export type NextAsk =
  | ({ readonly kind: "pace" } & WishedPace)
  | { readonly kind: "cone"; readonly cone: string }
  /** A climb that this kiln can follow. */
  | { readonly kind: "climb" };

/** One thing to change next time. */
export interface NextChange {
  /** What it is about; changes of the firing come before those that only teach more. */
  readonly about:
    | "lid"
    | "cooling"
    | "cone"
    | "climb"
    | "glaze"
    | "clay"
    | "drying"
    | "bisque"
    | "elements"
    | "thermocouple"
    | "hold"
    | "power"
    | "log"
    | "record";
  /** In the imperative; `{name}` stands for the evidence of that name. */
  readonly change: string;
  /** The numbers it rests on, as a sentence. */
  readonly because: string;
  readonly evidence: readonly Evidence[];
  readonly standing: Standing;
  /** What the next schedule has to keep to; null where the schedule is not what has to change. */
  readonly ask: NextAsk | null;
  /** The schedule has to change for it, and the command carries it out. */
  readonly inSchedule: boolean;
}

/** A change before there is a schedule that may carry it out. */
export type WantedChange = Omit<NextChange, "inSchedule">;

/** What to change next time, most needed first, and how to draft it. */
export interface NextTime {
  readonly changes: readonly NextChange[];
  /** One sentence or two: repeat it, or how to learn from a change. */
  readonly advice: readonly string[];
  /** A line for the shell, to be run where the review was run; null when there is none. */
  readonly command: string | null;
  /** What the command does, or why there is none. */
  readonly commandSays: string;
  /** The same where there is no command: what the schedule is, or why there is none. */
  readonly scheduleSays: string;
  /** The schedule that the command lays out; null when there is no command. */
  readonly schedule: Schedule | null;
}

/** Files by the names with which a person gave them. */
export interface NextTimePaths {
  /** The log; null when it came by standard input or is read with options that `draft` has not. */
  readonly log: string | null;
  /** The record lies beside the log, where `draft` finds it too. */
  readonly recordBeside: boolean;
  readonly schedule: string | null;
  /** A file that is not there yet. */
  readonly output: string;
}

/** All that the changes of one firing are made from. */
export interface NextContext {
  readonly facts: FiringFacts;
  /** The hottest zone. */
  readonly zone: ZoneReview;
  readonly wantedCone: string | null;
  readonly diagnosis: readonly DiagnosedCause[];
  readonly history: FiringHistory | null;
  readonly kiln: NextKiln;
  /** Where this kiln ends [°C], when it makes the cone with no schedule; else null. */
  readonly reachC: number | null;
  readonly ware: NextWare;
}

/** The ware as the drafting command is told of it; null where nothing is said. */
interface NextWare {
  readonly body: Body | null;
  /** Names of the bodies of one's own, which no word of the command line can say. */
  readonly ownBodies: readonly string[];
  readonly wallMm: number | null;
  readonly baseMm: number | null;
  readonly widestMm: number | null;
  readonly damp: boolean;
}

const NOTHING: NextWare = {
  body: null,
  ownBodies: [],
  wallMm: null,
  baseMm: null,
  widestMm: null,
  damp: false,
};

/**
 * The thickest ware of a record in the words of the command line. One piece of unknown thickness
 * leaves the thickness unsaid, as it does for the limits; a body that is not of the list is left out
 * and named.
 */
export function nextWare(record: FiringRecord | null): NextWare {
  const ware = record?.ware ?? [];
  if (ware.length === 0) return NOTHING;
  const bodied = ware.filter(({ body }) => body !== null && isListed(body));
  const among = bodied.length > 0 ? bodied : ware;
  const worst = among.toSorted((a, b) => thickness(b) - thickness(a))[0]!;
  const sized = bodied.length > 0 || ware.every((piece) => thickness(piece) > 0);
  const widths = among.flatMap(({ widestMm }) => widestMm ?? []);
  return {
    body: bodied.length > 0 ? worst.body : null,
    ownBodies: [
      ...new Set(ware.flatMap(({ body }) => (body === null || isListed(body) ? [] : [body.name]))),
    ],
    wallMm: sized ? (worst.wallMm ?? worst.thickestMm) : null,
    baseMm: sized ? (worst.baseMm ?? worst.thickestMm) : null,
    widestMm: widths.length === 0 ? null : Math.max(...widths),
    damp: ware.some(({ state }) => state === "damp"),
  };
}

function thickness({ wallMm, baseMm, thickestMm }: RecordedWare): number {
  return Math.max(wallMm ?? 0, baseMm ?? 0, thickestMm ?? 0);
}

function isListed(body: Body): boolean {
  const named = bodyNamed(body.name, "");
  return named.ok && JSON.stringify(named.value) === JSON.stringify(body);
}

/** The kiln and the thermocouple as the drafting command will see them. */
interface NextKiln {
  /** Null when the logs that can be given do not show the kiln. */
  readonly own: AssumedKiln | null;
  /** Paths behind `--kiln`; empty when none can be given. */
  readonly logs: readonly string[];
  /** Added to planned temperatures [K]; null where no witness cone says it. */
  readonly offsetK: number | null;
  /** It differs from what kilns are usually out by. */
  readonly isOwn: boolean;
  /** `--offset` is needed, because no log carries the offset. */
  readonly tellsOffset: boolean;
  /** Why no log is given; null when some are. */
  readonly whyNone: string | null;
}

/** What `draft` learns from the logs that can be named to it, or why they cannot be. */
export function nextKiln(
  now: PastFiring,
  earlier: readonly PastFiring[],
  paths: NextTimePaths,
): NextKiln {
  const told = pastOffset(now.offset === null ? [] : [now.offset]);
  const isUsual =
    told === null || now.offset === null || !isWorthTelling(told.offsetK, now.offset.usual.offsetK);
  const offsetK = isUsual ? null : Math.round(told.offsetK);
  const without = (whyNone: string): NextKiln => ({
    own: null,
    logs: [],
    offsetK,
    isOwn: offsetK !== null,
    tellsOffset: offsetK !== null,
    whyNone,
  });
  if (paths.log === null) return without("draft cannot read this log as it was read here");
  if (now.firing === null) return without("the log holds no temperature");
  const learned = learnKiln([...earlier.flatMap(({ firing }) => firing ?? []), now.firing]);
  if (!learned.ok) return without(whyNot(learned.problems));
  const offsets = [...earlier, now].flatMap(({ offset }) => offset ?? []);
  const past = pastOffset(offsets);
  const tellsOffset = !paths.recordBeside && offsetK !== null;
  const own = asAssumedKiln(learned.value);
  return {
    own,
    logs: [...earlier.flatMap(({ path }) => path ?? []), paths.log],
    offsetK: tellsOffset ? offsetK : (past?.offsetK ?? null),
    isOwn: offsetK !== null,
    tellsOffset,
    whyNone: null,
  };
}

/** An offset this near to what kilns are usually out by moves no cone by more than the model is out [K]. */
const TELLING_OFFSET_K = 2;

function isWorthTelling(offsetK: number, usualK: number): boolean {
  return Math.abs(offsetK - usualK) >= TELLING_OFFSET_K;
}

/** In words without numbers, for they are said in the reader's own unit elsewhere. */
function whyNot(problems: readonly Problem[]): string {
  return problems.some(({ code }) => code === "kiln/no-natural-cooling")
    ? "no stretch of the log shows it falling by itself, lid shut and power off"
    : "the log does not show enough of it to learn from";
}

/** A peak this far below the planned one shows a kiln at its end [K]. */
const FELL_SHORT_K = 10;

/**
 * The hottest that the kiln reaches [°C], where no peak up to there makes the cone of a schedule;
 * null when one does, or when nobody knows: without the controller's output a log shows only the least that a kiln can do, and
 * a kiln that came to its planned peak was strong enough.
 */
export function kilnTooWeak(
  { plan, comparison }: Pick<FiringFacts, "plan" | "comparison">,
  cone: string | null,
  kiln: NextKiln,
): number | null {
  if (plan === null || cone === null || kiln.own === null) return null;
  if (kiln.own.learned?.power.from !== "output") return null;
  if (comparison === null || comparison.peakDeviationC > -FELL_SHORT_K) return null;
  const solved = solveSchedule({
    schedule: plan,
    cone,
    solve: "peak",
    kiln: kiln.own,
    offsetK: kiln.offsetK,
  });
  if (solved.ok) return null;
  const isWeak = solved.problems.some(({ code }) => code === "schedule/kiln-too-weak");
  return isWeak ? kilnReachC(kiln.own) : null;
}

/** The same thermocouple on a kiln that is assumed, for when the kiln's own has been mended. */
export function mendedKiln(kiln: NextKiln, why: string): NextKiln {
  const { isOwn } = kiln;
  const offsetK = isOwn && kiln.offsetK !== null ? Math.round(kiln.offsetK) : null;
  return { own: null, logs: [], offsetK, isOwn, tellsOffset: isOwn, whyNone: why };
}
