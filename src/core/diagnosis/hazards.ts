import type { CaseEvidence } from "./caseEvidence.ts";
import type { CrackCase } from "./crackCases.ts";
import type { CrackFacts } from "./crackFacts.ts";
import { type CrackKind, KINDS } from "./Diagnosis.ts";

/**
 * How many of a thousand pieces come to each kind of harm in a usual firing of which nothing more is known.
 * Our own estimates; only how they stand to each other counts. Crackle that was meant is among the first.
 */
export const USUAL: Readonly<Record<CrackKind, number>> = {
  "crackle by fit": 30,
  "delayed crazing": 6,
  shivering: 2,
  "dunting at quartz": 4,
  "dunting at cristobalite": 2,
  "lid opened hot": 4,
  "one-sided glaze": 1.5,
  "heating crack": 2,
  "bisque crack": 3,
  "drying crack": 3,
  "S-crack": 2.5,
  "something else": 3,
};

/** Spread of the logarithm of computed stress over strength: good to a factor of two, eight times in ten. */
const SPREAD = Math.log(2) / 1.2816;
/**
 * Computed stress over strength at which half of the pieces break. In a shut kiln above 1, since large platters,
 * reckoned at about 0.4 there, are seldom lost; at an opening below, whose draught, cold hands and cold table
 * the reckoning leaves out. Our own estimates after common practice.
 */
const HALF_BREAK = { shut: 1.3, opened: 0.8 } as const;
/** Flaws break a few however small the stress; our own estimate. */
const LEAST_SHARE = 0.0003;

/** Share of pieces that break at a computed stress over strength: log-normal. */
function breakingShare(ratio: number, how: keyof typeof HALF_BREAK): number {
  if (!(ratio > 0)) return LEAST_SHARE;
  const z = Math.log(ratio / HALF_BREAK[how]) / SPREAD;
  // Normal distribution by a logistic curve with a cubic term, right to 0.0002.
  return Math.max(LEAST_SHARE, 1 / (1 + Math.exp(-1.5976 * z - 0.07056 * z ** 3)));
}

/** How often kilns are opened how hot, where nobody says [°C]; our own estimate. */
const OPENINGS: readonly (readonly [tempC: number, share: number])[] = [
  [90, 0.5],
  [120, 0.22],
  [150, 0.14],
  [190, 0.09],
  [230, 0.04],
  [280, 0.01],
];
/** An opening that the log bounds may still lie so much higher [K]. */
const BOUND_K = 15;
/** A log that stays calm may still have missed a lid that was hardly lifted; our own estimate. */
const MISSED = 0.05;

/** Half of bodies that are listed with so much turn out to hold enough cristobalite to crack; our own estimate. */
const TELLING_CRISTOBALITE = 0.03;

const RISK =
  "our own reckoning of the stress in the ware, good to a factor of two either way; how many pieces break at it follows from that";
const OWN = "our own estimate";

/** What log and sizes say of one case: how much more often each kind of harm comes of such a firing. */
export function hazardEvidence(
  facts: CrackFacts,
  piece: CrackCase | null,
): readonly CaseEvidence[] {
  return [
    ...inversionEvidence(facts, piece, "quartz"),
    ...inversionEvidence(facts, piece, "cristobalite"),
    ...openingEvidence(facts, piece),
    ...heatingEvidence(facts, piece),
    ...coatEvidence(facts, piece),
  ];
}

function inversionEvidence(
  facts: CrackFacts,
  piece: CrackCase | null,
  which: "quartz" | "cristobalite",
): readonly CaseEvidence[] {
  const ware = facts.stressOf(piece?.ware ?? null);
  const stress = ware[which];
  const kind = which === "quartz" ? "dunting at quartz" : "dunting at cristobalite";
  const squared = (ware.cristobaliteShare / TELLING_CRISTOBALITE) ** 2;
  const holds = which === "quartz" ? 1 : squared / (1 + squared);
  if (stress === null) return [silent(kind, holds)];
  const ratio = (1000 * holds * breakingShare(stress.ratio, "shut")) / USUAL[kind];
  const rate = stress.fastestCPerHour;
  return [
    {
      question: which,
      short:
        rate === null
          ? `{stress} of the strength through ${which}`
          : `{fastest} through ${which}, {stress} of the strength`,
      statement: `It cooled through the ${which} inversion${rate === null ? "" : " at up to {fastest}"}; by our reckoning the stress came to {stress} of the strength of the ware.`,
      evidence: [
        ...(rate === null ? [] : [{ name: "fastest", value: rate, kind: "rate" } as const]),
        { name: "stress", value: stress.ratio, kind: "ratio" },
      ],
      basis: RISK,
      times: only(kind, ratio),
    },
  ];
}

