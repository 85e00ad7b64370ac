import { fisherExact } from "./fisherExact.ts";
import { type ShareInterval, shareInterval } from "./shareInterval.ts";
import { type FactorName, levelOf } from "./spacingFactors.ts";
import type { Tile } from "./Tile.ts";

/** Tiles that cracked through, group by group. */
export interface ThroughCracks {
  readonly all: ShareInterval;
  readonly byFactor: readonly {
    readonly factor: FactorName;
    readonly groups: readonly { readonly level: string; readonly share: ShareInterval }[];
    /** Fisher's exact test of two groups; null with more. */
    readonly p: number | null;
  }[];
  /** Tiles on which nobody looked. */
  readonly notLooked: number;
}

const FACTORS: readonly FactorName[] = ["clay", "sides", "shape", "firing"];

/** Shares of tiles that cracked through the wall, over all tiles looked at; null without any. */
export function throughCracks(tiles: readonly Tile[]): ThroughCracks | null {
  const looked = tiles.filter(({ throughCrack }) => throughCrack !== null);
  if (looked.length === 0) return null;
  return {
    all: shareOf(looked),
    byFactor: FACTORS.flatMap((factor) => {
      const levels = [...new Set(looked.flatMap((tile) => levelOf(tile, factor) ?? []))];
      if (levels.length < 2) return [];
      const groups = levels.map((level) => ({
        level,
        share: shareOf(looked.filter((tile) => levelOf(tile, factor) === level)),
      }));
      return [{ factor, groups, p: testOf(groups.map(({ share }) => share)) }];
    }),
    notLooked: tiles.length - looked.length,
  };
}

function shareOf(tiles: readonly Tile[]): ShareInterval {
  return shareInterval(tiles.filter(({ throughCrack }) => throughCrack).length, tiles.length);
}

function testOf(shares: readonly ShareInterval[]): number | null {
  const [one, other, ...more] = shares.map(({ found, of }) => ({ yes: found, of }));
  return one === undefined || other === undefined || more.length > 0
    ? null
    : fisherExact(one, other);
}
