import { statementText } from "../findings/Finding.ts";
import type { ShareInterval } from "../math/distributions.ts";
import { asGiven, fewDigits } from "../text/quantities.ts";
import { capitalised } from "../text/wrap.ts";
import type { FiringInNumbers } from "../trials/FiringStudy.ts";
import type { NextFiring, NextTest, NextTiles } from "../trials/NextTest.ts";
import type { FactorName } from "../trials/spacingFactors.ts";
import type { ThroughCracks } from "../trials/studyFirings.ts";
import type { Tile, TileLeftOut, TileSet } from "../trials/Tile.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import type { Block, Cell } from "./Block.ts";

/** Every tile with its coat and spacing, firing by firing, and what was left out. */
export function tileTable(
  { tiles, leftOut }: TileSet,
  all: readonly FiringInNumbers[],
): readonly Block[] {
  const firings = [...new Set(tiles.map(({ firing }) => firing))];
  return [
    { kind: "heading", text: "The tiles" },
    ...firings.flatMap((firing) => {
      const own = tiles.filter((tile) => tile.firing === firing);
      const number = all.findIndex(({ record }) => record === firing) + 1;
      return [
        firingTable(own, `Firing ${number}: ${own[0]?.firingTitle ?? firing}`),
        ...moreOf(own),
      ];
    }),
    ...leftOutBlocks(leftOut),
  ];
}

/** Tiles of one firing; a glaze that all have stands in the caption. */
function firingTable(own: readonly Tile[], title: string): Block {
  const glazes = [...new Set(own.map(({ glaze }) => glaze))];
  const isOne = glazes.length === 1;
  return {
    kind: "table",
    caption: isOne ? `${title}; all ${glazes[0]}` : title,
    columns: [
      { head: "tile", align: "left" },
      { head: "clay", align: "left" },
      ...(isOne ? [] : [{ head: "glaze", align: "left" } as const]),
      { head: "coat, mm", align: "right" },
      { head: { lines: ["sides", "glazed"] }, align: "left" },
      { head: "spacing, mm", align: "right" },
      { head: "cracks", align: "left" },
    ],
    rows: own.map((tile) => tileRow(tile, isOne)),
  };
}

function tileRow(tile: Tile, isOne: boolean): readonly Cell[] {
  return [
    tile.piece,
    tile.clay,
    ...(isOne ? [] : [tile.glaze]),
    `${fewDigits(tile.coat.firedMm)} ± ${fewDigits(tile.coat.sigmaMm)}`,
    tile.glazedSides,
    spacingText(tile),
    tile.cracked ?? "not noted",
  ];
}

/** What was noted of single tiles beside their spacing: directions and pings. */
function moreOf(own: readonly Tile[]): readonly Block[] {
  const ways = own.flatMap(({ piece, spacing }) =>
    spacing.kind === "measured" && spacing.alongOverAcross !== null
      ? [`${piece} ${fewDigits(spacing.alongOverAcross)}`]
      : [],
  );
  const pings = own.flatMap(({ piece, pings: heard }) =>
    heard === null ? [] : [`${piece} ${heard.count}`],
  );
  return [
    ...(ways.length === 0
      ? []
      : [
          {
            kind: "sentence",
            text: `From crack to crack along the tile, over the same across it (1 without a direction): ${ways.join(", ")}.`,
          } as const,
        ]),
    ...(pings.length === 0
      ? []
      : [{ kind: "sentence", text: `Pings heard: ${pings.join(", ")}.` } as const]),
  ];
}

function spacingText({ spacing }: Tile): string {
  if (spacing.kind === "not measured") return "not measured";
  if (spacing.kind === "uncracked") return `over ${asGiven(spacing.atLeastMm)}`;
  const { pitchMm, lowMm, highMm } = spacing;
  return lowMm === null || highMm === null
    ? asGiven(pitchMm)
    : `${fewDigits(pitchMm)} (${fewDigits(lowMm)} to ${fewDigits(highMm)})`;
}

/** Counted by what they are left out of and why, so that a long list stays short. */
function leftOutBlocks(leftOut: readonly TileLeftOut[]): readonly Block[] {
  const reasons = [...new Set(leftOut.map(({ from, why }) => `${from}\n${why}`))];
  if (reasons.length === 0) return [];
  return [
    { kind: "sentence", text: "Left out:" },
    {
      kind: "list",
      items: reasons.map((reason) => {
        const own = leftOut.filter(({ from, why }) => `${from}\n${why}` === reason);
        const [from, why] = reason.split("\n");
        return `of ${from}: ${own.map(({ piece }) => piece).join(", ")}, because ${why}`;
      }),
    },
  ];
}

