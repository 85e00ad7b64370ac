import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ANSWERS } from "../../../src/core/diagnosis/answerTable.ts";
import {
  CRACK_KINDS,
  type CrackKind,
  type DiagnosedCause,
  QUESTIONS,
  WEIGHTS,
} from "../../../src/core/diagnosis/Diagnosis.ts";
import { linesToRecord, tellingApart } from "../../../src/core/diagnosis/tellingApart.ts";
import { problemText } from "../../../src/core/problem.ts";
import { parseRecord } from "../../../src/core/record/parseRecord.ts";
import { plainPaint } from "../../../src/core/reports/Block.ts";
import { diagnosisBlocks } from "../../../src/core/reports/diagnosisBlocks.ts";
import { reportText } from "../../../src/core/reports/reportText.ts";
import type { FiringReview } from "../../../src/core/review/FiringReview.ts";
import { reviewFiring } from "../../../src/core/review/reviewFiring.ts";
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

function causesOf(lines: string, rates: Parameters<typeof firing>[0] = {}) {
  return reviewed(lines, rates).diagnosis;
}

function cause(causes: readonly DiagnosedCause[], kind: CrackKind): DiagnosedCause {
  const found = causes.find((each) => each.kind === kind);
  if (!found) throw new Error(`no ${kind}`);
  return found;
}

function evidenceOf(causes: readonly DiagnosedCause[], kind: CrackKind, question: string) {
  return cause(causes, kind).evidence.find((each) => each.question === question);
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

  it("holds every kind of crack, once each, with probabilities that make 1", () => {
    const causes = causesOf("heard: [{ what: pinging, at: +20:00 }]\n");
    expect(causes.map(({ kind }) => kind).toSorted()).toEqual(kinds.toSorted());
    expect(causes.reduce((sum, { posterior }) => sum + posterior, 0)).toBeCloseTo(1, 9);
  });

  it("orders by probability, with the one word for it", () => {
    const causes = causesOf("found: [{ what: through-crack, edges: sharp }]\n", {
      quartzCPerHour: 300,
    });
    const posteriors = causes.map(({ posterior }) => posterior);
    expect(posteriors).toEqual(posteriors.toSorted((a, b) => b - a));
    for (const { posterior, likelihood } of causes)
      expect(likelihood).toBe(
        posterior >= 0.6 ? "likely" : posterior >= 0.15 ? "possible" : "unlikely",
      );
  });

  it("sums its weights", () => {
    for (const { evidence, balance } of causesOf("found: [{ what: dunt, edges: sharp }]\n")) {
      const signed = evidence.map((e) => (e.direction === "for" ? 1 : -1) * WEIGHTS[e.weight]);
      expect(signed.reduce((sum, each) => sum + each, 0)).toBe(balance);
    }
  });

  it("can't say what nothing was noted of but a crack", () => {
    const causes = causesOf("found: [{ piece: bowl, what: crack }]\n");
    expect(causes[0]?.posterior).toBeLessThan(0.4);
    expect(text(causes)).toContain("It can't be said from what is noted");
  });

  it("counts what is seen together once: a dull ring beside a crack through the wall says no more", () => {
    const posterior = (lines: string) => causesOf(lines).map((each) => each.posterior);
    expect(posterior("found: [{ what: through-crack, rings: dull }]\n")).toEqual(
      posterior("found: [{ what: through-crack }]\n"),
    );
  });

  it("takes broken pieces by themselves, beside crackle that was meant", () => {
    const review = reviewed(
      "unloaded: { temperature: 280 }\nfound: [{ piece: platter, what: through-crack, edges: sharp, where: rim }]\ntrials: [{ piece: A, clay: c, glaze: g, coat: 1 mm, glazedSides: both, cracked: crackle }]\n",
    );
    expect(review.diagnosis[0]?.kind).toBe("lid opened hot");
    expect(
      review.diagnosedPieces.map(({ piece, what, causes: [first] }) => [piece, what, first?.kind]),
    ).toEqual([
      ["platter", "cracked", "lid opened hot"],
      ["A", "crackled", "crackle by fit"],
    ]);
  });
});

describe("edges of a crack", () => {
  it("that are sharp speak against a crack from before the glaze set", () => {
    const causes = causesOf("found: [{ what: through-crack, edges: sharp }]\n");
    for (const kind of ["bisque crack", "drying crack", "S-crack"] as const)
      expect(evidenceOf(causes, kind, "edges")?.direction).toBe("against");
  });

  it("that are rounded under glaze put cracks from before it first", () => {
    const causes = causesOf("found: [{ what: through-crack, edges: rounded under glaze }]\n");
    expect(["heating crack", "bisque crack", "drying crack"]).toContain(causes[0]?.kind);
    expect(cause(causes, "lid opened hot").likelihood).toBe("unlikely");
  });
});

