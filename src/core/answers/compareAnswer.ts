import { statementText } from "../findings/Finding.ts";
import type { Block, Cell } from "../reports/Block.ts";
import {
  type ComparisonContext,
  comparisonBlocks,
  comparisonTitle,
} from "../reports/comparisonBlocks.ts";
import { togetherLines } from "../reports/confoundingBlocks.ts";
import type { ComparedFiring, Comparison } from "../review/compareFirings.ts";
import { fewDigits, printRate, printTemperature } from "../text/quantities.ts";
import { capitalised } from "../text/wrap.ts";
import type { FiringStudy, GroupRatio, SpacingFit } from "../trials/FiringStudy.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { type Answer, answerWith, SCREEN_LINES, type ScreenPart, screenOf } from "./Answer.ts";
import { heading, roomsOf, sentence } from "./rooms.ts";

/** With more firings than this a screen may be longer. */
const MANY_FIRINGS = 3;
const LONGER_SCREEN = 40;
/** Firings that are listed at most. */
const MOST_LISTED = 12;
/** By luck less often than this, a difference is called sure. */
const SURE_P = 0.01;
/** By luck more often than this, it is called unclear. */
const LIKELY_P = 0.05;

/** What sets the crackle size, on one screen, then the firings and the next test. */
export function compareAnswer(comparison: Comparison, context: ComparisonContext): Answer {
  const lines = comparison.firings.length > MANY_FIRINGS ? LONGER_SCREEN : SCREEN_LINES;
  return answerWith(
    {
      title: comparisonTitle(comparison),
      when: null,
      screen: screenOf(screenParts(comparison, context), lines),
    },
    () => roomsOf(comparisonBlocks(comparison, context), "firings"),
  );
}

function screenParts(comparison: Comparison, context: ComparisonContext): readonly ScreenPart[] {
  const { unit, study } = context;
  const { firings } = comparison;
  const fits = (study?.glazes ?? []).flatMap(({ spacing }) => (spacing === null ? [] : [spacing]));
  return [
    { rank: 0, blocks: tilesBlocks(study) },
    ...fits.map(
      (fit, at): ScreenPart => ({
        rank: at === 0 ? 0 : 3 + at,
        blocks: setsBlocks(fit, study, at),
      }),
    ),
    { rank: 1, blocks: coatTable(fits) },
    { rank: 2, blocks: firingsBlocks(firings, unit) },
    { rank: 4, blocks: mixedBlocks(study) },
    { rank: 1, blocks: nextBlocks(study, context) },
    { rank: 0, blocks: foodBlocks(comparison, study) },
  ];
}

/** How many tiles there are, and whether any is cracked through. */
function tilesBlocks(study: FiringStudy | undefined): readonly Block[] {
  if (study === undefined || study.tiles.tiles.length === 0)
    return [
      { kind: "lead", text: "No record names test tiles, so nothing is said of crackle size." },
    ];
  const measured = study.glazes.reduce((sum, { spacing }) => sum + (spacing?.tiles ?? 0), 0);
  const through = study.glazes.reduce((sum, each) => sum + (each.through?.all.found ?? 0), 0);
  const many = (count: number, what: string) => `${count} ${what}${count === 1 ? "" : "s"}`;
  return [
    {
      kind: "lead",
      text: `${many(study.tiles.tiles.length, "tile")}, ${measured} of them measured, ${many(study.glazes.length, "glaze")}; ${through === 0 ? "none" : through} cracked through.`,
    },
  ];
}

