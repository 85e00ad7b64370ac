import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type {
  CrackKind,
  DiagnosedCause,
} from "../../../src/core/firing/diagnosis/DiagnosedCause.ts";
import { CRACK_KINDS, WEIGHTS } from "../../../src/core/firing/diagnosis/DiagnosedCause.ts";
import { EVIDENCE_RULES } from "../../../src/core/firing/diagnosis/evidenceRules.ts";
import { linesToRecord } from "../../../src/core/firing/diagnosis/linesToRecord.ts";
import { QUESTIONS } from "../../../src/core/firing/diagnosis/questions.ts";
import { tellingApart } from "../../../src/core/firing/diagnosis/tellingApart.ts";
import type { FiringReview } from "../../../src/core/firing/FiringReview.ts";
import { parseRecord } from "../../../src/core/firing/record.ts";
import { reviewFiring } from "../../../src/core/firing/reviewFiring.ts";
import { problemText } from "../../../src/core/problem.ts";
import { plainPaint } from "../../../src/core/reports/paint.ts";
import { reportText } from "../../../src/core/reports/reportText.ts";
import { diagnosisBlocks } from "../../../src/core/reports/sections/diagnosisBlocks.ts";
import { firing, readingOf } from "../../support/firings.ts";

const kinds = Object.keys(CRACK_KINDS) as CrackKind[];

function reviewed(lines: string, rates: Parameters<typeof firing>[0] = {}): FiringReview {
  const record = parseRecord(`formatVersion: 1\ntitle: Tiles\n${lines}`, "firing.yaml");
  if (!record.ok) throw new Error(record.problems.map(problemText).join("\n"));
  const result = reviewFiring({
    reading: readingOf({ kiln: firing(rates) }),
    record: record.value,
    plan: null,
  });
  if (!result.ok) throw new Error(result.problems.map(problemText).join("\n"));
  return result.value;
}

const PLATTERS =
  "ware: [{ name: platters, clay: own, body: stoneware cone 6, wall: 12, base: 12, widest: 400 }]\n";

function causesOf(lines: string, rates: Parameters<typeof firing>[0] = {}) {
  return reviewed(lines, rates).diagnosis;
}

function cause(causes: readonly DiagnosedCause[], kind: CrackKind): DiagnosedCause {
  const found = causes.find((each) => each.kind === kind);
  if (!found) throw new Error(`no ${kind}`);
  return found;
}

function answersFor(causes: readonly DiagnosedCause[], kind: CrackKind) {
  return cause(causes, kind).evidence.map(
    (each) => `${each.weight} ${each.direction}: ${each.short}`,
  );
}

const text = (causes: readonly DiagnosedCause[]) =>
  reportText({ title: "t", blocks: diagnosisBlocks(causes, "C") }, plainPaint);

describe("a diagnosis", () => {
  it("is not made when nothing was heard and nothing found", () => {
    const quiet =
      "trials: [{ piece: A, clay: c, glaze: g, coat: 1 mm, glazedSides: one, cracked: none }]";
    expect(causesOf("notes: none\n")).toEqual([]);
    expect(causesOf(`${quiet}\nfound: [{ piece: platter, rings: clear }]\n`)).toEqual([]);
    expect(diagnosisBlocks([], "C")).toEqual([]);
  });

  it("holds every kind of crack, once each, as soon as one thing was heard", () => {
    const causes = causesOf("heard: [{ what: pinging, at: +20:00 }]\n");
    expect(causes.map(({ kind }) => kind).toSorted()).toEqual(kinds.toSorted());
  });

  it("sums its weights and orders by the sum", () => {
    const causes = causesOf("found: [{ what: through-crack, edges: sharp }]\n", {
      quartzCPerHour: 300,
    });
    for (const { evidence, balance } of causes) {
      const signed = evidence.map((e) => (e.direction === "for" ? 1 : -1) * WEIGHTS[e.weight]);
      expect(signed.reduce((sum, each) => sum + each, 0)).toBe(balance);
    }
    const balances = causes.map(({ balance }) => balance);
    expect(balances).toEqual(balances.toSorted((a, b) => b - a));
  });
});

describe("edges of a crack", () => {
  it("that are sharp speak against a crack on the way up", () => {
    const causes = causesOf("found: [{ what: through-crack, edges: sharp }]\n");
    expect(answersFor(causes, "heating crack")).toContain("strong against: sharp edges");
    expect(answersFor(causes, "dunting at quartz")).toContain("fair for: sharp edges");
  });

  it("that are rounded under glaze put a crack from the way up first", () => {
    const causes = causesOf("found: [{ what: through-crack, edges: rounded under glaze }]\n");
    expect(["heating crack", "bisque crack", "drying crack"]).toContain(causes[0]?.kind);
    expect(cause(causes, "lid opened hot").standing).toBe("speaks against");
  });
});

