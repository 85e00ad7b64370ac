import type { DiagnosedCause } from "../diagnosis/DiagnosedCause.ts";
import type { FiringFacts } from "../FiringFacts.ts";
import type { FiringHistory, PastFiring } from "../FiringHistory.ts";
import { hottestZone } from "../hottestZone.ts";
import { runawayOf } from "../runaway.ts";
import { climbChanges } from "./climbChanges.ts";
import { coneChanges } from "./coneChanges.ts";
import { coolingChanges } from "./coolingChanges.ts";
import { handlingChanges } from "./handlingChanges.ts";
import { kilnTooWeak } from "./kilnTooWeak.ts";
import type { NextContext } from "./NextContext.ts";
import type { NextChange, NextTime, NextTimePaths, Standing } from "./NextTime.ts";
import { nextCommand } from "./nextCommand.ts";
import { nextKiln } from "./nextKiln.ts";
import { nextWare } from "./nextWare.ts";

const STANDINGS: readonly Standing[] = ["firm", "worth trying", "too close to tell"];

/** Within a standing: what cracks ware, then what misses the cone, then what wears, then what teaches. */
const SUBJECTS: readonly NextChange["about"][] = [
  "lid",
  "cooling",
  "cone",
  "climb",
  "power",
  "elements",
  "thermocouple",
  "hold",
  "log",
  "record",
];

/** Subjects whose change may make the ware come out otherwise. */
const CHANGES_WARE: ReadonlySet<NextChange["about"]> = new Set(["lid", "cooling", "cone", "climb"]);

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
  const changes = ranked([
    ...coneChanges(context),
    ...coolingChanges(context),
    ...climbChanges(context),
    ...handlingChanges(context),
  ]);
  return { changes, advice: advice(changes), ...nextCommand(context, changes, paths) };
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
      inSchedule: false,
    },
  ],
  advice: [],
  command: null,
  commandSays: "No schedule is drafted from this firing.",
  scheduleSays: "No schedule is drafted from this firing.",
  schedule: null,
};

function ranked(changes: readonly NextChange[]): readonly NextChange[] {
  return changes.toSorted(
    (a, b) =>
      STANDINGS.indexOf(a.standing) - STANDINGS.indexOf(b.standing) ||
      SUBJECTS.indexOf(a.about) - SUBJECTS.indexOf(b.about),
  );
}

function advice(changes: readonly NextChange[]): readonly string[] {
  const real = changes.filter(
    ({ about, standing }) => CHANGES_WARE.has(about) && standing !== "too close to tell",
  );
  const subjects = [...new Set(real.map(({ about }) => about))];
  const [first] = real;
  if (first === undefined)
    return [
      "Nothing in this firing asks for it to be fired differently. Repeat it as it was: one firing that went well proves little, two alike begin to.",
    ];
  if (subjects.length === 1) return [];
  return [
    `These would change ${listed(subjects.map((subject) => WORDS[subject] ?? subject))} together, and afterwards nobody could say which of them made the difference. If ware is not at risk, change ${WORDS[first.about] ?? first.about} first and the rest in the firing after.`,
  ];
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
