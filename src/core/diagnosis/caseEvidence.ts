import type { Evidence } from "../findings/Finding.ts";
import type { RecordedTrial } from "../record/FiringRecord.ts";
import { ANSWERS, type WeighedAnswer } from "./answerTable.ts";
import type { CrackCase } from "./crackCases.ts";
import { COOL_SECONDS, type CrackFacts, type HeardSound } from "./crackFacts.ts";
import { type CrackKind, KINDS, type QuestionId } from "./Diagnosis.ts";
import { hazardEvidence, isUnfired } from "./hazards.ts";

/** One thing that is known of a case, and how much more often it is so under each kind of crack. */
export interface CaseEvidence {
  readonly question: QuestionId;
  /** Empty where it is no observation and nothing is said of it. */
  readonly short: string;
  readonly statement: string;
  readonly evidence: readonly Evidence[];
  readonly basis: string;
  /** Probabilities, or these up to a common factor. */
  readonly times: Readonly<Record<CrackKind, number>>;
}

/** What is seen along with how deep a crack goes says less than it would alone: shares to this power. */
const BESIDE_DEPTH = 0.5;
/** A sound may be that of another piece, of a shelf or of the kiln; our own estimate. */
const OTHERS_SOUND = 0.35;
/** An opening is as likely to be felt as hot as not at this [°C], and turns over about this much [K]. */
const HOT_OPENING_C = 160;
const HOT_OVER_K = 20;
const DAY_SECONDS = 86_400;

/**
 * All that is known of one case, each thing once: how it looks, what was heard, what log and sizes say.
 * @param piece Null for what was only heard.
 */
export function caseEvidence(facts: CrackFacts, piece: CrackCase | null): readonly CaseEvidence[] {
  return [
    ...(piece === null ? [] : seenEvidence(piece)),
    ...soundEvidence(facts, piece),
    ...stateEvidence(facts, piece),
    ...spacingEvidence(facts, piece),
    ...hazardEvidence(facts, piece),
  ];
}

function seenEvidence(piece: CrackCase): readonly CaseEvidence[] {
  const depth = depthAnswer(piece);
  const beside = depth === null ? 1 : BESIDE_DEPTH;
  return [
    ...(depth === null ? [] : [told("depth", ANSWERS.depth[depth])]),
    ...(piece.edges === null ? [] : [told("edges", ANSWERS.edges[piece.edges])]),
    ...(piece.when === null ? [] : [told("first seen", ANSWERS["first seen"][piece.when])]),
    ...(piece.pattern === null
      ? []
      : [told("pattern", ANSWERS.pattern[piece.pattern], piece.pattern === "S" ? 1 : beside)]),
    ...(piece.where === null ? [] : [told("place", ANSWERS.place[piece.where])]),
    ...(piece.rings === null || (depth !== null && depth !== "crack")
      ? []
      : [told("ring", ANSWERS.ring[piece.rings])]),
    ...(piece.glazedSides === null ? [] : [told("sides", ANSWERS.sides[piece.glazedSides])]),
  ];
}

function depthAnswer({ what }: CrackCase): keyof typeof ANSWERS.depth | null {
  switch (what) {
    case "through-crack":
      return "through";
    case "crazing":
      return "crackle";
    case null:
    case "blister":
    case "pinhole":
    case "crawling":
      return null;
    default:
      return what;
  }
}

function soundEvidence(facts: CrackFacts, piece: CrackCase | null): readonly CaseEvidence[] {
  const { sounds } = facts;
  const cracks = sounds.filter(({ kind, phase }) => kind === "crack" && phase !== "unknown");
  const pings = sounds.filter(({ kind, phase }) => kind === "pinging" && phase !== "unknown");
  const isGlaze = piece !== null && (piece.what === "crackle" || piece.what === "crazing");
  const kinds = piece === null ? soundsOf(sounds) : [];
  const heard = isGlaze || piece === null ? pingEvidence(facts, pings) : [];
  return [...kinds, ...(isGlaze ? [] : crackEvidence(cracks)), ...heard];
}

