/**
 * Places at which two documents differ; numbers by more than a share of themselves. A browser's
 * powers and exponentials may differ from Node's in their last digit, which a solver carries on.
 */
export function placesApart(
  one: unknown,
  other: unknown,
  { share, place = "" }: { readonly share: number; readonly place?: string },
): readonly string[] {
  if (typeof one === "number" && typeof other === "number")
    return Math.abs(one - other) <= share * Math.abs(other) ? [] : [place];
  if (typeof one !== "object" || typeof other !== "object" || one === null || other === null)
    return Object.is(one, other) ? [] : [place];
  const keys = new Set([...Object.keys(one), ...Object.keys(other)]);
  const at = (of: object, key: string) => (of as Record<string, unknown>)[key];
  return [...keys].flatMap((key) =>
    placesApart(at(one, key), at(other, key), { share, place: `${place}.${key}` }),
  );
}
