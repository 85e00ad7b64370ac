import {
  CRACK_KINDS,
  type DiagnosedCause,
  type DiagnosedPiece,
  type Likelihood,
  QUESTIONS,
  SAYABLE_FROM,
  type WeighedEvidence,
  type WeightName,
} from "../diagnosis/Diagnosis.ts";
import {
  linesToRecord,
  onlyInLogs,
  type TellingApart,
  tellingApart,
} from "../diagnosis/tellingApart.ts";
import { statementText } from "../findings/Finding.ts";
import { capitalised, stopped } from "../text/wrap.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import type { Block } from "./Block.ts";

/** Headings of the parts about cracks, by which the page finds them. */
export const CRACKS_HEADING = "What kind of crack is it?";
export const TELL_MORE_HEADING = "Tell me more";

/** What kind of crack it may be, likeliest first, and what would tell more; nothing when nothing was found. */
export function diagnosisBlocks(
  causes: readonly DiagnosedCause[],
  unit: TemperatureUnit,
  pieces: readonly DiagnosedPiece[] = [],
): readonly Block[] {
  const [first] = causes;
  if (first === undefined) return [];
  const running = causes.filter(({ likelihood }, at) => at < 2 || likelihood !== "unlikely");
  const others = causes.filter((cause) => !running.includes(cause));
  return [
    { kind: "heading", text: CRACKS_HEADING },
    sentence(
      first.posterior < SAYABLE_FROM
        ? "It can't be said from what is noted: several kinds of crack are as good as level."
        : "By what was heard and found, held against the log. The log alone settles nothing; look at the pots.",
    ),
    { kind: "list", items: running.map((cause) => causeText(cause, unit)) },
    ...(others.length === 0
      ? []
      : [sentence(`Unlikely: ${listed(others.map(({ name }) => name))}`)]),
    ...pieceBlocks(pieces),
    ...reasonBlocks(running, unit),
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
    "Kinds of crack: how often each comes in a usual firing, times how much more often what is known here is seen with it. Likely means six times in ten or more, possible one and a half in ten or more, unlikely less; how often is our own estimate.",
    ...[...questions].map(
      ([basis, about]) => `Evidence about cracks (${[...about].join(", ")}): ${basis}`,
    ),
  ];
}

/** One kind of crack with its word and its reasons, strongest first. */
function causeText(cause: DiagnosedCause, unit: TemperatureUnit): string {
  const reasons = (["for", "against"] as const).flatMap((direction) =>
    (["strong", "fair", "weak"] as const).flatMap((weight) => {
      const said = cause.evidence
        .filter((each) => each.direction === direction && each.weight === weight)
        .map((each) => shortText(each, unit));
      return said.length === 0 ? [] : [`${POINTS[direction][weight]}: ${said.join("; ")}.`];
    }),
  );
  return [`${capitalised(cause.likelihood)}: ${cause.name}.`, ...reasons].join(" ");
}

const POINTS: Readonly<Record<"for" | "against", Readonly<Record<WeightName, string>>>> = {
  for: {
    strong: "Points to it strongly",
    fair: "Points to it",
    weak: "Hints at it",
  },
  against: {
    strong: "Speaks strongly against it",
    fair: "Speaks against it",
    weak: "Hints against it",
  },
};

/** Each piece by itself, where there are several. */
function pieceBlocks(pieces: readonly DiagnosedPiece[]): readonly Block[] {
  if (pieces.length < 2) return [];
  return [
    { kind: "heading", text: "Piece by piece" },
    { kind: "list", items: pieces.map(pieceText) },
  ];
}

function pieceText({ piece, what, causes }: DiagnosedPiece): string {
  const named = (likelihood: Likelihood) =>
    listed(
      causes.filter((cause) => cause.likelihood === likelihood).map(({ name }) => name),
      "or",
    );
  const canSay = (causes[0]?.posterior ?? 0) >= SAYABLE_FROM;
  const [likely, possible] = [named("likely"), named("possible")];
  const said = [
    ...(canSay ? [] : ["can't say"]),
    ...(likely === "" ? [] : [`likely ${likely}`]),
    ...(possible === "" ? [] : [`possible ${possible}`]),
  ];
  return stopped(`${piece ?? "A piece"}, ${what}: ${said.join("; ")}`);
}

function shortText(each: WeighedEvidence, unit: TemperatureUnit): string {
  return statementText({ ...each, topic: each.question, statement: each.short }, unit);
}

function reasonBlocks(causes: readonly DiagnosedCause[], unit: TemperatureUnit): readonly Block[] {
  const items = observations(causes).map((each) =>
    statementText({ ...each, topic: each.question }, unit),
  );
  if (items.length === 0) return [];
  return [
    { kind: "heading", text: "Why this counts" },
    { kind: "list", items: [...new Set(items)] },
  ];
}

function apartBlocks(causes: readonly DiagnosedCause[]): readonly Block[] {
  const apart = tellingApart(causes);
  return [
    { kind: "heading", text: "How to tell which" },
    apart.length === 0
      ? sentence(
          "Nothing else that a log or a record can hold would tell: look at each cracked piece by itself, and fire like pieces with one thing changed.",
        )
      : { kind: "list", items: apart.map(apartText) },
  ];
}

function apartText({ ask, look, answers }: TellingApart): string {
  const sides = new Map<string, string[]>();
  for (const { answer, speaksFor, speaksAgainst } of answers) {
    const side = [
      ...(speaksFor === null ? [] : [`for “${CRACK_KINDS[speaksFor]}”`]),
      ...(speaksAgainst === null ? [] : [`against “${CRACK_KINDS[speaksAgainst]}”`]),
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
          { kind: "heading", text: TELL_MORE_HEADING },
          sentence("Lines to copy into the record; keep what you saw, and drop the rest"),
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
        all.findIndex(
          (other) =>
            other.statement === each.statement &&
            other.evidence.every(({ value }, i) => each.evidence[i]?.value === value),
        ) === at,
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
