import type { NextChange, NextTime } from "../advice/NextFiring.ts";
import {
  type CrackKind,
  type DiagnosedCause,
  type DiagnosedPiece,
  likelihoodOf,
  SAYABLE_FROM,
} from "../diagnosis/Diagnosis.ts";
import { tellingApart } from "../diagnosis/tellingApart.ts";
import { statementText } from "../findings/Finding.ts";
import { hottestZone, type ZoneReview } from "../firing/FiringFacts.ts";
import type { Block } from "../reports/Block.ts";
import { type FiringClock, saidDate, saidMoment } from "../reports/moments.ts";
import {
  alarmBlocks,
  foldedCommand,
  type ReportContext,
  reviewBlocks,
} from "../reports/reviewBlocks.ts";
import type { FiringReview } from "../review/FiringReview.ts";
import { printDuration, printRate, printTemperature } from "../text/quantities.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { bandSaid, type Crossing } from "../ware/inversions.ts";
import { type Answer, answerWith, type ScreenPart, screenOf } from "./Answer.ts";
import { coneSaid, giveOrTake } from "./coneSaid.ts";
import { heading, roomsOf, sentence } from "./rooms.ts";
import { seriousParts } from "./seriousParts.ts";

/** What a firing did, on one screen: what happened, what it means for the ware, and what to do. */
export function reviewAnswer(review: FiringReview, context: ReportContext): Answer {
  const { unit } = context;
  const { start, startOfDaySeconds } = review.reading;
  const clock = { start, startOfDaySeconds };
  const hottest = review.zones.length === 0 ? null : hottestZone(review.zones);
  return answerWith(
    {
      title: review.title,
      when: saidDate(clock),
      screen: screenOf(screenParts(review, hottest, { unit, clock })),
    },
    () => roomsOf(reviewBlocks(review, context), "cones"),
  );
}

interface Context {
  readonly unit: TemperatureUnit;
  readonly clock: FiringClock;
}

function screenParts(
  review: FiringReview,
  hottest: ZoneReview | null,
  context: Context,
): readonly ScreenPart[] {
  const { unit } = context;
  const alarm = alarmBlocks(review.findings, unit);
  if (hottest === null)
    return [
      { rank: 0, blocks: alarm },
      { rank: 0, blocks: [lead("The log holds no temperature that could be read.")] },
    ];
  return [
    { rank: 0, blocks: alarm },
    { rank: 0, blocks: happened(review, hottest, context) },
    ...meant(review, unit),
    ...nextParts(review.nextTime, unit),
    { rank: 3, blocks: coolingBlocks(hottest.crossings, unit) },
    { rank: 4, blocks: surerBlocks(review.diagnosis) },
    { rank: 0, blocks: foodBlocks(review) },
  ];
}

/** What happened: cone, peak, and the opening where the log shows a hot one. */
function happened(review: FiringReview, hottest: ZoneReview, context: Context): readonly Block[] {
  const { unit, clock } = context;
  const { heatwork } = hottest;
  const known = review.offset === null ? giveOrTake(heatwork) : `by its witness cones`;
  const cone = [coneSaid(heatwork, "was"), ...(known === "" ? [] : [known])].join(", ");
  const peak = `Peak ${printTemperature(hottest.peakC, unit)}, ${saidMoment(clock, hottest.peakAtSeconds)}, ${printDuration(hottest.secondsWithinFiveOfPeak)} at the top.`;
  return [lead(`${cone}. ${peak}`), ...openingBlocks(review, context)];
}

/** Lines of a record that tell when the kiln was opened. */
const OPENED = /^(?:opened|unloaded|lid)/;

/** The opening that the log shows, where neither a record nor a finding on the screen tells it. */
function openingBlocks(review: FiringReview, { unit, clock }: Context): readonly Block[] {
  const { openingInLog, recordLines, diagnosis, findings } = review;
  if (openingInLog === null || recordLines.some(({ label }) => OPENED.test(label))) return [];
  const isFound = findings.some(
    ({ topic, severity }) => topic === "opening" && severity !== "note",
  );
  if (isFound && diagnosis.length === 0) return [];
  const { tempC, atSeconds, afterCPerHour, beforeCPerHour } = openingInLog;
  return [
    sentence(
      `The lid seems to have been opened at ${printTemperature(tempC, unit)}, ${saidMoment(clock, atSeconds)}: from there it fell at ${printRate(afterCPerHour, unit)}, before that at ${printRate(beforeCPerHour, unit)}.`,
    ),
  ];
}

