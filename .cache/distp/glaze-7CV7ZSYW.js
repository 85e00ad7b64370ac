import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  compareGlazes,
  glazeDocument
} from "./chunk-XMB6IIFZ.js";
import {
  asGiven,
  fewDigits,
  sharePer100,
  spreadWords
} from "./chunk-FNCRCJUG.js";
import {
  slowCrackExponent
} from "./chunk-FM7WVEFB.js";
import "./chunk-DQZAGW2O.js";
import "./chunk-RLEK6R44.js";
import {
  reportHtml
} from "./chunk-Q77PV3QE.js";
import {
  writeOutput
} from "./chunk-QVADD2WS.js";
import {
  basisBlocks,
  cautionBlocks,
  findingBlocks,
  section
} from "./chunk-N5S6N4PS.js";
import "./chunk-4ME6ZCIX.js";
import {
  reportText
} from "./chunk-ZUGR3IIA.js";
import "./chunk-X6LO4HOH.js";
import "./chunk-XM3JYZUM.js";
import {
  hasWarning
} from "./chunk-VFKPH3SJ.js";
import "./chunk-OGOFPCXR.js";
import {
  APPEN_FACTORS,
  expansionText,
  joined,
  readGlaze,
  shareText,
  sharesText
} from "./chunk-67XUDRHA.js";
import {
  FLUXES,
  entriesOf,
  leachSheet
} from "./chunk-GBSLUOFQ.js";
import {
  LONG_TERM_YEARS
} from "./chunk-P6VZUHGE.js";
import "./chunk-4LHYQSW7.js";
import "./chunk-V6QCPP2T.js";
import "./chunk-F6MWUWUD.js";
import "./chunk-GU4RVAU5.js";
import {
  EXIT,
  answer,
  answerJson,
  paintFor,
  refuse,
  say
} from "./chunk-QOSRWPWR.js";
import "./chunk-NHPGJLL4.js";
import "./chunk-WA5SZDQ5.js";
import "./chunk-2NHG2YQ4.js";
import {
  printDifference,
  printTemperature
} from "./chunk-IOGTIVWI.js";
import {
  CM2_PER_IN2,
  GRAMS_PER_OUNCE,
  ouncesPerPint,
  parseCoatMass,
  parseMass,
  parseSlipDensity
} from "./chunk-ZFLGP4NE.js";
import "./chunk-DDB2KZF2.js";
import {
  LITRES_PER_PINT,
  parseVolume
} from "./chunk-DAQTYWBQ.js";
import "./chunk-BUYZUOGW.js";
import "./chunk-P7LYRYX6.js";
import "./chunk-2Y6UMGL7.js";
import "./chunk-GJAD4LJL.js";
import "./chunk-PYB7INDF.js";
import "./chunk-BKGWRYOW.js";
import {
  cited
} from "./chunk-O435DZD7.js";
import {
  fahrenheitDeltaFromCelsiusDelta
} from "./chunk-R2H4YYDI.js";
import {
  failed,
  ok
} from "./chunk-2ZNPDJKQ.js";
import "./chunk-C7Q5CZLC.js";
import "./chunk-TBHH23HK.js";

// src/core/reports/sections/batchBlocks.ts
function weightText(grams, weights) {
  return weights === "g" ? `${grams.toFixed(1)} g` : `${(grams / GRAMS_PER_OUNCE).toFixed(2)} oz`;
}
function batchBlocks(batch, weights) {
  if (batch === null) return [];
  const swaps = batch.rows.flatMap(swapSentence);
  return section("Batch sheet", [
    batchTable(batch, weights),
    ...batch.wantedG === null || batch.additionsSum === 0 ? [] : [
      {
        kind: "sentence",
        text: `Two readings: ${weightText(batch.wantedG, weights)} of base with the additions on top, or ${weightText(batch.wantedG, weights)} in all. Choose one column and keep to it.`
      }
    ],
    ...swaps.length === 0 ? [] : [
      { kind: "sentence", text: "Raw and calcined, by what each loses in the fire:" },
      { kind: "list", items: swaps }
    ],
    countedTable(batch)
  ]);
}
function countedTable({ rows }) {
  return {
    kind: "table",
    caption: "What each raw material is counted as",
    columns: [
      { head: "material", align: "left" },
      { head: "ideal formula", align: "left" },
      { head: "fires away", align: "right" }
    ],
    rows: rows.map(({ name, formula, lossFraction }) => [
      name,
      formula ?? "your analysis",
      `${(100 * lossFraction).toFixed(1)} %`
    ])
  };
}
function batchTable(batch, weights) {
  const { wantedG, rows } = batch;
  const isScaled = Math.abs(batch.baseSum - 100) > 5e-3;
  const hasAdditions = batch.additionsSum > 0;
  const columns = [
    { head: "parts", of: ({ parts }) => parts.toFixed(2) },
    isScaled ? { head: "base as 100", of: ({ percentOfBase }) => percentOfBase.toFixed(2) } : null,
    hasAdditions ? { head: "% of all", of: ({ percentOfTotal }) => percentOfTotal.toFixed(2) } : null,
    wantedG === null ? null : {
      head: hasAdditions ? "mass is base" : "weigh",
      of: ({ gramsForBase }) => weightText(gramsForBase, weights)
    },
    wantedG === null || !hasAdditions ? null : {
      head: "mass is all",
      of: ({ gramsForTotal }) => weightText(gramsForTotal, weights)
    }
  ];
  const shown = columns.filter((column) => column !== null);
  return {
    kind: "table",
    caption: wantedG === null ? "Parts by weight, dry" : `${weightText(wantedG, weights)}, dry`,
    columns: [
      { head: "material", align: "left" },
      ...shown.map(({ head }) => ({ head, align: "right" }))
    ],
    rows: [
      ...rows.map((row) => [nameText(row), ...shown.map(({ of }) => of(row))]),
      ["together", ...shown.map(({ of }) => of(sumRow(rows)))]
    ]
  };
}
function nameText({ name, part, calcined }) {
  return `${part === "addition" ? "+ " : ""}${name}${calcined ? ", calcined" : ""}`;
}
function sumRow(rows) {
  const sum = (of) => rows.reduce((total, row) => total + (of(row) ?? 0), 0);
  return {
    name: "together",
    part: "base",
    calcined: false,
    formula: null,
    lossFraction: 0,
    parts: sum(({ parts }) => parts),
    percentOfBase: sum(({ percentOfBase }) => percentOfBase),
    percentOfTotal: sum(({ percentOfTotal }) => percentOfTotal),
    gramsForBase: sum(({ gramsForBase }) => gramsForBase),
    gramsForTotal: sum(({ gramsForTotal }) => gramsForTotal),
    swappedParts: null
  };
}
function swapSentence({ name, parts, calcined, swappedParts }) {
  if (swappedParts === null) return [];
  const [from, to] = calcined ? ["calcined", "raw"] : ["raw", "calcined"];
  return [`${name}: ${parts.toFixed(2)} parts ${from} are ${swappedParts.toFixed(2)} parts ${to}`];
}