describe("the log", () => {
  it("speaks for dunting at quartz the more, the faster it cooled there", () => {
    const ratios = [20, 80, 200, 400].map((quartzCPerHour) => {
      const causes = causesOf("found: [{ what: through-crack }]\n", { quartzCPerHour });
      return cause(causes, "dunting at quartz").posterior;
    });
    expect(ratios).toEqual(ratios.toSorted((a, b) => a - b));
    expect(ratios[0]).toBeLessThan(0.15);
    expect(ratios[3]).toBeGreaterThan(0.6);
  });

  it("that ends above an inversion leaves its question open", () => {
    const causes = causesOf("found: [{ what: through-crack }]\n", { lastC: 640 });
    expect(cause(causes, "dunting at quartz").unanswered).toContain("quartz");
    expect(text(causes)).toContain("Not in this log: How fast did it cool through the quartz");
  });

  const openedAt = (tempC: number) =>
    cause(
      causesOf(
        `found: [{ what: through-crack, edges: sharp }]\nunloaded: { temperature: ${tempC} }\n`,
        { lastC: tempC - 5 },
      ),
      "lid opened hot",
    ).posterior;

  it("speaks for a hot opening the more, the hotter it was, without a step anywhere", () => {
    const temps = Array.from({ length: 24 }, (_, i) => 60 + 10 * i);
    const posteriors = temps.map(openedAt);
    for (const [i, posterior] of posteriors.entries()) {
      if (i === 0) continue;
      const step = posterior - (posteriors[i - 1] as number);
      expect(step).toBeGreaterThan(-0.02);
      expect(step).toBeLessThan(0.2);
    }
    expect(posteriors[2]).toBeLessThan(0.15);
    expect(posteriors.at(-1)).toBeGreaterThan(0.6);
  });

  it("hardly tells 248 from 250 °F at the opening", () => {
    expect(Math.abs(openedAt(120) - openedAt(121.1))).toBeLessThan(0.02);
  });
});

