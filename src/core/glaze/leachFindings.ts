import type { Finding } from "../findings/Finding.ts";
import { cited } from "../sources/basedOn.ts";
import { glazeFinding } from "./glazeFinding.ts";
import { joined } from "./glazeWords.ts";
import type { LeachTest } from "./LeachTest.ts";
import { leachSheet } from "./leachSheet.ts";

/** Tests that found more than a law lets ware give off. */
export function leachFindings(tests: readonly LeachTest[]): readonly Finding[] {
  return tests.flatMap((test) => {
    const over = leachSheet(test).filter(({ stands }) => stands === "over");
    if (over.length === 0) return [];
    const words = over.map(
      ({ limit, found }) =>
        `${limit.metal} ${found.value} ${found.unit} over the ${limit.most} of the ${limit.law}`,
    );
    return [
      glazeFinding("warning", "leach test over a limit", {
        statement: `A tested piece gave off too much: ${joined(words)}.`,
        basis: `limits as read in 2026; check current law (${[...new Set(over.map(({ limit }) => cited(limit.source)))].join("; ")})`,
        advice: "Keep this glaze off anything that holds food or drink.",
      }),
    ];
  });
}
