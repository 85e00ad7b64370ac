import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  cited
} from "./chunk-O435DZD7.js";

// src/core/cautions/leachLimits.ts
var FLAT_MM = 25;
var US_LARGE_LITRES = 1.1;
var EU_STORAGE_LITRES = 3;
var EU_LEACH = {
  flat: { lead: 0.8, cadmium: 0.07 },
  hollow: { lead: 4, cadmium: 0.3 },
  cooking: { lead: 1.5, cadmium: 0.1 }
};
var US_LEAD = { flat: 3, cup: 0.5, small: 2, large: 1 };
var US_CADMIUM = { flat: 0.5, cup: 0.5, small: 0.5, large: 0.25 };
var US_WORDS = {
  flat: "flat ware up to 25 mm deep",
  cup: "cups, mugs and pitchers",
  small: "hollow ware under 1.1 L",
  large: "hollow ware of 1.1 L and more"
};
function leachLimits(ware) {
  const us = usKind(ware);
  return [
    ...europeanLimits(ware),
    {
      law: "US",
      metal: "lead",
      most: US_LEAD[us],
      unit: "mg/L",
      kind: US_WORDS[us],
      source: "us-food-code-lead"
    },
    {
      law: "US",
      metal: "cadmium",
      most: US_CADMIUM[us],
      unit: "mg/L",
      kind: US_WORDS[us],
      source: "us-cpg-cadmium"
    }
  ];
}
function europeanLimits({ use, depthMm, litres }) {
  const [kind, words] = use === "cooking" ? ["cooking", "cooking ware"] : litres > EU_STORAGE_LITRES ? ["cooking", "vessels over 3 L to store in"] : depthMm <= FLAT_MM ? ["flat", "ware up to 25 mm deep"] : ["hollow", "ware that can be filled"];
  return ["lead", "cadmium"].map((metal) => ({
    law: "EU",
    metal,
    most: EU_LEACH[kind][metal],
    unit: kind === "flat" ? "mg/dm\xB2" : "mg/L",
    kind: words,
    source: "eu-84-500"
  }));
}
function usKind({ use, depthMm, litres }) {
  if (depthMm <= FLAT_MM) return "flat";
  if (use === "cup") return "cup";
  return litres >= US_LARGE_LITRES ? "large" : "small";
}

