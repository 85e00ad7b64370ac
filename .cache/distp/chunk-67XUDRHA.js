import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  ALKALIS,
  FLUXES,
  GlazeFile,
  OXIDES,
  atomsIn,
  atomsInWords,
  elementIn,
  elementName,
  entriesOf,
  leachSheet,
  mapAmounts,
  molarMass,
  molesOf,
  oxideMass,
  scaledTo,
  totalOf,
  weightsOf
} from "./chunk-GBSLUOFQ.js";
import {
  glazeFit
} from "./chunk-P6VZUHGE.js";
import {
  cautionsFor
} from "./chunk-4LHYQSW7.js";
import {
  quoted
} from "./chunk-GU4RVAU5.js";
import {
  readText
} from "./chunk-WA5SZDQ5.js";
import {
  dryCoatGPerCm2,
  dryGPerLitre,
  firedCoatMm,
  isBareNumber,
  parseVolume,
  waterForDryG,
  waterGPerLitre
} from "./chunk-DAQTYWBQ.js";
import {
  bodyGiven,
  readDocument,
  schemaProblems
} from "./chunk-BUYZUOGW.js";
import {
  parseLength
} from "./chunk-P7LYRYX6.js";
import {
  parseTemperature
} from "./chunk-PYB7INDF.js";
import {
  notThatQuantity,
  shown
} from "./chunk-BKGWRYOW.js";
import {
  basedOn,
  cited,
  nearWord
} from "./chunk-O435DZD7.js";
import {
  parseCone
} from "./chunk-R2H4YYDI.js";
import {
  failed,
  ok
} from "./chunk-2ZNPDJKQ.js";

// src/node/readGlaze.ts
import { basename } from "node:path";

// src/core/glaze/firedRecipe.ts
function firedRecipe(recipe) {
  const weights = {};
  let weighed = 0;
  let lost = 0;
  for (const line of [...recipe.base, ...recipe.additions]) {
    weighed += line.parts;
    if (!line.calcined) lost += line.parts * line.material.lossFraction;
    for (const [oxide, share] of Object.entries(line.material.oxides))
      weights[oxide] = (weights[oxide] ?? 0) + share * rawParts(line);
  }
  if (!(totalOf(weights) > 0)) throw new RangeError("firedRecipe: nothing stays after firing");
  return { weights, lossFraction: lost / weighed };
}
function rawParts({ parts, calcined, material: material2 }) {
  return calcined ? parts / (1 - material2.lossFraction) : parts;
}
function swappedParts(line) {
  return line.calcined ? rawParts(line) : line.parts * (1 - line.material.lossFraction);
}

// src/core/glaze/batchSheet.ts
function batchSheet(recipe, wantedG) {
  const baseSum = sumOf(recipe.base);
  const additionsSum = sumOf(recipe.additions);
  const total = baseSum + additionsSum;
  const row = (part) => (line) => ({
    name: line.name,
    part,
    calcined: line.calcined,
    formula: line.material.formula,
    lossFraction: line.material.lossFraction,
    parts: line.parts,
    percentOfBase: 100 * line.parts / baseSum,
    percentOfTotal: 100 * line.parts / total,
    gramsForBase: wantedG === null ? null : wantedG * line.parts / baseSum,
    gramsForTotal: wantedG === null ? null : wantedG * line.parts / total,
    swappedParts: hasOtherForm(line) ? swappedParts(line) : null
  });
  return {
    wantedG,
    baseSum,
    additionsSum,
    rows: [...recipe.base.map(row("base")), ...recipe.additions.map(row("addition"))],
    totalForBaseG: wantedG === null ? null : wantedG * total / baseSum
  };
}
function sumOf(lines) {
  return lines.reduce((sum, { parts }) => sum + parts, 0);
}
function hasOtherForm({ material: material2, calcined }) {
  if (!(material2.lossFraction > 0)) return false;
  return calcined || (material2.oxides.SiO2 ?? 0) + (material2.oxides.Al2O3 ?? 0) > 0.5;
}

// src/core/glaze/coatSheet.ts
function coatSheet({ parsed, glaze }, dryGPerCm2) {
  const { coatMm } = parsed.ware;
  if (dryGPerCm2 === null && coatMm === null) return null;
  const lossFraction = parsed.givenAs.kind === "recipe" ? parsed.givenAs.lossFraction : null;
  const { value, low, high } = glaze.firedDensityKgPerM3;
  const at = (kgPerM3) => ({
    lossFraction: lossFraction ?? 0,
    firedGPerCm3: kgPerM3 / 1e3
  });
  return {
    lossFraction,
    firedGPerCm3: value / 1e3,
    weighed: dryGPerCm2 === null ? null : {
      dryGPerCm2,
      firedMm: firedCoatMm(dryGPerCm2, at(value)),
      lowMm: firedCoatMm(dryGPerCm2, at(high)),
      highMm: firedCoatMm(dryGPerCm2, at(low))
    },
    wanted: coatMm === null ? null : { firedMm: coatMm, dryGPerCm2: dryCoatGPerCm2(coatMm, at(value)) }
  };
}

// src/core/glaze/fitOfSheet.ts
var DRAWS = { runs: 400, seed: 1 };
var ROOM_C = 20;
var COAT_SIGMA = 0.15;
function fitOfSheet({ parsed, glaze }) {
  const { body, wallMm, coatMm, glazing, absorptionPercent, cracks } = parsed.ware;
  if (body === null || wallMm === null || coatMm === null || glazing === null)
    return {
      missing: [
        ...body === null ? ["body"] : [],
        ...wallMm === null ? ["wall"] : [],
        ...coatMm === null ? ["coat"] : [],
        ...glazing === null ? ["glazedSides"] : []
      ]
    };
  return {
    fit: glazeFit({
      glaze,
      body,
      piece: { wallMm, coatMm, coatSigma: COAT_SIGMA, glazing, absorptionPercent },
      roomC: ROOM_C,
      measured: cracks,
      draws: DRAWS
    })
  };
}

// src/core/glaze/glazeFinding.ts
function glazeFinding(severity, topic, words) {
  const { statement, basis, advice = "" } = words;
  return { topic, severity, statement, evidence: [], basis, advice, zone: null, span: null };
}

// src/core/glaze/glazeWords.ts
function shareText(share) {
  return share < 0.995 ? share.toFixed(2) : share.toFixed(1);
}
function expansionText(perK) {
  return (perK * 1e6).toFixed(2).replace("-", "\u2212");
}
function sharesText(shares) {
  return joined(shares.map(([oxide, share]) => `${oxide} ${shareText(share)}`));
}
function outsideText(outside) {
  return joined(
    outside.map(
      ({ oxide, molPercent, least, most }) => most === 0 ? `${oxide} ${shareText(molPercent)} (not known to it)` : `${oxide} ${shareText(molPercent)} (${least} to ${most})`
    )
  );
}
function joined(words) {
  return words.join(", ").replace(/, ([^,]+)$/, " and $1");
}

// src/core/glaze/toxicFindings.ts
var NEVER = [
  "PbO",
  "CdO",
  "As2O3",
  "Sb2O3",
  "BeO",
  "HgO",
  "Tl2O",
  "SeO2",
  "U3O8",
  "ThO2"
];
var ABOVE_WEIGHT_PERCENT = {
  BaO: 5,
  MnO: 3,
  CuO: 3,
  CoO: 2,
  NiO: 2,
  Cr2O3: 1,
  V2O5: 1,
  Li2O: 2
};
var TRACE_PERCENT = 0.01;
var OWN_AMOUNTS = "amounts by our own estimate, from memory of what potters keep to; none is a limit of any law";
function toxicFindings(parsed) {
  const molPercent = scaledTo(100, parsed.moles);
  const wtPercent = scaledTo(100, weightsOf(parsed.moles));
  return [
    ...poisons(wtPercent, molPercent),
    ...chromates(parsed),
    ...tooMuch(wtPercent),
    ...boron(wtPercent)
  ];
}
function poisons(wtPercent, molPercent) {
  const held2 = NEVER.filter((oxide) => (wtPercent[oxide] ?? 0) > TRACE_PERCENT);
  if (held2.length === 0) return [];
  const named = held2.map(
    (oxide) => `${metalOf(oxide)} (${shareText(molPercent[oxide] ?? 0)} mol %)`
  );
  const radioactive = held2.some((oxide) => oxide === "U3O8" || oxide === "ThO2");
  return [
    glazeFinding("warning", "poisonous metals", {
      statement: `The glaze holds ${joined(named)}.${radioactive ? " Uranium and thorium are radioactive as well as poisonous." : ""}`,
      basis: basedOn(
        `metals that poison in small amounts, spoken of above ${TRACE_PERCENT} % of the weight; the law limits the release of lead and cadmium from ware`,
        "eu-84-500"
      ),
      advice: "Do without. A piece that has it is for nobody to eat or drink from; read the cautions below before the powder is opened."
    })
  ];
}
function chromates(parsed) {
  const names = chromatesIn(parsed);
  if (names.length === 0) return [];
  return [
    glazeFinding("warning", "chromates", {
      statement: `${joined(names)}: chromium in its six-valued form, which causes cancer when breathed and burns skin; many of these salts dissolve in water.`,
      basis: "chemistry textbooks, from memory",
      advice: "Do without: green chromium oxide gives the same colour. What is left of it is hazardous waste under your local rules."
    })
  ];
}
function chromatesIn({ givenAs, remarks }) {
  if (givenAs.kind === "oxides")
    return remarks.some((each) => each.startsWith("CrO3")) ? ["CrO3"] : [];
  return [...givenAs.recipe.base, ...givenAs.recipe.additions].flatMap(
    ({ name, material: material2 }) => isChromate(material2.formula) || /\b(?:di|bi)?chromate|\bchromic a/i.test(name) ? [name] : []
  );
}
function isChromate(formula) {
  if (formula === null) return false;
  const atoms = atomsIn(formula.split("\xB7")[0]);
  return (atoms.get("O") ?? 0) > 2.5 * (atoms.get("Cr") ?? Number.POSITIVE_INFINITY);
}
function tooMuch(wtPercent) {
  const over = entriesOf(wtPercent).flatMap(([oxide, percent]) => {
    const most = ABOVE_WEIGHT_PERCENT[oxide];
    return most !== void 0 && percent > most ? [`${metalOf(oxide)} (${oxide} ${shareText(percent)} % of the weight, over ${most} %)`] : [];
  });
  if (over.length === 0) return [];
  return [
    glazeFinding("caution", "much of a harmful metal", {
      statement: `The glaze holds much ${joined(over)}: so much readily leaves a glaze into food, and its powder and fume harm whoever works with it.`,
      basis: OWN_AMOUNTS,
      advice: "Keep it off anything that holds food or drink until a laboratory has tested fired pieces for this metal."
    })
  ];
}
function boron(wtPercent) {
  const percent = wtPercent.B2O3 ?? 0;
  if (percent < 1) return [];
  return [
    glazeFinding("note", "boron", {
      statement: `The glaze holds boron (B2O3 ${shareText(percent)} % of the weight). Raw borates, borax and boric acid, harm when much of them is breathed or swallowed.`,
      basis: "chemistry textbooks, from memory",
      advice: "Wear a fitted respirator and gloves when you weigh raw borates."
    })
  ];
}
function metalOf(oxide) {
  const element = [...atomsIn(oxide).keys()].find((each) => each !== "O");
  return elementName(element ?? oxide);
}

