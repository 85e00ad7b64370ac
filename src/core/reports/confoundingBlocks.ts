import {
  notNought,
  printDifference,
  printDuration,
  printRate,
  printTemperature,
} from "../text/quantities.ts";
import { capitalised } from "../text/wrap.ts";
import type { CausePair, Confounding } from "../trials/Confounding.ts";
import { type FactDifference, widestDifferences } from "../trials/differences.ts";
import type { FiringFact, FiringInNumbers } from "../trials/FiringStudy.ts";
import { FIRING_CAUSE_WORDS } from "../trials/firingCauses.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { type Block, type ChartPair, chartBlocks, section } from "./Block.ts";

const PARTS: readonly string[] = Object.values(FIRING_CAUSE_WORDS);

/** Pairs that are named one by one at most. */
const MOST_NAMED = 6;

/**
 * Which causes the tiles cannot tell apart, which partly, and which they say nothing of.
 *
 * @param heat What differed in the heat that the firings got, in words.
 */
export function confoundingBlocks(
  confounding: Confounding,
  chart: ChartPair | undefined,
  heat: readonly string[],
): readonly Block[] {
  const { pairs, tiles, causes } = confounding;
  const hasHeat = causes.some(({ name }) => name === FIRING_CAUSE_WORDS.heat);
  const lines = [
    ...togetherLines(confounding),
    ...apartFromGroups(confounding),
    ...jointLines(confounding),
  ];
  const partly = pairs.filter((pair) => pair.telling === "partly" && !isOfPartAndTile(pair));
  const apart = pairs.filter((pair) => pair.telling === "apart" && !isOfPartAndTile(pair));
  return [
    { kind: "heading", text: "What cannot be told apart" },
    sentence(
      lines.length > 0
        ? `On ${counted(tiles)} some causes changed together, and no analysis can say which of them counts:`
        : pairs.length > 0
          ? `Nothing changed wholly together on ${counted(tiles)}.`
          : `Fewer than two things varied on ${counted(tiles)}, so nothing could be mixed up.`,
    ),
    ...(lines.length === 0 ? [] : [{ kind: "list", items: lines } as const]),
    ...(hasHeat && heat.length > 0
      ? [sentence(`Heat here is what differed at the top: ${listed(heat)}.`)]
      : []),
    ...(partly.length === 0
      ? []
      : [
          sentence("Partly mixed, so that less is known of each than so many tiles would tell:"),
          {
            kind: "list",
            items: few(partly.toSorted((a, b) => b.shared - a.shared).map(partlyText)),
          } as const,
        ]),
    ...(apart.length === 0 ? [] : [sentence(`Told apart: ${few(apart.map(named)).join("; ")}.`)]),
    ...silentSentences(confounding),
    ...chartBlocks("Which causes the tiles tell apart, pair by pair", chart),
  ];
}

/** Whether a pair is of a part of the firing and of what tiles have: the firing's own pair says it. */
function isOfPartAndTile({ first, second }: CausePair): boolean {
  return PARTS.includes(first) !== PARTS.includes(second);
}

/** Causes that changed together, a sentence for each such group. */
export function togetherLines({ together }: Confounding): readonly string[] {
  return together.map(({ causes, because }) =>
    because.length === 0
      ? `${capitalised(listed(causes))} changed together.`
      : `${capitalised(listed(causes))} changed together: ${because.join("; ")}.`,
  );
}

/** Pairs that cannot be told apart beyond those of the groups; those of one cause in one line. */
function apartFromGroups({ pairs, together }: Confounding): readonly string[] {
  const rest = pairs.filter(
    ({ first, second, telling }) =>
      telling === "cannot" &&
      !together.some(({ causes }) => causes.includes(first) && causes.includes(second)),
  );
  const keys = [...new Set(rest.map(keyOf))];
  return keys.map((key) => {
    const own = rest.filter((pair) => keyOf(pair) === key);
    const { first, because, shared } = own[0]!;
    const seconds = listed(own.map(({ second }) => second));
    return because.length > 0
      ? `${capitalised(first)} and ${seconds}, in part: ${because.join("; ")}.`
      : `${capitalised(first)} and ${seconds} rose and fell together (${percent(shared)} shared).`;
  });
}

function keyOf({ first, because, shared }: CausePair): string {
  return [first, ...because, because.length === 0 ? shared : ""].join("\n");
}

function jointLines({ jointly }: Confounding): readonly string[] {
  return jointly.map(
    ({ cause, others }) =>
      `${capitalised(cause)} goes with ${listed(others)} taken together, though with none alone.`,
  );
}

function partlyText(pair: CausePair): string {
  const worth = Math.max(1, Math.round(pair.tiles * (1 - pair.shared)));
  return `${capitalised(named(pair))}: ${percent(pair.shared)} shared, so ${pair.tiles} tiles tell as much as ${worth} would`;
}

function silentSentences({ constant, everyOwn, unknown }: Confounding): readonly Block[] {
  return [
    ...(constant.length === 0
      ? []
      : [
          sentence(
            `The same on all tiles, so the tiles say nothing of it: ${constant.map(({ name, level }) => `${name} (${level})`).join("; ")}.`,
          ),
        ]),
    ...(everyOwn.length === 0
      ? []
      : [sentence(`Different on every tile, so nothing can be compared: ${listed(everyOwn)}.`)]),
    ...(unknown.length === 0 ? [] : [sentence(`Not noted on any tile: ${listed(unknown)}.`)]),
  ];
}

