import { basedOn, cited } from "../../sources/basedOn.ts";
import {
  foundFirst,
  foundWith,
  given,
  hasCrackle,
  hasThroughCrack,
  heardAfterOpening,
  heardIn,
  heardSoonAfterOpening,
  openedBetween,
  passedAt,
  trialsWhere,
} from "./answers.ts";
import { coatAgainstSpacing } from "./coatAgainstSpacing.ts";
import type { CrackFacts } from "./crackFacts.ts";
import type { EvidenceRule, Pull } from "./EvidenceRule.ts";

const OWN = "our own judgement";
const PRACTICE = cited("reading-cracks");
const OPENING = cited("opening-practice");
const MOISTURE = basedOn(
  "fired clay swells for years, fastest in its first hours, and glass under stress cracks with delay",
  "wilson-2003",
  "freiman-1984",
);
const LAYER = basedOn(
  "a layer in tension cracks deeper the thicker it is, and a thin wall bears less",
  "hutchinson-suo-1992",
);

const QUARTZ_RATES = `the limit as given for this passage; what being over it says is our own judgement, after the rule that it cracks walls (${cited("fraser-1986")})`;
const CRISTOBALITE_RATES =
  "the limit as given for this passage; what being over it says is our own judgement, and clay may hold no cristobalite";

const ANY_TIME = Number.POSITIVE_INFINITY;

/** All three ways to crack a wall by cooling it. */
const dunting = (weight: "weak" | "fair" | "strong"): Pull => ({
  "dunting at quartz": weight,
  "dunting at cristobalite": weight,
  "lid opened hot": weight,
});

/**
 * Every observation that is weighed, question by question: when it holds, what it speaks for and
 * against, how strongly (weak, fair, strong: a coarse scale of our own), why, and on what ground.
 */
