import type { Problem } from "../problem.ts";
import { fewDigits } from "../text/quantities.ts";
import { capitalised } from "../text/wrap.ts";
import type { FiringStudy, GlazeStudy, GroupRatio, SpacingFit } from "../trials/FiringStudy.ts";
import type { SampleSizes } from "../trials/sampleSizes.ts";
import type { GlazesCompared } from "../trials/studyFirings.ts";
import { type Block, type ChartPair, chartBlocks } from "./Block.ts";
import { throughBlocks } from "./tileBlocks.ts";

/** Uncracked tiles from which on the exponent is warned of; our own choice. */
const MANY_UNCRACKED = 0.2;

/** Scatter of ln spacing below which a factor would promise too much; our own choice. */
const HARDLY = 0.05;

/** What governs the spacing, glaze by glaze: the exponent, then groups against each other. */
export function spacingBlocks(
  study: Pick<FiringStudy, "glazes" | "firings" | "glazesCompared">,
  charts: Readonly<Record<string, ChartPair>>,
): readonly Block[] {
  const numbered = (firing: string) =>
    `firing ${study.firings.findIndex(({ record }) => record === firing) + 1}`;
  return [
    { kind: "heading", text: "What governs the spacing" },
    ...study.glazes.flatMap((each): readonly Block[] => [
      ...glazeBlocks(each, numbered),
      ...chartBlocks(`Crack spacing against coat, ${each.glaze}`, charts[each.glaze]),
    ]),
    ...comparedBlocks(study.glazesCompared, numbered),
  ];
}

function glazeBlocks(
  { glaze, spacing, problems, through, sizes }: GlazeStudy,
  numbered: (firing: string) => string,
): readonly Block[] {
  return [
    ...(spacing === null
      ? [sentence(`${capitalised(glaze)}: no power of the coat is worked out.`)]
      : fitBlocks(spacing, numbered)),
    ...(problems.length === 0 ? [] : [{ kind: "list", items: problems.map(problemText) } as const]),
    ...(spacing === null ? [sentence(sizesText(sizes))] : []),
    ...throughBlocks(through, (factor, level) => levelText(factor, level, numbered)),
  ];
}

function fitBlocks(spacing: SpacingFit, numbered: (firing: string) => string): readonly Block[] {
  return [
    ...gaugeBlocks(spacing),
    sentence(exponentText(spacing)),
    ...warnings(spacing),
    ...(spacing.ratios.length === 0
      ? []
      : [
          {
            kind: "list",
            items: spacing.ratios.map((ratio) => ratioText(ratio, numbered)),
          } as const,
        ]),
    ...untoldSentence(spacing, numbered),
    ...slopesSentence(spacing, numbered),
    sentence(scatterText(spacing)),
  ];
}

/** First what only the potter knows: how far the gauge may be off; until then the power both ways. */
function gaugeBlocks(fit: SpacingFit): readonly Block[] {
  if (fit.coatErrorAssumed === 0) return [];
  const all = fit.tiles + fit.uncracked;
  const power = ({ value, low, high }: SpacingFit["exponent"]) =>
    `${fewDigits(value)} (${endText(low)} to ${endText(high)})`;
  return [
    sentence(
      `How far may your gauge be off? The coats of ${fit.coatErrorAssumed} of ${all} tiles of ${fit.glaze} do not say; add coatError to them. Until then the power is ${power(fit.exponentIfExact)} if the coats are as read, and ${power(fit.exponent)} if each may be misread by 15 %, which is taken below.`,
    ),
  ];
}

/** Glazes against each other, coats made equal. */
function comparedBlocks(
  compared: GlazesCompared | null,
  numbered: (firing: string) => string,
): readonly Block[] {
  if (compared === null) return [];
  return [
    sentence(
      `Glaze against glaze, on ${compared.tiles} measured tiles, coats, clays, sides and firings made equal:`,
    ),
    ...(compared.ratios.length === 0
      ? []
      : [
          {
            kind: "list",
            items: compared.ratios.map((ratio) => ratioText(ratio, numbered)),
          } as const,
        ]),
    ...untoldSentence(compared, numbered),
    ...slopesSentence(compared, numbered),
  ];
}

