import { answerHtml } from "../../core/answers/answerHtml.ts";
import { glazeAnswer } from "../../core/answers/sideAnswers.ts";
import { hasWarning } from "../../core/findings/Finding.ts";
import type { GlazeWishes, GlazeWork } from "../../core/glaze/glazeWork.ts";
import { failed, ok, type Problem, type Result } from "../../core/problem.ts";
import { glazeDocument } from "../../core/reports/documents/glazeDocument.ts";
import {
  parseCoatMass,
  parseMass,
  parseSlipDensity,
  parseVolume,
} from "../../core/units/amounts.ts";
import { readGlaze } from "../../node/readFiring.ts";
import { writeOutput } from "../../node/writeOutput.ts";
import {
  answer,
  answerJson,
  type CommonOptions,
  EXIT,
  paintFor,
  refuse,
  say,
} from "../conversation.ts";
import { textOfAnswer } from "../showAnswer.ts";

interface GlazeOptions extends CommonOptions {
  readonly batch?: string;
  readonly density?: string;
  readonly bucket?: string;
  readonly dryCoat?: string;
  readonly weights?: "g" | "oz";
}

const NO_WISHES: GlazeWishes = {
  batchG: null,
  slipGPerCm3: null,
  bucketLitres: null,
  dryCoatGPerCm2: null,
};

/** `undunted glaze FILE…`: formula, expansion, set point, batch sheet and cautions of glazes. */
export async function run(paths: readonly string[], options: GlazeOptions): Promise<number> {
  const wishes = wishesFrom(options);
  const works = await readGlazes(paths, wishes.ok ? wishes.value : NO_WISHES);
  if (!wishes.ok || !works.ok)
    return refuse(
      [wishes, works].flatMap((result) => (result.ok ? [] : result.problems)),
      options,
    );
  const [first] = works.value as [GlazeWork];
  const view = {
    unit: options.unit ?? "C",
    weights: options.weights ?? "g",
    title: works.value.length === 1 ? first.sheet.glaze.name : "Glazes side by side",
  } as const;
  if (options.html !== undefined) {
    const written = await writeOutput(options.html, answerHtml(glazeAnswer(works.value, view)), {
      force: options.force === true,
    });
    if (!written.ok) return refuse(written.problems, options);
    say(`wrote ${written.value}`, options);
  }
  if (options.json) answerJson(glazeDocument(works.value));
  else {
    const text = textOfAnswer(glazeAnswer(works.value, view), options, paintFor(options));
    if (!text.ok) return refuse(text.problems, options);
    answer(text.value);
  }
  return works.value.some(({ sheet }) => hasWarning(sheet.findings)) ? EXIT.no : EXIT.fine;
}

async function readGlazes(
  paths: readonly string[],
  wishes: GlazeWishes,
): Promise<Result<readonly GlazeWork[]>> {
  const works: GlazeWork[] = [];
  const problems: Problem[] = [];
  for (const path of paths) {
    const work = await readGlaze(path, wishes);
    if (work.ok) works.push(work.value);
    else problems.push(...work.problems);
  }
  return problems.length > 0 ? failed(...problems) : ok(works);
}

function wishesFrom(options: GlazeOptions): Result<GlazeWishes> {
  const batch = maybe(options.batch, (text) => parseMass(text, { where: "--batch" }));
  const density = maybe(options.density, (text) => parseSlipDensity(text, { where: "--density" }));
  const bucket = maybe(options.bucket, (text) => parseVolume(text, { where: "--bucket" }));
  const coat = maybe(options.dryCoat, (text) => parseCoatMass(text, { where: "--dry-coat" }));
  if (batch.ok && density.ok && bucket.ok && coat.ok)
    return ok({
      batchG: batch.value,
      slipGPerCm3: density.value,
      bucketLitres: bucket.value,
      dryCoatGPerCm2: coat.value,
    });
  return failed(
    ...[batch, density, bucket, coat].flatMap((part) => (part.ok ? [] : part.problems)),
  );
}

function maybe<T>(text: string | undefined, parse: (text: string) => Result<T>): Result<T | null> {
  return text === undefined ? ok(null) : parse(text);
}
