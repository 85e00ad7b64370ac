import { statementText } from "../../findings/findingText.ts";
import type { NextFiring, NextTest, NextTiles } from "../../trials/NextTest.ts";
import type { TemperatureUnit } from "../../units/temperature.ts";
import type { Block, Cell } from "../Block.ts";
import { capitalised } from "../capitalised.ts";
import { asGiven, fewDigits } from "../spreadWords.ts";

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
