import type { LeachTest } from "../../glaze/LeachTest.ts";
import { type LeachRow, leachSheet } from "../../glaze/leachSheet.ts";
import { cited } from "../../sources/basedOn.ts";
import type { LeachAmount } from "../../units/leachAmount.ts";
import type { Block } from "../Block.ts";
import { section } from "../section.ts";
import { asGiven } from "../spreadWords.ts";

const STANDS: Readonly<Record<LeachRow["stands"], string>> = {
  under: "no more than that",
  over: "over it",
  open: "cannot be told",
};

/** Leach tests beside the limits of two laws; nothing without tests. */
export function leachBlocks(tests: readonly LeachTest[]): readonly Block[] {
  if (tests.length === 0) return [];
  return section("What a laboratory found given off", [
    ...tests.map(testTable),
    {
      kind: "sentence",
      text: `A tested piece speaks for itself only: not for the next one, not for another firing, not for any other metal, and not for a crackled surface. Limits as read in 2026, the European ones under revision downwards; check current law (EU: ${cited("eu-84-500")}; US: ${cited("us-food-code-lead")}, ${cited("us-cpg-cadmium")}). An amount in another unit than the limit's is not compared.`,
    },
  ]);
}

function testTable(test: LeachTest): Block {
  const { ware, source } = test;
  return {
    kind: "table",
    caption: `${WARE[ware.use]}, ${asGiven(ware.depthMm)} mm deep, holding ${asGiven(ware.litres)} L: ${source}`,
    columns: [
      { head: "metal", align: "left" },
      { head: "found", align: "left" },
      { head: "at most", align: "left" },
      { head: "law and its kind of ware", align: "left" },
      { head: "found is", align: "left" },
    ],
    rows: leachSheet(test).map(({ limit, found, stands }) => [
      limit.metal,
      amountText(found),
      `${limit.most} ${limit.unit}`,
      `${limit.law}: ${limit.kind}`,
      STANDS[stands],
    ]),
  };
}

const WARE: Readonly<Record<LeachTest["ware"]["use"], string>> = {
  cup: "Cup, mug or pitcher",
  dish: "Plate, bowl or jar",
  cooking: "Cooking ware",
};

function amountText({ value, unit, isBelow }: LeachAmount): string {
  return `${isBelow ? "under " : ""}${value} ${unit}`;
}