/** What sets the size of the crackle, strongest first, each with how sure it is. */
function setsBlocks(fit: SpacingFit, study: FiringStudy | undefined, at: number): readonly Block[] {
  const numbered = (firing: string) =>
    `firing ${(study?.firings ?? []).findIndex(({ record }) => record === firing) + 1}`;
  const ratios = fit.ratios.toSorted(
    (a, b) => Math.abs(Math.log(b.ratio.value)) - Math.abs(Math.log(a.ratio.value)),
  );
  const title =
    (study?.glazes.length ?? 0) > 1
      ? `What sets the crackle size of ${fit.glaze}`
      : "What sets the crackle size";
  return [
    heading(at === 0 ? title : capitalised(fit.glaze)),
    {
      kind: "facts",
      facts: [
        { label: "coat", text: coatText(fit) },
        ...ratios
          .filter((ratio) => !isOfFiring(ratio))
          .map((ratio) => ({
            label: FACTOR[ratio.factor] ?? ratio.factor,
            text: ratioText(ratio, numbered),
          })),
        ...firingFacts(ratios.filter(isOfFiring), numbered),
      ],
    },
  ];
}

function isOfFiring({ factor }: GroupRatio): boolean {
  return factor === "firing";
}

/** Firings against the first: one line where none stands out, else one for each that does. */
function firingFacts(ratios: readonly GroupRatio[], numbered: (firing: string) => string) {
  const isPlain = ({ ratio }: GroupRatio) => ratio.low < 1 && ratio.high > 1;
  const told = ratios.filter((ratio) => !isPlain(ratio));
  const plain = ratios.filter(isPlain);
  const [least, most] = [Math.min, Math.max].map((end) =>
    fewDigits(end(...plain.map(({ ratio }) => ratio.value))),
  );
  const against = numbered(plain[0]?.against ?? "");
  return [
    ...told.map((ratio) => ({ label: "firing", text: ratioText(ratio, numbered) })),
    ...(plain.length === 0
      ? []
      : [
          {
            label: "firing",
            text: `${least === most ? least : `${least} to ${most}`} of ${against}; no clear difference`,
          },
        ]),
  ];
}

const FACTOR: Readonly<Record<string, string>> = {
  sides: "glazed on",
  clay: "clay",
  shape: "shape",
};

function coatText({ exponent }: SpacingFit): string {
  const times = (power: number) => fewDigits(2 ** power);
  const range =
    Number.isFinite(exponent.low) && Number.isFinite(exponent.high)
      ? ` (${times(exponent.low)} to ${times(exponent.high)})`
      : "";
  const sure = exponent.low > 0 ? "sure" : "not clear yet";
  return `twice as thick: cracks ${times(exponent.value)} times as far apart${range}; ${sure}`;
}

function ratioText(group: GroupRatio, numbered: (firing: string) => string): string {
  const { ratio, factor, isShared, test } = group;
  const named = (level: string) =>
    factor === "firing"
      ? numbered(level)
      : factor === "sides"
        ? `${level} side${level === "one" ? "" : "s"}`
        : level;
  const range = `${fewDigits(ratio.low)} to ${fewDigits(ratio.high)}`;
  const isNone = ratio.low < 1 && ratio.high > 1;
  const sure = isShared
    ? "something else changed with it"
    : isNone || (test !== null && test.p > LIKELY_P)
      ? "no clear difference"
      : test !== null && test.p > SURE_P
        ? "likely"
        : "sure";
  return `${named(group.level)}: ${fewDigits(ratio.value)} of ${named(group.against)} (${range}); ${sure}`;
}

/** Crackle sizes that are asked for, in millimetres. */
const WANTED_MM = [2, 3, 4];

/** The coat that gives a wanted size, by the line of each glaze. */
function coatTable(fits: readonly SpacingFit[]): readonly Block[] {
  const told = fits.filter(({ curve, exponent }) => curve.length > 1 && exponent.value > 0.1);
  if (told.length === 0) return [];
  return [
    {
      kind: "table",
      caption: "Fired coat for a crackle of; * thicker or thinner than any tile so far",
      columns: [
        { head: "glaze", align: "left" },
        ...WANTED_MM.map((size) => ({ head: `${size} mm`, align: "right" }) as const),
      ],
      rows: told.map((fit): readonly Cell[] => [
        `${fit.glaze} on ${fit.curveIsOf.find(({ factor }) => factor === "clay")?.level ?? "its clay"}`,
        ...WANTED_MM.map((size) => coatFor(fit, size)),
      ]),
    },
  ];
}

