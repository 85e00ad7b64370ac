import { cited } from "../sources/bibliography.ts";
import { EU_LEACH } from "./leachLimits.ts";

/** What a glaze can hold that hurts, and what follows from working with it. */
interface GlazeSituation {
  /** Dry powders are weighed and mixed. */
  readonly powders?: boolean;
  /** They hold silica. */
  readonly silicaDust?: boolean;
  readonly lead?: boolean;
  readonly cadmium?: boolean;
  /** Arsenic, antimony, beryllium, selenium, mercury or thallium. */
  readonly otherPoisons?: boolean;
  /** Uranium or thorium. */
  readonly radioactive?: boolean;
  /** Chromium in its six-valued form. */
  readonly chromates?: boolean;
  readonly barium?: boolean;
  readonly manganese?: boolean;
  readonly lithium?: boolean;
  readonly chromium?: boolean;
  readonly copper?: boolean;
  readonly cobaltOrNickel?: boolean;
  readonly vanadium?: boolean;
  /** Fluorine, chlorine and their like. */
  readonly fluorine?: boolean;
  /** Sulphides, sulphates or nitrates. */
  readonly sulphur?: boolean;
  /** A fired glaze that somebody may eat or drink from. */
  readonly glazeSurface?: boolean;
  /** Expansion and set point are computed. */
  readonly glazeEstimate?: boolean;
}

/** Limits of air and law change; the reader has to look. */
const CHECK = "as read in 2026; check current law";

/** Cautions about glazes, in the order in which they are said. */
const GLAZE_CAUTIONS: readonly {
  readonly when: keyof GlazeSituation;
  readonly caution: Caution;
}[] = [
  {
    when: "powders",
    caution: {
      topic: "powders",
      text: "Weigh and mix with a fitted respirator for fine dust and with gloves; no food in the room; label every bucket with what is in it.",
    },
  },
  {
    when: "silicaDust",
    caution: {
      topic: "silica dust",
      text: `Silica, feldspar and clay dust scars the lungs for good. Limits for respirable crystalline silica in workplace air: 0.05 mg/m³ (OSHA, NIOSH), 0.025 (ACGIH), ${CHECK} (${cited("silica-limits")}). Add powder to water, wipe wet, never sweep dry.`,
    },
  },
  {
    when: "lead",
    caution: {
      topic: "lead",
      text: `Lead poisons, children most of all: as dust, as fume from the kiln, and out of the fired glaze into acid food. Keep it off anything that holds food or drink. The law limits its release (${cited("eu-84-500")}: ${EU_LEACH.hollow.lead.toFixed(1)} mg/L from hollow ware, ${EU_LEACH.flat.lead} mg/dm² from flat ware; under revision downwards; check current law).`,
    },
  },
  {
    when: "cadmium",
    caution: {
      topic: "cadmium",
      text: `Cadmium poisons as dust and fume, and out of the fired glaze. Keep it off anything that holds food or drink. The law limits its release (${cited("eu-84-500")}: ${EU_LEACH.hollow.cadmium} mg/L from hollow ware, ${EU_LEACH.flat.cadmium} mg/dm² from flat ware; under revision downwards; check current law).`,
    },
  },
  {
    when: "otherPoisons",
    caution: {
      topic: "arsenic, antimony, beryllium, selenium, mercury, thallium",
      text: "These poison as dust and fume, some through the skin as well, and can leave the fired glaze; selenium, mercury, thallium and arsenic largely leave the kiln as fume. A studio is no place for them.",
    },
  },
  {
    when: "radioactive",
    caution: {
      topic: "uranium and thorium",
      text: "They are radioactive and poison as dust, and can leave the fired glaze. Holding, using and throwing them away is regulated in most countries: ask the authority before you open the jar.",
    },
  },
  {
    when: "chromates",
    caution: {
      topic: "chromates",
      text: "Chromates and dichromates cause cancer when breathed, burn skin and lungs, and can set paper and cloth alight. A studio is no place for them; their waste is regulated.",
    },
  },
  {
    when: "barium",
    caution: {
      topic: "barium",
      text: "Barium carbonate is poisonous if swallowed, and its dust if breathed: keep it labelled and away from children and food. Barium can leave a poorly balanced glaze, and no test for lead and cadmium shows it.",
    },
  },
  {
    when: "manganese",
    caution: {
      topic: "manganese",
      text: `Manganese dust and kiln fume harm the nerves. Limits for workplace air: 5 mg/m³ never to be exceeded (OSHA), 1 (NIOSH), 0.02 respirable (ACGIH), ${CHECK} (${cited("manganese-limits")}). Vent the kiln to the outside and stay out of the room while it fires.`,
    },
  },
  {
    when: "lithium",
    caution: {
      topic: "lithium",
      text: "Lithium carbonate is harmful if swallowed. Lithium can leave a poorly balanced glaze, and no test for lead and cadmium shows it.",
    },
  },
  {
    when: "chromium",
    caution: {
      topic: "chromium",
      text: "Green chromium oxide is little soluble, but firing with much alkali, lime or barium can make chromates, which cause cancer; chromium also fumes and tints ware beside it. Wear gloves and vent the kiln.",
    },
  },
  {
    when: "copper",
    caution: {
      topic: "copper",
      text: "Copper compounds are harmful if swallowed; copper fumes in the kiln and readily leaves a glaze into acid food, more so when there is much of it. It also loosens lead, if there is any.",
    },
  },
  {
    when: "cobaltOrNickel",
    caution: {
      topic: "cobalt and nickel",
      text: "Cobalt and nickel compounds can cause allergy and, breathed in, cancer. Gloves and a fitted respirator.",
    },
  },
  {
    when: "vanadium",
    caution: { topic: "vanadium", text: "Vanadium pentoxide is poisonous as dust and fume." },
  },
  {
    when: "fluorine",
    caution: {
      topic: "fluorine and chlorine",
      text: "They leave the kiln as harmful, corrosive gases: vent to the outside and stay out of the room.",
    },
  },
  {
    when: "sulphur",
    caution: {
      topic: "sulphides, sulphates and nitrates",
      text: "They leave the kiln as harmful gases of sulphur and nitrogen: vent to the outside and stay out of the room.",
    },
  },
  {
    when: "glazeSurface",
    caution: {
      topic: "use with food",
      text: "Nothing worked out from a recipe says what a fired glaze gives off. For ware that is used or sold, have a laboratory test fired pieces of this glaze from this kiln, for every metal in it; laws differ by country and change.",
    },
  },
  {
    when: "glazeEstimate",
    caution: {
      topic: "estimate",
      text: "Expansion and set point are worked out from the composition. They rank glazes; fit and crazing are decided by tiles on your own body.",
    },
  },
];

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

/** Something that can hurt, said once, at the place where it matters. */
export interface Caution {
  /** What it is about: `kiln`, `opening`, `fumes`, `dust`, `crackle and food`, `attendance`. */
  readonly topic: string;
  readonly text: string;
}