/** What it means for the ware: the cracks where there are any, else what was hard on it. */
function meant(review: FiringReview, unit: TemperatureUnit): readonly ScreenPart[] {
  if (review.diagnosis.length > 0)
    return [...crackParts(review, unit), ...besideCracks(review, unit)];
  const serious = seriousParts(review.findings, unit);
  if (serious.length === 0)
    return [
      {
        rank: 0,
        blocks: [
          heading("Nothing to worry about"),
          sentence("Nothing in how it was fired or cooled stands out as hard on the ware."),
        ],
      },
    ];
  return [{ rank: 0, blocks: [heading("Look at this")] }, ...serious];
}

const COOLING: readonly CrackKind[] = [
  "dunting at quartz",
  "dunting at cristobalite",
  "lid opened hot",
];
const BEFORE: readonly CrackKind[] = ["heating crack", "bisque crack", "drying crack", "S-crack"];
const GLAZE: readonly CrackKind[] = [
  "crackle by fit",
  "delayed crazing",
  "shivering",
  "one-sided glaze",
];

/** The cracks: a verdict, then each cause with its pieces and the best reasons. */
function crackParts(review: FiringReview, unit: TemperatureUnit): readonly ScreenPart[] {
  const { diagnosis, diagnosedPieces } = review;
  const broken = diagnosedPieces.filter(({ what }) => what !== "crackled");
  const whole = diagnosedPieces.filter(({ what }) => what === "crackled");
  const asked = broken.length === 0 ? whole : broken;
  const meantTo =
    broken.length > 0 && whole.length > 0
      ? [{ label: "as meant", text: `crackle: ${whole.map(pieceName).join(", ")}` }]
      : [];
  return [
    { rank: 0, blocks: [heading(verdict(asked, review))] },
    {
      rank: 0,
      blocks: [{ kind: "facts", facts: [...causeRows(asked, diagnosis, unit), ...meantTo] }],
    },
    {
      rank: 5,
      blocks: [sentence("By what was heard and found, held against the log; look at the pots.")],
    },
  ];
}

/** What else is serious where cracks are spoken of: all that the causes do not say already. */
function besideCracks(review: FiringReview, unit: TemperatureUnit): readonly ScreenPart[] {
  const isBroken = review.diagnosedPieces.some(({ what }) => what !== "crackled");
  const untold = review.findings.filter(
    ({ topic }) => !isBroken || !(topic === "opening" || topic.startsWith("cooling")),
  );
  const serious = seriousParts(untold, unit);
  return serious.length === 0
    ? []
    : [{ rank: 0, blocks: [heading("Look at this too")] }, ...serious];
}

/** Causes that are shown at most. */
const MOST_CAUSES = 3;

/** Each cause that is the first of some piece, the surest first; what runs it close where nothing is sure. */
function causeRows(
  pieces: readonly DiagnosedPiece[],
  causes: readonly DiagnosedCause[],
  unit: TemperatureUnit,
) {
  const rows = causes
    .map((cause) => {
      const of = pieces.filter((piece) => piece.causes[0]?.kind === cause.kind);
      const sure = Math.min(...of.map((piece) => piece.causes[0]?.posterior ?? 0));
      return { cause, of, posterior: of.length === 0 ? cause.posterior : sure };
    })
    .filter(({ of, cause }) => of.length > 0 || cause.likelihood !== "unlikely")
    .toSorted((a, b) => b.of.length - a.of.length || b.posterior - a.posterior);
  const [first] = rows;
  const isSure = (first?.posterior ?? 0) >= SAYABLE_FROM;
  return rows.slice(0, MOST_CAUSES).map(({ cause, of, posterior }) => ({
    label: isSure ? likelihoodOf(posterior) : "can't say",
    text: causeText(cause, of, unit),
  }));
}

function pieceName({ piece }: DiagnosedPiece): string {
  return piece ?? "what was heard";
}

/** Glaze or cooling: the question that is asked first. */
function verdict(pieces: readonly DiagnosedPiece[], review: FiringReview): string {
  const share = (kinds: readonly CrackKind[]) =>
    pieces.reduce(
      (sum, { causes, count }) =>
        sum +
        count *
          causes.reduce(
            (all, { kind, posterior }) => all + (kinds.includes(kind) ? posterior : 0),
            0,
          ),
      0,
    ) /
    Math.max(
      1,
      pieces.reduce((sum, { count }) => sum + count, 0),
    );
  const isHeard = pieces.every(({ what }) => what === "not known");
  const what = isHeard
    ? `${review.heard[0]?.what ?? "What was heard"}`
    : pieces.every((piece) => piece.what === "crackled")
      ? "Crackle"
      : "Cracks";
  const named = `${what.charAt(0).toUpperCase()}${what.slice(1)}`;
  if (share(COOLING) >= 0.6) return `${named}: the cooling, not the glaze's fit`;
  if (share(GLAZE) >= 0.6)
    return isHeard
      ? `${named}: most likely the glaze crackling, not a broken pot`
      : `${named}: the glaze, not the cooling`;
  if (share(BEFORE) >= 0.6) return `${named}: from before the cooling`;
  return `${named}: can't say yet whether glaze or cooling`;
}