/** Whether it was pinging or a single crack, where nothing but sound is known. */
function soundsOf(sounds: readonly HeardSound[]): readonly CaseEvidence[] {
  if (sounds.some(({ kind }) => kind === "crack"))
    return [told("sound", ANSWERS["what sounds"].crack)];
  return sounds.some(({ kind }) => kind === "pinging")
    ? [told("sound", ANSWERS["what sounds"].pinging)]
    : [];
}

/** One of the cracks that were heard may be this piece's: the mean over them, and over none of them. */
function crackEvidence(cracks: readonly HeardSound[]): readonly CaseEvidence[] {
  const answers = cracks.flatMap((sound) => {
    const { phase } = sound;
    return phase === "unknown" ? [] : [{ sound, answer: ANSWERS["crack heard"][phase] }];
  });
  if (answers.length === 0) return [];
  const all = answers.reduce((sum, { sound }) => sum + sound.share, 0);
  const times = byKind((kind) => {
    const own = answers.reduce(
      (sum, { sound, answer }) => sum + sound.share * answer.probability[kind],
      0,
    );
    const others = answers.reduce(
      (sum, { sound, answer }) => sum + sound.share * answer.probability["something else"],
      0,
    );
    return ((1 - OTHERS_SOUND) * own + OTHERS_SOUND * others) / all;
  });
  const once = answers.filter(
    ({ sound }, at) => answers.findIndex((each) => each.sound.atSeconds === sound.atSeconds) === at,
  );
  return once.map(({ sound, answer }, at) => ({
    ...told("sound", answer),
    short: shortSound(answer, sound),
    evidence: numbersOf(sound),
    times: at === 0 ? times : byKind(() => 1),
  }));
}

function pingEvidence(facts: CrackFacts, pings: readonly HeardSound[]): readonly CaseEvidence[] {
  const first = pings.find(({ phase }) => phase !== "heating" && phase !== "above the inversions");
  if (first === undefined) return [];
  const last = pings.at(-1)!;
  const since = last.sinceOpeningSeconds;
  const isLate = since !== null && since >= COOL_SECONDS && last !== first;
  const late = isLate
    ? ANSWERS["cool and still pinging"][
        (since as number) >= DAY_SECONDS ? "next day" : "hours later"
      ]
    : null;
  return [
    onset(facts, first),
    ...(late === null
      ? []
      : [
          {
            ...told("cool and still pinging", late),
            short: "pinging {since} after opening",
            evidence: numbersOf(last),
          },
        ]),
  ];
}

/** Where pinging began; how hot an opening counts as hot changes by degrees. */
function onset(facts: CrackFacts, sound: HeardSound): CaseEvidence {
  const table = ANSWERS["pinging heard"];
  const openedC = facts.opening.tempC;
  if (sound.phase !== "after opening" || openedC === null) {
    const answer =
      sound.phase === "after opening"
        ? table["after cool opening"]
        : table[
            sound.phase as Exclude<keyof typeof table, "after hot opening" | "after cool opening">
          ];
    return {
      ...told("sound", answer),
      short: shortSound(answer, sound),
      evidence: numbersOf(sound),
    };
  }
  const hot = 1 / (1 + Math.exp((HOT_OPENING_C - openedC) / HOT_OVER_K));
  const [after, cool] = [table["after hot opening"], table["after cool opening"]];
  const answer = hot > 0.5 ? after : cool;
  return {
    ...told("sound", answer),
    short: "pinging {since} after opening at {opened}",
    evidence: [...numbersOf(sound), { name: "opened", value: openedC, kind: "temperature" }],
    times: byKind((kind) => hot * after.probability[kind] + (1 - hot) * cool.probability[kind]),
  };
}

function shortSound({ answer }: WeighedAnswer, sound: HeardSound): string {
  if (sound.sinceOpeningSeconds !== null)
    return `${sound.kind === "crack" ? "a crack" : "pinging"} {since} after opening`;
  return sound.tempC === null ? answer : `${answer}, at {heat}`;
}

