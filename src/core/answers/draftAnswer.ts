import { peakOf } from "../curve/Curve.ts";
import { crossingTimes } from "../curve/edgeTimes.ts";
import type { Block, Cell } from "../reports/Block.ts";
import { type DraftContext, draftBlocks } from "../reports/draftBlocks.ts";
import type { Mending } from "../reports/mendingBlocks.ts";
import { type FiringClock, saidDate, saidMoment, startOfDayOf } from "../reports/moments.ts";
import { topEndSeconds } from "../schedule/coneAim.ts";
import { UNLOAD_C } from "../schedule/coolingChecks.ts";
import type { Draft } from "../schedule/draftSchedule.ts";
import type { Schedule, Segment } from "../schedule/Schedule.ts";
import {
  printDuration,
  printLength,
  printRate,
  printSetRate,
  printTemperature,
} from "../text/quantities.ts";
import { capitalised, stopped } from "../text/wrap.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { bandSaid, type Crossing } from "../ware/inversions.ts";
import { type Answer, answerWith, SCREEN_LINES, type ScreenPart, screenOf } from "./Answer.ts";
import { coneSaid, giveOrTake } from "./coneSaid.ts";
import { heading, roomsOf, sentence } from "./rooms.ts";
import { seriousParts } from "./seriousParts.ts";

/** With more segments than this a screen may be longer. */
const MANY_SEGMENTS = 8;
const LONGER_SCREEN = 40;

/** What a schedule will do, on one screen: the cone it makes, what to type, when to be there. */
export function draftAnswer(draft: Draft, context: DraftContext): Answer {
  const clock = { start: draft.start, startOfDaySeconds: startOfDayOf(draft.start) };
  const lines = draft.schedule.segments.length > MANY_SEGMENTS ? LONGER_SCREEN : SCREEN_LINES;
  return answerWith(
    {
      title: draft.schedule.title,
      when: saidDate(clock),
      screen: screenOf(screenParts(draft, context, clock), lines),
    },
    () => roomsOf(draftBlocks(draft, context), "cones"),
  );
}

function screenParts(
  draft: Draft,
  context: DraftContext,
  clock: FiringClock,
): readonly ScreenPart[] {
  const { unit } = context;
  const serious = seriousParts(draft.findings, unit);
  return [
    {
      rank: 0,
      blocks: [{ kind: "lead", text: `${reached(draft, unit)} ${falls(draft, clock)}` }],
    },
    { rank: 2, blocks: changedBlocks(context) },
    ...(serious.length === 0
      ? []
      : [{ rank: 0, blocks: [heading("Look at this first")] }, ...serious]),
    { rank: 0, blocks: [typedTable(draft, unit, clock)] },
    { rank: 1, blocks: thereBlocks(draft, unit, clock) },
    { rank: 1, blocks: kindBlocks(draft.crossings, unit) },
    { rank: 4, blocks: assumedBlocks(draft, context) },
    { rank: 0, blocks: foodBlocks(draft) },
  ];
}

/** The cone, for which ware, and how long it all takes. */
function reached(draft: Draft, unit: TemperatureUnit): string {
  const { heatwork, expansion, schedule } = draft;
  const known = giveOrTake(heatwork);
  const total = expansion.timeline.at(-1)?.endSeconds ?? 0;
  const ware = wareSaid(schedule, unit);
  return [
    `${coneSaid(heatwork, "will be")}${known === "" ? "" : `, ${known}`}. Peak ${printTemperature(peakOf(expansion.curve).tempC, unit)}; ${printDuration(total)} in all.`,
    ...(ware === "" ? [] : [`For ${ware}.`]),
  ].join(" ");
}

function wareSaid({ ware }: Schedule, unit: TemperatureUnit): string {
  const mm = (value: number | null | undefined, words: string) =>
    value == null ? [] : [`${printLength(value, unit)} ${words}`];
  return [
    ...(ware.body == null ? [] : [ware.body.name]),
    ...mm(ware.wallMm, "wall"),
    ...mm(ware.baseMm, "base"),
    ...mm(ware.thickestMm, "at the thickest"),
    ...mm(ware.widestMm, "wide"),
  ].join(", ");
}

/** When the cone that is wanted falls, as against the end of the hold at the top. */
function falls({ schedule, heatwork, expansion }: Draft, clock: FiringClock): string {
  const { cone } = schedule;
  if (cone === null) return "The schedule names no cone that it is for.";
  const at = heatwork.cones.find((each) => each.cone === cone)?.downAtSeconds ?? null;
  if (at === null) return `Cone ${cone} is wanted, and does not fall.`;
  const end = topEndSeconds(schedule, expansion);
  const late = end === null ? 0 : at - end;
  const words =
    end === null || Math.abs(late) < 90
      ? "as the hold at the top ends"
      : late < 0
        ? `${printDuration(-late)} before the hold at the top ends`
        : `${printDuration(late)} after the hold at the top has ended`;
  return `Cone ${cone} falls ${saidMoment(clock, at)}, ${words}.`;
}

