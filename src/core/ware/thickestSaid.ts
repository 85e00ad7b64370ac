/** Wall and base of a piece [mm], null where not known. */
interface Thicknesses {
  readonly wallMm: number | null;
  readonly baseMm: number | null;
}

/**
 * Says for which of wall and base the thickest part of the ware stands in; nothing when for neither.
 *
 * @param taken What is computed with: differs from `given` only where the thickest part stands in.
 */
export function thickestSaid(given: Thicknesses, taken: Thicknesses): readonly string[] {
  const parts = [
    ...(given.wallMm === null && taken.wallMm !== null ? ["wall"] : []),
    ...(given.baseMm === null && taken.baseMm !== null ? ["base"] : []),
  ];
  return parts.length === 0
    ? []
    : [`${parts.join(" and ")} taken to be as thick as the thickest part`];
}
