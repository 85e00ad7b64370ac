import type { DiagnosedCause } from "./DiagnosedCause.ts";
import { QUESTIONS, type Question } from "./questions.ts";
import { openQuestions } from "./tellingApart.ts";

/** What opens each part of a record, and how far its lines stand in. */
const PARTS: readonly (readonly [
  part: NonNullable<Question["part"]>,
  opening: readonly string[],
  indent: string,
])[] = [
  ["found", ["found:", "  - piece: mark or name of the piece"], "    "],
  ["heard", ["heard:"], "  "],
  ["unloaded", ["unloaded:"], "  "],
  [
    "trials",
    [
      "trials:",
      "  - piece: mark of the test piece",
      "    clay: your name for it",
      "    glaze: your name for it",
      "    coat: 0.8 mm",
      "    glazedSides: one           # or both",
    ],
    "    ",
  ],
  ["ware", ["ware:", "  - name: what was in the kiln", "    clay: your name for it"], "    "],
];

/**
 * What the record leaves open about the kinds of crack that are not spoken against, as the lines of YAML that would answer it, with an example filled in
 * and the other choices beside it. Empty when nothing is open.
 */
export function linesToRecord(causes: readonly DiagnosedCause[]): readonly string[] {
  const open = openQuestions(contenders(causes)).map((question) => QUESTIONS[question]);
  return PARTS.flatMap(([part, opening, indent]) => {
    const lines = open.flatMap((question) =>
      question.part === part && question.line !== null ? [`${indent}${question.line}`] : [],
    );
    return lines.length === 0 ? [] : [...opening, ...lines];
  });
}

/** What only a longer log could tell, in the imperative. */
export function onlyInLogs(causes: readonly DiagnosedCause[]): readonly string[] {
  return openQuestions(contenders(causes))
    .map((question) => QUESTIONS[question])
    .filter(({ part }) => part === null)
    .map(({ ask, look }) => `${ask} ${look}`);
}

/** Kinds of crack that are not spoken against; all of them when all are. */
function contenders(causes: readonly DiagnosedCause[]): readonly DiagnosedCause[] {
  const left = causes.filter(({ standing }) => standing !== "speaks against");
  return left.length === 0 ? causes : left;
}