/** What was changed before it was laid out, in few words. */
function changedBlocks({ mending, unit }: DraftContext): readonly Block[] {
  if (mending === undefined) return [];
  const steps = mending.repair?.steps ?? [];
  if (steps.length === 0) return [sentence(movedTop(mending, unit))];
  const [first, second] = steps;
  const said = [first, second].flatMap((step) =>
    step === undefined ? [] : [stopped(capitalised(step.did))],
  );
  const rest = steps.length - said.length;
  return [sentence(`Changed: ${said.join(" ")}${rest > 0 ? ` And ${rest} more.` : ""}`)];
}

/** How a solved schedule differs at its top from what it was. */
function movedTop({ before, after }: Mending, unit: TemperatureUnit): string {
  const [was, is] = [before, after].map(({ segments }) =>
    segments.reduce((a, b) => (b.toC > a.toC ? b : a)),
  ) as [Segment, Segment];
  const said = ({ toC, holdSeconds }: Segment) =>
    `${printTemperature(toC, unit)}${holdSeconds === 0 ? "" : ` with ${printDuration(holdSeconds)}`}`;
  if (said(was) !== said(is)) return `Changed: the top is ${said(is)} now; it was ${said(was)}.`;
  return JSON.stringify(before.segments) === JSON.stringify(after.segments)
    ? "Nothing had to be changed."
    : "Changed below the top; the top stays as it was.";
}

/** The segments as they are typed into a controller. */
function typedTable(draft: Draft, unit: TemperatureUnit, clock: FiringClock): Block {
  const { schedule, expansion } = draft;
  const { segments } = schedule;
  const doneAt = (segment: number) =>
    Math.max(
      0,
      ...expansion.timeline.filter((row) => row.segment === segment).map((row) => row.endSeconds),
    );
  return {
    kind: "table",
    caption: `Type into the controller: ${segments.length} segment${segments.length === 1 ? "" : "s"}, rates in °${unit} an hour${segments.some(({ rateCPerHour }) => rateCPerHour === "free") ? "; free: by itself" : ""}`,
    columns: [
      { head: "segment", align: "right" },
      { head: "rate", align: "right" },
      { head: "to", align: "right" },
      { head: "hold", align: "right" },
      { head: "done by", align: "left" },
    ],
    rows: segments.map((segment, at): readonly Cell[] => [
      String(at + 1),
      segment.rateCPerHour === "free"
        ? "free"
        : (printSetRate(segment.rateCPerHour, { unit, own: schedule.unit }).split(" ")[0] ?? ""),
      printTemperature(segment.toC, unit),
      segment.holdSeconds === 0 ? "–" : printDuration(segment.holdSeconds),
      saidMoment(clock, doneAt(at)),
    ]),
  };
}

/** When somebody has to be there. */
function thereBlocks(draft: Draft, unit: TemperatureUnit, clock: FiringClock): readonly Block[] {
  const { curve } = draft.expansion;
  const peak = peakOf(curve);
  const end = topEndSeconds(draft.schedule, draft.expansion) ?? peak.seconds;
  const cool = crossingTimes(curve, UNLOAD_C).findLast(({ direction }) => direction === "cooling");
  const own = draft.own === null ? ", as an assumed kiln falls" : "";
  return [
    heading("Be there"),
    {
      kind: "facts",
      facts: [
        {
          label: saidMoment(clock, Math.min(peak.seconds, end)),
          text: "look at the cones (infrared-rated glasses), see it start to cool",
        },
        ...(cool === undefined
          ? []
          : [
              {
                label: saidMoment(clock, cool.seconds),
                text: `about ${printTemperature(UNLOAD_C, unit)}${own}: open by the thermocouple`,
              },
            ]),
      ],
    },
  ];
}

/** How fast it falls through quartz, and cristobalite where there is some, beside the guide. */
function kindBlocks(crossings: readonly Crossing[], unit: TemperatureUnit): readonly Block[] {
  const down = crossings.filter(
    ({ direction, fastestCPerHour, limitCPerHour }) =>
      direction === "cooling" && fastestCPerHour !== null && limitCPerHour !== null,
  );
  if (down.length === 0) return [];
  return [
    heading("Kind to the ware?"),
    {
      kind: "facts",
      facts: down.map((crossing) => {
        const { fastestCPerHour, limitCPerHour, severity, limitMeantFor } = crossing;
        const word =
          severity === "note" || severity === null
            ? "yes"
            : severity === "caution"
              ? "hard on it"
              : "no, too fast";
        return {
          label: `${bandSaid(crossing.band, { ...crossing, unit }).replace(/ inversion$/, "")}, cooling`,
          text: `${word}: ${printRate(fastestCPerHour ?? 0, unit)} at the fastest, guide ${printRate(limitCPerHour ?? 0, unit)} for ${limitMeantFor ?? "the ware"}`,
        };
      }),
    },
    sentence("The guide is good to a factor of two; wider or thicker pieces bear less."),
  ];
}

function assumedBlocks(draft: Draft, { assumed = [] }: DraftContext): readonly Block[] {
  const [first] = [...draft.expansion.assumptions, ...assumed];
  return first === undefined ? [] : [sentence(`Assumed: ${capitalised(stopped(first))}`)];
}

function foodBlocks({ cautions }: Draft): readonly Block[] {
  return cautions.some(({ topic }) => topic === "crackle and food")
    ? [sentence("Crackled ware is not for food or drink.", "caution")]
    : [];
}
