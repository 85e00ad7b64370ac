/** Places between the middle and the edge of a shelf at which its lag is worked out. */
const RINGS = 24;

/** Gap between stacked shelves [mm]; our own estimate. */
export const SHELF_SPACING_MM = 100;

/** Radius of the shelves of a studio kiln, or of their half where they are halved [mm]; our own estimate. */
const SHELF_RADIUS_MM = 230;

/**
 * How far the middle of a piece lags behind its edge because it stands in a stack of shelves, as
 * a share of the lag that a shelf would have if it saw nothing but the kiln.
 * Discs of one size and one temperature profile above each other, each gap closed at its mouth by
 * the kiln's temperature: a layer loses as much as it sees of what is cooler, by the exact view
 * factors from an element to a disc. All of a layer gives off the same heat, so the difference is
 * that of black discs, whatever their emissivity. Solved by rings; within 1 % of twice as many.
 * A piece sees only its own part of the profile, and a stack is at least as wide as the piece.
 */
export function stackShare(pieceRadiusMm: number, shelfRadiusMm: number = SHELF_RADIUS_MM): number {
  const radius = Math.max(pieceRadiusMm, shelfRadiusMm) / SHELF_SPACING_MM;
  const profile = stackProfile(radius);
  const at = (pieceRadiusMm / SHELF_SPACING_MM / radius) * (RINGS - 0.5);
  // Within the innermost ring the profile is a parabola.
  if (at < 1) return (profile[0]! - profile[1]!) * at * at;
  const ring = Math.min(RINGS - 2, Math.floor(at));
  return profile[0]! - profile[ring]! - (profile[ring + 1]! - profile[ring]!) * (at - ring);
}

const known = new Map<number, Float64Array>();

/**
 * Lag from the middle to the edge of a shelf in a stack, over that of a shelf which sees the kiln
 * alone with both its faces.
 *
 * @param radius Of the shelves, over the gap between them.
 */
export function stackProfile(radius: number): Float64Array {
  const found = known.get(radius);
  if (found !== undefined) return found;
  const width = radius / (RINGS - 0.5);
  const edge = (ring: number) => (ring + 0.5) * width;
  const rows = Array.from({ length: RINGS }, (_, ring) => {
    const row = new Float64Array(RINGS + 1);
    for (let other = 0; other < RINGS; other++)
      row[other] =
        (other === ring ? 1 : 0) -
        (discSeen(ring * width, edge(other)) -
          (other === 0 ? 0 : discSeen(ring * width, edge(other - 1))));
    row[RINGS] = 1;
    return row;
  });
  const profile = solved(rows);
  if (known.size > 50) known.clear();
  known.set(radius, profile);
  return profile;
}

/** Share of what an element sees that is a parallel disc at distance 1, its axis `off` away. */
function discSeen(off: number, discRadius: number): number {
  const sum = 1 + off * off + discRadius * discRadius;
  const under = sum * sum - 4 * off * off * discRadius * discRadius;
  return (1 - (1 + off * off - discRadius * discRadius) / Math.sqrt(under)) / 2;
}

/** Solution of linear equations, each with its right side last; the diagonal is the largest. */
function solved(rows: readonly Float64Array[]): Float64Array {
  const count = rows.length;
  for (let i = 0; i < count; i++)
    for (let k = i + 1; k < count; k++) {
      const times = rows[k]![i]! / rows[i]![i]!;
      for (let j = i; j <= count; j++) rows[k]![j]! -= times * rows[i]![j]!;
    }
  const result = new Float64Array(count);
  for (let i = count - 1; i >= 0; i--) {
    let sum = rows[i]![count]!;
    for (let j = i + 1; j < count; j++) sum -= rows[i]![j]! * result[j]!;
    result[i] = sum / rows[i]![i]!;
  }
  return result;
}