// src/core/reports/sections/formulaBlocks.ts
function formulaBlocks({ unity, molPercent, wtPercent }) {
  return section("Formula", [
    {
      kind: "table",
      caption: "After firing",
      columns: [
        { head: "oxide", align: "left" },
        ...unity === null ? [] : [{ head: "for 1 of flux", align: "right" }],
        { head: "mol %", align: "right" },
        { head: "wt %", align: "right" }
      ],
      rows: entriesOf(molPercent).map(([oxide, share]) => [
        FLUXES.includes(oxide) ? `${oxide}, flux` : oxide,
        ...unity === null ? [] : [(unity.moles[oxide] ?? 0).toFixed(3)],
        shareText(share),
        shareText(wtPercent[oxide] ?? 0)
      ])
    },
    { kind: "sentence", text: ratiosText(unity) }
  ]);
}
function ratiosText(unity) {
  if (unity === null) return "It holds no flux, so there is no unity formula.";
  const { alkaliShare, silicaToAlumina } = unity;
  const ratio = silicaToAlumina === null ? "no alumina" : `silica to alumina ${shareText(silicaToAlumina)} to 1`;
  return `Alkalis to the other fluxes ${alkaliShare.toFixed(2)} to ${(1 - alkaliShare).toFixed(2)}; ${ratio}, by moles. Colouring oxides are not counted as flux.`;
}

// src/core/reports/sections/glazeExpansionBlocks.ts
var USUAL_COOLING_K = 500;
function glazeExpansionBlocks(sheet, unit) {
  const { glaze } = sheet;
  return [
    ...section("Expansion", [
      { kind: "facts", facts: expansionFacts(sheet, unit) },
      { kind: "sentence", text: bandSentence(glaze, unit) },
      opinionsTable(sheet, unit),
      {
        kind: "sentence",
        text: "Compare a value only with another of the same set. A body's value from a dilatometer belongs to no set."
      }
    ]),
    ...section("Set point", [{ kind: "facts", facts: setFacts(sheet, unit) }])
  ];
}
function coefficientText(perK, unit, sigmaPerK = null) {
  return `${millionthsText(perK, unit, sigmaPerK)} \xB7 ${millionths(unit)}`;
}
function millionthsText(perK, unit, sigmaPerK = null) {
  const per = unit === "C" ? 1 : fahrenheitDeltaFromCelsiusDelta(1);
  const spread = sigmaPerK === null ? "" : ` \xB1 ${expansionText(sigmaPerK / per)}`;
  return `${expansionText(perK / per)}${spread}`;
}
function millionths(unit) {
  return `10\u207B\u2076/\xB0${unit}`;
}
function expansionFacts({ glaze, computed }, unit) {
  const { expansion } = glaze;
  const range2 = `${printTemperature(expansion.fromC, unit)} to ${printTemperature(expansion.toC, unit)}`;
  return [
    {
      label: expansion.from,
      text: `${coefficientText(expansion.meanPerK, unit, expansion.sigmaPerK)}, mean of ${range2}`
    },
    ...expansion.from === "measured" && computed !== null ? [
      {
        label: "computed",
        text: `${coefficientText(computed.meanPerK, unit)}, set aside for the measured one`
      }
    ] : [],
    ...expansion.from === "computed" ? [
      {
        label: "close relatives",
        text: `\xB1 ${coefficientText(expansion.relativeSigmaPerK, unit)} on the difference of two glazes of one family`
      }
    ] : []
  ];
}
function bandSentence({ expansion, youngGPa, poisson }, unit) {
  const stressMPa = expansion.sigmaPerK * USUAL_COOLING_K * youngGPa.value * 1e3 / (1 - poisson.value);
  return `Each \xB1 is one standard deviation. Over ${printDifference(USUAL_COOLING_K, unit)} of cooling this one is worth \xB1 ${Math.round(stressMPa)} MPa in a thin glaze, where crazing begins at some 15 to 50 MPa depending on the coat: an expansion ranks glazes, it does not foretell crazing.`;
}
function opinionsTable({ opinions }, unit) {
  return {
    kind: "table",
    caption: "Second opinions, each on a scale of its own",
    columns: [
      { head: "set", align: "left" },
      { head: { lines: ["expansion,", millionths(unit)] }, align: "right" },
      { head: "made for", align: "left" },
      { head: "left out, wt %", align: "left" }
    ],
    rows: opinions.map(({ name, meanPerK, range: range2, leftWtPercent }) => [
      name,
      millionthsText(meanPerK, unit),
      range2.replace(
        "20 to 100 \xB0C",
        `${printTemperature(20, unit)} to ${printTemperature(100, unit)}`
      ),
      sharesText(entriesOf(leftWtPercent)) || "nothing"
    ])
  };
}
function setFacts({ glaze, stiff }, unit) {
  const { valueC, sigmaK, from } = glaze.setPoint;
  return [
    {
      label: "set point",
      text: `${printTemperature(valueC, unit)} \xB1 ${printDifference(sigmaK, unit)}, ${from}; below it a cooling glaze holds stress`
    },
    {
      label: "10\xB9\xB2 Pa\xB7s",
      text: `${printTemperature(stiff.tempC, unit)} by the model, whose standard error is ${printDifference(9, unit)} to ${printDifference(17, unit)}; kiln-cooled glaze sets about ${printDifference(20, unit)} lower, give or take as much`
    }
  ];
}

