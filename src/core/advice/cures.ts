import type { CrackKind, DiagnosedCause } from "../diagnosis/Diagnosis.ts";
import { paceOf } from "./coolingChanges.ts";
import { COOL_C } from "./handlingChanges.ts";
import type { NextContext, WantedChange } from "./NextFiring.ts";

/** What is done against one kind of crack; null where another change says it, or nothing is wanted. */
type Cure = (context: NextContext, said: readonly WantedChange[]) => Remedy | null;

type Remedy = Pick<WantedChange, "about" | "change"> &
  Partial<Pick<WantedChange, "evidence" | "ask">>;

/** Cures are told of so many causes at most: more of them are a list, not advice. */
const MOST_CURES = 3;

/** Textbook rule through quartz, for a passage that nobody measured [°C/h]. @see SOURCES["fraser-1986"] */
const RULE_C_PER_HOUR = 50;

/** Where ware that cracked on the way up is taken up slowly [°C], and no slower and no faster than [°C/h]. */
const WARMING_C = { from: 100, to: 650 } as const;
const WARMING_C_PER_HOUR = { least: 30, most: 100 } as const;

/**
 * What to do against each kind of crack, by common practice. Every kind has one, so that advice never
 * stops at a cause; rates are half of what cracked the ware.
 */
const CURES: Readonly<Record<CrackKind, Cure>> = {
  "crackle by fit": ({ facts }) =>
    isCrackleWanted(facts)
      ? null
      : {
          about: "glaze",
          change:
            "If the crackle is not wanted, make the glaze shrink less: more silica or some boron in it, less soda and potash; a thinner coat helps a little. The firing is not to blame.",
        },
  "delayed crazing": () => ({
    about: "glaze",
    change:
      "Against crazing that comes later: make the glaze shrink less (more silica or some boron, less soda and potash), and fire the clay tighter, hotter or longer, so that it takes up less water and swells less.",
  }),
  shivering: () => ({
    about: "glaze",
    change:
      "Against shivering: make the glaze shrink more (less silica, more soda and potash) or the clay shrink less (a clay with less free silica), round the rims and edges, and put less glaze on them. Keep such pieces from use: the flakes are sharp.",
  }),
  "one-sided glaze": ({ facts, diagnosis }) => ({
    about: "glaze",
    change: `Against splitting by glaze on one side: a thinner coat, or the same coat inside and outside${fitWords(facts, diagnosis)}.`,
  }),
  "dunting at quartz": (context, said) => slowerFall(context, said, "quartz inversion"),
  "dunting at cristobalite": (context, said) => slowerFall(context, said, "cristobalite inversion"),
  "lid opened hot": (_, said) =>
    said.some(({ about }) => about === "lid")
      ? null
      : {
          about: "lid",
          change:
            "Leave lid, vents and spy holes shut until it is below {cool}, and unpack when the ware is hand-warm.",
          evidence: [{ name: "cool", value: COOL_C, kind: "temperature" }],
        },
  "heating crack": slowerClimb,
  "bisque crack": () => ({
    about: "bisque",
    change:
      "Tap every piece before it is glazed, and glaze none that rings dull. In the bisque: drier ware, a slower climb to red heat, pieces not stacked tight, and no opening while it is hot.",
  }),
  "drying crack": () => ({
    about: "drying",
    change:
      "Dry slower and more evenly: rims and handles covered, off a board that drinks, turned over in time; join parts of the same wetness, and keep walls of one thickness.",
  }),
  "S-crack": () => ({
    about: "drying",
    change:
      "Compress the base well when throwing, leave no water standing in it, keep it no thicker than the wall, and dry it slowly, upside down once the rim bears it.",
  }),
  "something else": () => ({
    about: "record",
    change:
      "Keep the broken pieces and note edges, place and pattern of the cracks in the record: none of the usual causes fits what is there.",
  }),
};

/**
 * What to do about the causes that stand, the likeliest first; what is said already is not said again.
 * Causes that are only possible are told where something broke, and change no schedule.
 */
export function cures(
  context: NextContext,
  said: readonly WantedChange[],
): readonly WantedChange[] {
  const likely = likelyCauses(context.diagnosis);
  const possible = hasBroken(context) ? context.diagnosis.filter(isPossible) : [];
  return [...likely, ...possible].slice(0, MOST_CURES).flatMap((cause) => {
    const isLikely = likely.includes(cause);
    const remedy = CURES[cause.kind](context, said);
    if (remedy === null || (!isLikely && remedy.ask)) return [];
    return [
      {
        evidence: [],
        ask: null,
        ...remedy,
        because: `${isLikely ? "A likely" : "A possible"} cause of what was heard or found: ${cause.name}.`,
        standing: isLikely ? ("firm" as const) : ("worth trying" as const),
      },
    ];
  });
}

