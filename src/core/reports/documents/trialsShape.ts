import { z } from "zod";

const intervalShape = z
  .strictObject({
    value: z.number(),
    low: z.number().nullable(),
    high: z.number().nullable(),
  })
  .describe("95 % interval; null for a side without end");

const spreadShape = z
  .strictObject({ low: z.number(), median: z.number(), high: z.number() })
  .describe("middle of drawn cases, and the ends between which 8 of 10 lie");

const expectedShape = z
  .strictObject({
    lowMm: z.number().nullable(),
    medianMm: z.number().nullable(),
    highMm: z.number().nullable(),
  })
  .describe("pitch to expect by the files of glaze and body; null where it does not crack");

/** Fit by the files of glazes and bodies, beside what the tiles say. */
export const fitsShape = z.strictObject({
  pairs: z.array(
    z.strictObject({
      glaze: z.string(),
      clay: z.string(),
      body: z.string(),
      expansionFrom: z.enum(["measured", "computed"]),
      tiles: z.int(),
      computedPerK: spreadShape.describe("glaze shrinks more than the body, by their files [1/K]"),
      found: z.array(
        z.strictObject({
          from: z.string(),
          holds: z.enum(["about", "at least", "at most"]),
          tiles: z.int(),
          perK: spreadShape.describe("of the tile in the middle; of bounds, the one that binds"),
          leastPerK: z.number().describe("middle of the tile that says least"),
          mostPerK: z.number(),
          agreeing: z.int(),
        }),
      ),
      foundOverExpected: z
        .strictObject({
          tiles: z.int(),
          within: z.int().describe("spacings inside the range that is expected"),
          least: z.number(),
          median: z.number(),
          most: z.number(),
        })
        .nullable(),
      expectedIsFor: z.enum(["one", "both"]).describe("sides glazed"),
      expected: z.array(expectedShape.extend({ coatMm: z.number() })),
    }),
  ),
  tiles: z.array(
    z.strictObject({
      firing: z.string(),
      piece: z.string(),
      expected: expectedShape,
      crackingShare: z.number().describe("share of drawn cases in which the coat cracks"),
      found: z.array(
        z.strictObject({
          from: z.string(),
          holds: z.enum(["about", "at least", "at most"]),
          perK: spreadShape,
          glazePerK: spreadShape.describe("expansion that the glaze would have to have [1/K]"),
          agrees: z.boolean(),
          pingC: z.number().nullable(),
        }),
      ),
    }),
  ),
  leftOut: z.array(z.strictObject({ firing: z.string(), piece: z.string(), why: z.string() })),
});

/** A trial tile in canonical units. */
export const tileShape = z.strictObject({
  firing: z.string().describe("file name of the firing record"),
  piece: z.string(),
  clay: z.string(),
  glaze: z.string(),
  coatMm: z.number(),
  coatSigmaMm: z.number(),
  glazedSides: z.enum(["one", "both"]),
  shape: z.enum(["flat", "closed"]).nullable(),
  place: z.string().nullable(),
  spacing: z.enum(["measured", "uncracked", "not measured"]),
  pitchMm: z.number().nullable().describe("for uncracked tiles the least it can be"),
  pitchLowMm: z.number().nullable(),
  pitchHighMm: z.number().nullable(),
  interceptMm: z.number().nullable().describe("mean length of line between two cracks"),
  lines: z.int().describe("lines counted; 0 when a spacing was noted"),
  lengthMm: z.number(),
  crossings: z.number(),
  directions: z.array(
    z.strictObject({
      direction: z.enum(["along", "across"]),
      interceptMm: z.number().nullable(),
      lines: z.int(),
      crossings: z.number(),
    }),
  ),
  alongOverAcross: z.number().nullable(),
  stain: z.string().nullable(),
  pings: z.int().nullable().describe("heard from this tile; null when not noted"),
  cracked: z.enum(["none", "crackle", "through"]).nullable(),
});

/** Which causes the tiles tell apart. */
export const confoundingShape = z.strictObject({
  tiles: z.int(),
  causes: z.array(z.strictObject({ name: z.string(), levels: z.array(z.string()) })),
  pairs: z.array(
    z.strictObject({
      first: z.string(),
      second: z.string(),
      telling: z.enum(["cannot", "partly", "apart", "contained"]),
      shared: z.number(),
      because: z.array(z.string()),
      tiles: z.int(),
    }),
  ),
  together: z.array(z.strictObject({ causes: z.array(z.string()), because: z.array(z.string()) })),
  jointly: z.array(z.strictObject({ cause: z.string(), others: z.array(z.string()) })),
  constant: z.array(z.strictObject({ name: z.string(), level: z.string() })),
  everyOwn: z.array(z.string()),
  unknown: z.array(z.string()),
});