// src/core/reports/sections/glazeCrackBlocks.ts
function glazeCrackBlocks(fit, unit) {
  return [
    ...section("Crackle", [...crackleBlocks(fit, unit), ...spacingBlocks(fit)]),
    ...section("Into the wall", throughBlocks(fit)),
    ...section("Later", laterBlocks(fit))
  ];
}
var CRACKLE = {
  "speaks for": "this speaks for crackle",
  open: "this leaves crackle open",
  "speaks against": "this speaks against crackle"
};
function crackleBlocks({ crazing, mismatch, piece, roomC }, unit) {
  const facts = [
    {
      label: "cracks from",
      text: `${spreadWords(crazing.thresholdMPa, "MPa")} of pull in this coat`
    },
    {
      label: "pull over that",
      text: `${spreadWords(crazing.overThreshold, "")}; from 1 on it can`
    },
    ...crazing.leastCoatMm === null ? [] : [
      {
        label: "thinnest coat",
        text: `${spreadWords(crazing.leastCoatMm, "mm")} can crack${crazing.coatShare === 1 ? "" : `, in the ${sharePer100(crazing.coatShare)} draws in which any does`}`
      }
    ],
    ...crazing.firstPingC === null ? [] : [
      {
        label: "first ping",
        text: `${temperatures(crazing.firstPingC, unit)}, where it cracks on cooling`
      }
    ]
  ];
  const { tempC, strain } = mismatch.greatest;
  const isEarly = tempC.median > roomC + 50 && strain.median > 0 && crazing.share >= 0.1;
  return [
    {
      kind: "lead",
      text: `In ${sharePer100(crazing.share)} draws a coat of ${asGiven(piece.coatMm)} mm can crack: ${CRACKLE[crazing.standing]}.`
    },
    { kind: "facts", facts },
    ...isEarly ? [
      {
        kind: "sentence",
        text: `The pull is greatest about ${printTemperature(tempC.median, unit)}, before quartz or cristobalite of the body squeezes it; cracks made there stay, even if the glaze is squeezed when cold.`
      }
    ] : []
  ];
}
function temperatures({ low, median, high }, unit) {
  const number = (tempC) => printTemperature(tempC, unit).split(" ")[0];
  return `${printTemperature(median, unit)} (${number(low)} to ${number(high)})`;
}
function spacingBlocks({ spacing }) {
  if (spacing === null) return [];
  const { low, median, high } = spacing.meanMm;
  const row = (what, each) => [
    what,
    fewDigits(each.median),
    `${fewDigits(each.low)} to ${fewDigits(each.high)}`
  ];
  const late = spacing.lateMeanMm;
  return [
    {
      kind: "table",
      caption: "Distance between cracks where it cracks [mm]",
      columns: [
        { head: "which", align: "left" },
        { head: "middle", align: "right" },
        { head: "range", align: "right" }
      ],
      rows: [
        row("closest that cracks fill in", spacing.leastMm),
        row("mean", { low, median, high }),
        row("widest left between", spacing.widestMm),
        row("mean as counted along lines", spacing.alongLinesMm),
        ...late === null ? [] : [row("mean after months or years", late)]
      ]
    },
    {
      kind: "list",
      items: [
        "a wider crackle than this comes from few starting flaws, or from a pull that only just cracks it",
        ...thickerWords(spacing.thickerCoat),
        ...spacing.wideShare >= 0.1 ? [
          `in ${sharePer100(spacing.wideShare)} of these draws the pull only just cracks it and cracks stand more than 150 coats apart`
        ] : [],
        ...spacing.fineShare >= 0.1 ? [
          `in ${sharePer100(spacing.fineShare)} of these draws cracks come closer than one coat, past the table`
        ] : []
      ]
    }
  ];
}
function thickerWords(thickerCoat) {
  if (thickerCoat === null)
    return [
      "in the middle of all draws this coat stays whole; near there a thicker coat crackles more closely"
    ];
  if (thickerCoat === "hardly changes")
    return ["a somewhat thicker coat hardly changes the distance: it is near its least here"];
  return [
    thickerCoat === "closer" ? "a thicker coat crackles more closely here: this coat only just cracks; thicker still, the distance grows again, so one distance may come of two coats" : "a thicker coat crackles more widely here, about as the square root of the coat"
  ];
}
var THROUGH = {
  "speaks for": "this speaks for cracks through the wall",
  open: "this leaves cracks through the wall open",
  "speaks against": "this speaks against cracks through the wall"
};
function throughBlocks({ through, mismatch, piece }) {
  const reasons = through.reasons.map(({ direction, text }) => `${direction}: ${text}`);
  const isPulled = mismatch.greatest.strain.high > 0 && through.pullMPaRootM.high > 0;
  return [
    ...isPulled ? [
      {
        kind: "lead",
        text: `A glaze crack runs on through the wall in ${sharePer100(through.share)} draws: ${THROUGH[through.standing]}. A ranking, no verdict: how tough a body is is hardly ever known.`
      },
      { kind: "facts", facts: depthFacts(through) },
      { kind: "list", items: reasons },
      {
        kind: "sentence",
        text: "Half the coat halves the pull on such a crack. Heat shock and the quartz step add to it."
      }
    ] : [],
    ...bodyPullBlocks(
      through,
      piece.glazing === "one face, wall held" && mismatch.strain.median < 0
    )
  ];
}
function depthFacts(through) {
  return [
    {
      label: "least pull on it",
      text: `${spreadWords(through.pullMPaRootM, "MPa\u221Am")} on the way through`
    },
    {
      label: "body bears",
      text: `${spreadWords(through.bodyToughnessMPaRootM, "MPa\u221Am")}, ${through.toughnessSource}`
    },
    ...through.stopsAtMm === null ? [] : [
      {
        label: "else it stops",
        text: `${spreadWords(through.stopsAtMm, "mm")} deep in the body`
      }
    ]
  ];
}
var TELLING_SHARE = 0.25;
function bodyPullBlocks(through, maySplit) {
  const { bodyPullOverRupture: inWall, rimPullOverRupture: atRim } = through;
  if (Math.max(inWall.high, atRim.high) < TELLING_SHARE) return [];
  const isRim = atRim.high > 1.2 * inWall.high;
  const where = isRim ? "At a rim or a cut, where the wall can bend, the body" : "The body itself";
  const pull = spreadWords(isRim ? through.rimPullMPa : through.bodyPullMPa, "MPa");
  const split = maySplit ? " A closed wall split by a squeezed glaze inside is such a case; note it apart from crackle." : "";
  return [
    {
      kind: "sentence",
      text: `${where} is pulled by ${pull}: ${spreadWords(isRim ? atRim : inWall, "")} of its strength in bending.${split}`
    }
  ];
}
var [WEIBULL, GROWTH] = [8, 18];
function laterBlocks({ delayed, crazing }) {
  const fade = (slowCrackExponent(WEIBULL, GROWTH) * 100).toFixed(0);
  return [
    {
      kind: "list",
      items: [
        `moisture swells the body by ${spreadWords(delayed.growth, "mm a metre", 1e3)} in ${LONG_TERM_YEARS} years and pulls the glaze by ${spreadWords(delayed.addedMPa, "MPa")} more (${delayed.growthSource})`,
        `whole at first, then crazed by moisture within ${LONG_TERM_YEARS} years: ${sharePer100(delayed.moistureShare)} draws${yearsWords(delayed.moistureYears)}`,
        `whole at first, but pulled enough for cracks to creep in damp air: ${sharePer100(delayed.slowShare)} draws${windowWords(delayed.slowFromMm, crazing.leastCoatMm)} (${cited("glass-slow-growth")})`,
        `pings from creeping cracks thin out about as time to the power 0.${fade}, from moisture to 0.75 (worked out; no record of pinging was found); steady pinging means a temperature still on the move`
      ]
    }
  ];
}
function yearsWords(years) {
  if (years === null) return "";
  return `, after ${spanWords(years.median)} (${spanWords(years.low)} to ${spanWords(years.high)})`;
}
function spanWords(years) {
  if (years >= 0.95) return `${fewDigits(years)} years`;
  const days = years * 365.25;
  if (days >= 45) return `${Math.round(days / 30.44)} months`;
  if (days < 1) return "less than a day";
  return days < 1.5 ? "a day" : `${Math.round(days)} days`;
}
function windowWords(from, to) {
  if (from === null || to === null || from.median >= to.median) return "";
  return `, at coats of about ${fewDigits(from.median)} to ${fewDigits(to.median)} mm`;
}

