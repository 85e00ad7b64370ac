import type { ShareInterval } from "../../trials/shareInterval.ts";
import type { FactorName } from "../../trials/spacingFactors.ts";
import type { ThroughCracks } from "../../trials/throughCracks.ts";
import type { Block } from "../Block.ts";
import { capitalised } from "../capitalised.ts";

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