function numbersOf({ atSeconds, tempC, sinceOpeningSeconds }: HeardSound): readonly Evidence[] {
  return [
    { name: "heard at", value: atSeconds, kind: "elapsed" },
    ...(tempC === null ? [] : [{ name: "heat", value: tempC, kind: "temperature" } as const]),
    ...(sinceOpeningSeconds === null
      ? []
      : [{ name: "since", value: sinceOpeningSeconds, kind: "duration" } as const]),
  ];
}

function stateEvidence({ states }: CrackFacts, piece: CrackCase | null): readonly CaseEvidence[] {
  const own = piece?.ware?.state ? [piece.ware.state] : states;
  if (own.length === 0) return [];
  const raw = own.filter(isUnfired).length / own.length;
  const table = ANSWERS["state of the ware"];
  const answer = raw > 0.5 ? table.raw : table.bisqued;
  return [
    {
      ...told("state of the ware", answer),
      times: byKind(
        (kind) => raw * table.raw.probability[kind] + (1 - raw) * table.bisqued.probability[kind],
      ),
    },
  ];
}

function spacingEvidence({ trials }: CrackFacts, piece: CrackCase | null): readonly CaseEvidence[] {
  if (piece === null || piece.trials.length === 0) return [];
  const spacing = coatAgainstSpacing(trials);
  if (spacing === null || (piece.what !== "crackle" && piece.what !== "crazing")) return [];
  return [
    {
      ...told("coat", ANSWERS.coat[spacing.grows ? "grows" : "does not grow"]),
      evidence: [{ name: "pieces", value: spacing.pieces, kind: "count" }],
    },
  ];
}

function told(question: QuestionId, answer: WeighedAnswer, power = 1): CaseEvidence {
  return {
    question,
    short: answer.answer,
    statement: answer.statement,
    evidence: [],
    basis: answer.basis,
    times: byKind((kind) => answer.probability[kind] ** power),
  };
}

function byKind(of: (kind: CrackKind) => number): Readonly<Record<CrackKind, number>> {
  return Object.fromEntries(KINDS.map((kind) => [kind, of(kind)])) as Record<CrackKind, number>;
}

/** Fewer test pieces than this say nothing about spacing against coat. */
const FEWEST_PIECES = 3;

/** Agreement in order from which spacing counts as growing with the coat, 1 being every pair. */
const GROWS_FROM = 0.6;

/** Coats that differ by less are one coat, for what reading them is worth. */
const SAME_COAT = 1.1;

/**
 * Whether cracks stand farther apart on thicker coats: of all pairs of like test pieces (one clay, one glaze,
 * the same sides glazed) with different coats, those in that order minus those in the other, as a share.
 *
 * @returns null with fewer than three pieces that can be held against each other.
 */
function coatAgainstSpacing(
  trials: readonly RecordedTrial[],
): { readonly grows: boolean; readonly pieces: number } | null {
  const pairs = trials.flatMap((a, i) =>
    trials.slice(i + 1).flatMap((b) => {
      const [thin, thick] = a.coatMm < b.coatMm ? [a, b] : [b, a];
      const isPair = areAlike(a, b) && thick.coatMm > SAME_COAT * thin.coatMm;
      return isPair && thin.crackSpacingMm !== null && thick.crackSpacingMm !== null
        ? [{ pair: [a, b], sign: Math.sign(thick.crackSpacingMm - thin.crackSpacingMm) }]
        : [];
    }),
  );
  const pieces = new Set(pairs.flatMap(({ pair }) => pair)).size;
  if (pieces < FEWEST_PIECES) return null;
  const agreement = pairs.reduce((sum, { sign }) => sum + sign, 0) / pairs.length;
  return { grows: agreement >= GROWS_FROM, pieces };
}

function areAlike(a: RecordedTrial, b: RecordedTrial): boolean {
  return a.clay === b.clay && a.glaze === b.glaze && a.glazedSides === b.glazedSides;
}
