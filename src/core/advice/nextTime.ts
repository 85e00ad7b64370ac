import type { DiagnosedCause } from "../diagnosis/Diagnosis.ts";
import { type FiringFacts, hottestZone } from "../firing/FiringFacts.ts";
import { runawayOf } from "../firing/runaway.ts";
import type { FiringHistory, PastFiring } from "../history/history.ts";
import { climbChanges } from "./climbChanges.ts";
import { coneChanges, withPeakSaid } from "./coneChanges.ts";
import { coolingChanges } from "./coolingChanges.ts";
import { cures, hasBroken } from "./cures.ts";
import { handlingChanges } from "./handlingChanges.ts";
import {
  kilnTooWeak,
  type NextChange,
  type NextContext,
  type NextTime,
  type NextTimePaths,
  nextKiln,
  nextWare,
  type Standing,
  type WantedChange,
} from "./NextFiring.ts";
import { nextCommand } from "./nextCommand.ts";

const STANDINGS: readonly Standing[] = ["firm", "worth trying", "too close to tell"];

/** Within a standing: what cracks ware, then the kiln itself, then what misses the cone, then what lies outside the firing, then what teaches. */
const SUBJECTS: readonly NextChange["about"][] = [
  "lid",
  "cooling",
  "elements",
  "power",
  "cone",
  "climb",
  "glaze",
  "clay",
  "drying",
  "bisque",
  "thermocouple",
  "hold",
  "log",
  "record",
];

/** Subjects whose change may make the ware come out otherwise. */
const CHANGES_WARE: ReadonlySet<NextChange["about"]> = new Set(["lid", "cooling", "cone", "climb"]);

/** Subjects whose change lies before the firing, or in the kiln. */
const OUTSIDE_FIRING: ReadonlySet<NextChange["about"]> = new Set([
  "glaze",
  "clay",
  "drying",
  "bisque",
  "elements",
]);

/**
 * What to change next time after one firing, most needed first, and the line that drafts it.
 * Only what log and record carry; a reason within its own uncertainty is said to be that.
 */
export function nextTimeOf(
  facts: FiringFacts,
  known: {
    readonly diagnosis: readonly DiagnosedCause[];
    readonly now: PastFiring;
    /** Null when no earlier logs were given. */
    readonly history: FiringHistory | null;
  },
  paths: NextTimePaths,
): NextTime {
  if (runawayOf(facts.reading, facts.plan) !== null) return AFTER_RUNAWAY;
  const wantedCone = facts.plan?.cone ?? facts.record?.cone ?? null;
  const kiln = nextKiln(known.now, known.history?.used ?? [], paths);
  const context: NextContext = {
    facts,
    zone: hottestZone(facts.zones),
    wantedCone,
    diagnosis: known.diagnosis,
    history: known.history,
    kiln,
    reachC: kilnTooWeak(facts, wantedCone, kiln),
    ware: nextWare(facts.record),
  };
  const wanted = ranked(wantedChanges(context));
  const command = nextCommand(context, wanted, paths);
  const changes = wanted.map((change) => ({
    ...(command.schedule === null ? change : withPeakSaid(change, command.schedule)),
    inSchedule: change.ask !== null && command.schedule !== null,
  }));
  return { changes, advice: advice(context, wanted), ...command };
}

function wantedChanges(context: NextContext): readonly WantedChange[] {
  const ofFiring = [
    ...coneChanges(context),
    ...coolingChanges(context),
    ...climbChanges(context),
    ...handlingChanges(context),
  ];
  const cured = cures(context, ofFiring);
  const isCured = ({ about, standing }: WantedChange) =>
    about === "cooling" &&
    standing === "too close to tell" &&
    cured.some((cure) => cure.about === about);
  return [...ofFiring.filter((change) => !isCured(change)), ...cured];
}

/** A kiln that heats by itself is not fired again as it is: no draft, and nothing to repeat. */
const AFTER_RUNAWAY: NextTime = {
  changes: [
    {
      about: "power",
      change:
        "Do not fire this kiln again until a licensed electrician has found, under your local code, why it heated by itself.",
      because: "The schedule was not the cause, and no schedule can cure it.",
      evidence: [],
      standing: "firm",
      ask: null,
      inSchedule: false,
    },
  ],
  advice: [],
  command: null,
  commandSays: "No schedule is drafted from this firing.",
  scheduleSays: "No schedule is drafted from this firing.",
  schedule: null,
};

function ranked(changes: readonly WantedChange[]): readonly WantedChange[] {
  return changes.toSorted(
    (a, b) =>
      STANDINGS.indexOf(a.standing) - STANDINGS.indexOf(b.standing) ||
      SUBJECTS.indexOf(a.about) - SUBJECTS.indexOf(b.about),
  );
}

function advice(context: NextContext, changes: readonly WantedChange[]): readonly string[] {
  const real = changes.filter(
    ({ about, standing }) => CHANGES_WARE.has(about) && standing !== "too close to tell",
  );
  const subjects = [...new Set(real.map(({ about }) => about))];
  const [first] = real;
  if (first === undefined) return [whereNothingChanges(context, changes)];
  if (subjects.length === 1) return [];
  return [
    `These would change ${listed(subjects.map((subject) => WORDS[subject] ?? subject))} together, and afterwards nobody could say which of them made the difference. If ware is not at risk, change ${WORDS[first.about] ?? first.about} first and the rest in the firing after.`,
  ];
}

function whereNothingChanges(context: NextContext, changes: readonly WantedChange[]): string {
  if (changes.some(({ about }) => OUTSIDE_FIRING.has(about)))
    return "The firing itself asks for no change: what has to change is said above.";
  if (hasBroken(context))
    return "Something broke, and nothing here says that the firing did it. Find out first: tap every piece, and note edges, place and pattern of the cracks in the record.";
  return "Nothing to change in the firing: fire it the same way again. One firing that went well proves little, two alike begin to.";
}

const WORDS: Readonly<Partial<Record<NextChange["about"], string>>> = {
  lid: "when the kiln is opened",
  cooling: "the cooling",
  cone: "the heat at the peak",
  climb: "the climb",
};

function listed(words: readonly string[]): string {
  return `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}
