import type { Spread } from "../math/statistics.ts";
import { fewDigits } from "../text/quantities.ts";
import { capitalised } from "../text/wrap.ts";
import type { FitStudy, FoundMismatch, GlazeOnClay } from "../trials/FiringStudy.ts";
import { type Block, type Cell, type ChartPair, chartBlocks, section } from "./Block.ts";

/**
 * Fit of each glaze on each clay by their files, beside what cracks and pings say of it.
 *
 * @param hasCommands Says how the command is given a glaze file; else how the page is.
 */
export function fitStudyBlocks(
  study: FitStudy | null,
  chart: ChartPair | undefined,
  hasCommands: boolean,
): readonly Block[] {
  if (study === null) return [];
  const { pairs, leftOut } = study;
  return section("How the glazes fit their clays", [
    ...(pairs.length === 0 ? [] : [sentence(MEANING)]),
    ...pairs.map((pair) => sentence(pairText(pair))),
    ...(pairs.length === 0 ? [] : [pairTable(pairs)]),
    ...boundSentences(pairs),
    ...chartBlocks("Fit by the files of glaze and body, and as the tiles say", chart),
    ...leftOutBlocks(leftOut, hasCommands),
  ]);
}

const MEANING =
  "A glaze that shrinks more than its clay is pulled and crackles. How much more is told twice: by the files of glaze and body, and by what the tiles did.";

function pairText(pair: GlazeOnClay): string {
  const { glaze, clay, computedPerK, found, expansionFrom } = pair;
  const by =
    expansionFrom === "measured"
      ? "by its measured expansion and the body"
      : "by its composition and the body";
  const name = `${capitalised(glaze)} on ${clay}`;
  const said = `${millionths(computedPerK)} millionths per °C ${by}`;
  const measure = found.find(({ holds }) => holds === "about");
  const told =
    measure === undefined
      ? "the tiles give no measure of it"
      : `${millionths(measure.perK)} by the ${WORDS[measure.from]} of ${tilesText(measure.tiles)}; ${agreement(measure)}`;
  return `${name}: ${said}, ${told}.${spacingText(pair)}`;
}

const WORDS: Readonly<Record<FoundMismatch["from"], string>> = {
  "crack spacing": "crack spacing",
  "cracks seen": "cracks",
  "no cracks": "lack of cracks",
  "first ping": "first ping",
};

function agreement({ agreeing, tiles }: FoundMismatch): string {
  if (agreeing === tiles) return tiles === 1 ? "the two agree" : "all agree with the files";
  if (agreeing === 0)
    return "none agrees with the files: trust the tiles, and look for what recipe or body hides";
  return `${agreeing} of ${tiles} agree with the files`;
}

function spacingText({ foundOverExpected }: GlazeOnClay): string {
  if (foundOverExpected === null) return "";
  const { tiles, within, median } = foundOverExpected;
  const all = tiles === 1 ? "The one spacing lies" : `${within} of ${tiles} spacings lie`;
  const said = tiles === 1 && within === 0 ? "The one spacing lies outside" : `${all} within`;
  return ` ${said} the range that the files let expect; the middle one is ${fewDigits(median)} times the expected.`;
}

function pairTable(pairs: readonly GlazeOnClay[]): Block {
  return {
    kind: "table",
    caption: "How much more the glaze shrinks than the clay [millionths per °C]",
    columns: [
      { head: "glaze on clay", align: "left" },
      { head: "told by", align: "left" },
      { head: "tiles", align: "right" },
      { head: "middle", align: "right" },
      { head: "range", align: "right" },
      { head: { lines: ["agree with", "the files"] }, align: "right" },
    ],
    rows: pairs.flatMap(({ glaze, clay, computedPerK, found }): readonly (readonly Cell[])[] => [
      [
        { lines: [`${glaze} on`, clay] },
        "the files",
        "",
        fewDigits(1e6 * computedPerK.median),
        range(computedPerK),
        "",
      ],
      ...found.map((each) => [
        "",
        each.from,
        String(each.tiles),
        `${each.holds === "about" ? "" : `${each.holds} `}${fewDigits(1e6 * each.perK.median)}`,
        range(each.perK),
        `${each.agreeing} of ${each.tiles}`,
      ]),
    ]),
  };
}

/** What a bound is a bound for, once for each kind that there is. */
function boundSentences(pairs: readonly GlazeOnClay[]): readonly Block[] {
  const kinds = new Set(
    pairs.flatMap(({ found }) => found.map(({ from, holds }) => `${from}, ${holds}`)),
  );
  const sentences: readonly (readonly [kind: string, text: string])[] = [
    [
      "crack spacing, at least",
      "Cracks more than fifteen coats apart may be a weak pull, or a strong one with few flaws to start from: a lower bound only.",
    ],
    ["cracks seen, at least", "That a coat cracked is a lower bound only."],
    [
      "no cracks, at most",
      "That a coat stayed whole is an upper bound, and none at all if it has no flaw to start from.",
    ],
    [
      "first ping, about",
      "A listener may miss the first ping; then it came hotter, and the glaze shrinks still more than is said here.",
    ],
  ];
  return sentences.flatMap(([kind, text]) => (kinds.has(kind) ? [sentence(text)] : []));
}

function leftOutBlocks(leftOut: FitStudy["leftOut"], hasCommands: boolean): readonly Block[] {
  const reasons = [...new Set(leftOut.map(({ why }) => why))];
  if (reasons.length === 0) return [];
  const noFile = reasons.some((why) => why.startsWith("no glaze file"));
  return [
    {
      kind: "list",
      items: reasons.map((why) => {
        const tiles = leftOut.filter((each) => each.why === why).length;
        return `Of ${tilesText(tiles)} nothing is said of fit: ${why}`;
      }),
    },
    ...(noFile
      ? [
          sentence(
            hasCommands
              ? "--glaze FILE names a glaze file; one called glaze-NAME.yaml beside the log, NAME as the tiles give it, is found by itself."
              : "Drop the file of the glaze beside the logs: it is known by its title, written as the tiles give it, or by being called glaze-NAME.yaml.",
          ),
        ]
      : []),
  ];
}

function tilesText(tiles: number): string {
  return tiles === 1 ? "one tile" : `${tiles} tiles`;
}

function millionths({ low, median, high }: Spread): string {
  const [from, middle, to] = [low, median, high].map((perK) => fewDigits(1e6 * perK));
  return `${middle} (${from} to ${to})`;
}

function range({ low, high }: Spread): string {
  return `${fewDigits(1e6 * low)} to ${fewDigits(1e6 * high)}`;
}

function sentence(text: string): Block {
  return { kind: "sentence", text };
}