function openingEvidence(facts: CrackFacts, piece: CrackCase | null): readonly CaseEvidence[] {
  const { tempC, maybe, notAboveC } = facts.opening;
  const { openingAt } = facts.stressOf(piece?.ware ?? null);
  const among = (limitC: number) => {
    const below = OPENINGS.filter(([openedC]) => openedC <= limitC);
    const list = below.length === 0 ? [[limitC, 1] as const] : below;
    const all = list.reduce((sum, [, share]) => sum + share, 0);
    return list.reduce(
      (sum, [at, share]) => sum + (share / all) * breakingShare(openingAt(at), "opened"),
      0,
    );
  };
  const usual = among(Number.POSITIVE_INFINITY);
  const bounded =
    notAboveC === null ? usual : (1 - MISSED) * among(notAboveC + BOUND_K) + MISSED * usual;
  const said = maybe.reduce((sum, { share }) => sum + share, 0);
  if (said === 0 && notAboveC === null) {
    // Nothing is known: what a usual opening would do to this ware, which is no evidence.
    return [silent("lid opened hot", (1000 * usual) / USUAL["lid opened hot"])];
  }
  const broken =
    maybe.reduce(
      (sum, each) => sum + each.share * breakingShare(openingAt(each.tempC), "opened"),
      0,
    ) +
    (1 - said) * bounded;
  const times = only("lid opened hot", (1000 * broken) / USUAL["lid opened hot"]);
  if (tempC === null || said === 0)
    return [
      {
        question: "opening",
        short: "still shut at {shut} by the log",
        statement:
          "By the log the kiln only slowed down as it cooled, and was still shut at {shut}.",
        evidence: [{ name: "shut", value: notAboveC as number, kind: "temperature" }],
        basis: OWN,
        times,
      },
    ];
  return [
    {
      question: "opening",
      short: "opened at {opened}, {stress} of the strength",
      statement:
        "The kiln was opened at {opened}; by our reckoning that puts {stress} of its strength into the ware.",
      evidence: [
        { name: "opened", value: tempC, kind: "temperature" },
        { name: "stress", value: openingAt(tempC), kind: "ratio" },
      ],
      basis: RISK,
      times,
    },
  ];
}

/** Walls that are this thick let steam out at the second rate [mm], [°C/h]; common practice for damp ware. */
const STEAM_MM = 8;
const STEAM_CPERHOUR = 100;
/** Bisque and fired ware stand this through quartz on the way up [°C/h]; our own estimate. */
const QUARTZ_UP_CPERHOUR = 280;
/** From this width on a piece stands less [mm]; our own estimate. */
const WIDE_MM = 250;

