import { type FactDifference, widestDifferences } from "../../trials/differences.ts";
import type { FiringInNumbers } from "../../trials/FiringFact.ts";
import type { TemperatureUnit } from "../../units/temperature.ts";
import { type Block, section } from "../Block.ts";
import { factDoubt, factLabel, factText } from "./factWords.ts";

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

function sentence(text: string): Block {
  return { kind: "sentence", text };
}