describe("what was heard", () => {
  it("weighs a crack while passing quartz for quartz", () => {
    const causes = causesOf("heard: [{ what: a crack, at: +11:15 }]\n", { quartzCPerHour: 250 });
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

  it("that cracked through on one side, with the thickest coats, speak for one-sided glaze", () => {
    const causes = causesOf(
      `trials:\n${trial("A", 0.5, "one", "crackle")}${trial("B", 1.4, "one", "through")}${trial("C", 1.4, "both", "crackle")}`,
    );
    expect(causes[0]?.kind).toBe("one-sided glaze");
    expect(answersFor(causes, "one-sided glaze")).toEqual(
      expect.arrayContaining([
        "fair for: the thickest one-sided coats cracked through",
        "fair for: glazed on one side",
      ]),
    );
  });

  it("count no more than ware whose glaze is noted: one side of a cracked mug", () => {
    const sides = (glazedSides: string) =>
      cause(
        causesOf(
          `ware: [{ name: mugs, clay: c, glazedSides: ${glazedSides} }]\nfound: [{ piece: mug, what: through-crack, edges: sharp }]\n`,
        ),
        "one-sided glaze",
      ).posterior;
    expect(sides("one")).toBeGreaterThan(3 * sides("both"));
  });

  it("with wider crackle on thicker coats put crackle by fit first", () => {
    const causes = causesOf(
      `trials:\n${[0.4, 0.8, 1.2, 1.6].map((coat) => trial(`T${coat}`, coat, "both", "crackle")).join("")}`,
    );
    expect(causes[0]?.kind).toBe("crackle by fit");
    expect(evidenceOf(causes, "crackle by fit", "coat")?.short).toBe(
      "cracks farther apart on thicker coats",
    );
  });

  it("are held against each other within the same sides only", () => {
    const pieces = [
      [0.53, "one", 2.3],
      [0.98, "one", 3.13],
      [1.31, "one", 4.24],
      [0.97, "both", 6],
    ] as const;
    const lines = pieces.map(
      ([coat, sides, spacing], i) =>
        `  - { piece: D${i}, clay: c, glaze: g, coat: ${coat} mm, glazedSides: ${sides}, cracked: crackle, crackSpacing: ${spacing} }\n`,
    );
    const causes = causesOf(`trials:\n${lines.join("")}`);
    expect(evidenceOf(causes, "crackle by fit", "coat")?.short).toBe(
      "cracks farther apart on thicker coats",
    );
  });
});

describe("words", () => {
  it.each([
    ["S crack in the bottom", "S-crack"],
    ["glaze shivering off the rim", "shivering"],
    ["cracked in the bisque", "bisque crack"],
    ["crazed", "crackle by fit"],
    ["it cracked while drying", "drying crack"],
  ])("of people are understood in a record: %s", (what, kind) => {
    expect(causesOf(`found: [{ piece: mug, what: "${what}" }]\n`)[0]?.kind).toContain(kind);
  });

  it("of remarks count, where nothing else was noted, and what is denied does not", () => {
    expect(causesOf('notes: "Lovely. One bowl has an S-crack."\n')[0]?.kind).toBe("S-crack");
    expect(causesOf('notes: "No cracks, nothing crazed, none split."\n')).toEqual([]);
  });

  it("that name no fault are asked about", () => {
    const record = parseRecord("formatVersion: 1\ntitle: x\nfound: [{ what: purple }]\n", "a.yaml");
    expect(record.ok ? [] : record.problems.map(({ code }) => code)).toEqual([
      "record/not-a-fault",
    ]);
  });
});

describe("how to tell which", () => {
  it("asks the two open questions that would move the first causes most", () => {
    const causes = causesOf("found: [{ what: through-crack }]\nunloaded: { temperature: 280 }\n", {
      quartzCPerHour: 200,
    });
    const apart = tellingApart(causes);
    expect(apart.length).toBeGreaterThan(0);
    expect(apart.length).toBeLessThan(3);
    const gains = apart.map(({ gainBits }) => gainBits);
    expect(gains).toEqual(gains.toSorted((a, b) => b - a));
    const running = causes.filter(({ posterior }, at) => at < 2 || posterior >= 0.15);
    for (const { speaksFor, speaksAgainst } of apart.flatMap(({ answers }) => answers))
      for (const kind of [speaksFor, speaksAgainst])
        if (kind !== null) expect(running.map((each) => each.kind)).toContain(kind);
  });

  it("does not ask what the record answers", () => {
    const causes = causesOf("found: [{ what: through-crack, edges: sharp, where: rim }]\n");
    const asked = tellingApart(causes).map(({ question }) => question);
    expect(asked).not.toContain("edges");
    expect(asked).not.toContain("place");
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

describe("the table of answers", () => {
  it("gives every answer a ground, and each question's answers make 1 under every kind", () => {
    expect(Object.keys(ANSWERS).length).toBeGreaterThan(10);
    for (const answers of Object.values(ANSWERS)) {
      for (const { basis } of Object.values(answers)) expect(basis).not.toBe("");
      for (const kind of kinds) {
        const all = Object.values(answers).map(({ probability }) => probability[kind]);
        expect(all.reduce((sum, each) => sum + each, 0)).toBeCloseTo(1, 9);
      }
    }
  });

  it("can speak for every kind of crack and against it", () => {
    const all = Object.values(ANSWERS).flatMap((answers) => Object.values(answers));
    for (const kind of kinds) {
      const ratios = all.map(
        ({ probability }) =>
          (probability[kind] * kinds.length) /
          kinds.reduce((sum, each) => sum + probability[each], 0),
      );
      expect(Math.max(...ratios)).toBeGreaterThan(1.2);
      expect(Math.min(...ratios)).toBeLessThan(0.8);
    }
  });

  it("asks nothing without saying how to find out", () => {
    for (const { ask, look } of Object.values(QUESTIONS)) {
      expect(ask).toMatch(/\?$/);
      expect(look).not.toBe("");
    }
  });
});

/** Words that would settle what only the pieces can. */
const VERDICT =
  /\b(is|was|are|were) (a |an )?(dunting|dunted|crackle|crazing|delayed|heating)\b|caused by|the cause\b|prove[sn]?\b|proof|\bcertain|definite|verdict|diagnos|guilty|must have|no doubt|\d %/i;

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

  it("settle nothing, and stay within 80 columns, for any record", { timeout: 120_000 }, () => {
    fc.assert(
      fc.property(record, fc.constantFrom(30, 80, 300), (lines, quartzCPerHour) => {
        const rendered = text(causesOf(lines, { quartzCPerHour }));
        expect(rendered).not.toMatch(VERDICT);
        expect(Math.max(...rendered.split("\n").map((line) => line.length))).toBeLessThan(81);
      }),
      { numRuns: 15 },
    );
  });

  it("settle nothing in any answer or question either, seen or not", () => {
    const answers = Object.values(ANSWERS)
      .flatMap((table) => Object.values(table))
      .map((each) => `${each.answer}\n${each.statement}\n${each.basis}`);
    const questions = Object.values(QUESTIONS).map((q) => `${q.ask}\n${q.look}\n${q.line ?? ""}`);
    for (const words of [...answers, ...questions]) expect(words).not.toMatch(VERDICT);
  });

  it("would be caught if they settled something", () => {
    expect("This is dunting.").toMatch(VERDICT);
    expect("It was a crackle.").toMatch(VERDICT);
    expect("dunting, 80 % of it").toMatch(VERDICT);
  });
});