/** Pitch of one group over that of another. */
const ratioShape = z.strictObject({
  factor: z.string(),
  level: z.string(),
  against: z.string(),
  ratio: intervalShape,
  tiles: z.int(),
  tilesAgainst: z.int(),
  isShared: z.boolean(),
  p: z.number().nullable(),
  leastP: z.number().nullable(),
});

const untoldShape = z.strictObject({ factor: z.string(), level: z.string(), against: z.string() });

/** One glaze against another. */
export const glazesComparedShape = z
  .strictObject({
    tiles: z.int(),
    ratios: z.array(ratioShape),
    untold: z.array(untoldShape),
    exponents: z.array(
      z.strictObject({ glaze: z.string(), exponent: intervalShape, tiles: z.int() }),
    ),
  })
  .describe("glazes against each other, coats, clays, sides and firings made equal");

/** What governs the spacing of one glaze. */
export const spacingShape = z.strictObject({
  glaze: z.string(),
  why: z
    .array(z.string())
    .describe("why it is not worked out, and groups too small to say anything of"),
  fit: z
    .strictObject({
      tiles: z.int(),
      uncracked: z.int(),
      firings: z.int(),
      coatsMm: z.strictObject({ least: z.number(), most: z.number() }),
      exponent: intervalShape,
      exponentAsRead: z.number(),
      exponentIfExact: intervalShape.describe("as if no coat were misread"),
      coatErrorAssumed: z.int().describe("tiles whose gauge's error is taken to be 15 %"),
      reliability: z.number(),
      tileSigma: z.number(),
      lineSigma: z.number().nullable(),
      icc: z.number().nullable(),
      effectiveLines: z.number().nullable(),
      ratios: z.array(ratioShape),
      untold: z.array(untoldShape),
    })
    .nullable(),
});

/** The next test. */
export const nextShape = z.strictObject({
  firing: z
    .strictObject({
      kind: z.enum(["repeat", "one change", "new"]),
      follows: z.string(),
      change: z.string(),
      reason: z.string(),
      scheduleYaml: z.string().nullable(),
      onKiln: z
        .strictObject({
          basis: z.string(),
          isEased: z.boolean().describe("ramps too fast for the kiln were left to full power"),
          findings: z.array(z.strictObject({ severity: z.string(), statement: z.string() })),
        })
        .nullable()
        .describe("how the kiln of --kiln takes the schedule"),
    })
    .nullable(),
  tiles: z
    .strictObject({
      tiles: z.array(
        z.strictObject({
          clay: z.string(),
          glaze: z.string(),
          coatMm: z.number(),
          glazedSides: z.enum(["one", "both"]),
          shape: z.enum(["flat", "closed"]).nullable(),
          count: z.int(),
        }),
      ),
      total: z.int(),
      wanted: z.array(
        z.strictObject({
          cause: z.string(),
          contrast: z.string(),
          before: z.number().nullable(),
          after: z.number(),
          needed: z.number(),
        }),
      ),
      isEnough: z.boolean(),
      fewest: z.int(),
      scatter: z.number(),
      scatterIs: z.enum(["measured", "assumed"]),
      ratio: z.number(),
      reason: z.string(),
    })
    .nullable(),
  open: z.array(z.string()),
});

/** The part of a comparison's document that holds what differed and what the trial tiles tell. */
export const trialsShape = z.strictObject({
  facts: z.array(
    z.strictObject({
      title: z.string(),
      record: z.string().nullable(),
      facts: z.array(
        z.strictObject({
          name: z.string(),
          kind: z.string().describe("decides the unit: °C, °C/h, s, cones"),
          value: z.number().nullable(),
          sigma: z.number(),
          sensorSigma: z.number(),
        }),
      ),
    }),
  ),
  differences: z
    .array(
      z.strictObject({
        name: z.string(),
        low: z.int().describe("place of the firing with the smaller value, from 0"),
        high: z.int(),
        apart: z.number(),
        sigma: z.number(),
        verdict: z.enum(["differs", "perhaps", "same"]),
      }),
    )
    .describe("of every two firings; of more than 30, of each fact's smallest and largest only"),
  tiles: z.array(tileShape),
  leftOut: z.array(
    z.strictObject({ firing: z.string(), piece: z.string(), from: z.string(), why: z.string() }),
  ),
  confounding: confoundingShape.nullable(),
  spacing: z.array(spacingShape),
  glazesCompared: glazesComparedShape.nullable(),
  fits: fitsShape
    .nullable()
    .describe("fit by the files of glazes and bodies; null when none were looked for"),
  next: nextShape.nullable(),
});
