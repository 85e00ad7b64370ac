import { crackWords } from "../record/crackWords.ts";
import type {
  FiringRecord,
  FoundOnWare,
  RecordedTrial,
  RecordedWare,
} from "../record/FiringRecord.ts";

/** A piece, or pieces of one kind, that something happened to, with all that the record says of it. */
export interface CrackCase extends Omit<FoundOnWare, "piece" | "note"> {
  /** As the record names it. */
  readonly piece: string | null;
  readonly count: number;
  readonly glazedSides: RecordedWare["glazedSides"];
  /** Fired glaze [mm], when it was measured on this piece. */
  readonly coatMm: number | null;
  readonly wallMm: number | null;
  /** The ware that it belongs to; null when the record names none like it. */
  readonly ware: RecordedWare | null;
  /** Test pieces that it stands for; empty for ware. */
  readonly trials: readonly RecordedTrial[];
}

/** Faults of glaze that are no cracks. */
const NO_CRACKS: readonly FoundOnWare["what"][] = ["blister", "pinhole", "crawling"];

/**
 * The pieces that cracked, flaked or crackled, as a record tells: what was found, test pieces, and, where
 * neither says anything, the remarks. Empty when nothing was found.
 */
export function crackCases(record: FiringRecord | null): readonly CrackCase[] {
  if (record === null) return [];
  const found = record.found.map(withRemark).filter(isCrack);
  const named = new Set(found.map(({ piece }) => piece));
  const cases = [
    ...found.map((each) => caseOfFound(each, record)),
    ...trialCases(
      record.trials.filter(({ piece }) => !named.has(piece)),
      record.ware,
    ),
  ];
  return cases.length > 0 ? cases : remarkedCases(record);
}

/** What was found, with what its remark says where the rest is silent. */
function withRemark(found: FoundOnWare): FoundOnWare {
  const said = crackWords([found.piece, found.note].filter((text) => text !== null).join(". "));
  const isVague = found.what === null || found.what === "crack";
  return {
    ...found,
    what: isVague ? (said.what ?? found.what) : found.what,
    edges: found.edges ?? said.edges,
    where: found.where ?? said.where,
    pattern: found.pattern ?? said.pattern,
    when: found.when ?? said.when,
    rings: found.rings ?? said.rings,
  };
}

function isCrack({ what, rings, pattern, edges }: FoundOnWare): boolean {
  if (what !== null) return !NO_CRACKS.includes(what);
  return rings === "dull" || pattern !== null || edges !== null;
}

function caseOfFound({ note, ...found }: FoundOnWare, record: FiringRecord): CrackCase {
  const trial = record.trials.find(({ piece }) => piece === found.piece) ?? null;
  const ware =
    trial === null
      ? wareNamed(`${found.piece ?? ""} ${note ?? ""}`, record.ware)
      : wareOfTrial(trial, record.ware);
  const sides = sidesSaid(`${found.piece ?? ""}. ${note ?? ""}`);
  return {
    ...found,
    what: found.what ?? (trial === null ? null : trialWord(trial)),
    count: 1,
    glazedSides: trial?.glazedSides ?? sides ?? ware?.glazedSides ?? null,
    coatMm: trial?.coatMm ?? null,
    wallMm: trial?.wallMm ?? ware?.wallMm ?? ware?.thickestMm ?? null,
    ware,
    trials: trial === null ? [] : [trial],
  };
}

function trialWord({ cracked }: RecordedTrial): FoundOnWare["what"] {
  if (cracked === "through") return "through-crack";
  return cracked === "crackle" ? "crackle" : null;
}