function likelyCauses(diagnosis: readonly DiagnosedCause[]): readonly DiagnosedCause[] {
  return diagnosis.filter(({ standing }) => standing === "speaks for");
}

function isPossible({ standing, evidence }: DiagnosedCause): boolean {
  return standing === "open" && evidence.some(({ direction }) => direction === "for");
}

/** Whether something on the ware broke or flaked: not to be repeated as it was. */
export function hasBroken({ facts }: Pick<NextContext, "facts">): boolean {
  const { record } = facts;
  return (
    (record?.trials ?? []).some(({ cracked }) => cracked === "through") ||
    (record?.found ?? []).some(
      ({ what, rings }) => rings === "dull" || (what !== null && what !== "crackle"),
    )
  );
}

function isCrackleWanted({ plan, record }: NextContext["facts"]): boolean {
  return plan?.ware.crackle === true || (record?.trials ?? []).length > 0;
}

/** Which way the glaze pulled: crackle says that it shrinks more than the clay, shivering less. */
function fitWords({ record }: NextContext["facts"], diagnosis: readonly DiagnosedCause[]): string {
  const isSqueezed = likelyCauses(diagnosis).some(({ kind }) => kind === "shivering");
  if (isSqueezed) return ", or a glaze that shrinks more (less silica, more soda and potash)";
  const isPulled =
    (record?.trials ?? []).some(({ cracked }) => cracked === "crackle") ||
    (record?.found ?? []).some(({ what }) => what === "crackle");
  return isPulled
    ? ", or a glaze that shrinks less (more silica or some boron, less soda and potash)"
    : ", or a glaze that fits the clay more nearly";
}

/** Half as fast as the ware cracked at, where no guide was broken: the guide did not fit this ware. */
function slowerFall(
  context: NextContext,
  said: readonly WantedChange[],
  band: string,
): Remedy | null {
  const passages = context.facts.zones
    .flatMap(({ crossings }) => crossings)
    .filter((crossing) => crossing.band === band && crossing.direction === "cooling");
  const [first] = passages;
  if (
    first === undefined ||
    said.some(({ about, evidence }) => about === "cooling" && isThere(evidence, first.fromC))
  )
    return null;
  const fastest = Math.max(
    ...passages.map(({ fastestCPerHour }) => Math.abs(fastestCPerHour ?? 0)),
  );
  const pace = paceOf(first, fastest > 0 ? fastest / 2 : RULE_C_PER_HOUR, context);
  return {
    about: "cooling",
    change: `Cool from {from} to {to}, through the ${band}, at {limit} or slower${fastest > 0 ? ", half as fast as this time, {fastest}" : ""}.`,
    evidence: [
      { name: "from", value: pace.fromC, kind: "temperature" },
      { name: "to", value: pace.toC, kind: "temperature" },
      { name: "limit", value: pace.mostCPerHour, kind: "rate" },
      { name: "fastest", value: fastest, kind: "rate" },
    ],
    ask: pace,
  };
}

function isThere(evidence: WantedChange["evidence"], fromC: number): boolean {
  return evidence.some(({ name, value }) => name === "from" && value === fromC);
}

function slowerClimb(context: NextContext): Remedy {
  const fastest = Math.max(
    0,
    ...context.facts.zones
      .flatMap(({ crossings }) => crossings)
      .filter(({ direction }) => direction === "heating")
      .map(({ fastestCPerHour }) => fastestCPerHour ?? 0),
  );
  const { least, most } = WARMING_C_PER_HOUR;
  const half = fastest > 0 ? fastest / 2 : most;
  const pace = paceOf(
    { fromC: WARMING_C.from, toC: WARMING_C.to },
    Math.min(most, Math.max(least, half)),
    context,
  );
  return {
    about: "climb",
    change: `Put the ware in quite dry, and climb from {from} to {to} at {limit} or slower.`,
    evidence: [
      { name: "from", value: pace.fromC, kind: "temperature" },
      { name: "to", value: pace.toC, kind: "temperature" },
      { name: "limit", value: pace.mostCPerHour, kind: "rate" },
    ],
    ask: pace,
  };
}