function heatingEvidence(facts: CrackFacts, piece: CrackCase | null): readonly CaseEvidence[] {
  const ware = piece?.ware ?? null;
  const states = ware?.state ? [ware.state] : facts.states;
  const isRaw = states.some((state) => isUnfired(state));
  const { steamCPerHour, quartzCPerHour } = facts.climb;
  const thickMm = ware?.thickestMm ?? ware?.baseMm ?? ware?.wallMm ?? STEAM_MM;
  if (isRaw) {
    if (steamCPerHour === null) return [];
    const damp = states.includes("damp") ? 2 : 1;
    const hard = (damp * steamCPerHour * thickMm) / (STEAM_CPERHOUR * STEAM_MM);
    return [
      {
        question: "heating",
        short: "{climb} while water left it",
        statement: `Unfired ware was heated at up to {climb} between 70 and 200 °C (160 and 390 °F), while water left it.`,
        evidence: [{ name: "climb", value: steamCPerHour, kind: "rate" }],
        basis: "common practice for damp and thick ware; how much it says is our own estimate",
        times: only("heating crack", bounded(hard ** 1.3, 0.3, 15)),
      },
    ];
  }
  if (quartzCPerHour === null) return [];
  const wide = (ware?.widestMm ?? 0) >= WIDE_MM ? 1.5 : 1;
  const hard = (wide * quartzCPerHour) / QUARTZ_UP_CPERHOUR;
  return [
    {
      question: "heating",
      short: "{climb} through quartz on the way up",
      statement: "It was heated through the quartz inversion at up to {climb}.",
      evidence: [{ name: "climb", value: quartzCPerHour, kind: "rate" }],
      basis: OWN,
      times: only("heating crack", bounded(hard ** 2, 0.3, 10)),
    },
  ];
}

/** Whether ware went in that had never been fired. */
export function isUnfired(state: CrackFacts["states"][number]): boolean {
  return state === "damp" || state === "bone dry" || state === "glazed raw";
}

/** A coat and a wall that are usual [mm]. */
const COAT_MM = 0.6;
const WALL_MM = 6;

/** The pull of one-sided glaze on a wall, coat over the root of the wall, against a usual one. */
function coatEvidence(facts: CrackFacts, piece: CrackCase | null): readonly CaseEvidence[] {
  if (piece === null) return [];
  const own = piece.coatMm === null ? [] : pullEvidence(piece.coatMm, piece.wallMm ?? WALL_MM);
  return [...own, ...(thickestCracked(facts, piece) ? [THICKEST] : [])];
}

function pullEvidence(coatMm: number, wallMm: number): readonly CaseEvidence[] {
  const pull = coatMm / COAT_MM / Math.sqrt(wallMm / WALL_MM);
  return [
    {
      question: "sides",
      short: "a coat {pull} times as hard on the wall as a usual one",
      statement:
        "Its coat pulls on its wall {pull} times as hard as a usual one does (coat over the root of the wall).",
      evidence: [{ name: "pull", value: pull, kind: "cones" }],
      basis:
        "the stress at a crack that glaze on one side drives into a closed wall goes with coat over the root of the wall; how often it splits is our own estimate",
      times: only("one-sided glaze", bounded(pull ** 2, 0.1, 8)),
    },
  ];
}

const THICKEST: CaseEvidence = {
  question: "coat",
  short: "the thickest one-sided coats cracked through",
  statement:
    "Among the test pieces glazed on one side those that cracked through have the thickest coats, which pull the hardest.",
  evidence: [],
  basis: OWN,
  times: only("one-sided glaze", 2),
};

/** Every one-sided test piece that cracked through has a thicker coat than any that did not. */
function thickestCracked({ trials }: CrackFacts, piece: CrackCase): boolean {
  const isThrough = ({ cracked, piece: mark }: CrackFacts["trials"][number]) =>
    cracked === "through" || piece.trials.some((each) => each.piece === mark);
  if (piece.trials.length === 0 || !piece.trials.some(({ cracked }) => cracked === "through"))
    return false;
  const oneSided = trials.filter(({ glazedSides }) => glazedSides === "one");
  const coats = (through: boolean) =>
    oneSided.filter((trial) => isThrough(trial) === through).map(({ coatMm }) => coatMm);
  const [through, whole] = [coats(true), coats(false)];
  return through.length > 0 && whole.length > 0 && Math.min(...through) > Math.max(...whole);
}

/** What changes how probable a kind is without anything having been seen. */
function silent(kind: CrackKind, times: number): CaseEvidence {
  return {
    question: "opening",
    short: "",
    statement: "",
    evidence: [],
    basis: OWN,
    times: only(kind, times),
  };
}

function only(kind: CrackKind, times: number): Readonly<Record<CrackKind, number>> {
  return Object.fromEntries(
    KINDS.map((each) => [each, each === kind ? Math.max(times, 1e-4) : 1]),
  ) as Record<CrackKind, number>;
}

function bounded(value: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, value));
}
