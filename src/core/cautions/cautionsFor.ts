import type { Caution } from "./Caution.ts";
import { GLAZE_CAUTIONS, type GlazeSituation } from "./glazeCautions.ts";

/** What is known of the situation that a report speaks of. */
export interface Situation extends GlazeSituation {
  /** A firing is planned or was done, so the kiln's own dangers apply. */
  readonly kiln?: boolean;
  /** The kiln will be or was opened. */
  readonly opening?: boolean;
  /** The glaze is meant to crackle. */
  readonly crackle?: boolean;
  /** Damp or raw ware gives off steam and fumes. */
  readonly dampWare?: boolean;
  /** Somebody listens for cracks, at the kiln or beside ware that cools. */
  readonly listening?: boolean;
  /** A computed limit or cone is shown. */
  readonly estimate?: boolean;
}

const CAUTIONS: readonly {
  readonly when: keyof Situation;
  readonly caution: Caution;
}[] = [
  {
    when: "kiln",
    caution: {
      topic: "kiln",
      text: "A kiln burns and its wiring can kill. Wiring, breakers and clearances are work for a licensed electrician under your local code.",
    },
  },
  {
    when: "kiln",
    caution: {
      topic: "attendance",
      text: "Stay within reach near the peak and see for yourself that the kiln has switched off. Look into a peephole only through infrared-rated glasses. Witness cones judge the firing, not this estimate.",
    },
  },
  {
    when: "kiln",
    caution: {
      topic: "fumes and dust",
      text: "Firing gives off carbon monoxide, sulphur and metal fumes: vent the kiln to the outside. Dry clay and glaze dust holds silica that harms the lungs: wet-clean, and wear a fitted respirator.",
    },
  },
  {
    when: "dampWare",
    caution: {
      topic: "steam",
      text: "Damp ware can burst. Dry it below the boiling point until no moisture shows on a cold mirror or glass held at the vent.",
    },
  },
  {
    when: "opening",
    caution: {
      topic: "opening",
      text: "Do not open a hot kiln. Let it fall below about 100 °C (210 °F); use gloves and eye protection, for a piece can crack or throw slivers of glaze while you lift it.",
    },
  },
  {
    when: "listening",
    caution: {
      topic: "listening",
      text: "Never open a kiln to listen: record through the wall, or beside the ware after unloading below about 100 °C (210 °F). Keep microphone, cable and yourself off hot walls and terminals. Cracking glaze can throw slivers: wear eye protection near it.",
    },
  },
  {
    when: "crackle",
    caution: {
      topic: "crackle and food",
      text: "A crackled surface is not for food or drink: its cracks cannot be kept clean, weaken the ware, and let water into the body.",
    },
  },
  {
    when: "estimate",
    caution: {
      topic: "estimate",
      text: "Limits and cones here are estimates from published models. They rank risk; they promise nothing about one pot.",
    },
  },
  ...GLAZE_CAUTIONS,
];

/** The cautions that apply, in the order in which they matter, each once. */
export function cautionsFor(situation: Situation): readonly Caution[] {
  return CAUTIONS.filter((entry) => situation[entry.when] === true).map((entry) => entry.caution);
}
