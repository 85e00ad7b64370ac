import { statementText } from "../../findings/findingText.ts";
import {
  CRACK_KINDS,
  type DiagnosedCause,
  WEIGHTS,
  type WeighedEvidence,
} from "../../firing/diagnosis/DiagnosedCause.ts";
import { linesToRecord, onlyInLogs } from "../../firing/diagnosis/linesToRecord.ts";
import { QUESTIONS } from "../../firing/diagnosis/questions.ts";
import { type TellingApart, tellingApart } from "../../firing/diagnosis/tellingApart.ts";
import type { TemperatureUnit } from "../../units/temperature.ts";
import type { Block } from "../Block.ts";
import { capitalised, stopped } from "../capitalised.ts";

const STANDING = {
  "speaks for": "on the whole, for it",
  open: "open",
  "speaks against": "on the whole, against it",
} as const;

/** What speaks for which kind of crack, and what would tell more; nothing when nothing was weighed. */
export function diagnosisBlocks(
  causes: readonly DiagnosedCause[],
  unit: TemperatureUnit,
): readonly Block[] {
  if (causes.length === 0) return [];
  const [bare, told] = parted(causes, ({ evidence }) => evidence.length === 0);
  return [
    { kind: "heading", text: "What speaks for which kind of crack" },
    {
      kind: "sentence",
      text: "What was heard and found, held against the log and the record, and put in order by how much speaks for it. It settles nothing: only the pieces can, and one firing may hold several kinds of crack.",
    },
    ...(told.length === 0 ? [] : [rankingTable(told, unit), ...levelBlocks(told)]),
    ...(bare.length === 0
      ? []
      : [sentence(`Nothing speaks for or against ${listed(bare.map(({ name }) => name))}.`)]),
    ...reasonBlocks(causes, unit),
    ...apartBlocks(causes),
    ...missingBlocks(causes),
  ];
}

/** On what ground the evidence about cracks stands, one line for each ground. */
export function diagnosisBases(causes: readonly DiagnosedCause[]): readonly string[] {
  if (causes.length === 0) return [];
  const questions = new Map<string, Set<string>>();
  for (const { basis, question } of observations(causes))
    questions.set(basis, (questions.get(basis) ?? new Set()).add(question));
  return [
    `Weights of the evidence about cracks: a coarse scale of our own, strong ${WEIGHTS.strong}, fair ${WEIGHTS.fair}, weak ${WEIGHTS.weak}; it speaks for or against a kind when these come to ${WEIGHTS.fair} or more.`,
    ...[...questions].map(
      ([basis, about]) => `Evidence about cracks (${[...about].join(", ")}): ${basis}`,
    ),
  ];
}

function rankingTable(causes: readonly DiagnosedCause[], unit: TemperatureUnit): Block {
  return {
    kind: "table",
    caption: "Most spoken for first",
    columns: [
      { head: "kind of crack", align: "left" },
      { head: "for and against, strongest first", align: "left" },
    ],
    rows: causes.map((cause, at) => {
      const end = at === causes.length - 1 ? [] : [""];
      return [
        { lines: [`${rankText(cause, causes)} ${cause.name}:`, STANDING[cause.standing], ...end] },
        { lines: [...evidenceLines(cause, unit), ...end] },
      ];
    }),
  };
}

/** `1`, or `2 =` for kinds that stand level. */
function rankText(cause: DiagnosedCause, causes: readonly DiagnosedCause[]): string {
  const rank = causes.findIndex(({ balance }) => balance === cause.balance) + 1;
  const level = causes.filter(({ balance }) => balance === cause.balance).length > 1;
  return level ? `${rank} =` : `${rank}`;
}

function evidenceLines(cause: DiagnosedCause, unit: TemperatureUnit): readonly string[] {
  return (["for", "against"] as const).flatMap((direction) =>
    cause.evidence
      .filter((each) => each.direction === direction)
      .map((each) => `${each.weight} ${direction}: ${shortText(each, unit)}`),
  );
}

/** Which kinds have the same balance, in words; none when all differ. */
function levelBlocks(causes: readonly DiagnosedCause[]): readonly Block[] {
  const levels = [...new Set(causes.map(({ balance }) => balance))]
    .map((level) => causes.filter(({ balance }) => balance === level))
    .filter((group) => group.length > 1);
  return levels.map((group) =>
    sentence(`Level with each other: ${listed(group.map(({ name }) => name))}`),
  );
}

function shortText(each: WeighedEvidence, unit: TemperatureUnit): string {
  return statementText({ ...each, topic: each.question, statement: each.short }, unit);
}

function reasonBlocks(causes: readonly DiagnosedCause[], unit: TemperatureUnit): readonly Block[] {
  const items = observations(causes).map((each) =>
    statementText({ ...each, topic: each.question }, unit),
  );
  return [
    { kind: "heading", text: "Why this counts" },
    { kind: "list", items: [...new Set(items)] },
  ];
}

function apartBlocks(causes: readonly DiagnosedCause[]): readonly Block[] {
  const [first, second] = causes;
  if (!first || !second) return [];
  const apart = tellingApart(causes);
  return [
    { kind: "heading", text: "What would tell the first two apart" },
    sentence(`${capitalised(first.name)}, and ${second.name}`),
    apart.length === 0
      ? sentence(
          "Nothing else that a log or a record can hold parts these two: look at each cracked piece by itself, and fire like pieces with one thing changed.",
        )
      : { kind: "list", items: apart.map(apartText) },
  ];
}

function apartText({ ask, look, answers }: TellingApart): string {
  const sides = new Map<string, string[]>();
  for (const { answer, speaksFor, speaksAgainst } of answers) {
    const side = [
      ...(speaksFor === null ? [] : [`for ${CRACK_KINDS[speaksFor]}`]),
      ...(speaksAgainst === null ? [] : [`against ${CRACK_KINDS[speaksAgainst]}`]),
    ].join(" and ");
    sides.set(side, [...(sides.get(side) ?? []), answer]);
  }
  const told = [...sides].map(
    ([side, given]) => `${capitalised(listed(given, "or"))}: speaks ${side}.`,
  );
  return [ask, look, ...told].join(" ");
}

function missingBlocks(causes: readonly DiagnosedCause[]): readonly Block[] {
  const lines = linesToRecord(causes);
  const logs = onlyInLogs(causes);
  return [
    ...(logs.length === 0 ? [] : [sentence(`Not in this log: ${logs.join(" ")}`)]),
    ...(lines.length === 0
      ? []
      : ([
          { kind: "heading", text: "What the record could add" },
          sentence("Lines to copy into it; keep what you saw, and drop the rest"),
          { kind: "lines", lines },
        ] as const)),
  ];
}

/** Each observation once, in the order in which questions are told. */
function observations(causes: readonly DiagnosedCause[]): readonly WeighedEvidence[] {
  const all = causes.flatMap(({ evidence }) => evidence);
  return Object.keys(QUESTIONS).flatMap((question) =>
    all.filter(
      (each, at) =>
        each.question === question &&
        all.findIndex(({ statement }) => statement === each.statement) === at,
    ),
  );
}

function sentence(text: string): Block {
  return { kind: "sentence", text: stopped(text) };
}

function listed(words: readonly string[], last = "and"): string {
  const end = words.at(-1) ?? "";
  return words.length < 2 ? end : `${words.slice(0, -1).join(", ")} ${last} ${end}`;
}

function parted<T>(
  items: readonly T[],
  isFirst: (item: T) => boolean,
): readonly [readonly T[], readonly T[]] {
  return [items.filter(isFirst), items.filter((item) => !isFirst(item))];
}