function few(texts: readonly string[]): readonly string[] {
  const more = texts.length - MOST_NAMED;
  return more > 1 ? [...texts.slice(0, MOST_NAMED), `and ${more} more pairs`] : texts;
}

function named({ first, second }: CausePair): string {
  return `${first} and ${second}`;
}

function percent(share: number): string {
  // Rounding must not make partly wholly.
  return `${Math.min(99, Math.round(share * 100))} %`;
}

function counted(tiles: number): string {
  return tiles === 1 ? "this one tile" : `these ${tiles} tiles`;
}

function listed(words: readonly string[]): string {
  return words.length < 2
    ? (words[0] ?? "")
    : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}

function sentence(text: string): Block {
  return { kind: "sentence", text };
}

/** So many firings are listed by number; of more, those that are named below. */
const LIST_ALL_UP_TO = 12;

/** What differed between firings beyond its uncertainty, the clearest first, and what did not. */
export function differenceBlocks(
  firings: readonly FiringInNumbers[],
  differences: readonly FactDifference[],
  unit: TemperatureUnit,
): readonly Block[] {
  if (firings.length < 2) return [];
  const widest = widestDifferences(differences);
  const of = (verdict: FactDifference["verdict"]) =>
    widest.filter((difference) => difference.verdict === verdict);
  const differing = of("differs");
  const names = (list: readonly FactDifference[]) =>
    list.map((difference) => factLabel(difference.label, unit)).join("; ");
  const [perhaps, same] = [of("perhaps"), of("same")];
  const compared = new Set(widest.map(({ name }) => name));
  const missing = [
    ...new Map(
      firings
        .flatMap(({ facts }) => facts)
        .filter(({ name }) => !compared.has(name))
        .map(({ name, label }) => [name, label]),
    ).values(),
  ];
  return section("What differed", [
    {
      kind: "facts",
      facts: numbered(firings, widest),
    },
    ...(differing.length === 0
      ? [sentence("Nothing differed beyond its uncertainty.")]
      : [
          ...(firings.length > 2
            ? [sentence("Of each, the two firings that lie farthest apart for what is known:")]
            : []),
          {
            kind: "list",
            items: differing.map((difference) => differenceText(difference, unit)),
          } as const,
        ]),
    ...(perhaps.length === 0
      ? []
      : [
          sentence(
            `May be no difference: ${perhaps.map((each) => `${factLabel(each.label, unit)} (${apartText(each, unit)})`).join("; ")}.`,
          ),
        ]),
    ...(same.length === 0 ? [] : [sentence(`No difference to be told: ${names(same)}.`)]),
    ...(missing.length === 0
      ? []
      : [
          sentence(
            `Not measured or noted in two firings, so not compared: ${missing.map((label) => factLabel(label, unit)).join("; ")}.`,
          ),
        ]),
  ]);
}

/** The firings by their numbers; of many only those that are spoken of. */
function numbered(
  firings: readonly FiringInNumbers[],
  spoken: readonly FactDifference[],
): readonly { readonly label: string; readonly text: string }[] {
  const named = new Set(spoken.flatMap(({ low, high }) => [low, high]));
  return firings.flatMap(({ title }, at) =>
    firings.length <= LIST_ALL_UP_TO || named.has(at)
      ? [{ label: `firing ${at + 1}`, text: title }]
      : [],
  );
}

/** One line on what differed: both values with their firings, and how far apart. */
function differenceText(difference: FactDifference, unit: TemperatureUnit): string {
  const { label, kind, low, high, lowValue, highValue } = difference;
  const at = (firing: number, value: number) =>
    `${factText(kind, value, unit)} in firing ${firing + 1}`;
  const said = kind === "cones" ? "" : `${at(low, lowValue)}, ${at(high, highValue)}: `;
  const which =
    kind === "cones" ? `most in firing ${high + 1}, least in firing ${low + 1}: ` : said;
  return `${factLabel(label, unit)}: ${which}${apartText(difference, unit)}`;
}

function apartText({ kind, apart, sigma }: FactDifference, unit: TemperatureUnit): string {
  if (kind === "cones") return `${apart.toFixed(1)} ± ${sigma.toFixed(1)} cones apart`;
  const as = kind === "temperature" ? "difference" : kind;
  return `${factText(as, apart, unit)} ± ${factDoubt(as, sigma, unit)} apart`;
}

/** A fact of a firing in the reader's unit; rates without a sign. */
export function factText(kind: FiringFact["kind"], value: number, unit: TemperatureUnit): string {
  if (kind === "rate") return printRate(value, unit);
  if (kind === "temperature") return printTemperature(value, unit);
  if (kind === "difference") return printDifference(value, unit).replace("-", "−");
  return value === 0 ? "none" : printDuration(value);
}

/** How far a fact may be off, never a bare 0. */
function factDoubt(kind: FiringFact["kind"], value: number, unit: TemperatureUnit): string {
  return notNought(kind === "duration" ? printDuration(value) : factText(kind, value, unit));
}

/** What a fact is called, its temperatures in the reader's unit. */
export function factLabel(label: string, unit: TemperatureUnit): string {
  return label.replace(/\{(\d+)\}/, (_, tempC) => printTemperature(Number(tempC), unit));
}