// src/core/cautions/glazeCautions.ts
var CHECK = "as read in 2026; check current law";
var GLAZE_CAUTIONS = [
  {
    when: "powders",
    caution: {
      topic: "powders",
      text: "Weigh and mix with a fitted respirator for fine dust and with gloves; no food in the room; label every bucket with what is in it."
    }
  },
  {
    when: "silicaDust",
    caution: {
      topic: "silica dust",
      text: `Silica, feldspar and clay dust scars the lungs for good. Limits for respirable crystalline silica in workplace air: 0.05 mg/m\xB3 (OSHA, NIOSH), 0.025 (ACGIH), ${CHECK} (${cited("silica-limits")}). Add powder to water, wipe wet, never sweep dry.`
    }
  },
  {
    when: "lead",
    caution: {
      topic: "lead",
      text: `Lead poisons, children most of all: as dust, as fume from the kiln, and out of the fired glaze into acid food. Keep it off anything that holds food or drink. The law limits its release (${cited("eu-84-500")}: ${EU_LEACH.hollow.lead.toFixed(1)} mg/L from hollow ware, ${EU_LEACH.flat.lead} mg/dm\xB2 from flat ware; under revision downwards; check current law).`
    }
  },
  {
    when: "cadmium",
    caution: {
      topic: "cadmium",
      text: `Cadmium poisons as dust and fume, and out of the fired glaze. Keep it off anything that holds food or drink. The law limits its release (${cited("eu-84-500")}: ${EU_LEACH.hollow.cadmium} mg/L from hollow ware, ${EU_LEACH.flat.cadmium} mg/dm\xB2 from flat ware; under revision downwards; check current law).`
    }
  },
  {
    when: "otherPoisons",
    caution: {
      topic: "arsenic, antimony, beryllium, selenium, mercury, thallium",
      text: "These poison as dust and fume, some through the skin as well, and can leave the fired glaze; selenium, mercury, thallium and arsenic largely leave the kiln as fume. A studio is no place for them."
    }
  },
  {
    when: "radioactive",
    caution: {
      topic: "uranium and thorium",
      text: "They are radioactive and poison as dust, and can leave the fired glaze. Holding, using and throwing them away is regulated in most countries: ask the authority before you open the jar."
    }
  },
  {
    when: "chromates",
    caution: {
      topic: "chromates",
      text: "Chromates and dichromates cause cancer when breathed, burn skin and lungs, and can set paper and cloth alight. A studio is no place for them; their waste is regulated."
    }
  },
  {
    when: "barium",
    caution: {
      topic: "barium",
      text: "Barium carbonate is poisonous if swallowed, and its dust if breathed: keep it labelled and away from children and food. Barium can leave a poorly balanced glaze, and no test for lead and cadmium shows it."
    }
  },
  {
    when: "manganese",
    caution: {
      topic: "manganese",
      text: `Manganese dust and kiln fume harm the nerves. Limits for workplace air: 5 mg/m\xB3 never to be exceeded (OSHA), 1 (NIOSH), 0.02 respirable (ACGIH), ${CHECK} (${cited("manganese-limits")}). Vent the kiln to the outside and stay out of the room while it fires.`
    }
  },
  {
    when: "lithium",
    caution: {
      topic: "lithium",
      text: "Lithium carbonate is harmful if swallowed. Lithium can leave a poorly balanced glaze, and no test for lead and cadmium shows it."
    }
  },
  {
    when: "chromium",
    caution: {
      topic: "chromium",
      text: "Green chromium oxide is little soluble, but firing with much alkali, lime or barium can make chromates, which cause cancer; chromium also fumes and tints ware beside it. Wear gloves and vent the kiln."
    }
  },
  {
    when: "copper",
    caution: {
      topic: "copper",
      text: "Copper compounds are harmful if swallowed; copper fumes in the kiln and readily leaves a glaze into acid food, more so when there is much of it. It also loosens lead, if there is any."
    }
  },
  {
    when: "cobaltOrNickel",
    caution: {
      topic: "cobalt and nickel",
      text: "Cobalt and nickel compounds can cause allergy and, breathed in, cancer. Gloves and a fitted respirator."
    }
  },
  {
    when: "vanadium",
    caution: { topic: "vanadium", text: "Vanadium pentoxide is poisonous as dust and fume." }
  },
  {
    when: "fluorine",
    caution: {
      topic: "fluorine and chlorine",
      text: "They leave the kiln as harmful, corrosive gases: vent to the outside and stay out of the room."
    }
  },
  {
    when: "sulphur",
    caution: {
      topic: "sulphides, sulphates and nitrates",
      text: "They leave the kiln as harmful gases of sulphur and nitrogen: vent to the outside and stay out of the room."
    }
  },
  {
    when: "glazeSurface",
    caution: {
      topic: "use with food",
      text: "Nothing worked out from a recipe says what a fired glaze gives off. For ware that is used or sold, have a laboratory test fired pieces of this glaze from this kiln, for every metal in it; laws differ by country and change."
    }
  },
  {
    when: "glazeEstimate",
    caution: {
      topic: "estimate",
      text: "Expansion and set point are worked out from the composition. They rank glazes; fit and crazing are decided by tiles on your own body."
    }
  }
];

// src/core/cautions/cautionsFor.ts
var CAUTIONS = [
  {
    when: "kiln",
    caution: {
      topic: "kiln",
      text: "A kiln burns and its wiring can kill. Wiring, breakers and clearances are work for a licensed electrician under your local code."
    }
  },
  {
    when: "kiln",
    caution: {
      topic: "attendance",
      text: "Stay within reach near the peak and see for yourself that the kiln has switched off. Look into a peephole only through infrared-rated glasses. Witness cones judge the firing, not this estimate."
    }
  },
  {
    when: "kiln",
    caution: {
      topic: "fumes and dust",
      text: "Firing gives off carbon monoxide, sulphur and metal fumes: vent the kiln to the outside. Dry clay and glaze dust holds silica that harms the lungs: wet-clean, and wear a fitted respirator."
    }
  },
  {
    when: "dampWare",
    caution: {
      topic: "steam",
      text: "Damp ware can burst. Dry it below the boiling point until no moisture shows on a cold mirror or glass held at the vent."
    }
  },
  {
    when: "opening",
    caution: {
      topic: "opening",
      text: "Do not open a hot kiln. Let it fall below about 100 \xB0C (210 \xB0F); use gloves and eye protection, for a piece can crack or throw slivers of glaze while you lift it."
    }
  },
  {
    when: "listening",
    caution: {
      topic: "listening",
      text: "Never open a kiln to listen: record through the wall, or beside the ware after unloading below about 100 \xB0C (210 \xB0F). Keep microphone, cable and yourself off hot walls and terminals. Cracking glaze can throw slivers: wear eye protection near it."
    }
  },
  {
    when: "crackle",
    caution: {
      topic: "crackle and food",
      text: "A crackled surface is not for food or drink: its cracks cannot be kept clean, weaken the ware, and let water into the body."
    }
  },
  {
    when: "estimate",
    caution: {
      topic: "estimate",
      text: "Limits and cones here are estimates from published models. They rank risk; they promise nothing about one pot."
    }
  },
  ...GLAZE_CAUTIONS
];
function cautionsFor(situation) {
  return CAUTIONS.filter((entry) => situation[entry.when] === true).map((entry) => entry.caution);
}

export {
  leachLimits,
  cautionsFor
};