// src/core/reports/sections/glazeMeasuredBlocks.ts
function glazeMeasuredBlocks(fit, unit) {
  const { fits, leftOut } = fit.measured;
  if (fits.length + leftOut.length === 0) return [];
  const remarks = [
    ...fits.flatMap((each) => remarksOf(each, unit)),
    ...leftOut.map(
      ({ onsetC, why }) => `ping at ${printTemperature(onsetC, unit)} not used: ${why}`
    ),
    ...fits.some(({ ping }) => ping !== null) ? [
      "first pings: a listener may miss the first; then it lay higher, and the difference is greater"
    ] : [],
    ...fit.twoCoats.map(twoCoatsWords)
  ];
  return section("Measured against computed", [
    ...fits.length === 0 ? [] : [fitTable(fit)],
    ...remarks.length === 0 ? [] : [{ kind: "list", items: remarks }]
  ]);
}
function fitTable({ mismatch, measured, piece }) {
  return {
    kind: "table",
    caption: "Difference in shrinking [millionths per \xB0C] that each way tells",
    columns: [
      { head: "from", align: "left" },
      { head: { lines: ["coat", "(mm)"] }, align: "right" },
      { head: "middle", align: "right" },
      { head: "range", align: "right" },
      { head: { lines: ["glaze", "would be"] }, align: "right" },
      { head: "with computed", align: "left" }
    ],
    rows: [
      [
        "computed",
        asGiven(piece.coatMm),
        millionths2(mismatch.perK.median),
        range(mismatch.perK),
        millionths2(mismatch.glazePerK.median),
        ""
      ],
      ...measured.fits.map((each) => [
        each.from,
        asGiven(each.coatMm),
        `${each.holds === "about" ? "" : `${each.holds} `}${millionths2(each.mismatchPerK.median)}`,
        range(each.mismatchPerK),
        millionths2(each.glazePerK.median),
        each.agrees ? "agrees" : "disagrees"
      ])
    ]
  };
}
function millionths2(perK) {
  return fewDigits(perK * 1e6);
}
function range({ low, high }) {
  return `${millionths2(low)} to ${millionths2(high)}`;
}
function remarksOf(fit, unit) {
  return [
    ...boundWords(fit),
    ...pingWords(fit, unit),
    ...fit.impossible > 0 ? [
      `${fit.from} on ${asGiven(fit.coatMm)} mm: in ${sharePer100(fit.impossible)} draws it cannot be, and these are left out`
    ] : [],
    ...fit.agrees ? [] : [
      `${fit.from} on ${asGiven(fit.coatMm)} mm: disagrees with the composition beyond both spreads; trust what was measured, and look for what the recipe or the body hides`
    ]
  ];
}
function boundWords({ from, holds, pitchOverCoat }) {
  if (from === "cracks seen") return [`${from}: that a coat cracked sets a lower bound only`];
  if (holds === "at most")
    return [
      `${from}: a coat that stayed whole sets an upper bound only, and none at all if it has no flaw`
    ];
  if (holds === "at least" && pitchOverCoat !== null)
    return [
      `${from}: cracks ${Math.round(pitchOverCoat)} coats apart can be a pull that only just cracks the coat, or a greater one with few starting flaws; so it is a lower bound`
    ];
  return [];
}
function pingWords({ ping }, unit) {
  if (ping === null || ping.use === "usable") return [];
  return [
    `ping at ${printTemperature(ping.onsetC, unit)}: ${ping.use}, so it may be the body that cracked; look there first`
  ];
}
function twoCoatsWords({ coatsMm, ratio, agree }) {
  const [thin, thick] = coatsMm.map(asGiven);
  const verdict = agree ? "they agree" : "they disagree, so one ping is no matter of fit, or the body shrinks unevenly between them";
  return `check by two coats, ${thin} and ${thick} mm: how far each cools before its first ping, times the root of its coat, is the same for both where fit alone cracks them; here the thinner has ${spreadWords(ratio, "")} times that of the thicker: ${verdict}`;
}

