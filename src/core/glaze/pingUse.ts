import type { MeasuredPing } from "./GlazedPiece.ts";

/** How far a first ping says something about fit. */
export type PingUse =
  | "usable"
  | "near the quartz inversion"
  | "near the cristobalite inversion"
  | "kiln was opened";

/** Where a ping may be the body's quartz, and its cristobalite [°C]. */
const QUARTZ_PINGS = { lowC: 550, highC: 600 };
const CRISTOBALITE_PINGS = { lowC: 200, highC: 250 };

/**
 * Whether the first ping on cooling may be read as fit.
 * Not when the kiln was opened: a draught cracks glaze by itself. At 550 to 600 °C (quartz) and 200 to
 * 250 °C (cristobalite) it may be the body that cracked, and the reader is told.
 */
export function pingUse({ onsetC, kiln }: MeasuredPing): PingUse {
  if (kiln === "opened") return "kiln was opened";
  if (onsetC >= QUARTZ_PINGS.lowC && onsetC <= QUARTZ_PINGS.highC)
    return "near the quartz inversion";
  if (onsetC >= CRISTOBALITE_PINGS.lowC && onsetC <= CRISTOBALITE_PINGS.highC)
    return "near the cristobalite inversion";
  return "usable";
}
