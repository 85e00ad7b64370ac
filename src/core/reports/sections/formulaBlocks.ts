import type { GlazeSheet } from "../../glaze/GlazeSheet.ts";
import { shareText } from "../../glaze/glazeWords.ts";
import { entriesOf, FLUXES } from "../../glaze/oxides.ts";
import type { Block, Cell } from "../Block.ts";
import { section } from "../section.ts";

/** The composition of a glaze: for one mole of fluxes, by moles and by weight. */
export function formulaBlocks({ unity, molPercent, wtPercent }: GlazeSheet): readonly Block[] {
  return section("Formula", [
    {
      kind: "table",
      caption: "After firing",
      columns: [
        { head: "oxide", align: "left" },
        ...(unity === null ? [] : [{ head: "for 1 of flux", align: "right" } as const]),
        { head: "mol %", align: "right" },
        { head: "wt %", align: "right" },
      ],
      rows: entriesOf(molPercent).map(([oxide, share]): readonly Cell[] => [
        FLUXES.includes(oxide) ? `${oxide}, flux` : oxide,
        ...(unity === null ? [] : [(unity.moles[oxide] ?? 0).toFixed(3)]),
        shareText(share),
        shareText(wtPercent[oxide] ?? 0),
      ]),
    },
    { kind: "sentence", text: ratiosText(unity) },
  ]);
}

function ratiosText(unity: GlazeSheet["unity"]): string {
  if (unity === null) return "It holds no flux, so there is no unity formula.";
  const { alkaliShare, silicaToAlumina } = unity;
  const ratio =
    silicaToAlumina === null
      ? "no alumina"
      : `silica to alumina ${shareText(silicaToAlumina)} to 1`;
  return `Alkalis to the other fluxes ${alkaliShare.toFixed(2)} to ${(1 - alkaliShare).toFixed(2)}; ${ratio}, by moles. Colouring oxides are not counted as flux.`;
}