/** How many tiles a group needs, before anybody reads a ratio into fewer. */
function sizesText({ needed, scatter, scatterIs }: SampleSizes): string {
  const each = needed.map(({ ratio, tiles }) => `${tiles} for a ratio of ${ratio}`);
  const by = Math.exp(scatter).toFixed(2);
  const how = scatterIs === "measured" ? "as measured here" : "our own estimate";
  return `Tiles that each of two groups needs, if like tiles scatter by a factor of ${by} (${how}): ${each.join(", ")}.`;
}

function problemText({ what, expected, fix }: Problem): string {
  return `${capitalised(what)}. It takes ${expected}: ${fix}.`;
}

function exponentText(fit: SpacingFit): string {
  const { exponent, coatsMm, tiles, uncracked, firings } = fit;
  const interval = `${fewDigits(exponent.value)} (${endText(exponent.low)} to ${endText(exponent.high)})`;
  // By the digits that are printed, so that 0.50 holds ½.
  const held = [0.5, 1].map(
    (guide) =>
      Math.round(100 * exponent.low) <= 100 * guide &&
      100 * guide <= Math.round(100 * exponent.high),
  );
  const guides =
    held[0] && held[1]
      ? "Both guides lie within: ½ as for cracks in a layer on a stiff body, 1 as for layers that dry."
      : held[0]
        ? "The guide ½, as for cracks in a layer on a stiff body, lies within; 1 does not."
        : held[1]
          ? "The guide 1, as for layers that dry, lies within; ½ does not."
          : "Neither guide lies within, ½ as for cracks in a layer on a stiff body or 1 as for layers that dry.";
  const of = `${tiles} measured ${tiles === 1 ? "tile" : "tiles"}${uncracked > 0 ? ` and ${uncracked} uncracked` : ""} of ${firings} ${firings === 1 ? "firing" : "firings"}, coats ${fewDigits(coatsMm.least)} to ${fewDigits(coatsMm.most)} mm`;
  const [low, twice, high] = [exponent.low, exponent.value, exponent.high].map((power) =>
    endText(2 ** power),
  );
  return `${capitalised(fit.glaze)}: a coat twice as thick has cracks ${twice} times as far apart (${low} to ${high}): spacing goes with the coat to the power ${interval}, the range holding the truth 95 times in 100; ${of}. ${guides}`;
}

function endText(end: number): string {
  return Number.isFinite(end) ? fewDigits(end) : "without end";
}

function warnings(fit: SpacingFit): readonly Block[] {
  const all = fit.tiles + fit.uncracked;
  const share = fit.uncracked / all;
  const texts = [
    ...(fit.uncracked > 0
      ? [
          `${fit.uncracked} of ${all} tiles (${Math.round(100 * share)} %) did not crack. They count as wider than the tile${share > MANY_UNCRACKED ? "; with so many near the threshold of cracking the exponent may be too small or negative" : ""}.`,
        ]
      : []),
    ...(fit.thinUncracked > 0 ? [thinText(fit)] : []),
  ];
  return texts.map((text) => sentence(text));
}

/** Thin coats that did not crack: a threshold, not a wide spacing. */
function thinText({ thinUncracked, exponentWithoutThin }: SpacingFit): string {
  const left =
    exponentWithoutThin === null
      ? "too few tiles are left to work it out without them"
      : `without them it is ${fewDigits(exponentWithoutThin.value)} (${endText(exponentWithoutThin.low)} to ${endText(exponentWithoutThin.high)})`;
  return `${thinUncracked} of these ${thinUncracked === 1 ? "has a coat" : "have coats"} thinner than any that cracked, likely too thin to crack at all: that drags the power down, and ${left}.`;
}