const MOST_REASONS = 2;

/** One cause: its name, the pieces it stands first for, and what points to it most. */
function causeText(
  cause: DiagnosedCause,
  pieces: readonly DiagnosedPiece[],
  unit: TemperatureUnit,
): string {
  const names = pieces.flatMap(({ piece }) => piece ?? []);
  const said = cause.evidence
    .filter(({ direction }) => direction === "for")
    .map((each) => statementText({ ...each, topic: each.question, statement: each.short }, unit));
  const reasons = said
    .filter((text, at) => !said.some((other, place) => place !== at && other.includes(text)))
    .slice(0, MOST_REASONS);
  return [`${cause.name}${names.length === 0 ? "" : `: ${names.join(", ")}`}`, ...reasons].join(
    "; ",
  );
}

/** What to do next time, numbered; the line for the shell below it where it fits. */
function nextParts(next: NextTime | null, unit: TemperatureUnit): readonly ScreenPart[] {
  if (next === null) return [];
  const wanted = next.changes.filter(({ standing }) => standing !== "too close to tell");
  const items = wanted.map((change, at) => ({
    label: String(at + 1),
    text: changeSaid(change, unit),
  }));
  const [first, ...more] = items;
  const { command } = next;
  return [
    { rank: 0, blocks: [heading("Next time")] },
    ...(first === undefined
      ? [{ rank: 0, blocks: [sentence(next.advice[0] ?? "Nothing has to change.")] }]
      : [{ rank: 0, blocks: [{ kind: "facts", facts: [first] } satisfies Block] }]),
    ...more.slice(0, 3).map((item, at) => ({
      rank: 2 + at,
      blocks: [{ kind: "facts", facts: [item] } satisfies Block],
    })),
    ...(command === null
      ? []
      : [{ rank: 6, blocks: [{ kind: "lines", lines: foldedCommand(command) } satisfies Block] }]),
  ];
}

function changeSaid(change: NextChange, unit: TemperatureUnit): string {
  const text = statementText(
    { topic: change.about, statement: change.change, evidence: change.evidence },
    unit,
  );
  return change.standing === "firm"
    ? text
    : `Maybe: ${text.charAt(0).toLowerCase()}${text.slice(1)}`;
}

/** How fast it fell through both stretches, beside the guide for the ware. */
function coolingBlocks(crossings: readonly Crossing[], unit: TemperatureUnit): readonly Block[] {
  const down = crossings.filter(
    ({ direction, fastestCPerHour }) => direction === "cooling" && fastestCPerHour !== null,
  );
  if (down.length === 0) return [];
  return [
    heading("How fast it cooled"),
    {
      kind: "facts",
      facts: down.map((crossing) => ({
        label: bandSaid(crossing.band, { ...crossing, unit }).replace(/ inversion$/, ""),
        text: fallText(crossing, unit),
      })),
    },
  ];
}

function fallText(crossing: Crossing, unit: TemperatureUnit): string {
  const { fastestCPerHour, limitCPerHour, limitMeantFor, severity, openedC } = crossing;
  const from = printTemperature(crossing.fromC, unit).split(" ")[0];
  const span = `${from} to ${printTemperature(crossing.toC, unit)}`;
  const fast = `${printRate(fastestCPerHour ?? 0, unit)} at the fastest, ${span}`;
  if (openedC !== null) return `${fast}; open from ${printTemperature(openedC, unit)} on`;
  if (limitCPerHour === null) return fast;
  const guide = `guide ${printRate(limitCPerHour, unit)} for ${limitMeantFor ?? "the ware"}`;
  if (severity === "warning") return `${fast}; ${guide}: too fast`;
  if (severity === "caution") return `${fast}; ${guide}: hard on it`;
  return `${fast}; ${guide}`;
}

/** What would tell most, where causes are still close. */
function surerBlocks(causes: readonly DiagnosedCause[]): readonly Block[] {
  const [best] = tellingApart(causes);
  if (best === undefined) return [];
  return [sentence(`To be surer: ${best.ask} ${best.look}`)];
}

/** The caution that a crackled surface calls for. */
function foodBlocks({ cautions }: FiringReview): readonly Block[] {
  return cautions.some(({ topic }) => topic === "crackle and food")
    ? [sentence("Crackled ware is not for food or drink.", "caution")]
    : [];
}

function lead(text: string): Block {
  return { kind: "lead", text };
}
