import { type Curve, makeCurve } from "../../../src/core/curve/Curve.ts";
import { bodyNamed } from "../../../src/core/ware/bodies.ts";
import type { Body, Ware, WareGeometry } from "../../../src/core/ware/Ware.ts";

/** A body of the list that must be there. */
export function listedBody(words: string): Body {
  const found = bodyNamed(words, "test");
  if (!found.ok) throw new Error(found.problems.map(({ what }) => what).join());
  return found.value;
}

/** A piece with wall and base alike, 140 mm wide, on a 16 mm shelf, unless said otherwise. */
export function sampleWare(
  words: string,
  wallMm: number,
  geometry: Partial<WareGeometry> = {},
): Ware {
  return {
    body: listedBody(words),
    geometry: {
      wallMm,
      baseMm: wallMm,
      footprintRadiusMm: 70,
      shelfMm: 16,
      footGapMm: 3,
      glazedSides: "none",
      ...geometry,
    },
  };
}

/** A straight fall from 800 °C, from a moment on. */
export function straightFall(rateCPerHour: number, downToC: number, fromSeconds = 0): Curve {
  const seconds = ((800 - downToC) / rateCPerHour) * 3600;
  return makeCurve([fromSeconds, fromSeconds + seconds], [800, downToC]);
}

/** The same piece with one number of its body replaced. */
export function withBody(ware: Ware, values: { readonly [P in keyof Body]?: number }): Ware {
  const body = Object.fromEntries(
    Object.entries(values).map(([name, value]) => [
      name,
      { value, low: value, high: value, source: "test" },
    ]),
  );
  return { ...ware, body: { ...ware.body, ...body } };
}