// src/core/reports/sections/glazeStressBlocks.ts
var PER_DEGREE = "millionths per \xB0C";
var GLAZED = {
  "both faces": "both faces glazed",
  "one face, wall held": "one face glazed, closed shape that cannot bend",
  "one face, free to bend": "one face glazed, flat and free to bend"
};
var FLAKING_MPA = 80;
function glazeStressBlocks(fit, unit) {
  return [
    ...section("Fit on the body", [
      { kind: "lead", text: leadOf(fit) },
      ...shrinkingBlocks(fit, unit)
    ]),
    ...section("Stress when cold", stressBlocks(fit)),
    ...glazeCrackBlocks(fit, unit),
    ...glazeMeasuredBlocks(fit, unit),
    ...section("How far to trust this", trustBlocks(fit, unit))
  ];
}
function leadOf({ mismatch: { strain }, crazing }) {
  if (strain.low > 0)
    return "The glaze shrinks more than the body and is pulled: it leans to crackle.";
  if (strain.high < 0) {
    const before = crazing.share > 0.2 ? " once cold, though it may be pulled on the way down" : "";
    return `The glaze shrinks less than the body and is squeezed${before}.`;
  }
  return "Whether the glaze is pulled or squeezed lies within what is not known of glaze and body.";
}
function shrinkingBlocks({ mismatch, piece, roomC }, unit) {
  const fall = `from ${printTemperature(mismatch.setC.median, unit)} down to ${printTemperature(roomC, unit)}`;
  return [
    {
      kind: "facts",
      facts: [
        {
          label: "piece",
          text: `${asGiven(piece.coatMm)} mm of glaze on ${asGiven(piece.wallMm)} mm of wall, ${GLAZED[piece.glazing]}`
        },
        { label: "glaze shrinks", text: spreadWords(mismatch.glazePerK, PER_DEGREE, 1e6) },
        {
          label: "body shrinks",
          text: `${spreadWords(mismatch.bodyPerK, PER_DEGREE, 1e6)}, ${fall}`
        },
        {
          label: "difference",
          text: `${spreadWords(mismatch.perK, PER_DEGREE, 1e6)}, or ${spreadWords(mismatch.strain, "mm a metre", 1e3)}; more than 0 pulls the glaze`
        },
        {
          label: "quartz and cristobalite",
          text: `${spreadWords(mismatch.silicaStrain, "mm a metre", 1e3)} of what the body shrinks`
        }
      ]
    },
    {
      kind: "sentence",
      text: "In brackets: where eight of ten draws of all that is uncertain lie."
    },
    { kind: "sentence", text: stepSentence(mismatch, unit) }
  ];
}
var SMALL_STRAIN = 1e-4;
function stepSentence(mismatch, unit) {
  const straight = mismatch.strainByMeanTo500;
  const mean = fewDigits(mismatch.bodyTo500PerK * 1e6);
  const to500 = printTemperature(500, unit);
  if (Math.abs(straight - mismatch.strain.median) < SMALL_STRAIN)
    return `The body's mean to ${to500}, ${mean} ${PER_DEGREE}, gives about the same.`;
  return `The body's mean to ${to500}, ${mean} ${PER_DEGREE}, would make the difference ${fewDigits(straight * 1e3)} mm a metre: it hides what quartz does above it.`;
}
function stressBlocks({ stress, piece }) {
  const row = (where, { low, median, high }) => [
    where,
    fewDigits(median),
    `${fewDigits(low)} to ${fewDigits(high)}`
  ];
  return [
    {
      kind: "table",
      caption: "Stress [MPa] before any crack: pull over 0, squeeze under 0",
      columns: [
        { head: "where", align: "left" },
        { head: "middle", align: "right" },
        { head: "range", align: "right" }
      ],
      rows: [
        row("in the glaze", stress.glazeMPa),
        row("in the body under it", stress.underGlazeMPa),
        ...stress.bareFaceMPa === null ? [] : [row("on the bare face", stress.bareFaceMPa)],
        row("in the glaze, had the wall no give", stress.thickBodyMPa)
      ]
    },
    ...stress.bowMm === null ? [] : [bowSentence(stress.bowMm, piece.wallMm)],
    ...squeezeBlocks(stress.glazeMPa)
  ];
}
function bowSentence(bowMm, wallMm) {
  const bow = spreadWords(bowMm, "mm");
  return {
    kind: "sentence",
    text: `A flat bar of this wall (${asGiven(wallMm)} mm) glazed on one face bows by ${bow} over 100 mm, hollow on the glazed face where that is over 0: lay a straight edge on it to check.`
  };
}
function squeezeBlocks({ low, median }) {
  if (low > -FLAKING_MPA) return [];
  const how = median < -FLAKING_MPA ? "is" : "may be";
  return [
    {
      kind: "sentence",
      text: `The glaze ${how} squeezed by more than ${FLAKING_MPA} MPa, the upper end of what is wanted: look for slivers off edges and rims (${cited("glaze-squeeze")}).`
    }
  ];
}
function trustBlocks({ mismatch, limits, runs }, unit) {
  const known = `${printTemperature(mismatch.knownFromC, unit)} to ${printTemperature(mismatch.knownToC, unit)}`;
  const carried = mismatch.setC.median > mismatch.knownToC ? [
    `the expansion of the glaze is known for ${known} and carried on to the set point; glasses shrink a little more up there`
  ] : [];
  return [
    {
      kind: "sentence",
      text: `Numbers are from ${runs} draws of all that is uncertain; they rank glazes and coats and foretell no single pot.`
    },
    {
      kind: "list",
      items: [
        ...carried,
        `for scale: on four porous bodies, glazes that shrank over 1.0 ${PER_DEGREE} more than the body cracked in the kiln, 0 to 1.0 more perhaps days later, and less than the body not even in steam (${cited("four-porous-bodies")})`,
        "left out: the layer where glaze and body react, bubbles, crystals, uneven cooling, refiring",
        ...limits,
        `rests on: layered walls (${cited("timoshenko-1925")}); cracks through a coat and their spacing (${cited("channel-elements")}, checked against ${cited("hutchinson-suo-1992")} and ${cited("beuth-1992")}; ${cited("thouless-1990")}); depth (${cited("depth-weight-functions")}, and for unlike stiffness ${cited("depth-stiffness")}); moisture with the fourth root of time (${cited("wilson-2003")})`
      ]
    }
  ];
}