function coatFor({ curve, exponent, coatsMm }: SpacingFit, pitchMm: number): string {
  const [first] = curve;
  if (first === undefined) return "–";
  const coat = first.coatMm * (pitchMm / first.pitchMm) ** (1 / exponent.value);
  const isSeen = coat >= coatsMm.least * 0.98 && coat <= coatsMm.most * 1.02;
  return coat > 10 * coatsMm.most ? "–" : `${fewDigits(coat)} mm${isSeen ? "" : "*"}`;
}

/** The firings in a line each. */
function firingsBlocks(
  firings: readonly ComparedFiring[],
  unit: TemperatureUnit,
): readonly Block[] {
  const rate = (value: number | null) => (value === null ? "–" : printRate(value, unit));
  const shown = firings.slice(0, MOST_LISTED);
  const rest = firings.length - shown.length;
  return [
    {
      kind: "table",
      caption: "The firings",
      columns: [
        { head: "", align: "right" },
        { head: "cone", align: "left" },
        { head: "peak", align: "right" },
        { head: "through quartz", align: "right" },
        { head: `below ${printTemperature(280, unit)}`, align: "right" },
        { head: "", align: "left" },
      ],
      rows: shown.map((firing, at): readonly Cell[] => [
        String(at + 1),
        firing.coneLabel.replace(/^cone /, ""),
        printTemperature(firing.peakC, unit),
        rate(firing.quartzCooling.meanCPerHour),
        rate(firing.cristobaliteCooling.meanCPerHour),
        shortened(firing.title),
      ]),
    },
    ...(rest === 0 ? [] : [sentence(`And ${rest} more.`)]),
  ];
}

/** Longest title in a table [characters]. */
const LONGEST_TITLE = 20;

function shortened(title: string): string {
  if ([...title].length <= LONGEST_TITLE) return title;
  const cut = [...title].slice(0, LONGEST_TITLE - 1).join("");
  return `${cut.slice(0, Math.max(cut.lastIndexOf(" "), LONGEST_TITLE / 2)).replace(/[,;:]$/, "")}…`;
}

/** What changed together, so that these firings cannot separate it. */
function mixedBlocks(study: FiringStudy | undefined): readonly Block[] {
  const confounding = study?.confounding ?? null;
  if (confounding === null) return [];
  const [first] = togetherLines(confounding);
  return first === undefined ? [] : [sentence(`Cannot be said yet: ${first}`)];
}

/** The next test, and how it is written. */
function nextBlocks(
  study: FiringStudy | undefined,
  { unit, hasCommands = true }: ComparisonContext,
): readonly Block[] {
  const next = study?.next ?? null;
  if (next === null || (next.firing === null && next.tiles === null)) return [];
  const { firing, tiles } = next;
  const change =
    firing === null
      ? ""
      : statementText(
          { topic: firing.kind, statement: firing.change, evidence: firing.evidence },
          unit,
        );
  const made =
    tiles === null
      ? ""
      : ` With ${tiles.total} tiles: ${[...new Set(tiles.tiles.map(({ glaze, clay }) => `${glaze} on ${clay}`))].join(", ")}.`;
  const written =
    firing?.schedule == null || !hasCommands ? "" : " --next next.yaml writes the schedule.";
  return [heading("Next test"), sentence(`${change}${made}${written}`.trim())];
}

function foodBlocks({ cautions }: Comparison, study: FiringStudy | undefined): readonly Block[] {
  return [...cautions, ...(study?.cautions ?? [])].some(({ topic }) => topic === "crackle and food")
    ? [sentence("Crackled ware is not for food or drink.", "caution")]
    : [];
}
