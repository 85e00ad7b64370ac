import { answerHtml } from "../../core/answers/answerHtml.ts";
import { kilnAnswer } from "../../core/answers/sideAnswers.ts";
import { reachChart } from "../../core/charts/reachChart.ts";
import { hasWarning } from "../../core/findings/Finding.ts";
import { kilnFiringOf } from "../../core/firing/kilnFiring.ts";
import type { KilnFiring } from "../../core/kiln/LearnedKiln.ts";
import { learnKiln } from "../../core/kiln/learnKiln.ts";
import { failed, ok, type Problem, type Result } from "../../core/problem.ts";
import { kilnDocument } from "../../core/reports/documents/kilnDocument.ts";
import { CRISTOBALITE_BAND, QUARTZ_BAND } from "../../core/ware/inversions.ts";
import { readFiring } from "../../node/readFiring.ts";
import { answer, answerJson, type CommonOptions, EXIT, paintFor, refuse } from "../conversation.ts";
import { type LogCommandOptions, logOptionsFrom, tariffFrom, wattsFrom } from "../options.ts";
import { drawn, writePictures } from "../pictures.ts";
import { textOfAnswer } from "../showAnswer.ts";

interface KilnOptions extends CommonOptions, LogCommandOptions {
  readonly power?: string;
  readonly tariff?: string;
}

/** `undunted kiln LOG…`: what the logs of one kiln teach about it. */
export async function run(paths: readonly string[], options: KilnOptions): Promise<number> {
  const power = wattsFrom(options.power);
  const tariff = tariffFrom(options.tariff);
  const logs = await readLogs(paths, options);
  if (!power.ok || !tariff.ok || !logs.ok)
    return refuse(
      [power, tariff, logs].flatMap((result) => (result.ok ? [] : result.problems)),
      options,
    );
  const { firings, isFahrenheit } = logs.value;
  const learned = learnKiln(firings, {
    ...(power.value !== null && { powerWatt: power.value }),
    ...(tariff.value !== null && { tariffPerKWh: tariff.value }),
  });
  if (!learned.ok) return refuse(learned.problems, options);
  const unit = options.unit ?? (isFahrenheit ? "F" : "C");
  const name = firings.map(({ kiln }) => kiln).find((kiln) => kiln) ?? null;
  const title = name ?? "A kiln as its logs show it";
  const chart = (dark: boolean) =>
    reachChart({
      title: name === null ? "How fast the kiln goes" : `How fast it goes: ${name}`,
      reach: learned.value.reach,
      bands: [QUARTZ_BAND, CRISTOBALITE_BAND],
      powerKnown: learned.value.power.from === "output",
      unit,
      dark,
    });
  const written = await writePictures(options, {
    html: async () =>
      answerHtml(kilnAnswer(learned.value, { unit, title, charts: await drawn({ reach: chart }) })),
    picture: () => chart(false),
  });
  if (!written.ok) return refuse(written.problems, options);
  if (options.json) answerJson(kilnDocument(learned.value, name));
  else {
    const told = kilnAnswer(learned.value, { unit, title });
    const text = textOfAnswer(told, options, paintFor(options));
    if (!text.ok) return refuse(text.problems, options);
    answer(text.value);
  }
  return hasWarning(learned.value.findings) ? EXIT.no : EXIT.fine;
}

async function readLogs(
  paths: readonly string[],
  options: KilnOptions,
): Promise<Result<{ readonly firings: readonly KilnFiring[]; readonly isFahrenheit: boolean }>> {
  const logOptions = logOptionsFrom(options);
  if (!logOptions.ok) return logOptions;
  const firings: KilnFiring[] = [];
  const problems: Problem[] = [];
  let isFahrenheit = true;
  for (const path of paths) {
    const files = await readFiring(path, {
      options: logOptions.value,
      recordPath: null,
      schedulePath: null,
    });
    if (!files.ok) {
      problems.push(...files.problems);
      continue;
    }
    const { reading, record } = files.value;
    isFahrenheit &&= reading.unit === "F";
    const firing = kilnFiringOf(reading, record);
    if (firing === null) problems.push(noTemperatures(reading.name));
    else firings.push(firing);
  }
  return problems.length > 0 ? failed(...problems) : ok({ firings, isFahrenheit });
}

function noTemperatures(name: string): Problem {
  return {
    code: "kiln/no-temperatures",
    where: name,
    what: "no temperature column has two readings or more",
    expected: "a column of temperatures over a whole firing",
    fix: "name the column with --column",
  };
}