// src/core/reports/sections/leachBlocks.ts
var STANDS = {
  under: "no more than that",
  over: "over it",
  open: "cannot be told"
};
function leachBlocks(tests) {
  if (tests.length === 0) return [];
  return section("What a laboratory found given off", [
    ...tests.map(testTable),
    {
      kind: "sentence",
      text: `A tested piece speaks for itself only: not for the next one, not for another firing, not for any other metal, and not for a crackled surface. Limits as read in 2026, the European ones under revision downwards; check current law (EU: ${cited("eu-84-500")}; US: ${cited("us-food-code-lead")}, ${cited("us-cpg-cadmium")}). An amount in another unit than the limit's is not compared.`
    }
  ]);
}
function testTable(test) {
  const { ware, source } = test;
  return {
    kind: "table",
    caption: `${WARE[ware.use]}, ${asGiven(ware.depthMm)} mm deep, holding ${asGiven(ware.litres)} L: ${source}`,
    columns: [
      { head: "metal", align: "left" },
      { head: "found", align: "left" },
      { head: "at most", align: "left" },
      { head: "law and its kind of ware", align: "left" },
      { head: "found is", align: "left" }
    ],
    rows: leachSheet(test).map(({ limit, found, stands }) => [
      limit.metal,
      amountText(found),
      `${limit.most} ${limit.unit}`,
      `${limit.law}: ${limit.kind}`,
      STANDS[stands]
    ])
  };
}
var WARE = {
  cup: "Cup, mug or pitcher",
  dish: "Plate, bowl or jar",
  cooking: "Cooking ware"
};
function amountText({ value, unit, isBelow }) {
  return `${isBelow ? "under " : ""}${value} ${unit}`;
}