export const EVIDENCE_RULES: readonly EvidenceRule[] = [
  // How deep the cracks go.
  {
    question: "depth",
    answer: "cracks through the wall",
    seen: given(hasThroughCrack),
    statement: "At least one piece is cracked through the wall: more than its glaze gave way.",
    for: { ...dunting("weak"), "one-sided glaze": "weak", "heating crack": "weak" },
    against: {},
    basis: PRACTICE,
  },
  {
    question: "depth",
    answer: "cracks through the wall and no crackle",
    seen: given((facts) => hasThroughCrack(facts) && !hasCrackle(facts)),
    statement: "No crackle was noted beside it: a glaze that fits badly cracks all over first.",
    for: {},
    against: { "crackle by fit": "fair", "delayed crazing": "fair" },
    basis: OWN,
  },
  {
    question: "depth",
    answer: "crackle in the glaze",
    seen: given(hasCrackle),
    statement: "Glaze has crackled, as it does when it shrinks more than the clay.",
    for: { "crackle by fit": "strong", "delayed crazing": "weak" },
    against: { shivering: "strong" },
    basis: PRACTICE,
  },
  {
    question: "depth",
    answer: "crackle only, no wall cracked",
    seen: given((facts) => hasCrackle(facts) && !hasThroughCrack(facts)),
    statement: "No wall is noted as cracked among the pieces that were looked at.",
    for: {},
    against: { ...dunting("fair"), "one-sided glaze": "fair", "heating crack": "fair" },
    basis: OWN,
  },
  {
    question: "depth",
    answer: "chips off edges",
    seen: foundWith("what", "chip"),
    statement:
      "Something chipped: glaze that flakes off edges is squeezed rather than pulled, the opposite of what makes crackle.",
    for: { shivering: "strong" },
    against: { "crackle by fit": "weak", "delayed crazing": "weak" },
    basis: PRACTICE,
  },

  // What the edges show.
  {
    question: "edges",
    answer: "sharp edges",
    seen: foundWith("edges", "sharp"),
    statement: "Edges are sharp: the crack is younger than the glaze, which had set by then.",
    for: { ...dunting("fair"), "one-sided glaze": "fair" },
    against: {
      "heating crack": "strong",
      "bisque crack": "strong",
      "drying crack": "strong",
      "S-crack": "strong",
    },
    basis: PRACTICE,
  },
  {
    question: "edges",
    answer: "edges rounded under glaze",
    seen: foundWith("edges", "rounded under glaze"),
    statement: "Edges are rounded under glaze: the crack was there before the glaze melted.",
    for: {
      "heating crack": "fair",
      "bisque crack": "strong",
      "drying crack": "strong",
      "S-crack": "fair",
    },
    against: {
      "dunting at quartz": "fair",
      "dunting at cristobalite": "strong",
      "lid opened hot": "strong",
      "one-sided glaze": "fair",
    },
    basis: PRACTICE,
  },

  // When it was first seen.
  {
    question: "first seen",
    answer: "crackle seen by the time of unloading",
    seen: foundFirst(["crackle", "crack"], ["before unloading", "at unloading"]),
    statement:
      "Cracks in the glaze were there when the kiln was unloaded, too early for moisture to have done it.",
    for: { "crackle by fit": "weak" },
    against: { "delayed crazing": "fair" },
    basis: MOISTURE,
  },
  {
    question: "first seen",
    answer: "crackle first seen hours later",
    seen: foundFirst(["crackle", "crack"], ["hours later"]),
    statement:
      "Cracks in the glaze were first seen hours after unloading, though they may have been there unseen.",
    for: { "delayed crazing": "fair" },
    against: {},
    basis: MOISTURE,
  },
  {
    question: "first seen",
    answer: "crackle first seen days later",
    seen: foundFirst(["crackle", "crack"], ["days later"]),
    statement:
      "Cracks in the glaze were first seen days after unloading, long after all heat was out of the ware.",
    for: { "delayed crazing": "strong" },
    against: { "crackle by fit": "weak" },
    basis: MOISTURE,
  },
  {
    question: "first seen",
    answer: "a crack through the wall first seen days later",
    seen: foundFirst(["through-crack"], ["days later"]),
    statement:
      "A crack through the wall was first seen days after unloading: glaze pulls on a wall for good, heat does not; a fine crack may have been overlooked.",
    for: { "one-sided glaze": "fair" },
    against: { "lid opened hot": "weak", "heating crack": "fair" },
    basis: OWN,
  },
  {
    question: "first seen",
    answer: "a crack through the wall seen within hours",
    seen: foundFirst(["through-crack"], ["before unloading", "at unloading", "hours later"]),
    statement:
      "A crack through the wall was seen within hours of unloading, sooner than moisture works.",
    for: {},
    against: { "delayed crazing": "weak" },
    basis: MOISTURE,
  },

  // What was heard, and how hot it was.
  {
    question: "sound",
    answer: "a crack on the way up",
    short: "a crack on the way up, at {heat}",
    seen: heardIn("crack", "heating"),
    statement: "A crack was heard at {heat} on the way up, though shelves make such sounds too.",
    for: { "heating crack": "fair" },
    against: {},
    basis: OWN,
  },
  {
    question: "sound",
    answer: "a crack while passing quartz",
    short: "a crack at {heat}, passing quartz",
    seen: heardIn("crack", "quartz"),
    statement:
      "A crack was heard at {heat}, while the kiln passed the quartz inversion and was still shut.",
    for: { "dunting at quartz": "strong" },
    against: {},
    basis: OWN,
  },
  {
    question: "sound",
    answer: "a crack while passing cristobalite, the kiln shut",
    short: "a crack at {heat}, passing cristobalite",
    seen: heardIn("crack", "cristobalite"),
    statement:
      "A crack was heard at {heat}, while the kiln passed the cristobalite inversion and was still shut.",
    for: { "dunting at cristobalite": "strong" },
    against: { "lid opened hot": "weak" },
    basis: OWN,
  },
  {
    question: "sound",
    answer: "a crack soon after a hot opening",
    short: "a crack {since} after opening at {opened}",
    seen: heardSoonAfterOpening("crack", { aboveC: 200 }),
    statement:
      "A crack was heard {since} after the kiln was opened at {opened}, while cold air met hot ware.",
    for: { "lid opened hot": "strong", "dunting at cristobalite": "weak" },
    against: {},
    basis: OWN,
  },
  {
    question: "sound",
    answer: "a crack soon after a warm opening",
    short: "a crack {since} after opening at {opened}",
    seen: heardSoonAfterOpening("crack", { aboveC: 120, upToC: 200 }),
    statement:
      "A crack was heard {since} after the kiln was opened at {opened}, which much ware stands.",
    for: { "lid opened hot": "fair" },
    against: {},
    basis: OWN,
  },
  {
    question: "sound",
    answer: "a crack between or below the inversions, the kiln shut",
    short: "a crack at {heat}, the kiln shut",
    seen: heardIn("crack", "between the inversions", "below the inversions"),
    statement:
      "A crack was heard at {heat}, outside both inversions and with the kiln shut, where glaze pulls on the wall and little else does.",
    for: { "one-sided glaze": "fair" },
    against: { "lid opened hot": "weak" },
    basis: OWN,
  },
  {
    question: "sound",
    answer: "a crack long after unloading",
    short: "a crack {since} after opening",
    seen: heardAfterOpening("crack", { from: 2, below: ANY_TIME }),
    statement: "A crack was heard {since} after the kiln was opened, when the ware was cool.",
    for: { "one-sided glaze": "fair", "delayed crazing": "weak" },
    against: { "lid opened hot": "weak" },
    basis: MOISTURE,
  },
  {
    question: "sound",
    answer: "pinging well above the last inversion",
    short: "pinging at {heat}",
    seen: heardIn("pinging", "between the inversions"),
    statement:
      "Pinging was heard as hot as {heat}: the earlier glaze begins to crack, the worse it fits.",
    for: { "crackle by fit": "strong" },
    against: { "delayed crazing": "fair" },
    basis: LAYER,
  },
  {
    question: "sound",
    answer: "pinging while passing quartz",
    short: "pinging at {heat}, passing quartz",
    seen: heardIn("pinging", "quartz"),
    statement:
      "Pinging was heard at {heat}, while the kiln passed the quartz inversion: clay or a glaze that fits very badly.",
    for: { "dunting at quartz": "fair", "crackle by fit": "weak" },
    against: {},
    basis: OWN,
  },
  {
    question: "sound",
    answer: "pinging while passing cristobalite, the kiln shut",
    short: "pinging at {heat}, passing cristobalite",
    seen: heardIn("pinging", "cristobalite"),
    statement:
      "Pinging was heard at {heat}, while the kiln passed the cristobalite inversion: glaze or clay.",
    for: { "crackle by fit": "weak", "dunting at cristobalite": "weak" },
    against: { "delayed crazing": "weak" },
    basis: OWN,
  },
  {
    question: "sound",
    answer: "pinging below both inversions, the kiln shut",
    short: "pinging at {heat}, the kiln shut",
    seen: heardIn("pinging", "below the inversions"),
    statement:
      "Pinging was heard at {heat} with the kiln shut, below both inversions, where glaze that shrinks more than the clay gives way.",
    for: { "crackle by fit": "fair" },
    against: { "delayed crazing": "weak" },
    basis: LAYER,
  },
  {
    question: "sound",
    answer: "pinging soon after a hot opening",
    short: "pinging {since} after opening at {opened}",
    seen: heardSoonAfterOpening("pinging", { aboveC: 120 }),
    statement:
      "Pinging began {since} after the kiln was opened at {opened}: such a burst comes of the draught and says little about the fit of the glaze.",
    for: { "lid opened hot": "weak" },
    against: {},
    basis: OWN,
  },
  {
    question: "sound",
    answer: "pinging soon after a cool opening",
    short: "pinging {since} after opening at {opened}",
    seen: heardSoonAfterOpening("pinging", { upToC: 120 }),
    statement:
      "Pinging was heard {since} after the kiln was opened at {opened}, while the ware cooled the last of its way.",
    for: { "crackle by fit": "fair" },
    against: {},
    basis: OWN,
  },

  // Whether it goes on in ware that no longer changes its temperature.
  {
    question: "cool and still pinging",
    answer: "still pinging hours after unloading",
    short: "pinging {since} after opening",
    seen: heardAfterOpening("pinging", { from: 2, below: 24 }),
    statement:
      "Pinging was still heard {since} after the kiln was opened, in ware that is by then evenly cool (two hours are our own estimate).",
    for: { "delayed crazing": "fair", "crackle by fit": "weak" },
    against: {},
    basis: MOISTURE,
  },
  {
    question: "cool and still pinging",
    answer: "still pinging the next day",
    short: "pinging {since} after opening",
    seen: heardAfterOpening("pinging", { from: 24, below: ANY_TIME }),
    statement:
      "Pinging was heard {since} after the kiln was opened: cracks still grow in ware that is long cool.",
    for: { "delayed crazing": "strong" },
    against: {},
    basis: MOISTURE,
  },

  // How fast it went through the inversions.
  ...inversionRules("quartz", "dunting at quartz", QUARTZ_RATES),
  ...inversionRules("cristobalite", "dunting at cristobalite", CRISTOBALITE_RATES),

  // How hot the kiln was when it was opened.
  {
    question: "opening",
    answer: "opened above 250 °C (480 °F)",
    short: "opened at {opened}",
    seen: openedBetween(250, ANY_TIME),
    statement: "The kiln was opened at {opened}, hotter than even the boldest open theirs.",
    for: { "lid opened hot": "strong" },
    against: {},
    basis: OPENING,
  },
  {
    question: "opening",
    answer: "opened at 200 to 250 °C (390 to 480 °F)",
    short: "opened at {opened}",
    seen: openedBetween(200, 250),
    statement: "The kiln was opened at {opened}, where some open a crack and many wait.",
    for: { "lid opened hot": "fair" },
    against: {},
    basis: OPENING,
  },
  {
    question: "opening",
    answer: "opened at 120 to 200 °C (250 to 390 °F)",
    short: "opened at {opened}",
    seen: openedBetween(120, 200),
    statement: "The kiln was opened at {opened}; some unload as hot as that without loss.",
    for: { "lid opened hot": "weak" },
    against: {},
    basis: OPENING,
  },
  {
    question: "opening",
    answer: "opened at 120 °C (250 °F) or below",
    short: "opened at {opened}",
    seen: openedBetween(Number.NEGATIVE_INFINITY, 120),
    statement: "The kiln was opened at {opened}, as cool as is advised.",
    for: {},
    against: { "lid opened hot": "strong" },
    basis: OPENING,
  },

  // Which sides of the cracked pieces were glazed.
  {
    question: "sides",
    answer: "only pieces glazed on one side cracked through",
    short: "{through on one side} cracked through, one side glazed",
    seen: trialsWhere(({ through }) => through.one > 0 && through.both === 0),
    statement:
      "Of the test pieces, {through on one side} glazed on one side cracked through and none glazed on both. In a closed shape such as a mug such a crack runs on; a flat tile, free to bend, tends to stop it.",
    for: { "one-sided glaze": "fair" },
    against: {},
    basis: LAYER,
  },
  {
    question: "sides",
    answer: "a piece glazed on both sides cracked through",
    short: "{through on both} cracked through, both sides glazed",
    seen: trialsWhere(({ through }) => through.both > 0),
    statement:
      "Of the test pieces, {through on both} glazed on both sides cracked through, where glaze pulls evenly.",
    for: {},
    against: { "one-sided glaze": "fair" },
    basis: LAYER,
  },
  {
    question: "sides",
    answer: "no piece glazed on one side cracked through",
    short: "{whole on one side} glazed on one side, none through",
    seen: trialsWhere(({ through, whole }) => through.one === 0 && whole.one > 0),
    statement: "Of the test pieces, {whole on one side} glazed on one side did not crack through.",
    for: {},
    against: { "one-sided glaze": "fair" },
    basis: OWN,
  },

  // What the coats say.
  {
    question: "coat",
    answer: "cracks farther apart on thicker coats",
    short: "wider crackle on thicker coats",
    seen: (facts) => {
      const spacing = coatAgainstSpacing(facts);
      return spacing?.grows ? spacing.evidence : null;
    },
    statement:
      "On {pieces} test pieces the cracks stand farther apart the thicker the coat, as cracks in a pulled layer do.",
    for: { "crackle by fit": "fair" },
    against: {},
    basis: cited("thouless-1990"),
  },
  {
    question: "coat",
    answer: "no wider cracks on thicker coats",
    seen: (facts) => {
      const spacing = coatAgainstSpacing(facts);
      return spacing && !spacing.grows ? spacing.evidence : null;
    },
    statement:
      "On {pieces} test pieces the cracks do not stand farther apart on thicker coats; near the least thickness that cracks they need not.",
    for: {},
    against: { "crackle by fit": "weak" },
    basis: OWN,
  },
  {
    question: "coat",
    answer: "the thickest one-sided coats cracked through",
    seen: given(thickestCracked),
    statement:
      "Among the test pieces glazed on one side those that cracked through have the thickest coats, which pull the hardest.",
    for: { "one-sided glaze": "fair" },
    against: {},
    basis: LAYER,
  },

  // How the crack runs.
  {
    question: "pattern",
    answer: "one long line",
    seen: foundWith("pattern", "one long line"),
    statement: "A crack runs as one long line, as a wall gives way; glaze alone cracks as a net.",
    for: { ...dunting("fair"), "one-sided glaze": "weak", "heating crack": "weak" },
    against: {},
    basis: PRACTICE,
  },
  {
    question: "pattern",
    answer: "a network",
    seen: foundWith("pattern", "network"),
    statement: "Cracks form a network, as they do in a layer that is pulled everywhere at once.",
    for: { "crackle by fit": "fair", "delayed crazing": "fair" },
    against: {},
    basis: PRACTICE,
  },
  {
    question: "pattern",
    answer: "a spiral",
    seen: foundWith("pattern", "spiral"),
    statement:
      "A crack winds round the piece, which glaze thick inside and thin outside is known for; crackle follows the throwing too.",
    for: { "one-sided glaze": "fair", "crackle by fit": "weak" },
    against: {},
    basis: PRACTICE,
  },
  {
    question: "pattern",
    answer: "a star",
    seen: foundWith("pattern", "star"),
    statement: "A star in a base points to drying, to the first firing or to a foot that stuck.",
    for: { "heating crack": "weak" },
    against: {},
    basis: OWN,
  },

  // Where it begins.
  {
    question: "place",
    answer: "it begins at the rim",
    seen: foundWith("where", "rim"),
    statement: "A crack begins at a rim, which cold air reaches first, and which heats first.",
    for: { "lid opened hot": "fair", "heating crack": "weak" },
    against: {},
    basis: PRACTICE,
  },
  {
    question: "place",
    answer: "it begins at the foot or the base",
    seen: foundWith("where", "foot", "base"),
    statement:
      "A crack begins at a foot or a base, which stays hot on its shelf as the wall cools.",
    for: { "dunting at quartz": "weak", "dunting at cristobalite": "weak" },
    against: {},
    basis: PRACTICE,
  },
  {
    question: "place",
    answer: "it begins in the wall",
    seen: foundWith("where", "wall"),
    statement: "A crack begins in the wall, where only the glaze pulls.",
    for: { "one-sided glaze": "weak" },
    against: {},
    basis: OWN,
  },
  {
    question: "place",
    answer: "it begins at a handle",
    seen: foundWith("where", "handle"),
    statement: "A crack begins at a handle, where joints part in drying and in the first firing.",
    for: { "heating crack": "weak" },
    against: {},
    basis: PRACTICE,
  },

  // How the piece rings.
  {
    question: "ring",
    answer: "a dull ring",
    seen: foundWith("rings", "dull"),
    statement: "A piece rings dull, as with a crack through the wall, seen or not.",
    for: { ...dunting("weak"), "one-sided glaze": "weak", "heating crack": "weak" },
    against: {},
    basis: PRACTICE,
  },
  {
    question: "ring",
    answer: "a clear ring",
    seen: given(({ found }) => {
      const rung = found.filter(({ rings }) => rings !== null);
      return rung.length > 0 && rung.every(({ rings }) => rings === "clear");
    }),
    statement: "What was tapped rings clear: those walls are whole.",
    for: {},
    against: { ...dunting("weak"), "one-sided glaze": "weak", "heating crack": "weak" },
    basis: PRACTICE,
  },

  // How the ware went in.
  {
    question: "state of the ware",
    answer: "raw or damp ware",
    seen: given(({ states }) =>
      states.some((state) => state === "damp" || state === "bone dry" || state === "glazed raw"),
    ),
    statement: "Unfired ware was in the kiln, which cracks on the way up as water leaves it.",
    for: { "heating crack": "fair" },
    against: {},
    basis: PRACTICE,
  },
  {
    question: "state of the ware",
    answer: "bisqued ware",
    seen: given(
      ({ states }) =>
        states.length > 0 &&
        states.every((state) => state === "bisqued" || state === "glazed on bisque"),
    ),
    statement: "All ware had been through a first firing, which drove the water out of it.",
    for: {},
    against: { "heating crack": "weak" },
    basis: OWN,
  },
];