describe("the log", () => {
  it.each([
    [0.3, "strong against"],
    [0.8, "fair against"],
    [1.5, "weak for"],
    [3, "fair for"],
    [6, "strong for"],
  ])("that cooled through quartz at %d times the guide of its ware is %s", (times, weight) => {
    const lines = `${PLATTERS}found: [{ what: through-crack }]\n`;
    const guide = reviewed(lines).zones[0]?.crossings.find(
      ({ band, direction }) => band === "quartz inversion" && direction === "cooling",
    )?.limitCPerHour as number;
    const causes = causesOf(lines, { quartzCPerHour: times * guide });
    const said = cause(causes, "dunting at quartz").evidence.find((e) => e.question === "quartz");
    expect(`${said?.weight} ${said?.direction}`).toBe(weight);
  });

  it("that ends above an inversion leaves its question open", () => {
    const causes = causesOf("found: [{ what: through-crack }]\n", { lastC: 640 });
    expect(cause(causes, "dunting at quartz").unanswered).toContain("quartz");
    expect(text(causes)).toContain("Not in this log: How fast did it cool through the quartz");
  });

  it.each([
    [280, "strong for"],
    [220, "fair for"],
    [150, "weak for"],
    [90, "strong against"],
  ])("and a kiln opened at %i °C is %s dunting from opening it", (opened, weight) => {
    const causes = causesOf(
      `found: [{ what: through-crack }]\nunloaded: { temperature: ${opened} }\n`,
    );
    expect(answersFor(causes, "lid opened hot")).toContain(`${weight}: opened at {opened}`);
  });
});

describe("what was heard", () => {
  it("weighs a crack while passing quartz for quartz", () => {
    const causes = causesOf(`${PLATTERS}heard: [{ what: a crack, at: +11:15 }]\n`, {
      quartzCPerHour: 200,
    });
    expect(causes[0]?.kind).toBe("dunting at quartz");
  });

  it("weighs pinging the day after unloading for delayed crazing", () => {
    const causes = causesOf(
      "unloaded: { at: +26:00, temperature: 70 }\nheard: [{ what: pinging, at: +52:00 }]\n",
    );
    expect(causes[0]?.kind).toBe("delayed crazing");
    expect(text(causes)).toContain("26 h after the kiln was opened");
  });

  it("gives words that say neither crack nor pinging no weight", () => {
    const causes = causesOf("heard: [{ what: the neighbour's dog, at: +12:30 }]\n");
    expect(
      causes.flatMap(({ evidence }) => evidence).filter((e) => e.question === "sound"),
    ).toEqual([]);
  });
});

describe("test pieces", () => {
  const trial = (piece: string, coat: number, sides: string, cracked: string) =>
    `  - { piece: ${piece}, clay: c, glaze: g, coat: ${coat} mm, glazedSides: ${sides}, cracked: ${cracked}, crackSpacing: ${coat * 7} }\n`;

  it("cracked through on one side only, with the thickest coats, speak for one-sided glaze", () => {
    const causes = causesOf(
      `trials:\n${trial("A", 0.5, "one", "crackle")}${trial("B", 1.4, "one", "through")}${trial("C", 1.4, "both", "crackle")}`,
    );
    expect(answersFor(causes, "one-sided glaze")).toEqual(
      expect.arrayContaining([
        "fair for: {through on one side} cracked through, one side glazed",
        "fair for: the thickest one-sided coats cracked through",
      ]),
    );
  });

  it("with wider crackle on thicker coats put crackle by fit first", () => {
    const causes = causesOf(
      `trials:\n${[0.4, 0.8, 1.2, 1.6].map((coat) => trial(`T${coat}`, coat, "both", "crackle")).join("")}`,
    );
    expect(causes[0]?.kind).toBe("crackle by fit");
    expect(answersFor(causes, "crackle by fit")).toContain(
      "fair for: wider crackle on thicker coats",
    );
  });
});

describe("what would tell the first two apart", () => {
  it("is an open question with an answer that pulls them different ways", () => {
    const causes = causesOf(
      `${PLATTERS}found: [{ what: through-crack }]\nunloaded: { temperature: 280 }\n`,
      { quartzCPerHour: 700 },
    );
    expect(causes.slice(0, 2).map(({ kind }) => kind)).toEqual([
      "dunting at quartz",
      "lid opened hot",
    ]);
    const apart = tellingApart(causes);
    expect(apart.map(({ question }) => question)).toContain("place");
    expect(apart.flatMap(({ answers }) => answers)).toContainEqual({
      answer: "it begins at the rim",
      speaksFor: "lid opened hot",
      speaksAgainst: null,
    });
  });

  it("says which kinds stand level", () => {
    const causes = causesOf("found: [{ what: through-crack }]\n", { lastC: 640 });
    expect(text(causes)).toContain("Level with each other: dunting at the quartz inversion");
  });
});