// src/core/reports/sections/slipBlocks.ts
function slipBlocks(slip, weights) {
  if (slip === null) return [];
  return section("Slip", [
    {
      kind: "table",
      caption: "Water, by Brongniart's formula",
      columns: [
        { head: "density", align: "right" },
        ...contentHeads(weights),
        ...slip.dryG.map(
          (mass) => ({ head: `water for ${weightText(mass, weights)} dry`, align: "right" })
        )
      ],
      rows: slip.rows.map((row) => [
        row.slipGPerCm3.toFixed(2),
        ...contentCells(row, weights),
        ...row.waterG.map((mass) => weightText(mass, weights))
      ])
    },
    { kind: "facts", facts: slipFacts(slip, weights) }
  ]);
}
function contentHeads(weights) {
  const heads = weights === "g" ? ["dry in a litre", "water in it"] : ["dry in an imperial pint", "dry in a US pint"];
  return heads.map((head) => ({ head, align: "right" }));
}
function contentCells(row, weights) {
  return weights === "g" ? [weightText(row.dryGPerLitre, "g"), weightText(row.waterGPerLitre, "g")] : [
    weightText(row.dryGPerLitre * LITRES_PER_PINT.imperial, "oz"),
    weightText(row.dryGPerLitre * LITRES_PER_PINT.us, "oz")
  ];
}
function slipFacts(slip, weights) {
  const { bucket, rows } = slip;
  const [only] = rows.length === 1 ? rows : [];
  return [
    ...only === void 0 ? [] : [
      {
        label: "on the scales",
        text: `a litre weighs ${Math.round(1e3 * only.slipGPerCm3)} g, an imperial pint (20 fl oz) ${ouncesPerPint(only.slipGPerCm3, "imperial").toFixed(1)} oz, a US pint (16 US fl oz) ${ouncesPerPint(only.slipGPerCm3, "us").toFixed(1)} oz`
      }
    ],
    ...bucket === null ? [] : [
      {
        label: "the bucket",
        text: `${bucket.litres.toFixed(2)} L hold ${weightText(bucket.dryG, weights)} dry and ${weightText(bucket.waterG, weights)} of water`
      }
    ],
    { label: "solids", text: solidsText(slip) }
  ];
}
function solidsText({ solidGPerCm3, solidFrom, unknownMaterials }) {
  const value = `${solidGPerCm3.toFixed(2)} g/cm\xB3`;
  if (solidFrom === "yours") return `${value}, yours`;
  if (solidFrom === "assumed") return `${value}, assumed for want of a recipe`;
  return unknownMaterials.length === 0 ? `${value}, worked out from the materials` : `${value}, worked out with 2.6 for ${joined(unknownMaterials)}, not known`;
}
function coatBlocks(coat, weights) {
  if (coat === null) return [];
  const { weighed, wanted, lossFraction, firedGPerCm3 } = coat;
  const loss = lossFraction === null ? "no recipe, so nothing is counted to fire away" : `${(100 * lossFraction).toFixed(1)} % of the dry mass fires away`;
  return section("Coat", [
    {
      kind: "facts",
      facts: [
        ...weighed === null ? [] : [
          {
            label: "as weighed",
            text: `${areaText(weighed.dryGPerCm2, weights)} fire to ${weighed.firedMm.toFixed(2)} mm (${weighed.lowMm.toFixed(2)} to ${weighed.highMm.toFixed(2)})`
          }
        ],
        ...wanted === null ? [] : [
          {
            label: "as wanted",
            text: `${wanted.firedMm.toFixed(2)} mm fired take ${areaText(wanted.dryGPerCm2, weights)}`
          }
        ],
        {
          label: "counted with",
          text: `${loss}; fired glaze of ${firedGPerCm3.toFixed(2)} g/cm\xB3, without bubbles`
        }
      ]
    }
  ]);
}
function areaText(gPerCm2, weights) {
  return weights === "g" ? `${weightText(100 * gPerCm2, "g")} dry on 100 cm\xB2` : `${weightText(10 * CM2_PER_IN2 * gPerCm2, "oz")} dry on 10 in\xB2`;
}

// src/core/reports/glazeBlocks.ts
var RULES_FROM_MEMORY = Object.entries(APPEN_FACTORS).flatMap(
  ([oxide, { attested }]) => attested === "rule from memory" ? [oxide] : []
);
var SOURCES = [
  `Expansion: partial expansions of oxides by moles, 20 to 400 \xB0C (${cited("appen-1974")}); the rules by which ${joined(RULES_FROM_MEMORY)} vary are from memory; held against 16 measured glasses it is off by 0.48 \xB7 10\u207B\u2076/\xB0C root mean square, 1.03 at worst. No glaze with both analysis and measured expansion could be read, so for glazes rich in alumina this is carried over from glasses`,
  `Second opinions: ${cited("winkelmann-schott-1894")}; ${cited("hall-1930")}`,
  `Set point: ${cited("fluegel-2007")}, and the step below it (${cited("set-point-viscosity")})`,
  `Stiffness, toughness and density of the fired glaze, where the file gives none: ${cited("glaze-elastic")}`,
  `Molar masses: ${cited("iupac-atomic-weights")}`
];
var BENCH_SOURCES = `Batch and slip: ${cited("brongniart-1854")}; densities of powders ${cited("batch-practice")}, others ${cited("powder-densities")}`;
function glazeBlocks(works, view) {
  const sheets = works.map(({ sheet }) => sheet);
  const isAlone = works.length === 1;
  const usesBench = works.some(({ batch, slip }) => batch !== null || slip !== null);
  return [
    ...isAlone ? [] : comparisonBlocks(sheets, view.unit),
    ...works.flatMap((work, index) => [
      ...isAlone ? [] : [{ kind: "heading", text: `${index + 1}. ${work.sheet.glaze.name}` }],
      ...ofOne(work, view)
    ]),
    ...basisBlocks(
      {
        heatwork: null,
        crossings: [],
        findings: sheets.flatMap(({ findings }) => findings),
        sources: usesBench ? [...SOURCES, BENCH_SOURCES] : SOURCES
      },
      view.unit
    ),
    ...cautionBlocks(works.flatMap(({ cautions }) => cautions))
  ];
}
function ofOne(work, view) {
  const { sheet, batch, slip, coat, onBody } = work;
  const { unit, weights } = view;
  return [
    { kind: "lead", text: leadText(sheet, unit) },
    { kind: "facts", facts: givenFacts(sheet) },
    ...findingBlocks(sheet.findings, { unit, startOfDaySeconds: null }),
    ...batchBlocks(batch, weights),
    ...slipBlocks(slip, weights),
    ...coatBlocks(coat, weights),
    ...formulaBlocks(sheet),
    ...glazeExpansionBlocks(sheet, unit),
    ...bodyBlocks(onBody, unit),
    ...leachBlocks(sheet.parsed.leachTests)
  ];
}
function bodyBlocks(onBody, unit) {
  if ("fit" in onBody) return glazeStressBlocks(onBody.fit, unit);
  return section("Fit on the body", [
    {
      kind: "sentence",
      text: `Not worked out: the file gives no ${joined(onBody.missing)}.`
    }
  ]);
}
function leadText({ glaze }, unit) {
  const { expansion, setPoint } = glaze;
  return `Expansion ${coefficientText(expansion.meanPerK, unit, expansion.sigmaPerK)}, ${expansion.from}; stiff below about ${printTemperature(setPoint.valueC, unit)}, \xB1 ${printDifference(setPoint.sigmaK, unit)}`;
}
function givenFacts({ parsed }) {
  const { givenAs, cone, crackle, invented, notes } = parsed;
  const analyses = givenAs.kind === "recipe" ? ownAnalyses(givenAs.recipe) : [];
  return [
    {
      label: "given as",
      text: givenAs.kind === "oxides" ? `oxides, ${givenAs.basis}` : `a recipe of ${givenAs.recipe.base.length} materials${givenAs.recipe.additions.length === 0 ? "" : ` and ${givenAs.recipe.additions.length} on top`}; ${(100 * givenAs.lossFraction).toFixed(1)} % fires away`
    },
    ...analyses.length === 0 ? [] : [{ label: "analyses", text: analyses.join("; ") }],
    ...cone === null ? [] : [{ label: "cone", text: cone }],
    ...crackle ? [{ label: "meant to", text: "crackle" }] : [],
    ...invented ? [{ label: "invented", text: "an example, nobody's glaze" }] : [],
    ...notes === null ? [] : [{ label: "notes", text: notes }]
  ];
}
function ownAnalyses({ base, additions }) {
  return [...base, ...additions].flatMap(
    ({ name, material: { source } }) => typeof source === "string" ? [] : [`${name}: ${source.yours}`]
  );
}
function comparisonBlocks(sheets, unit) {
  const differences = compareGlazes(sheets.map(({ glaze }) => glaze));
  const [first, ...others] = sheets;
  return section("Side by side", [
    {
      kind: "table",
      caption: `Expansion, and how far from the first [${millionths(unit)}]`,
      columns: [
        { head: "glaze", align: "left" },
        { head: "expansion", align: "right" },
        { head: "against the first", align: "right" },
        { head: "how alike", align: "left" }
      ],
      rows: [
        [first.glaze.name, millionthsText(first.glaze.expansion.meanPerK, unit), "", ""],
        ...others.map(({ glaze }, index) => {
          const difference = differences[index];
          if (difference === void 0) throw new RangeError("comparisonBlocks: a glaze too many");
          const sign = difference.differencePerK > 0 ? "+" : "";
          return [
            glaze.name,
            millionthsText(glaze.expansion.meanPerK, unit),
            `${sign}${millionthsText(difference.differencePerK, unit, difference.sigmaPerK)}`,
            alikeText(difference)
          ];
        })
      ]
    },
    {
      kind: "sentence",
      text: `Close relatives differ by at most 5 mol % in each oxide; most of the error is then common to both, and \xB1 ${coefficientText(2e-7, unit)} is our own judgement of what is left.`
    }
  ]);
}
function alikeText(difference) {
  if (difference.isMixed) return "measured and computed, or other ranges: compare with care";
  return difference.areRelatives ? "close relatives" : "other families";
}