/** Test pieces that came out alike: one clay, one glaze, the same sides, cracked the same way. */
function trialCases(
  trials: readonly RecordedTrial[],
  ware: readonly RecordedWare[],
): readonly CrackCase[] {
  const groups = new Map<string, RecordedTrial[]>();
  for (const trial of trials) {
    const what = trialWord(trial);
    if (what === null) continue;
    const key = [what, trial.clay, trial.glaze, trial.glazedSides].join("\n");
    groups.set(key, [...(groups.get(key) ?? []), trial]);
  }
  return [...groups.values()].map((group): CrackCase => {
    const [first] = group as [RecordedTrial];
    const said = crackWords(group.map(({ note }) => note ?? "").join(". "));
    return {
      ...said,
      piece: group.map(({ piece }) => piece).join(", "),
      what: trialWord(first),
      count: group.length,
      glazedSides: first.glazedSides,
      coatMm: mean(group.map(({ coatMm }) => coatMm)),
      wallMm: first.wallMm,
      ware: wareOfTrial(first, ware),
      trials: group,
    };
  });
}

/** What the remarks of a record and of its test pieces say, sentence by sentence. */
function remarkedCases(record: FiringRecord): readonly CrackCase[] {
  const remarks = [
    ...(record.notes ?? "").split(/[.;!]\s+|\n/),
    ...record.trials.map(({ piece, note }) => (note === null ? "" : `${piece}: ${note}`)),
  ];
  return remarks.flatMap((remark) => {
    const said = crackWords(remark);
    if (said.what === null || NO_CRACKS.includes(said.what)) return [];
    const ware = wareNamed(remark, record.ware);
    return [
      {
        ...said,
        piece: ware?.name ?? null,
        count: 1,
        glazedSides: sidesSaid(remark) ?? ware?.glazedSides ?? null,
        coatMm: null,
        wallMm: ware?.wallMm ?? ware?.thickestMm ?? null,
        ware,
        trials: [],
      },
    ];
  });
}

/** Which sides words say are glazed; null when they do not. */
function sidesSaid(text: string): RecordedWare["glazedSides"] {
  if (
    /\b(?:both sides|inside and out(?:side)?|all over) glazed|glazed (?:on )?(?:both|inside and out|all over)/i.test(
      text,
    )
  )
    return "both";
  if (
    /\bunglazed\b|\bnot glazed\b/i.test(text) &&
    !/unglazed (?:on the )?(?:out|in)side|(?:out|in)side unglazed/i.test(text)
  )
    return "none";
  return /\b(?:one side|inside only|outside only|only (?:the |on the )?(?:in|out)side|(?:out|in)side unglazed|glazed inside\b(?! and))/i.test(
    text,
  )
    ? "one"
    : null;
}

/** Walls that are taken for the same [mm]. */
const SAME_WALL_MM = 0.5;

/** The ware that a test piece stands among: by its shape's name, or by its wall; else the only one there is. */
function wareOfTrial(
  { shape, wallMm, note }: RecordedTrial,
  ware: readonly RecordedWare[],
): RecordedWare | null {
  const called = wareNamed(
    `${shape === "closed wall" ? "" : (shape ?? "tile")} test ${note ?? ""}`,
    ware,
  );
  if (called !== null) return called;
  const alike = ware.filter((each) => {
    const wall = each.wallMm ?? each.thickestMm;
    return wall !== null && wallMm !== null && Math.abs(wall - wallMm) <= SAME_WALL_MM;
  });
  return alike.length === 1 ? alike[0]! : null;
}

/** The ware whose name a text holds, a plural for its singular too; the only one where the text names none. */
function wareNamed(text: string, ware: readonly RecordedWare[]): RecordedWare | null {
  const words = new Set(stems(text));
  const named = ware.find(({ name }) => stems(name).some((stem) => words.has(stem)));
  return named ?? (ware.length === 1 ? ware[0]! : null);
}

function stems(text: string): readonly string[] {
  return text
    .toLowerCase()
    .split(/[^\p{L}]+/u)
    .filter((word) => word.length > 2 && !IDLE.has(word))
    .map((word) => word.replace(/(?<=(?:s|x|z|ch|sh))es$|(?<!s)s$/, ""));
}

const IDLE = new Set([
  "the",
  "and",
  "two",
  "one",
  "big",
  "small",
  "with",
  "glaze",
  "glazed",
  "test",
]);

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