/** How hard an inversion was passed, in five steps of its limit. */
function inversionRules(
  which: "quartz" | "cristobalite",
  kind: "dunting at quartz" | "dunting at cristobalite",
  basis: string,
): readonly EvidenceRule[] {
  const passage = `It cooled through the ${which} inversion at up to {fastest}`;
  const rule = (
    answer: string,
    [above, upTo]: readonly [number, number],
    reason: string,
    pull: Pick<EvidenceRule, "for" | "against">,
  ): EvidenceRule => ({
    question: which,
    answer: `${answer} through ${which}`,
    short: `{fastest} through ${which}, {times} times the limit`,
    seen: passedAt(which, { above, upTo }),
    statement: `${passage}, {times} times the limit: ${reason}.`,
    ...pull,
    basis,
  });
  return [
    rule("very slowly", [-1, 0.5], "gentle even if the limit is wrong by a factor of two", {
      for: {},
      against: { [kind]: "strong" },
    }),
    rule("slowly", [0.5, 1.01], "within what is advised", { for: {}, against: { [kind]: "fair" } }),
    rule("somewhat fast", [1.01, 2], "over it, yet within what such limits are uncertain by", {
      for: { [kind]: "weak" },
      against: {},
    }),
    rule("fast", [2, 4], "over it by more than such limits are uncertain by", {
      for: { [kind]: "fair" },
      against: {},
    }),
    rule("very fast", [4, ANY_TIME], "far over it", { for: { [kind]: "strong" }, against: {} }),
  ];
}

/** Every one-sided test piece that cracked through has a thicker coat than any that did not. */
function thickestCracked({ trials }: CrackFacts): boolean {
  const oneSided = trials.filter(({ glazedSides }) => glazedSides === "one");
  const coats = (through: boolean) =>
    oneSided
      .filter(({ cracked }) => cracked !== null && (cracked === "through") === through)
      .map(({ coatMm }) => coatMm);
  const [through, whole] = [coats(true), coats(false)];
  return through.length > 0 && whole.length > 0 && Math.min(...through) > Math.max(...whole);
}
