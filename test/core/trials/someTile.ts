import type { Tile } from "../../../src/core/trials/Tile.ts";

/** A spacing that was noted without the lines it was counted on. */
export function spacingAlone(pitchMm: number): Tile["spacing"] {
  return {
    kind: "measured",
    pitchMm,
    lowMm: null,
    highMm: null,
    interceptMm: null,
    lines: 0,
    lengthMm: 0,
    crossings: 0,
    pattern: "net",
    from: "spacing",
    directions: [],
    alongOverAcross: null,
  };
}

/** A measured tile: Tarrow white, 0.8 mm of pond ice on one side, flat, unless told otherwise. */
export function someTile(
  told: Partial<Omit<Tile, "coat">> & {
    readonly coatMm?: number;
    readonly pitchMm?: number | null;
  } = {},
): Tile {
  const { coatMm = 0.8, pitchMm = 5, ...rest } = told;
  return {
    firing: "a.yaml",
    firingTitle: "First firing",
    kiln: "Old Hilda",
    piece: "A1",
    clay: "Tarrow white",
    glaze: "pond ice",
    body: null,
    coat: {
      firedMm: coatMm,
      sigmaMm: 0.15 * coatMm,
      sigmaIs: "assumed",
      how: "fired",
      sharedSigma: 0,
      taken: [],
    },
    glazedSides: "one",
    shape: "flat",
    wallMm: 6,
    spacing:
      pitchMm === null ? { kind: "uncracked", atLeastMm: 80, from: "size" } : spacingAlone(pitchMm),
    cracked: pitchMm === null ? "none" : "crackle",
    throughCrack: false,
    pings: null,
    place: null,
    stain: null,
    invented: false,
    ...rest,
  };
}
