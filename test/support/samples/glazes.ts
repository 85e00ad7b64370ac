import { type GlazeWork, glazeWorkOf } from "../../../src/core/glaze/glazeWork.ts";

const FILE = `formatVersion: 1
title: Sample
recipe: { soda feldspar: 50, kaolinite: 10, whiting: 15, zinc oxide: 5, quartz: 20 }
additions: { rutile: 2 }
`;

const ON_BODY = `body: stoneware
wall: 5
coat: 0.5 mm
glazedSides: one
cracks:
  cracked: true
  spacing: { mean: 6, low: 5, high: 7, counted: along lines }
  pings:
    - { coat: 0.5 mm, at: 200, plusMinus: 15, kiln: shut }
    - { coat: 0.8 mm, at: 260, plusMinus: 15, kiln: opened }
`;

/** A glaze with batch, slip, coat and fit, or with none of them. */
export function sampleGlazeWork({ withBench = true } = {}): GlazeWork {
  const work = glazeWorkOf(withBench ? FILE + ON_BODY : FILE, "sample.yaml", {
    batchG: withBench ? 1000 : null,
    slipGPerCm3: withBench ? 1.45 : null,
    bucketLitres: withBench ? 5 : null,
    dryCoatGPerCm2: withBench ? 0.1 : null,
  });
  if (!work.ok) throw new RangeError(JSON.stringify(work.problems));
  return work.value;
}