// src/core/glaze/glazeHazards.ts
function glazeHazards(parsed) {
  const { moles, givenAs } = parsed;
  const holds = (...oxides) => oxides.some((oxide) => (moles[oxide] ?? 0) > 0);
  const brings = (...elements) => elements.some((each) => broughtBy(parsed, each));
  return {
    powders: givenAs.kind === "recipe",
    silicaDust: givenAs.kind === "recipe" && holds("SiO2"),
    lead: holds("PbO"),
    cadmium: holds("CdO"),
    otherPoisons: holds("As2O3", "Sb2O3", "BeO", "SeO2", "HgO", "Tl2O"),
    radioactive: holds("U3O8", "ThO2"),
    chromates: chromatesIn(parsed).length > 0,
    barium: holds("BaO"),
    manganese: holds("MnO"),
    lithium: holds("Li2O"),
    chromium: holds("Cr2O3"),
    copper: holds("CuO"),
    cobaltOrNickel: holds("CoO", "NiO"),
    vanadium: holds("V2O5"),
    fluorine: holds("F", "Cl", "Br", "I") || brings("F", "Cl", "Br", "I"),
    sulphur: brings("S", "N"),
    glazeSurface: true,
    glazeEstimate: true
  };
}
function broughtBy({ givenAs }, element) {
  if (givenAs.kind !== "recipe") return false;
  return [...givenAs.recipe.base, ...givenAs.recipe.additions].some(
    ({ material: material2, parts }) => parts > 0 && material2.formula !== null && atomsIn(material2.formula).has(element)
  );
}

// src/core/glaze/oxidesOfFormula.ts
var LEAVES = /* @__PURE__ */ new Set(["H", "C", "N", "O", "S", "F", "Cl", "Br", "I"]);
var FIRED = new Map(
  OXIDES.flatMap(
    (oxide) => [...atomsIn(oxide)].filter(([element]) => element !== "O").map(([element, atoms]) => [element, [oxide, 1 / atoms]])
  )
);
function firedOxideOf(element) {
  return FIRED.get(element)?.[0] ?? null;
}
function stayingElements(atoms) {
  return [...atoms.keys()].filter((element) => !LEAVES.has(element));
}
function otherOxideOf(atoms) {
  const [element, ...more] = [...atoms.keys()].filter((each) => each !== "O");
  const fired = element === void 0 || more.length > 0 ? void 0 : FIRED.get(element);
  if (fired === void 0 || element === void 0) return null;
  return [fired[0], (atoms.get(element) ?? 0) * fired[1]];
}
function oxidesOfFormula(formula) {
  const mass = molarMass(formula);
  const moles = {};
  for (const [element, count] of atomsIn(formula)) {
    if (LEAVES.has(element)) continue;
    const fired = FIRED.get(element);
    if (fired === void 0) throw new RangeError(`oxidesOfFormula: ${element} in ${formula}`);
    const [oxide, perAtom] = fired;
    moles[oxide] = (moles[oxide] ?? 0) + perAtom * count / mass;
  }
  const oxides = weightsOf(moles);
  const loss = 1 - totalOf(oxides);
  return { oxides, lossFraction: Math.abs(loss) < 1e-9 ? 0 : loss };
}

