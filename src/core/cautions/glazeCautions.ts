import { cited } from "../sources/basedOn.ts";
import type { Caution } from "./Caution.ts";
import { EU_LEACH } from "./leachLimits.ts";

/** What a glaze can hold that hurts, and what follows from working with it. */
export interface GlazeSituation {
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
export const GLAZE_CAUTIONS: readonly {
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
