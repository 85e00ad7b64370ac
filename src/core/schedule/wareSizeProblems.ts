import type { Problem } from "../problem.ts";

/** Thinnest and thickest ware that anything is known about [mm]. */
const THINNEST_MM = 1;
const THICKEST_MM = 100;

/** Widest piece that a studio kiln takes [mm]. */
const WIDEST_MM = 3000;

/**
 * What is impossible about the sizes of a piece [mm], as options of the command name them.
 * `schedule/ware-thickness` out of 1 to 100 mm, said once where wall and base are alike;
 * `schedule/ware-width` when it is thinner than its own clay or wider than 3 m.
 */
export function wareSizeProblems(ware: {
  readonly wallMm: number | null;
  readonly baseMm: number | null;
  readonly widestMm: number | null;
}): readonly Problem[] {
  const { wallMm, baseMm, widestMm } = ware;
  const thick = [
    ...thicknessProblems("--wall", wallMm),
    ...(baseMm === wallMm ? [] : thicknessProblems("--base", baseMm)),
  ];
  const thickestMm = Math.max(wallMm ?? 0, baseMm ?? 0);
  if (thick.length > 0 || widestMm === null) return thick;
  if (widestMm >= thickestMm && widestMm <= WIDEST_MM) return [];
  return [
    {
      code: "schedule/ware-width",
      what: `a piece ${Math.round(widestMm)} mm wide with clay ${Math.round(thickestMm)} mm thick`,
      where: "--width",
      expected: `a width from its thickness, ${Math.round(thickestMm)} mm, to ${WIDEST_MM} mm`,
      fix: "give the widest dimension of the largest piece, like --width 150mm",
    },
  ];
}

function thicknessProblems(where: string, mm: number | null): readonly Problem[] {
  if (mm === null || (mm >= THINNEST_MM && mm <= THICKEST_MM)) return [];
  const thin = mm < THINNEST_MM;
  return [
    {
      code: "schedule/ware-thickness",
      what: `clay ${Number(mm.toPrecision(3))} mm thick`,
      where,
      expected: `a thickness from ${THINNEST_MM} to ${THICKEST_MM} mm; a bare number is in millimetres`,
      fix: thin
        ? `inches want their unit, like ${where} 1/4in; the thinnest that can be drafted is ${where} ${THINNEST_MM}`
        : `check the number; the thickest that can be drafted is ${where} ${THICKEST_MM}`,
    },
  ];
}