// src/core/glaze/namedOxides.ts
var OTHER_OXIDES = "MnO2 Mn2O3 Mn3O4 Mn2O7 Co3O4 Co2O3 CoO2 Cu2O Fe3O4 PbO2 Pb3O4 Pb2O3 CrO CrO2 CrO3 VO VO2 V2O3 V2O4 Sb2O4 Sb2O5 As2O5 As4O6 SeO3 TeO3 UO2 UO3 Hg2O Tl2O3 Ni2O3 NiO2 BaO2 SrO2 CaO2 MgO2 Li2O2 Na2O2 ZnO2 TiO Ti2O3 SnO Bi2O5 Ce2O3 PrO2 Pr6O11 TbO2 Tb4O7 MoO2 WO2 NbO NbO2 GeO P2O3 P4O10 In2O Ga2O AgO Au2O3 PtO2 PtO Cd2O ReO3 OsO4 RuO4 SO2".split(
  " "
);
var COUNTED_AS = new Map(
  OTHER_OXIDES.map((formula) => {
    const counted = otherOxideOf(atomsIn(formula));
    if (counted === null) throw new RangeError(`namedOxides: ${formula}`);
    return [formula, counted];
  })
);
var KNOWN = [...OXIDES, ...COUNTED_AS.keys()];
var BY_LOWER_CASE = new Map(KNOWN.map((name) => [name.toLowerCase(), name]));
var SUBSCRIPTS = "\u2080\u2081\u2082\u2083\u2084\u2085\u2086\u2087\u2088\u2089";
function namedOxides(given, context) {
  const amounts = {};
  const seen = /* @__PURE__ */ new Map();
  const problems = [];
  const remarks = [];
  let sum = 0;
  for (const [key, amount] of Object.entries(given)) {
    const name = BY_LOWER_CASE.get(plain(key));
    const earlier = seen.get(name ?? "");
    if (name === void 0) problems.push(unknownOxide(key, context.placeOf(key)));
    else if (earlier !== void 0) problems.push(twice(key, earlier, context.placeOf(key)));
    else {
      seen.set(name, key);
      sum += amount;
      const { oxide, counted } = countedAs(name, amount, context.by);
      amounts[oxide] = (amounts[oxide] ?? 0) + counted;
      if (oxide !== name && amount > 0) remarks.push(`${name} is counted as ${oxide}`);
    }
  }
  return problems.length > 0 ? failed(...problems) : ok({ amounts, sum, remarks });
}
function countedAs(name, amount, by) {
  const other = COUNTED_AS.get(name);
  if (other === void 0) return { oxide: name, counted: amount };
  const [oxide, moles] = other;
  const weight = moles * oxideMass(oxide) / molarMass(name);
  return { oxide, counted: amount * (by === "moles" ? moles : weight) };
}
function plain(key) {
  return key.trim().toLowerCase().replaceAll(/[₀-₉]/g, (digit) => String(SUBSCRIPTS.indexOf(digit)));
}
function unknownOxide(key, where) {
  const meant = meantOxide(key);
  return {
    code: "glaze/unknown-oxide",
    what: `${shown(key)} is not an oxide that is known here`,
    where,
    expected: "an oxide by its formula, such as SiO2, Al2O3 or PbO",
    fix: meant === null ? "look at its spelling; do not leave it out, for what is missing here no warning can see" : `write ${meant}, if you mean it`
  };
}
function meantOxide(key) {
  const written = plain(key);
  const sameLetters = KNOWN.find((name) => lettersOf(name.toLowerCase()) === lettersOf(written));
  if (sameLetters !== void 0) return sameLetters;
  const atoms = atomsInWords(key.trim()) ?? atomsInWords(capitalised(written));
  const staying = atoms === null ? [] : stayingElements(atoms);
  const element = staying.length === 1 ? staying[0] : elementIn(written);
  return element === null ? null : firedOxideOf(element);
}
function lettersOf(text) {
  return text.replaceAll("0", "o").replaceAll(/[^a-z]/g, "");
}
function capitalised(text) {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
function twice(key, earlier, where) {
  return {
    code: "glaze/oxide-twice",
    what: `${shown(key)} and ${shown(earlier)} are the same oxide`,
    where,
    expected: "each oxide once",
    fix: "add the two up, or remove one"
  };
}

// src/core/glaze/chemicals.ts
var CHEMICALS = [
  ["red lead", "Pb3O4", 8.3, "minium", "lead tetroxide", "red lead oxide", "trilead tetroxide"],
  ["litharge", "PbO", 9.5, "lead oxide", "lead monoxide", "yellow lead oxide", "massicot"],
  ["lead dioxide", "PbO2", 9.4, "lead peroxide"],
  ["white lead", "Pb3(CO3)2(OH)2", 6.8, "basic lead carbonate", "ceruse"],
  ["lead carbonate", "PbCO3", 6.6, "cerussite"],
  ["lead monosilicate", "PbSiO3", 6.5, "lead silicate"],
  ["lead bisilicate", "PbSi2O5", 4.6, "lead disilicate"],
  ["lead sesquisilicate", "Pb2Si3O8", 5],
  ["galena", "PbS", 7.6, "lead sulphide", "lead ore"],
  ["lead sulphate", "PbSO4", 6.3],
  ["lead acetate", "Pb(C2H3O2)2\xB73H2O", 2.6, "sugar of lead"],
  ["lead nitrate", "Pb(NO3)2", 4.5],
  ["lead chromate", "PbCrO4", 6.1, "chrome yellow"],
  ["lead antimonate", "Pb2Sb2O7", 6.6, "naples yellow", "antimoniate of lead"],
  ["cadmium oxide", "CdO", 8.2],
  ["cadmium carbonate", "CdCO3", 4.3],
  ["cadmium sulphide", "CdS", 4.8, "cadmium yellow"],
  ["cadmium selenide", "CdSe", 5.8, "cadmium red"],
  ["cadmium sulphoselenide", "Cd2SSe", 5.2, "cadmium selenium sulphide"],
  ["selenium", "Se", 4.8, "selenium metal", "selenium powder"],
  ["selenium dioxide", "SeO2", 4, "selenium oxide", "selenious oxide"],
  ["sodium selenite", "Na2SeO3", 3.1],
  ["sodium selenate", "Na2SeO4", 3.1],
  ["barium selenite", "BaSeO3", 4.4],
  ["zinc selenite", "ZnSeO3", 4.2],
  ["mercury", "Hg", 13.5, "quicksilver"],
  ["mercuric oxide", "HgO", 11.1, "mercury oxide", "red mercury oxide"],
  ["cinnabar", "HgS", 8.1, "vermilion", "mercury sulphide", "mercuric sulphide"],
  ["mercuric chloride", "HgCl2", 5.4, "mercury chloride", "corrosive sublimate"],
  ["thallium oxide", "Tl2O", 9.5, "thallous oxide"],
  ["thallic oxide", "Tl2O3", 10.2],
  ["thallium carbonate", "Tl2CO3", 7.1],
  ["thallium sulphate", "Tl2SO4", 6.8],
  ["uranium oxide", "U3O8", 8.4, "black uranium oxide", "triuranium octoxide", "pitchblende"],
  ["uranium dioxide", "UO2", 11, "uraninite"],
  ["uranium trioxide", "UO3", 7.3, "orange uranium oxide"],
  ["sodium uranate", "Na2U2O7", 6.4, "sodium diuranate", "uranium yellow", "yellow uranium oxide"],
  ["ammonium diuranate", "(NH4)2U2O7", 6, "yellowcake", "ammonium uranate"],
  ["uranyl nitrate", "UO2(NO3)2\xB76H2O", 2.8, "uranium nitrate"],
  [
    "white arsenic",
    "As2O3",
    3.7,
    "arsenic trioxide",
    "arsenic oxide",
    "arsenious oxide",
    "arsenic"
  ],
  ["arsenic pentoxide", "As2O5", 4.3, "arsenic acid"],
  ["orpiment", "As2S3", 3.5, "arsenic sulphide"],
  ["realgar", "As4S4", 3.6],
  ["antimony oxide", "Sb2O3", 5.2, "antimony trioxide", "antimonious oxide"],
  ["antimony pentoxide", "Sb2O5", 3.8],
  ["sodium antimonate", "NaSbO3", 4.8],
  ["potassium antimonate", "KSbO3", 4.5],
  ["stibnite", "Sb2S3", 4.6, "antimony sulphide", "crude antimony"],
  ["beryllium oxide", "BeO", 3, "beryllia"],
  ["beryllium carbonate", "BeCO3", 2],
  ["beryl", "Be3Al2Si6O18", 2.7],
  ["potassium dichromate", "K2Cr2O7", 2.7, "potassium bichromate", "bichromate of potash"],
  ["sodium dichromate", "Na2Cr2O7\xB72H2O", 2.5, "sodium bichromate"],
  ["ammonium dichromate", "(NH4)2Cr2O7", 2.1, "ammonium bichromate"],
  ["potassium chromate", "K2CrO4", 2.7],
  ["sodium chromate", "Na2CrO4", 2.7],
  ["barium chromate", "BaCrO4", 4.5, "lemon chrome"],
  ["strontium chromate", "SrCrO4", 3.9],
  ["zinc chromate", "ZnCrO4", 3.4],
  ["calcium chromate", "CaCrO4", 2.9],
  ["chromium trioxide", "CrO3", 2.7, "chromic acid", "chromic anhydride"],
  ["iron chromate", "FeCr2O4", 4.8, "chromite", "iron chromite", "ferrous chromite"],
  ["vanadium pentoxide", "V2O5", 3.4, "vanadium oxide"],
  ["ammonium metavanadate", "NH4VO3", 2.3, "ammonium vanadate"],
  ["nickel carbonate", "NiCO3", 4.4],
  ["black nickel oxide", "Ni2O3", 4.8, "nickelic oxide"],
  ["nickel sulphate", "NiSO4\xB76H2O", 2.1],
  ["nickel chloride", "NiCl2\xB76H2O", 1.9],
  ["nickel nitrate", "Ni(NO3)2\xB76H2O", 2.1],
  ["cobaltous oxide", "CoO", 6.4, "grey cobalt oxide"],
  ["cobalt sulphate", "CoSO4\xB77H2O", 2],
  ["cobalt chloride", "CoCl2\xB76H2O", 1.9],
  ["cobalt nitrate", "Co(NO3)2\xB76H2O", 1.9],
  ["cobalt phosphate", "Co3(PO4)2", 3.8],
  ["manganous oxide", "MnO", 5.4, "manganese oxide", "manganese monoxide"],
  ["manganese sulphate", "MnSO4\xB7H2O", 2.9],
  ["manganese chloride", "MnCl2\xB74H2O", 2],
  ["potassium permanganate", "KMnO4", 2.7],
  ["barium sulphate", "BaSO4", 4.5, "barytes", "baryte", "barite", "heavy spar"],
  ["barium oxide", "BaO", 5.7, "baryta"],
  ["barium hydroxide", "Ba(OH)2\xB78H2O", 2.2],
  ["barium chloride", "BaCl2\xB72H2O", 3.1],
  ["barium nitrate", "Ba(NO3)2", 3.2],
  ["lithium fluoride", "LiF", 2.6],
  ["lithium oxide", "Li2O", 2, "lithia"],
  ["lithium chloride", "LiCl", 2.1],
  ["lepidolite", "KLi2AlSi4O10(OH)2", 2.8, "lithia mica"],
  ["amblygonite", "LiAlPO4F", 3],
  ["red copper oxide", "Cu2O", 6, "cuprous oxide", "cuprite"],
  ["copper metal", "Cu", 8.9, "copper powder"],
  ["copper sulphate", "CuSO4\xB75H2O", 2.3, "blue vitriol", "bluestone"],
  ["copper chloride", "CuCl2\xB72H2O", 2.5],
  ["copper nitrate", "Cu(NO3)2\xB73H2O", 2.3],
  ["azurite", "Cu3(CO3)2(OH)2", 3.8],
  ["sodium borate", "Na2B4O7", 2.4, "anhydrous borax", "boron oxide salt"],
  ["boron oxide", "B2O3", 2.5, "boric oxide", "boron trioxide"],
  ["fluorspar", "CaF2", 3.2, "fluorite", "calcium fluoride"],
  ["cryolite", "Na3AlF6", 3, "sodium aluminium fluoride"],
  ["bismuth subnitrate", "BiONO3", 4.9, "bismuth nitrate"],
  ["silver nitrate", "AgNO3", 4.4],
  ["silver carbonate", "Ag2CO3", 6.1],
  ["tin chloride", "SnCl2\xB72H2O", 2.7, "stannous chloride"]
];

// src/core/glaze/minerals.ts
var ROWS = [
  ["potash feldspar", "KAlSi3O8", 2.6, "orthoclase", "microcline", "potassium feldspar"],
  ["soda feldspar", "NaAlSi3O8", 2.6, "albite", "sodium feldspar"],
  ["lime feldspar", "CaAl2Si2O8", 2.7, "anorthite"],
  ["nepheline", "Na3KAl4Si4O16", 2.6],
  ["petalite", "LiAlSi4O10", 2.4],
  ["spodumene", "LiAlSi2O6", 3.1],
  ["kaolinite", "Al2Si2O5(OH)4", 2.6, "kaolin", "china clay"],
  ["metakaolin", "Al2Si2O7", 2.6, "calcined kaolin", "calcined kaolinite"],
  ["montmorillonite", "Na0.33Al1.67Mg0.33Si4O10(OH)2", 2.5, "bentonite"],
  ["pyrophyllite", "Al2Si4O10(OH)2", 2.8],
  ["quartz", "SiO2", 2.65, "silica", "flint"],
  ["whiting", "CaCO3", 2.8, "calcite", "calcium carbonate", "chalk", "limestone"],
  ["dolomite", "CaMg(CO3)2", 2.85],
  ["talc", "Mg3Si4O10(OH)2", 2.75],
  ["wollastonite", "CaSiO3", 2.9],
  ["magnesite", "MgCO3", 3, "magnesium carbonate"],
  ["magnesia", "MgO", 3.6, "magnesium oxide"],
  ["calcined alumina", "Al2O3", 3.9, "alumina", "aluminium oxide"],
  ["alumina hydrate", "Al(OH)3", 2.4, "aluminium hydroxide"],
  ["zinc oxide", "ZnO", 5.6],
  ["strontium carbonate", "SrCO3", 3.7],
  ["barium carbonate", "BaCO3", 4.3],
  ["lithium carbonate", "Li2CO3", 2.1],
  ["soda ash", "Na2CO3", 2.5, "sodium carbonate"],
  ["pearl ash", "K2CO3", 2.4, "potassium carbonate"],
  ["borax", "Na2B4O7\xB710H2O", 1.7],
  ["boric acid", "H3BO3", 1.4],
  ["colemanite", "Ca2B6O11\xB75H2O", 2.4],
  ["ulexite", "NaCaB5O9\xB78H2O", 2],
  ["bone ash", "Ca3(PO4)2", 3.1, "calcium phosphate"],
  ["rutile", "TiO2", 4.2, "titanium dioxide", "titanium oxide"],
  ["zircon", "ZrSiO4", 4.6, "zirconium silicate"],
  ["zirconia", "ZrO2", 5.7, "zirconium oxide"],
  ["tin oxide", "SnO2", 6.9],
  ["red iron oxide", "Fe2O3", 5.2, "iron oxide", "haematite", "hematite"],
  ["black iron oxide", "Fe3O4", 5.2, "magnetite"],
  ["manganese dioxide", "MnO2", 5],
  ["manganese carbonate", "MnCO3", 3.7],
  ["copper carbonate", "CuCO3\xB7Cu(OH)2", 4, "malachite"],
  ["copper oxide", "CuO", 6.3],
  ["cobalt carbonate", "CoCO3", 4.1],
  ["cobalt oxide", "Co3O4", 6.1],
  ["chromium oxide", "Cr2O3", 5.2, "chrome oxide"],
  ["nickel oxide", "NiO", 6.7]
];
var MINERALS = ROWS.map(material);
var ALL = [...ROWS, ...CHEMICALS];
var ALL_MATERIALS = [...MINERALS, ...CHEMICALS.map(material)];
var MINERAL_WORDS = new Map(
  ALL.flatMap(
    ([name, , , ...words], index) => [name, ...words].flatMap(spelled).map((word) => [word, ALL_MATERIALS[index]])
  )
);
function materialOfFormula(name) {
  const formula = name.trim();
  const atoms = atomsInWords(formula);
  if (atoms === null || atoms.size < 2 && !/\d/.test(formula)) return null;
  const staying = stayingElements(atoms);
  if (staying.length === 0 || staying.some((element) => firedOxideOf(element) === null))
    return null;
  return {
    name: formula,
    formula,
    ...oxidesOfFormula(formula),
    densityGPerCm3: null,
    source: "mineral-formulas"
  };
}
function material([name, formula, densityGPerCm3]) {
  return {
    name,
    formula,
    ...oxidesOfFormula(formula),
    densityGPerCm3,
    source: "mineral-formulas"
  };
}
function spelled(word) {
  const other = word.replace("sulph", "sulf").replace("aluminium", "aluminum");
  return other === word ? [word] : [word, other];
}

// src/core/glaze/ownMaterial.ts
var TOLERANCE = 2;
function ownMaterial(name, given, placeOf) {
  const loi = given.loi ?? 0;
  const oxides = namedOxides(given.oxides, {
    by: "weight",
    placeOf: (key) => placeOf(["oxides", key])
  });
  const problems = oxides.ok ? [] : [...oxides.problems];
  if (loi >= 100) problems.push(lossProblem(loi, placeOf(["loi"])));
  else if (oxides.ok) {
    const sum2 = oxides.value.sum + (given.basis === "calcined" ? 0 : loi);
    if (Math.abs(sum2 - 100) > TOLERANCE)
      problems.push(sumProblem(oxides.value.sum, given, placeOf([])));
  }
  if (!oxides.ok || problems.length > 0) return failed(...problems);
  const { amounts, sum, remarks } = oxides.value;
  const kept = given.basis === "calcined" ? 1 - loi / 100 : sum / (sum + loi);
  return ok({
    material: {
      name,
      formula: null,
      oxides: mapAmounts(amounts, (amount) => amount / sum * kept),
      lossFraction: 1 - kept,
      densityGPerCm3: given.density ?? null,
      source: { yours: given.source }
    },
    remarks: remarks.map((remark) => `${name}: ${remark}`)
  });
}
function lossProblem(loi, where) {
  return {
    code: "glaze/loss",
    what: `loi is ${shown(loi)}`,
    where,
    expected: "a loss on ignition below 100 per cent, for something has to stay in the glaze",
    fix: "check the number; what burns away whole, such as gum, belongs in notes"
  };
}
function sumProblem(sum, given, where) {
  const loi = given.loi ?? 0;
  const alone = percentText(sum);
  const withLoss = percentText(sum + loi);
  const other = given.basis === "calcined" ? sum + loi : sum;
  const asCalcined = given.basis === "calcined";
  return {
    code: "glaze/analysis-sum",
    what: `the oxides add up to ${alone}, and with the loss on ignition to ${withLoss}`,
    where,
    expected: asCalcined ? `oxides of 100 \xB1 ${TOLERANCE} % by themselves (basis: calcined)` : `oxides and loss of 100 \xB1 ${TOLERANCE} % together (basis: as received)`,
    fix: Math.abs(other - 100) <= TOLERANCE && loi !== 0 ? `write basis: ${asCalcined ? "as received" : "calcined"}, which these numbers fit` : "look for the oxide or the loss that is missing or mistyped"
  };
}
function percentText(value) {
  return `${value.toFixed(1)} %`;
}

// src/core/glaze/recipeOf.ts
function recipeOf(file, placeOf) {
  const own = ownMaterials(file, placeOf);
  if (!own.ok) return own;
  const { shelf, remarks } = own.value;
  const base = linesOf(file.recipe ?? {}, { shelf, placeOf, key: "recipe" });
  const additions = linesOf(file.additions ?? {}, { shelf, placeOf, key: "additions" });
  if (!base.ok || !additions.ok)
    return failed(
      ...listedOnce([base, additions].flatMap((part) => part.ok ? [] : part.problems))
    );
  const recipe = { base: base.value, additions: additions.value };
  return ok({ recipe, remarks: [...remarks, ...unusedRemarks(shelf, recipe)] });
}
function ownMaterials(file, placeOf) {
  const shelf = /* @__PURE__ */ new Map();
  const problems = [];
  const remarks = [];
  for (const [name, given] of Object.entries(file.materials ?? {})) {
    const found = ownMaterial(name, given, (path) => placeOf(["materials", name, ...path]));
    if (!found.ok) {
      problems.push(...found.problems);
      continue;
    }
    shelf.set(plain2(name), found.value.material);
    remarks.push(...found.value.remarks);
    if (MINERAL_WORDS.has(plain2(name)))
      remarks.push(`${name}: your own analysis is used in place of the ideal mineral`);
  }
  return problems.length > 0 ? failed(...problems) : ok({ shelf, remarks });
}
function linesOf(given, context) {
  const { shelf, placeOf, key } = context;
  const problems = [];
  const lines = [];
  for (const [name, amount] of Object.entries(given)) {
    const material2 = shelf.get(plain2(name)) ?? MINERAL_WORDS.get(plain2(name)) ?? materialOfFormula(name);
    if (material2 === null) problems.push(unknownMaterial(name, shelf, placeOf([key, name])));
    else
      lines.push(
        typeof amount === "number" ? { name, material: material2, parts: amount, calcined: false } : { name, material: material2, parts: amount.parts, calcined: amount.calcined ?? false }
      );
  }
  return problems.length > 0 ? failed(...problems) : ok(lines);
}
function plain2(name) {
  return name.trim().toLowerCase().replaceAll(/\s+/g, " ");
}
function unknownMaterial(name, shelf, where) {
  const own = [...shelf.values()].map((material2) => material2.name);
  const element = elementIn(name);
  const known = [...own, ...MINERAL_WORDS.keys()];
  const offered = element === null ? known : known.filter((word) => elementIn(word) === element);
  const near = nearWord(plain2(name), offered) ?? wordInside(plain2(name), offered);
  const named = element === null ? "" : ` and do not leave it out: it names ${elementName(element)}`;
  return {
    code: "glaze/unknown-material",
    what: `${shown(name)} is neither under materials nor a built-in mineral`,
    where,
    expected: `one of ${[...own, ...MINERALS.map((mineral) => mineral.name)].join(", ")}`,
    fix: near === null ? `put its analysis under materials, with oxides, loi and source${named}` : `write ${near}, if you mean it, or put its analysis under materials${named}`
  };
}
function wordInside(name, known) {
  const inside = known.filter((word) => ` ${name} `.includes(` ${word} `));
  return inside.toSorted((a, b) => b.length - a.length)[0] ?? null;
}
function listedOnce(problems) {
  const [first] = problems.filter(({ code }) => code === "glaze/unknown-material");
  return problems.map(
    (problem) => problem.code === "glaze/unknown-material" && problem !== first ? { ...problem, expected: "a name of that list, or one under materials" } : problem
  );
}
function unusedRemarks(shelf, { base, additions }) {
  const used = new Set([...base, ...additions].map(({ material: material2 }) => material2));
  return [...shelf.values()].filter((material2) => !used.has(material2)).map(({ name }) => `${name} stands under materials and is not in the recipe`);
}

// src/core/glaze/compositionOf.ts
var TOLERANCE2 = 1.5;
function compositionOf(file, at) {
  const confusions = confusionsOf(file, at);
  if (confusions.length > 0) return failed(...confusions);
  return file.oxides === void 0 ? ofRecipe(file, at) : ofOxides(file, file.oxides, at);
}
function confusionsOf(file, at) {
  if (file.oxides !== void 0 && file.recipe !== void 0)
    return [
      {
        code: "glaze/two-compositions",
        what: "there are oxides and a recipe",
        where: at(["recipe"]),
        expected: "one of the two: the other follows from it, or contradicts it",
        fix: "keep the recipe, or the oxides if they were analysed, and put the other in notes"
      }
    ];
  if (file.oxides === void 0 && file.recipe === void 0)
    return [
      {
        code: "glaze/no-composition",
        what: "there are neither oxides nor a recipe",
        where: at([]),
        expected: "recipe: with materials and parts, or oxides: with their basis",
        fix: "add one of the two"
      }
    ];
  if (file.oxides !== void 0 && file.additions !== void 0)
    return [
      {
        code: "glaze/additions-without-recipe",
        what: "there are additions to oxides",
        where: at(["additions"]),
        expected: "additions on top of a recipe; an analysis holds them already",
        fix: "put them among the oxides, or give the recipe"
      }
    ];
  return [];
}
function ofRecipe(file, at) {
  const found = recipeOf(file, at);
  if (!found.ok) return found;
  const { recipe, remarks } = found.value;
  if (recipe.base.length === 0) return failed(nothingStays(at(["recipe"])));
  if ([...recipe.base, ...recipe.additions].every(({ material: material2 }) => isNothing(material2.oxides)))
    return failed(nothingStays(at(["recipe"])));
  const { weights, lossFraction } = firedRecipe(recipe);
  return ok({
    moles: scaledTo(1, molesOf(weights)),
    givenAs: { kind: "recipe", recipe, lossFraction },
    remarks
  });
}
function ofOxides(file, oxides, at) {
  const { basis } = file;
  if (basis === void 0) return failed(missingBasis(at(["oxides"])));
  const named = namedOxides(oxides, {
    by: basis === "wt %" ? "weight" : "moles",
    placeOf: (key) => at(["oxides", key])
  });
  if (!named.ok) return named;
  const { amounts, sum } = named.value;
  if (isNothing(amounts)) return failed(nothingStays(at(["oxides"])));
  if (basis !== "moles" && Math.abs(sum - 100) > TOLERANCE2)
    return failed(sumProblem2(amounts, { sum, basis, where: at(["oxides"]) }));
  return ok({
    moles: scaledTo(1, basis === "wt %" ? molesOf(amounts) : amounts),
    givenAs: { kind: "oxides", basis, sum },
    remarks: [
      ...named.value.remarks,
      ...file.materials === void 0 ? [] : ["materials are given and no recipe uses them"]
    ]
  });
}
function isNothing(amounts) {
  return entriesOf(amounts).length === 0;
}
function nothingStays(where) {
  return {
    code: "glaze/nothing-stays",
    what: "nothing stays after firing",
    where,
    expected: "at least one oxide with an amount above 0",
    fix: "give the amounts"
  };
}
function missingBasis(where) {
  return {
    code: "glaze/missing-basis",
    what: "the oxides have no basis",
    where,
    expected: 'basis: "wt %" for weight, "mol %" for moles in a hundred, moles for a unity formula',
    fix: "look it up where the numbers come from; the two differ by far"
  };
}
function sumProblem2(amounts, given) {
  const fluxes = totalOf(amounts) < 15;
  return {
    code: "glaze/sum",
    what: `the oxides add up to ${given.sum.toFixed(2)} ${given.basis}, which is ${Math.abs(given.sum - 100).toFixed(2)} ${given.sum < 100 ? "short of" : "over"} 100`,
    where: given.where,
    expected: `100 \xB1 ${TOLERANCE2}, without loss on ignition`,
    fix: fluxes ? "if this is a unity formula, write basis: moles" : "look for the oxide that is missing or mistyped; leave loss on ignition out and scale to 100"
  };
}

// src/core/glaze/glazeDocument.ts
var GLAZE_DOCUMENT = {
  room: "glaze",
  thing: "a glaze",
  neededKeys: "formatVersion, title, and recipe or oxides with their basis",
  example: "one of the shipped glazes, logs/glaze-fitting.yaml",
  schema: GlazeFile,
  missingCode: "glaze/missing-key",
  otherWords: /* @__PURE__ */ new Map([
    ["name", "title"],
    ["version", "formatVersion"],
    ["analysis", "oxides"],
    ["ingredients", "recipe"],
    ["batch", "recipe"],
    ["colourants", "additions"],
    ["colorants", "additions"],
    ["extras", "additions"],
    ["cte", "expansion"],
    ["coe", "expansion"],
    ["alpha", "expansion"],
    ["unit", "basis"],
    ["units", "basis"],
    ["lossonignition", "loi"],
    ["loss", "loi"],
    ["amount", "parts"],
    ["percent", "parts"],
    ["clay", "body"],
    ["sides", "glazedSides"],
    ["crazing", "cracks"],
    ["thickness", "coat"],
    ["stiffness", "youngGPa"]
  ]),
  expected: /* @__PURE__ */ new Map([
    ["formatVersion", "formatVersion: 1"],
    ["title", "a name of 1 to 200 characters"],
    ["basis", "basis: wt %, mol % or moles for oxides; as received or calcined for a material"],
    ["oxides", "oxide and amount, a line each: SiO2: 62.5"],
    ["recipe", "material and parts, a line each: quartz: 25"],
    ["additions", "material and parts, a line each: red iron oxide: 2"],
    ["loi", "a number of per cent, below 100"],
    ["source", "where the analysis comes from, in words"],
    ["body", "a body: stoneware cone 6, or a group of its properties"],
    ["crackle", "true or false"]
  ]),
  quotedKeys: ["cone"],
  shorten: /* @__PURE__ */ new Map()
};

// src/core/glaze/glazedWare.ts
var THICKEST_WALL_MM = 100;
var THICKEST_COAT_MM = 10;
var WIDEST_SPACING_MM = 1e3;
function glazedWare(file, at) {
  const body = bodyOf(file.body, at);
  const wall = lengthOf(file.wall, at(["wall"]), THICKEST_WALL_MM);
  const coat = coatOf(file.coat, at(["coat"]));
  const spacing = spacingOf(file, at);
  const pings = (file.cracks?.pings ?? []).map((ping, i) => pingOf(ping, at, i));
  const problems = [];
  for (const part of [body, wall, coat, spacing, ...pings])
    if (!part.ok) problems.push(...part.problems);
  if (!body.ok || !wall.ok || !coat.ok || !spacing.ok || problems.length > 0)
    return failed(...problems);
  return ok({
    body: body.value,
    wallMm: wall.value,
    coatMm: coat.value,
    glazing: glazingOf(file),
    absorptionPercent: file.absorption ?? null,
    cracks: {
      cracked: file.cracks?.cracked ?? null,
      spacing: spacing.value,
      pings: pings.flatMap((ping) => ping.ok ? [ping.value] : [])
    }
  });
}
function bodyOf(given, at) {
  return given === void 0 ? ok(null) : bodyGiven(given, (path) => at(["body", ...path]));
}
function glazingOf({ glazedSides, shape }) {
  if (glazedSides === void 0) return null;
  if (glazedSides === "both") return "both faces";
  return shape === "flat" ? "one face, free to bend" : "one face, wall held";
}
function spacingOf(file, at) {
  const given = file.cracks?.spacing;
  if (given === void 0) return ok(null);
  if (file.cracks?.cracked === false)
    return failed({
      code: "glaze/uncracked-with-spacing",
      what: "the glaze is not cracked and yet has a crack spacing",
      where: at(["cracks", "cracked"]),
      expected: "cracked: false, or a spacing",
      fix: "write cracked: true, or take the spacing out"
    });
  const place = (key) => at(["cracks", "spacing", key]);
  const mean = lengthOf(given.mean, place("mean"), WIDEST_SPACING_MM);
  const low = lengthOf(given.low, place("low"), WIDEST_SPACING_MM);
  const high = lengthOf(given.high, place("high"), WIDEST_SPACING_MM);
  if (!mean.ok || !low.ok || !high.ok)
    return failed(...[mean, low, high].flatMap((part) => part.ok ? [] : part.problems));
  const [meanMm, lowMm, highMm] = [mean.value ?? 0, low.value ?? 0, high.value ?? 0];
  if (lowMm <= meanMm && meanMm <= highMm)
    return ok({ meanMm, lowMm, highMm, counted: given.counted });
  return failed({
    code: "glaze/spacing-order",
    what: `low ${lowMm} mm, mean ${meanMm} mm, high ${highMm} mm`,
    where: at(["cracks", "spacing"]),
    expected: "a mean between its low and its high",
    fix: "put the three in order"
  });
}
function pingOf(given, at, index) {
  const place = (key) => at(["cracks", "pings", index, key]);
  const coat = coatOf(given.coat, place("coat"));
  const onset = parseTemperature(given.at, { unit: "C", where: place("at") });
  if (!coat.ok) return coat;
  if (!onset.ok) return onset;
  return ok({
    coatMm: coat.value ?? 0,
    onsetC: onset.value,
    sigmaK: given.plusMinus,
    kiln: given.kiln
  });
}
function coatOf(value, where) {
  const coat = lengthOf(value, where, THICKEST_COAT_MM);
  if (value === void 0 || !coat.ok || !isBareNumber(value)) return coat;
  return failed({
    code: "glaze/coat-without-unit",
    what: `the coat is written as ${value}, without a unit`,
    where,
    expected: `a thickness with its unit, above 0 and at most ${THICKEST_COAT_MM} mm`,
    fix: `write "${value} mm", if millimetres are meant`
  });
}
function lengthOf(value, where, mostMm) {
  if (value === void 0) return ok(null);
  const length = parseLength(value, { where });
  if (!length.ok || length.value <= mostMm) return length;
  return failed({
    code: "glaze/too-thick",
    what: `it measures ${Math.round(length.value)} mm`,
    where,
    expected: `at most ${mostMm} mm`,
    fix: "check the number; a bare number is millimetres"
  });
}

// src/core/units/leachAmount.ts
var FORM = {
  code: "units/not-a-leach-amount",
  kind: "an amount given off in a leach test",
  expected: '"0.42 mg/L", "0.05 mg/dm2", or "<0.02 mg/L" for less than can be found'
};
var WRITTEN = /^(<?)\s*(\d+(?:\.\d+)?)\s*(\S+)$/;
var UNITS = {
  "mg/l": "mg/L",
  "ug/ml": "mg/L",
  "\xB5g/ml": "mg/L",
  ppm: "mg/L",
  "mg/dm2": "mg/dm\xB2",
  "mg/dm\xB2": "mg/dm\xB2"
};
function parseLeachAmount(text, context) {
  const [, below, number, unit] = WRITTEN.exec(text.trim()) ?? [];
  const known = UNITS[(unit ?? "").toLowerCase()];
  if (known === void 0) return notThatQuantity(text, FORM, context.where);
  return ok({ value: Number(number), unit: known, isBelow: below === "<" });
}

// src/core/glaze/leachTestsOf.ts
function leachTestsOf(file, at) {
  const tests = [];
  const problems = [];
  for (const [index, given] of (file.leachTests ?? []).entries()) {
    const test = leachTestOf(given, (key) => at(["leachTests", index, ...key]));
    if (test.ok) tests.push(test.value);
    else problems.push(...test.problems);
  }
  return problems.length > 0 ? failed(...problems) : ok(tests);
}
function leachTestOf(given, at) {
  const depth = parseLength(given.depth, { where: at(["depth"]) });
  const holds = parseVolume(String(given.holds), { where: at(["holds"]) });
  const lead = amountOf(given.lead, at(["lead"]));
  const cadmium = amountOf(given.cadmium, at(["cadmium"]));
  if (!depth.ok || !holds.ok || !lead.ok || !cadmium.ok)
    return failed(
      ...[depth, holds, lead, cadmium].flatMap((part) => part.ok ? [] : part.problems)
    );
  if (lead.value === null && cadmium.value === null)
    return failed({
      code: "glaze/leach-nothing",
      where: at([]),
      what: "neither lead nor cadmium is given",
      expected: "what was found of one or both, under lead and cadmium",
      fix: 'write it like lead: "0.42 mg/L"'
    });
  return ok({
    ware: { use: given.ware, depthMm: depth.value, litres: holds.value },
    lead: lead.value,
    cadmium: cadmium.value,
    source: given.source
  });
}
function amountOf(given, where) {
  return given === void 0 ? ok(null) : parseLeachAmount(given, { where });
}

// src/core/glaze/ownProperties.ts
var EXPANSION_RANGE = [1e-7, 3e-5];
var SET_RANGE_C = [300, 900];
var DILATOMETER_SHARE = 0.025;
var SET_SIGMA_K = 20;
var LIMITS = {
  youngGPa: { least: 20, most: 150, spread: 0.1 },
  poisson: { least: 0.1, most: 0.4, spread: 0.1 },
  toughness: { least: 0.1, most: 5, spread: 0.15 },
  firedDensity: { least: 1.5, most: 7, spread: 0.03 }
};
function ownProperties(file, at) {
  const expansion = expansionOf(file.expansion, at);
  const setPoint = setPointOf(file.setPoint, at);
  const young = propertyOf("youngGPa", file, at);
  const poisson = propertyOf("poisson", file, at);
  const toughness = propertyOf("toughness", file, at);
  const density = propertyOf("firedDensity", file, at);
  if (expansion.ok && setPoint.ok && young.ok && poisson.ok && toughness.ok && density.ok)
    return ok({
      expansion: expansion.value,
      setPoint: setPoint.value,
      youngGPa: young.value,
      poisson: poisson.value,
      toughnessMPaRootM: toughness.value,
      firedDensityGPerCm3: density.value,
      solidsDensityGPerCm3: file.solidsDensity ?? null
    });
  const problems = [];
  for (const part of [expansion, setPoint, young, poisson, toughness, density])
    if (!part.ok) problems.push(...part.problems);
  return failed(...problems);
}
function expansionOf(given, at) {
  if (given === void 0) return ok(null);
  const { value, how, to, from = 20 } = given;
  const [least, most] = EXPANSION_RANGE;
  if (!(value >= least && value <= most))
    return failed({
      code: "glaze/expansion",
      what: `the expansion is ${shown(value)}`,
      where: at(["expansion", "value"]),
      expected: "a mean linear expansion per kelvin, 0.1e-6 to 30e-6",
      fix: value > 0.1 && value < 30 ? `write ${value}e-6` : "write it like 7.2e-6"
    });
  if (!(to > from))
    return failed({
      code: "glaze/expansion-range",
      what: `the range goes from ${shown(from)} to ${shown(to)} \xB0C`,
      where: at(["expansion", "to"]),
      expected: "an upper end above the lower one",
      fix: "give both in \xB0C: from: 20, to: 500"
    });
  const sigmaPerK = given.plusMinus ?? DILATOMETER_SHARE * value;
  return ok({
    meanPerK: value,
    sigmaPerK,
    relativeSigmaPerK: sigmaPerK,
    fromC: from,
    toC: to,
    from: "measured",
    source: given.plusMinus === void 0 ? `yours: ${how}; its spread is half of what a dilatometer may be off (${cited("astm-c372")})` : `yours: ${how}`
  });
}
function setPointOf(given, at) {
  if (given === void 0) return ok(null);
  const where = at(["setPoint", "value"]);
  const temp = parseTemperature(given.value, { unit: "C", where });
  if (!temp.ok) return temp;
  const [least, most] = SET_RANGE_C;
  if (!(temp.value >= least && temp.value <= most))
    return failed({
      code: "glaze/set-point",
      what: `the set point is ${Math.round(temp.value)} \xB0C`,
      where,
      expected: `${least} to ${most} \xB0C, where a glaze turns stiff on cooling`,
      fix: "check the number and its unit; it is not the firing temperature"
    });
  return ok({
    valueC: temp.value,
    sigmaK: given.plusMinus ?? SET_SIGMA_K,
    from: "given",
    source: `yours: ${given.how}`
  });
}
function propertyOf(name, file, at) {
  const given = file[name];
  if (given === void 0) return ok(null);
  const { least, most, spread } = LIMITS[name];
  const { value, low, high } = typeof given === "number" ? { value: given, low: given * (1 - spread), high: given * (1 + spread) } : given;
  if (!(value >= least && value <= most))
    return failed({
      code: "glaze/property-range",
      what: `${name} is ${shown(value)}`,
      where: at([name]),
      expected: `a number from ${least} to ${most}`,
      fix: "check the unit, or leave it out to take the usual one"
    });
  if (!(low <= value && value <= high))
    return failed({
      code: "glaze/property-order",
      what: `low ${shown(low)}, value ${shown(value)}, high ${shown(high)}`,
      where: at([name]),
      expected: "a value between its low and its high",
      fix: "put the three in order"
    });
  return ok({ value, low, high, source: "yours" });
}

// src/core/glaze/parseGlaze.ts
function parseGlaze(text, name) {
  const document = readDocument(text, name, GLAZE_DOCUMENT);
  if (!document.ok) return document;
  const shape = GlazeFile.safeParse(document.value.value);
  if (!shape.success)
    return failed(...schemaProblems(shape.error.issues, document.value, GLAZE_DOCUMENT));
  return meaningOf(shape.data, document.value.placeOf);
}
function meaningOf(file, at) {
  const composition = compositionOf(file, at);
  const own = ownProperties(file, at);
  const cone = file.cone === void 0 ? ok(null) : parseCone(file.cone, { series: "self-supporting", where: at(["cone"]) });
  const ware = glazedWare(file, at);
  const leachTests = leachTestsOf(file, at);
  if (composition.ok && own.ok && cone.ok && ware.ok && leachTests.ok)
    return ok({
      title: file.title,
      invented: file.invented ?? false,
      cone: cone.value,
      crackle: file.crackle ?? false,
      ...composition.value,
      own: own.value,
      ware: ware.value,
      leachTests: leachTests.value,
      notes: file.notes ?? null
    });
  const problems = [];
  for (const part of [composition, own, cone, ware, leachTests])
    if (!part.ok) problems.push(...part.problems);
  return failed(...problems);
}

// src/core/glaze/solidsDensity.ts
var USUAL = 2.6;
function solidsDensity(recipe) {
  const lines = [...recipe.base, ...recipe.additions];
  const mass = lines.reduce((sum, { parts }) => sum + parts, 0);
  const volume = lines.reduce(
    (sum, { parts, material: material2 }) => sum + parts / (material2.densityGPerCm3 ?? USUAL),
    0
  );
  return {
    gPerCm3: mass / volume,
    unknown: lines.filter(({ material: material2 }) => material2.densityGPerCm3 === null).map(({ name }) => name)
  };
}

// src/core/glaze/slipSheet.ts
var USUAL_SOLIDS = 2.6;
var USUAL_SLIPS = [1.4, 1.45, 1.5];
function slipSheet(parsed, wish) {
  const solids = solidsOf(parsed);
  const solidGPerCm3 = solids.gPerCm3;
  const { slipGPerCm3, bucketLitres, dryG } = wish;
  if (bucketLitres !== null && slipGPerCm3 === null)
    return failed({
      code: "glaze/bucket-without-density",
      where: "--bucket",
      what: "the bucket has a volume and no density",
      expected: "the density of the slip in it as well",
      fix: "weigh a litre, or a smaller measure, and give --density 1.45"
    });
  if (slipGPerCm3 !== null && slipGPerCm3 >= solidGPerCm3)
    return failed({
      code: "glaze/slip-too-heavy",
      where: "--density",
      what: `a slip of ${slipGPerCm3.toFixed(2)} g/cm\xB3 of solids of ${solidGPerCm3.toFixed(2)} g/cm\xB3`,
      expected: "a slip lighter than its solids, for there is water in it",
      fix: "check the density, or solidsDensity in the file"
    });
  const rows = (slipGPerCm3 === null ? USUAL_SLIPS : [slipGPerCm3]).filter((density) => density < solidGPerCm3).map((density) => rowOf({ slipGPerCm3: density, solidGPerCm3 }, dryG));
  const [first] = rows;
  return ok({
    solidGPerCm3,
    solidFrom: solids.from,
    unknownMaterials: solids.unknown,
    dryG,
    rows,
    bucket: bucketLitres === null || first === void 0 ? null : {
      litres: bucketLitres,
      dryG: bucketLitres * first.dryGPerLitre,
      waterG: bucketLitres * first.waterGPerLitre
    }
  });
}
function rowOf(slip, dryG) {
  return {
    slipGPerCm3: slip.slipGPerCm3,
    dryGPerLitre: dryGPerLitre(slip),
    waterGPerLitre: waterGPerLitre(slip),
    waterG: dryG.map((mass) => waterForDryG(mass, slip))
  };
}
function solidsOf({ own, givenAs }) {
  if (own.solidsDensityGPerCm3 !== null)
    return { gPerCm3: own.solidsDensityGPerCm3, from: "yours", unknown: [] };
  if (givenAs.kind === "oxides") return { gPerCm3: USUAL_SOLIDS, from: "assumed", unknown: [] };
  return { ...solidsDensity(givenAs.recipe), from: "worked out" };
}

// src/core/glaze/alkaliFindings.ts
var MOST_ALKALIS = 25;
function alkaliFindings(molPercent, usesComputed) {
  const alkalis = totalOf(molPercent, ALKALIS);
  if (alkalis <= MOST_ALKALIS) return [];
  return [
    glazeFinding("caution", "much alkali", {
      statement: `The alkalis make ${shareText(alkalis)} mol %.${usesComputed ? ` Above ${MOST_ALKALIS} the computed expansion is worth little.` : ""} Such glazes give way to water and acids.`,
      basis: basedOn("range of the set; wear is common knowledge of glass", "appen-1974"),
      advice: "Measure it, and keep such a surface dry and for show."
    })
  ];
}

// src/core/glaze/crystalFindings.ts
var CRYSTALS_ABOVE = [
  ["SnO2", 0.7],
  ["ZrO2", 1.5],
  ["TiO2", 4],
  ["ZnO", 12],
  ["MgO", 12],
  ["CaO", 22],
  ["Fe2O3", 3],
  ["Cr2O3", 0.3],
  ["P2O5", 2]
];
var MATTE_BELOW = 5.5;
function crystalFindings(molPercent) {
  const much = CRYSTALS_ABOVE.filter(([oxide, limit]) => (molPercent[oxide] ?? 0) > limit);
  const alumina = molPercent.Al2O3 ?? 0;
  const ratio = alumina > 0 ? (molPercent.SiO2 ?? 0) / alumina : null;
  const basis = basedOn("limits for a clear glass", "crystals-in-glaze");
  return [
    ...much.length === 0 ? [] : [
      glazeFinding("caution", "crystals", {
        statement: `Crystals are likely with this much of ${joined(much.map(([oxide]) => `${oxide} (${shareText(molPercent[oxide] ?? 0)} mol %)`))}. Factors of glass do not know crystals: the expansion computed can be well off.`,
        basis,
        advice: "Take it for ranking among like glazes only."
      })
    ],
    ...ratio === null || ratio >= MATTE_BELOW ? [] : [
      glazeFinding("caution", "matte", {
        statement: `Silica to alumina is ${shareText(ratio)} to 1: below about ${MATTE_BELOW} a glaze tends to a matte, with crystals that the factors do not know.`,
        basis
      })
    ]
  ];
}

// src/core/glaze/expansionFindings.ts
var COMPUTED_SIGMA_PER_K = 5e-7;
function expansionFindings(glaze, appen) {
  const { computed, outside } = appen;
  const basis = basedOn("partial expansions of Appen's set", "appen-1974");
  if (computed === null) return [];
  const left = entriesOf(computed.left);
  return [
    ...left.length === 0 ? [] : [
      glazeFinding("note", "left out of the expansion", {
        statement: `Left out of the computed expansion, for want of a factor, in mol %: ${sharesText(left)}.`,
        basis
      })
    ],
    ...outside.length === 0 ? [] : [
      glazeFinding("caution", "outside the range of expansion", {
        statement: `Outside the range of the expansion factors, in mol %: ${outsideText(outside)}. The band is doubled, by our own estimate.`,
        basis,
        advice: "Trust a tile or a dilatometer more than this number."
      })
    ],
    ...measuredFindings(glaze, computed)
  ];
}
function measuredFindings({ expansion }, computed) {
  if (expansion.from !== "measured") return [];
  const difference = computed.meanPerK - expansion.meanPerK;
  const sigma = Math.hypot(expansion.sigmaPerK, COMPUTED_SIGMA_PER_K);
  if (Math.abs(difference) < 2 * sigma) return [];
  return [
    glazeFinding("caution", "measured against computed", {
      statement: `The measured expansion is ${expansionText(Math.abs(difference))} \xB7 10\u207B\u2076/\xB0C ${difference > 0 ? "lower" : "higher"} than the computed one, more than twice the spread of the two.`,
      basis: `measured: ${expansion.source}; ${basedOn("computed", "appen-1974")}`,
      advice: "Check the recipe against what was measured: ranges of temperature, and crystals that do not melt, also part the two."
    })
  ];
}

// src/core/glaze/appenFactors.ts
var APPEN_FACTORS = {
  SiO2: { factor: 38, mostMolPercent: 100, attested: "rule from memory" },
  TiO2: { factor: 30, mostMolPercent: 25, attested: "rule from memory" },
  ZrO2: { factor: -60, mostMolPercent: 15, attested: "seen" },
  SnO2: { factor: -45, mostMolPercent: 10, attested: "seen" },
  Al2O3: { factor: -30, mostMolPercent: 20, attested: "seen" },
  B2O3: { factor: -50, mostMolPercent: 30, attested: "rule from memory" },
  Sb2O3: { factor: 75, mostMolPercent: 5, attested: "seen" },
  BeO: { factor: 45, mostMolPercent: 30, attested: "seen" },
  MgO: { factor: 60, mostMolPercent: 25, attested: "seen" },
  CaO: { factor: 130, mostMolPercent: 25, attested: "seen" },
  SrO: { factor: 160, mostMolPercent: 30, attested: "seen" },
  BaO: { factor: 200, mostMolPercent: 40, attested: "seen" },
  ZnO: { factor: 50, mostMolPercent: 20, attested: "seen" },
  CdO: { factor: 115, mostMolPercent: 20, attested: "seen" },
  PbO: { factor: 130, mostMolPercent: 50, attested: "rule from memory" },
  MnO: { factor: 105, mostMolPercent: 25, attested: "seen" },
  FeO: { factor: 55, mostMolPercent: 20, attested: "seen" },
  CoO: { factor: 50, mostMolPercent: 20, attested: "seen" },
  NiO: { factor: 50, mostMolPercent: 15, attested: "seen" },
  CuO: { factor: 30, mostMolPercent: 10, attested: "seen" },
  Li2O: { factor: 270, mostMolPercent: 30, attested: "seen" },
  Na2O: { factor: 395, mostMolPercent: 25, attested: "seen" },
  K2O: { factor: 465, mostMolPercent: 20, attested: "seen" },
  P2O5: { factor: 140, mostMolPercent: 8, attested: "seen" }
};
var APPEN_LEAST_SILICA = 45;

// src/core/glaze/appenExpansion.ts
function appenExpansion(moles) {
  if (!(totalOf(moles) > 0)) return null;
  const counted = withIronByAtoms(mapAmounts(moles, keepIf(hasFactor)));
  if (!(totalOf(counted) > 0)) return null;
  const percent = scaledTo(100, counted);
  const sum = entriesOf(percent).reduce(
    (total, [oxide, share]) => total + share * factorOf(oxide, percent),
    0
  );
  return {
    meanPerK: sum / 100 * 1e-7,
    countedMolPercent: percent,
    left: mapAmounts(
      scaledTo(100, moles),
      keepIf((oxide) => !hasFactor(oxide))
    )
  };
}
function hasFactor(oxide) {
  return oxide === "Fe2O3" || APPEN_FACTORS[oxide] !== void 0;
}
function keepIf(wanted) {
  return (amount, oxide) => wanted(oxide) ? amount : 0;
}
function withIronByAtoms(moles) {
  const { Fe2O3 = 0, FeO = 0, ...others } = moles;
  return Fe2O3 + FeO > 0 ? { ...others, FeO: FeO + 2 * Fe2O3 } : others;
}
function factorOf(oxide, percent) {
  const silica = percent.SiO2 ?? 0;
  switch (oxide) {
    case "SiO2":
      return silica <= 67 ? 38 : 38 - (silica - 67);
    case "TiO2":
      return held(30 - 1.5 * (silica - 50), -15, 30);
    case "B2O3":
      return boronFactor(percent);
    case "PbO": {
      const alkalis = totalOf(percent, ALKALIS);
      return alkalis < 3 ? 130 : held(115 + 5 * alkalis, 130, 190);
    }
    default:
      return APPEN_FACTORS[oxide]?.factor ?? 0;
  }
}
function boronFactor(percent) {
  const of = (...oxides) => totalOf(percent, oxides);
  const free = of("Na2O", "K2O", "BaO") + 0.7 * of("CaO", "SrO", "CdO", "PbO") + 0.3 * of("Li2O", "MgO", "ZnO") - of("Al2O3");
  const psi = Math.max(0, free / (percent.B2O3 ?? 0));
  return psi > 4 ? -50 : 12.5 * (4 - psi) - 50;
}
function held(value, least, most) {
  return Math.min(most, Math.max(least, value));
}

// src/core/glaze/appenOutside.ts
function appenOutside({ countedMolPercent }) {
  const silica = countedMolPercent.SiO2 ?? 0;
  const scarce = silica < APPEN_LEAST_SILICA ? [{ oxide: "SiO2", molPercent: silica, least: APPEN_LEAST_SILICA, most: 100 }] : [];
  const rich = entriesOf(countedMolPercent).flatMap(([oxide, molPercent]) => {
    const most = APPEN_FACTORS[oxide]?.mostMolPercent ?? 100;
    return molPercent > most ? [{ oxide, molPercent, least: 0, most }] : [];
  });
  return [...scarce, ...rich];
}

// src/core/glaze/setPointModel.ts
var TERMS = [
  [624.829],
  [4.929, ["Al2O3", 1]],
  [-1.121, ["B2O3", 1]],
  [-1.11, ["BaO", 1]],
  [6.84, ["CaO", 1]],
  [-8.123, ["F", 1]],
  [-8.453, ["Fe2O3", 1]],
  [-12.46, ["K2O", 1]],
  [-11.571, ["Li2O", 1]],
  [1.141, ["MgO", 1]],
  [-12.854, ["Na2O", 1]],
  [-4.349, ["PbO", 1]],
  [1.388, ["SrO", 1]],
  [3.864, ["TiO2", 1]],
  [8.927, ["ZrO2", 1]],
  [-0.08269, ["CaO", 2]],
  [0.39706, ["K2O", 2]],
  [0.27802, ["Li2O", 2]],
  [0.35785, ["Na2O", 2]],
  [-5382e-6, ["K2O", 3]],
  [-2576e-6, ["Li2O", 3]],
  [-4179e-6, ["Na2O", 3]],
  [0.38413, ["B2O3", 1], ["Na2O", 1]],
  [-0.20958, ["B2O3", 1], ["CaO", 1]],
  [-0.3338, ["B2O3", 1], ["Al2O3", 1]],
  [-0.13741, ["Al2O3", 1], ["CaO", 1]],
  [0.06169, ["Na2O", 1], ["K2O", 1]],
  [0.08558, ["Na2O", 1], ["Li2O", 1]],
  [-0.10283, ["Na2O", 1], ["CaO", 1]],
  [0.17538, ["K2O", 1], ["Li2O", 1]],
  [0.27425, ["K2O", 1], ["MgO", 1]],
  [0.2247, ["K2O", 1], ["CaO", 1]],
  [-0.21563, ["MgO", 1], ["CaO", 1]],
  [-0.8817, ["CaO", 1], ["Li2O", 1]],
  [0.013868, ["Al2O3", 1], ["Na2O", 1], ["CaO", 1]]
];
var RANGES = {
  SiO2: [41.4, 92],
  Al2O3: [0, 10],
  B2O3: [0, 17],
  CaO: [0, 50],
  MgO: [0, 16.6],
  K2O: [0, 34],
  Na2O: [0, 42],
  Li2O: [0, 45],
  PbO: [0, 56],
  BaO: [0, 19],
  SrO: [0, 18],
  ZnO: [0, 2.8],
  TiO2: [0, 25],
  ZrO2: [0, 1.8]
};
var SLACK = 0.05;
var UNKNOWN_SHARE = 0.5;
var MODEL_SIGMA_K = 13;
function stiffTemperature(moles) {
  const percent = scaledTo(100, moles);
  const tempC = TERMS.reduce((sum, [coefficient, ...factors]) => {
    const product = factors.reduce(
      (part, [oxide, power]) => part * (percent[oxide] ?? 0) ** power,
      coefficient
    );
    return sum + product;
  }, 0);
  return { tempC, outside: outsideOf(percent) };
}
function outsideOf(percent) {
  const known = Object.keys(RANGES);
  const beyond = known.flatMap((oxide) => {
    const [least, most] = RANGES[oxide];
    const molPercent = percent[oxide] ?? 0;
    return molPercent < least - SLACK || molPercent > most + SLACK ? [{ oxide, molPercent, least, most }] : [];
  });
  const named = /* @__PURE__ */ new Set([...known, "F", "Fe2O3"]);
  const strange = entriesOf(percent).filter(([oxide]) => !named.has(oxide)).filter(([, share]) => share > UNKNOWN_SHARE).map(([oxide, molPercent]) => ({ oxide, molPercent, least: 0, most: 0 }));
  return [...beyond, ...strange];
}

// src/core/glaze/glazeOf.ts
var SIGMA_PER_K = 5e-7;
var SIGMA_OUTSIDE_PER_K = 1e-6;
var RELATIVE_SIGMA_PER_K = 2e-7;
var BELOW_STIFF_K = 20;
var BELOW_STIFF_SIGMA_K = 20;
var BELIEVABLE_C = [350, 850];
var ASSUMED_SET = {
  valueC: 560,
  sigmaK: 60,
  from: "assumed",
  source: "our own estimate, for want of a model"
};
var USUAL2 = {
  young: { value: 65, low: 55, high: 75, source: cited("glaze-elastic") },
  poisson: { value: 0.21, low: 0.18, high: 0.25, source: cited("glaze-elastic") },
  toughness: { value: 0.7, low: 0.6, high: 0.8, source: cited("glaze-elastic") },
  density: { value: 2.45, low: 2.4, high: 2.6, source: cited("glaze-elastic") }
};
function glazeOf(parsed, computed, isOutside) {
  const { own } = parsed;
  return {
    name: parsed.title,
    oxides: parsed.moles,
    expansion: own.expansion ?? computedExpansion(computed, isOutside),
    setPoint: own.setPoint ?? computedSetPoint(parsed),
    youngGPa: own.youngGPa ?? USUAL2.young,
    poisson: own.poisson ?? USUAL2.poisson,
    toughnessMPaRootM: own.toughnessMPaRootM ?? USUAL2.toughness,
    firedDensityKgPerM3: inKgPerM3(own.firedDensityGPerCm3 ?? USUAL2.density)
  };
}
function computedExpansion(computed, isOutside) {
  if (computed === null) throw new RangeError("glazeOf: neither measured nor computed expansion");
  return {
    meanPerK: computed.meanPerK,
    sigmaPerK: isOutside ? SIGMA_OUTSIDE_PER_K : SIGMA_PER_K,
    relativeSigmaPerK: isOutside ? SIGMA_OUTSIDE_PER_K : RELATIVE_SIGMA_PER_K,
    fromC: 20,
    toC: 400,
    from: "computed",
    source: cited("appen-1974")
  };
}
function computedSetPoint({ moles }) {
  const { tempC, outside } = stiffTemperature(moles);
  const valueC = tempC - BELOW_STIFF_K;
  const [least, most] = BELIEVABLE_C;
  if (!(valueC >= least && valueC <= most)) return ASSUMED_SET;
  const sigmaK = Math.hypot(BELOW_STIFF_SIGMA_K, MODEL_SIGMA_K);
  return {
    valueC,
    sigmaK: outside.length > 0 ? 2 * sigmaK : sigmaK,
    from: "computed",
    source: `${cited("fluegel-2007")}; ${cited("set-point-viscosity")}`
  };
}
function inKgPerM3({ value, low, high, source }) {
  return { value: value * 1e3, low: low * 1e3, high: high * 1e3, source };
}

// src/core/glaze/firedGlaze.ts
function firedGlaze(parsed, where) {
  const { moles, own } = parsed;
  const computed = appenExpansion(moles);
  if (computed === null && own.expansion === null)
    return failed({
      code: "glaze/no-expansion",
      what: "no oxide of the glaze has a factor of expansion",
      where,
      expected: "silica and fluxes, or a measured expansion",
      fix: "check the oxides, or give expansion with value, to and how"
    });
  const outside = computed === null ? [] : appenOutside(computed);
  const isOutside = outside.length > 0 || totalOf(scaledTo(100, moles), ALKALIS) > MOST_ALKALIS;
  return ok({ glaze: glazeOf(parsed, computed, isOutside), computed, outside });
}

// src/core/glaze/leachFindings.ts
function leachFindings(tests) {
  return tests.flatMap((test) => {
    const over = leachSheet(test).filter(({ stands }) => stands === "over");
    if (over.length === 0) return [];
    const words = over.map(
      ({ limit, found }) => `${limit.metal} ${found.value} ${found.unit} over the ${limit.most} of the ${limit.law}`
    );
    return [
      glazeFinding("warning", "leach test over a limit", {
        statement: `A tested piece gave off too much: ${joined(words)}.`,
        basis: `limits as read in 2026; check current law (${[...new Set(over.map(({ limit }) => cited(limit.source)))].join("; ")})`,
        advice: "Keep this glaze off anything that holds food or drink."
      })
    ];
  });
}

// src/core/glaze/recipeFindings.ts
var BASE_TOLERANCE = 0.5;
var SOLUBLE = /* @__PURE__ */ new Set([
  "borax",
  "boric acid",
  "soda ash",
  "pearl ash",
  "lithium carbonate"
]);
function recipeFindings({ givenAs, remarks }) {
  return [
    ...givenAs.kind === "recipe" ? ofRecipe2(givenAs.recipe) : ofSum(givenAs),
    ...remarks.length === 0 ? [] : [
      glazeFinding("note", "how the file was read", {
        statement: remarks.map((remark) => `${quoted(remark)}.`).join(" "),
        basis: ""
      })
    ]
  ];
}
function ofSum(given) {
  if (given.basis === "moles" || Math.abs(given.sum - 100) < 0.05) return [];
  return [
    glazeFinding("note", "sum", {
      statement: `The oxides add up to ${given.sum.toFixed(2)} ${given.basis} and were scaled to 100.`,
      basis: ""
    })
  ];
}
function ofRecipe2(recipe) {
  const sum = recipe.base.reduce((total, { parts }) => total + parts, 0);
  const lines = [...recipe.base, ...recipe.additions];
  const ideal = lines.filter(({ material: material2 }) => material2.formula !== null);
  const soluble = lines.filter(({ material: material2 }) => SOLUBLE.has(material2.name));
  return [
    ...Math.abs(sum - 100) <= BASE_TOLERANCE ? [] : [sumFinding(sum, recipe.additions)],
    ...ideal.length === 0 ? [] : [
      glazeFinding("note", "ideal minerals", {
        statement: `${ideal.length === lines.length ? "All" : "Some"} materials are ideal minerals: ${quoted(joined(ideal.map(({ name }) => name)))}. What you buy differs; feldspars hold both alkalis, clays hold quartz and some alkali.`,
        basis: basedOn("ideal formulas", "mineral-formulas"),
        advice: "Put your suppliers' analyses under materials."
      })
    ],
    ...soluble.length === 0 ? [] : [
      glazeFinding("note", "soluble salts", {
        statement: `Some of the recipe dissolves in the water of the glaze and moves with it, so the coat may not be what the recipe says: ${quoted(joined(soluble.map(({ name }) => name)))}.`,
        basis: basedOn("common knowledge of salts", "batch-practice")
      })
    ]
  ];
}
function sumFinding(sum, additions) {
  return glazeFinding("caution", "base of the recipe", {
    statement: `The base adds up to ${sum.toFixed(2)} parts, not 100${additions.length === 0 ? "" : ", so additions over 100 can be read in two ways"}.`,
    basis: basedOn("a base is written for 100 parts", "batch-practice"),
    advice: "The batch sheet below shows it scaled to 100; check first that no line is missing or mistyped."
  });
}

// src/core/glaze/setPointFindings.ts
function setPointFindings(setPoint, { outside }) {
  if (setPoint.from === "given") return [];
  const basis = basedOn("statistical model of viscosity", "fluegel-2007");
  if (setPoint.from === "assumed")
    return [
      glazeFinding("caution", "set point", {
        statement: "The model of the set point fails for this composition: a usual one is assumed.",
        basis,
        advice: "Give setPoint with value and how, if you know it."
      })
    ];
  if (outside.length === 0) return [];
  return [
    glazeFinding("caution", "outside the range of the set point", {
      statement: `Outside the range of the set point's model, in mol %: ${outsideText(outside)}. Its spread is doubled, by our own estimate.`,
      basis
    })
  ];
}

// src/core/glaze/unityFormula.ts
function unityFormula(moles) {
  const fluxes = totalOf(moles, FLUXES);
  if (!(fluxes > 0)) return null;
  const alumina = moles.Al2O3 ?? 0;
  return {
    moles: mapAmounts(moles, (amount) => amount / fluxes),
    alkaliShare: totalOf(moles, ALKALIS) / fluxes,
    silicaToAlumina: alumina > 0 ? (moles.SiO2 ?? 0) / alumina : null
  };
}

// src/core/glaze/weightFactorSets.ts
var WINKELMANN_SCHOTT = {
  name: "Winkelmann and Schott",
  source: "winkelmann-schott-1894",
  range: "about 20 to 100 \xB0C, glasses",
  divisor: 3,
  factors: {
    SiO2: 8,
    B2O3: 1,
    MgO: 1,
    Na2O: 100,
    K2O: 85,
    Al2O3: 50,
    CaO: 50,
    BaO: 30,
    ZnO: 18,
    PbO: 30,
    Li2O: 20,
    P2O5: 20
  }
};
var HALL = {
  name: "Hall",
  source: "hall-1930",
  range: "glazes; too high for glasses rich in silica",
  divisor: 1,
  factors: {
    SiO2: 4,
    Al2O3: 5,
    B2O3: 2,
    BaO: 12,
    CaO: 15,
    K2O: 30,
    MgO: 2,
    Na2O: 38,
    PbO: 7.5,
    ZnO: 10
  }
};
function secondOpinions(moles) {
  const percent = scaledTo(100, weightsOf(moles));
  return [WINKELMANN_SCHOTT, HALL].map(({ name, source, range, divisor, factors }) => ({
    name,
    source,
    range,
    meanPerK: entriesOf(percent).reduce((sum, [oxide, share]) => sum + share * (factors[oxide] ?? 0), 0) * (1e-8 / divisor),
    leftWtPercent: mapAmounts(
      percent,
      (share, oxide) => factors[oxide] === void 0 ? share : 0
    )
  }));
}

// src/core/glaze/workOutGlaze.ts
function workOutGlaze(parsed, where) {
  const { moles, own } = parsed;
  const fired = firedGlaze(parsed, where);
  if (!fired.ok) return fired;
  const { glaze, computed, outside } = fired.value;
  const molPercent = scaledTo(100, moles);
  const stiff = stiffTemperature(moles);
  const unity = unityFormula(moles);
  return ok({
    parsed,
    glaze,
    unity,
    wtPercent: scaledTo(100, weightsOf(moles)),
    molPercent,
    computed,
    opinions: secondOpinions(moles),
    stiff,
    findings: [
      ...toxicFindings(parsed),
      ...leachFindings(parsed.leachTests),
      ...expansionFindings(glaze, { computed, outside }),
      ...alkaliFindings(molPercent, computed !== null && own.expansion === null),
      ...crystalFindings(molPercent),
      ...setPointFindings(glaze.setPoint, stiff),
      ...recipeFindings(parsed)
    ]
  });
}

// src/core/glaze/glazeWorkOf.ts
function glazeWorkOf(text, name, wishes) {
  const parsed = parseGlaze(text, name);
  if (!parsed.ok) return parsed;
  const sheet = workOutGlaze(parsed.value, name);
  if (!sheet.ok) return sheet;
  const { givenAs } = parsed.value;
  const { batchG, slipGPerCm3, bucketLitres } = wishes;
  if (givenAs.kind === "oxides" && batchG !== null) return failed(noRecipe(name));
  const batch = givenAs.kind === "recipe" ? batchSheet(givenAs.recipe, batchG) : null;
  const slip = slipGPerCm3 === null && bucketLitres === null && batchG === null ? ok(null) : slipSheet(parsed.value, {
    slipGPerCm3,
    bucketLitres,
    dryG: dryMasses(batchG, batch?.totalForBaseG ?? null)
  });
  if (!slip.ok) return slip;
  const onBody = fitOfSheet(sheet.value);
  return ok({
    sheet: sheet.value,
    batch,
    slip: slip.value,
    coat: coatSheet(sheet.value, wishes.dryCoatGPerCm2),
    onBody,
    cautions: cautionsFor({
      ...glazeHazards(parsed.value),
      // A fit and a leach test speak of crackle whichever way they go.
      crackle: parsed.value.crackle || "fit" in onBody || parsed.value.leachTests.length > 0
    })
  });
}
function dryMasses(batchG, totalForBaseG) {
  if (batchG === null) return [];
  return totalForBaseG === null || totalForBaseG <= batchG * 1.0001 ? [batchG] : [batchG, totalForBaseG];
}
function noRecipe(name) {
  return {
    code: "glaze/batch-without-recipe",
    where: name,
    what: "the file gives oxides and no recipe",
    expected: "a recipe of materials to weigh",
    fix: "leave --batch out, or write the recipe"
  };
}

// src/node/readGlaze.ts
async function readGlaze(path, wishes) {
  const text = await readText(path);
  if (!text.ok) return text;
  return glazeWorkOf(text.value, path === "-" ? "standard input" : basename(path), wishes);
}

export {
  shareText,
  expansionText,
  sharesText,
  joined,
  APPEN_FACTORS,
  readGlaze
};