describe("the lines to add to the record", () => {
  it("make a record that can be read, whatever is open", () => {
    const causes = causesOf("heard: [{ what: a crack, at: +40:00 }]\n");
    const lines = linesToRecord(causes);
    expect(lines).toContain("    edges: sharp               # or rounded under glaze");
    const added = parseRecord(`formatVersion: 1\ntitle: x\n${lines.join("\n")}\n`, "a.yaml");
    expect(added.ok ? [] : added.problems.map(problemText)).toEqual([]);
  });

  it("do not ask for what the record holds", () => {
    const causes = causesOf("found: [{ what: through-crack, edges: sharp, rings: dull }]\n");
    expect(linesToRecord(causes).join("\n")).not.toMatch(/edges:|rings:/);
  });
});

describe("the table of rules", () => {
  it("gives every rule a question, a ground and something to say for or against", () => {
    for (const rule of EVIDENCE_RULES) {
      expect(QUESTIONS[rule.question].ask).toMatch(/\?$/);
      expect(rule.basis).not.toBe("");
      const kindsPulled = [...Object.keys(rule.for), ...Object.keys(rule.against)];
      expect(kindsPulled.length).toBeGreaterThan(0);
      expect(new Set(kindsPulled).size).toBe(kindsPulled.length);
    }
  });

  it("can speak for every kind of crack and against it", () => {
    for (const kind of kinds.filter((each) => each !== "something else"))
      for (const side of ["for", "against"] as const)
        expect(EVIDENCE_RULES.some((rule) => rule[side][kind] !== undefined)).toBe(true);
  });

  it("asks no question that no rule weighs", () => {
    const asked = new Set(EVIDENCE_RULES.map(({ question }) => question));
    expect(Object.keys(QUESTIONS).toSorted()).toEqual([...asked].toSorted());
  });
});

/** Words that would settle what only the pieces can. */
const VERDICT =
  /\b(is|was|are|were) (a |an )?(dunting|dunted|crackle|crazing|delayed|heating)\b|caused by|the cause\b|prove[sn]?\b|proof|\bcertain|definite|verdict|diagnos|guilty|probab|likely|must have|no doubt|\d %/i;

describe("the words", () => {
  const maybe = (key: string, ...values: readonly string[]) =>
    fc.option(
      fc.constantFrom(...values).map((value) => `${key}: ${value}`),
      { nil: null },
    );
  const found = fc
    .tuple(
      maybe("what", "through-crack", "crackle", "crack", "chip"),
      maybe("edges", "sharp", "rounded under glaze"),
      maybe("where", "rim", "foot", "wall", "base", "handle"),
      maybe("pattern", "one long line", "spiral", "network", "star"),
      maybe("when", "before unloading", "at unloading", "hours later", "days later"),
      maybe("rings", "dull", "clear"),
    )
    .map((keys) => `{ ${keys.filter((key) => key !== null).join(", ")} }`);
  const sound = fc
    .tuple(fc.constantFrom("pinging", "a crack", "a noise"), fc.integer({ min: 1, max: 70 }))
    .map(([what, hour]) => `{ what: ${what}, at: +${hour}:30 }`);
  const record = fc
    .record({
      found: fc.array(found, { maxLength: 3 }),
      heard: fc.array(sound, { maxLength: 3 }),
      opened: fc.integer({ min: 20, max: 400 }),
      state: fc.constantFrom("damp", "glazed on bisque"),
      cracked: fc.constantFrom("none", "crackle", "through"),
      sides: fc.constantFrom("one", "both"),
    })
    .map(
      (r) =>
        `found: [${r.found.join(", ")}]\nheard: [${r.heard.join(", ")}]\nunloaded: { at: +24:00, temperature: ${r.opened} }\nware: [{ name: mugs, clay: c, state: ${r.state} }]\ntrials: [{ piece: A, clay: c, glaze: g, coat: 1 mm, glazedSides: ${r.sides}, cracked: ${r.cracked} }]\n`,
    );

  it("settle nothing, and stay within 80 columns, for any record", () => {
    fc.assert(
      fc.property(record, fc.constantFrom(30, 80, 300), (lines, quartzCPerHour) => {
        const rendered = text(causesOf(lines, { quartzCPerHour }));
        expect(rendered).not.toMatch(VERDICT);
        expect(Math.max(...rendered.split("\n").map((line) => line.length))).toBeLessThan(81);
      }),
      { numRuns: 60 },
    );
  });

  it("settle nothing in any rule or question either, seen or not", () => {
    const rules = EVIDENCE_RULES.map(
      (r) => `${r.answer}\n${r.short ?? ""}\n${r.statement}\n${r.basis}`,
    );
    const questions = Object.values(QUESTIONS).map((q) => `${q.ask}\n${q.look}\n${q.line ?? ""}`);
    for (const words of [...rules, ...questions]) expect(words).not.toMatch(VERDICT);
  });

  it("would be caught if they settled something", () => {
    expect("This is dunting.").toMatch(VERDICT);
    expect("It was a crackle.").toMatch(VERDICT);
    expect("dunting, 80 % of it").toMatch(VERDICT);
  });
});