// src/core/reports/glazeHtml.ts
function glazeHtml(works, options) {
  return reportHtml({
    title: options.title,
    language: "en",
    blocks: glazeBlocks(works, options)
  });
}

// src/core/reports/glazeText.ts
function glazeText(works, options) {
  return reportText({ title: options.title, blocks: glazeBlocks(works, options) }, options.paint);
}

// src/cli/commands/glaze.ts
var NO_WISHES = {
  batchG: null,
  slipGPerCm3: null,
  bucketLitres: null,
  dryCoatGPerCm2: null
};
async function run(paths, options) {
  const wishes = wishesFrom(options);
  const works = await readGlazes(paths, wishes.ok ? wishes.value : NO_WISHES);
  if (!wishes.ok || !works.ok)
    return refuse(
      [wishes, works].flatMap((result) => result.ok ? [] : result.problems),
      options
    );
  const [first] = works.value;
  const view = {
    unit: options.unit ?? "C",
    weights: options.weights ?? "g",
    title: works.value.length === 1 ? first.sheet.glaze.name : "Glazes side by side"
  };
  if (options.html !== void 0) {
    const written = await writeOutput(options.html, glazeHtml(works.value, view), {
      force: options.force === true
    });
    if (!written.ok) return refuse(written.problems, options);
    say(`wrote ${written.value}`, options);
  }
  if (options.json) answerJson(glazeDocument(works.value));
  else answer(glazeText(works.value, { ...view, paint: paintFor(options) }));
  return works.value.some(({ sheet }) => hasWarning(sheet.findings)) ? EXIT.no : EXIT.fine;
}
async function readGlazes(paths, wishes) {
  const works = [];
  const problems = [];
  for (const path of paths) {
    const work = await readGlaze(path, wishes);
    if (work.ok) works.push(work.value);
    else problems.push(...work.problems);
  }
  return problems.length > 0 ? failed(...problems) : ok(works);
}
function wishesFrom(options) {
  const batch = maybe(options.batch, (text) => parseMass(text, { where: "--batch" }));
  const density = maybe(options.density, (text) => parseSlipDensity(text, { where: "--density" }));
  const bucket = maybe(options.bucket, (text) => parseVolume(text, { where: "--bucket" }));
  const coat = maybe(options.dryCoat, (text) => parseCoatMass(text, { where: "--dry-coat" }));
  if (batch.ok && density.ok && bucket.ok && coat.ok)
    return ok({
      batchG: batch.value,
      slipGPerCm3: density.value,
      bucketLitres: bucket.value,
      dryCoatGPerCm2: coat.value
    });
  return failed(
    ...[batch, density, bucket, coat].flatMap((part) => part.ok ? [] : part.problems)
  );
}
function maybe(text, parse) {
  return text === void 0 ? ok(null) : parse(text);
}
export {
  run
};