/** How many tiles cracked through the wall, over all and group by group, with how far that may be off. */
export function throughBlocks(
  through: ThroughCracks | null,
  sayLevel: (factor: FactorName, level: string) => string,
): readonly Block[] {
  if (through === null) return [];
  const { all, byFactor, notLooked } = through;
  const unseen = notLooked > 0 ? `; on ${notLooked} more nobody looked` : "";
  const whole: Block = {
    kind: "sentence",
    text: `Cracked through the wall: ${shareText(all)}${unseen}.`,
  };
  if (all.found === 0 || byFactor.length === 0) return [whole];
  return [
    whole,
    {
      kind: "list",
      items: byFactor.map(({ factor, groups, p }) => {
        const said = groups.map(
          ({ level, share }) => `${sayLevel(factor, level)}: ${shareText(share)}`,
        );
        const tested =
          p === null
            ? ""
            : `; shares as unequal come up in ${Math.round(100 * p)} % of cases by chance`;
        return `${capitalised(said.join("; "))}${tested}`;
      }),
    },
  ];
}

function shareText({ found, of, low, high }: ShareInterval): string {
  return `${found} of ${of} (${Math.round(100 * low)} to ${Math.round(100 * high)} %)`;
}

/**
 * The next tiles, the next firing, why, and what stays open.
 * @param hasCommands Says how the command writes the schedule.
 */
export function nextTestBlocks(
  next: NextTest,
  unit: TemperatureUnit,
  hasCommands: boolean,
): readonly Block[] {
  const { tiles, firing, open } = next;
  return [
    { kind: "heading", text: "Which test next" },
    ...(firing === null ? [] : firingBlocks(firing, unit, hasCommands)),
    ...(tiles === null ? [] : tileBlocks(tiles)),
    { kind: "list", items: open },
  ];
}

function firingBlocks(
  firing: NextFiring,
  unit: TemperatureUnit,
  hasCommands: boolean,
): readonly Block[] {
  const change = statementText(
    { topic: firing.kind, statement: firing.change, evidence: firing.evidence },
    unit,
  );
  return [
    sentence(`${change} ${firing.reason}`),
    ...kilnBlocks(firing.onKiln, unit),
    ...(firing.schedule === null || !hasCommands
      ? []
      : [sentence("--next FILE.yaml writes this schedule, for undunted draft to lay out.")]),
  ];
}

/** How the kiln of the next firing takes the schedule. */
function kilnBlocks(onKiln: NextFiring["onKiln"], unit: TemperatureUnit): readonly Block[] {
  if (onKiln === null) return [];
  const { basis, isEased, findings } = onKiln;
  const eased = isEased
    ? "; where it cannot keep a rate on the way up, the schedule asks for full power instead"
    : "";
  const does =
    findings.length === 0
      ? " That kiln does all that it asks."
      : findings.some(({ severity }) => severity === "warning")
        ? " That kiln is not up to it as it stands; another kiln, or a schedule for a softer cone, would do:"
        : "";
  return [
    sentence(`The schedule goes by ${basis}${eased}.${does}`),
    ...(findings.length === 0
      ? []
      : [
          {
            kind: "list",
            items: findings.map((finding) => statementText(finding, unit)),
          } as const,
        ]),
  ];
}

function tileBlocks(tiles: NextTiles): readonly Block[] {
  return [
    sentence(tiles.reason),
    {
      kind: "table",
      caption: `${tiles.total} tiles to make`,
      columns: [
        { head: "clay", align: "left" },
        { head: "glaze", align: "left" },
        { head: "fired coat", align: "right" },
        { head: "glazed", align: "left" },
        { head: "shape", align: "left" },
        { head: "tiles", align: "right" },
      ],
      rows: tiles.tiles.map((tile): readonly Cell[] => [
        tile.clay,
        tile.glaze,
        `${asGiven(tile.coatMm)} mm`,
        tile.glazedSides === "one" ? "one side" : "both sides",
        tile.shape ?? "as so far",
        String(tile.count),
      ]),
    },
    sentence(whySoMany(tiles)),
    ...(tiles.wanted.length === 0
      ? []
      : [{ kind: "list", items: tiles.wanted.map(wantedText) } as const]),
  ];
}

function whySoMany({ ratio, scatter, scatterIs, fewest, wanted }: NextTiles): string {
  const factor = Math.exp(scatter).toFixed(2);
  const from =
    scatterIs === "measured"
      ? `spacings scatter by a factor of ${factor} here from tile to tile, misread coats and counting included`
      : `spacings are taken to scatter by a factor of ${factor} from tile to tile, which is our own estimate until some are measured`;
  const least =
    wanted.length > 0 && fewest > 0
      ? ` ${fewest} would tell the causes apart at all, but with an answer too blunt to use.`
      : "";
  return `So many because ${from}, and cracks ${ratio} times as far apart are to be noticed 8 times in 10.${least}`;
}

function wantedText({
  cause,
  contrast,
  before,
  after,
  needed,
}: NextTiles["wanted"][number]): string {
  const size = (error: number) =>
    cause === "coat" ? fewDigits(error) : `a factor of ${Math.exp(error).toFixed(2)}`;
  const name = cause === "coat" ? "The power of the coat" : capitalised(contrast);
  const was = before === null ? "cannot be told now" : `its ± is ${size(before)} now`;
  const short = after > needed ? `, short of the ${size(needed)} that it takes` : "";
  return `${name}: ${was}; with these tiles its ± becomes ${size(after)}${short}`;
}

function sentence(text: string): Block {
  return { kind: "sentence", text };
}
