/** Ware as the laws on lead and cadmium tell it apart. */
export interface LeachedWare {
  /** `cooking` is ware to cook or bake in. */
  readonly use: "cup" | "dish" | "cooking";
  /** From the lowest place inside to the rim [mm]. */
  readonly depthMm: number;
  readonly litres: number;
}

/** How much of a metal a law lets ware give off in its test. */
export interface LeachLimit {
  readonly law: "EU" | "US";
  readonly metal: "lead" | "cadmium";
  readonly most: number;
  readonly unit: "mg/L" | "mg/dm²";
  /** The law's own kind of ware, in plain words. */
  readonly kind: string;
  readonly source: "eu-84-500" | "us-food-code-lead" | "us-cpg-cadmium";
}

/** Up to this depth ware is flat in both laws [mm]. */
const FLAT_MM = 25;

/** From this volume hollow ware is large in the United States [L]. */
const US_LARGE_LITRES = 1.1;

/** Above this volume vessels to store food in are held to the limits of cooking ware in Europe [L]. */
const EU_STORAGE_LITRES = 3;

/**
 * European limits of ware that is flat, hollow, and for cooking or storing over 3 L.
 * @see SOURCES["eu-84-500"]
 */
export const EU_LEACH = {
  flat: { lead: 0.8, cadmium: 0.07 },
  hollow: { lead: 4.0, cadmium: 0.3 },
  cooking: { lead: 1.5, cadmium: 0.1 },
} as const;

/**
 * Limits of the United States in the leaching solution [mg/L].
 * @see SOURCES["us-food-code-lead"], SOURCES["us-cpg-cadmium"]
 */
const US_LEAD = { flat: 3.0, cup: 0.5, small: 2.0, large: 1.0 } as const;
const US_CADMIUM = { flat: 0.5, cup: 0.5, small: 0.5, large: 0.25 } as const;

const US_WORDS = {
  flat: "flat ware up to 25 mm deep",
  cup: "cups, mugs and pitchers",
  small: "hollow ware under 1.1 L",
  large: "hollow ware of 1.1 L and more",
} as const;

/** The limits that the two laws set for a piece of ware; both may change, and others exist. */
export function leachLimits(ware: LeachedWare): readonly LeachLimit[] {
  const us = usKind(ware);
  return [
    ...europeanLimits(ware),
    {
      law: "US",
      metal: "lead",
      most: US_LEAD[us],
      unit: "mg/L",
      kind: US_WORDS[us],
      source: "us-food-code-lead",
    },
    {
      law: "US",
      metal: "cadmium",
      most: US_CADMIUM[us],
      unit: "mg/L",
      kind: US_WORDS[us],
      source: "us-cpg-cadmium",
    },
  ];
}

function europeanLimits({ use, depthMm, litres }: LeachedWare): readonly LeachLimit[] {
  const [kind, words] =
    use === "cooking"
      ? (["cooking", "cooking ware"] as const)
      : litres > EU_STORAGE_LITRES
        ? (["cooking", "vessels over 3 L to store in"] as const)
        : depthMm <= FLAT_MM
          ? (["flat", "ware up to 25 mm deep"] as const)
          : (["hollow", "ware that can be filled"] as const);
  return (["lead", "cadmium"] as const).map((metal) => ({
    law: "EU",
    metal,
    most: EU_LEACH[kind][metal],
    unit: kind === "flat" ? "mg/dm²" : "mg/L",
    kind: words,
    source: "eu-84-500",
  }));
}

function usKind({ use, depthMm, litres }: LeachedWare): keyof typeof US_WORDS {
  if (depthMm <= FLAT_MM) return "flat";
  if (use === "cup") return "cup";
  return litres >= US_LARGE_LITRES ? "large" : "small";
}