/** One power for all groups holds only if they do not differ much in it. */
function slopesSentence(
  { slopes }: Pick<SpacingFit, "slopes">,
  numbered: (firing: string) => string,
): readonly Block[] {
  if (slopes.length === 0) return [];
  const each = slopes.map(
    ({ factor, level, exponent }) =>
      `${levelText(factor, level, numbered)} ${fewDigits(exponent.value)} (${endText(exponent.low)} to ${endText(exponent.high)})`,
  );
  const apart = slopes.some(({ factor, exponent }) =>
    slopes.some((other) => other.factor === factor && other.exponent.low > exponent.high),
  );
  const so = apart
    ? "These lie apart, so that one power for all and the ratios above stand for no single coat"
    : "These lie together, as the ratios above take for granted";
  return [sentence(`The power of each group by itself: ${each.join("; ")}. ${so}.`)];
}

/** Ratio and interval first, then how many tiles, then what dealing labels anew gives. */
function ratioText(group: GroupRatio, numbered: (firing: string) => string): string {
  const { ratio, tiles, tilesAgainst, isShared, test } = group;
  const [level, against] = [group.level, group.against].map((each) =>
    levelText(group.factor, each, numbered),
  );
  const said = `${capitalised(level ?? "")} against ${against}: cracks ${timesText(ratio.value)} times as far apart (${timesText(ratio.low)} to ${timesText(ratio.high)}), ${tiles} tiles against ${tilesAgainst}`;
  const shared = isShared ? "; something else changed with it, so the ratio belongs to both" : "";
  const tested =
    test === null
      ? ""
      : `; with tiles dealt into groups by chance as far apart in ${shareText(test.p)} of dealings (so few tiles can show ${shareText(test.leastP)} at the least)`;
  return `${said}${shared}${tested}`;
}

function timesText(times: number): string {
  if (!Number.isFinite(times)) return "without end";
  return times >= 0.1 && times < 10 ? times.toFixed(2) : fewDigits(times);
}

function shareText(share: number): string {
  return `${fewDigits(100 * share)} %`;
}

function levelText(
  factor: GroupRatio["factor"],
  level: string,
  numbered: (firing: string) => string,
): string {
  if (factor === "firing") return numbered(level);
  if (factor === "sides") return level === "one" ? "glaze on one side" : "glaze on both sides";
  return level;
}

function untoldSentence(
  { untold }: Pick<SpacingFit, "untold">,
  numbered: (firing: string) => string,
): readonly Block[] {
  if (untold.length === 0) return [];
  const pairs = untold.map(
    ({ factor, level, against }) =>
      `${levelText(factor, level, numbered)} against ${levelText(factor, against, numbered)}`,
  );
  return [
    sentence(`No ratio of its own, since it changed together with others: ${pairs.join("; ")}.`),
  ];
}

function scatterText({
  tileSigma,
  lineSigma,
  icc,
  effectiveLines,
  countingErrorUnknown,
  thinUncracked,
}: SpacingFit): string {
  const tiles =
    tileSigma < HARDLY
      ? "Like tiles scatter by no more than their coats can be misread"
      : `Like tiles scatter by a factor of ${Math.exp(tileSigma).toFixed(2)}`;
  const lines =
    lineSigma === null || icc === null || effectiveLines === null
      ? ""
      : `, lines of one tile by ${Math.exp(lineSigma).toFixed(2)}; so all lines counted are worth ${worth(effectiveLines)}`;
  const thin = thinUncracked > 0 ? ", with coats too thin to crack among them" : "";
  const unknown =
    countingErrorUnknown > 0
      ? ` ${countingErrorUnknown === 1 ? "One tile has" : `${countingErrorUnknown} tiles have`} a spacing without the lines it was counted on.`
      : "";
  return `${tiles}${thin}${lines}.${unknown}`;
}

function worth(lines: number): string {
  const whole = Math.max(1, Math.round(lines));
  return whole === 1 ? "one independent line" : `${whole} independent ones`;
}

function sentence(text: string): Block {
  return { kind: "sentence", text };
}
