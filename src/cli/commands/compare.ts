import { answerHtml } from "../../core/answers/answerHtml.ts";
import { compareAnswer } from "../../core/answers/compareAnswer.ts";
import { comparisonChart, studyCharts } from "../../core/charts/chartsOf.ts";
import { reviewPicture } from "../../core/charts/reviewPicture.ts";
import { failed, ok, type Problem, type Result } from "../../core/problem.ts";
import type { Alignment } from "../../core/review/alignment.ts";
import {
  type Comparison,
  type ComparisonPart,
  compareParts,
} from "../../core/review/compareFirings.ts";
import { scheduleYaml } from "../../core/schedule/scheduleFile.ts";
import { hiddenEscaped } from "../../core/text/escape.ts";
import type { FiringStudy } from "../../core/trials/FiringStudy.ts";
import type { PlannedFiring } from "../../core/trials/NextTest.ts";
import { nextSchedule } from "../../core/trials/nextTestOf.ts";
import { studyFirings } from "../../core/trials/studyFirings.ts";
import { writeOutput } from "../../node/writeOutput.ts";
import {
  baseOf,
  type CompareOptions,
  compareAsked,
  MOST_STUDIED,
  namedWare,
} from "../compareAsked.ts";
import {
  answer,
  answerJson,
  answerJsonLine,
  EXIT,
  paintFor,
  refuse,
  say,
} from "../conversation.ts";
import type { LogOutcome } from "../logWork.ts";
import { manyLogs } from "../manyLogs.ts";
import { type OwnKiln, ownKiln } from "../options.ts";
import { drawn, writePictures } from "../pictures.ts";
import { textOfAnswer } from "../showAnswer.ts";
import { tellLogs } from "../tellLogs.ts";

/** Electricity is not asked for here. */
const UNTOLD = { powerWatt: null, tariffPerKWh: null };

/**
 * `undunted compare LOG…`: several firings and their trials side by side, and the test to do next.
 * One broken log does not stop the rest.
 */
export async function run(given: readonly string[], options: CompareOptions): Promise<number> {
  const asked = await compareAsked(given, options);
  if (!asked.ok) return refuse(asked.problems, options);
  const { paths, task, workers } = asked.value;
  const known = options.kiln === undefined ? ok(undefined) : await ownKiln(options.kiln, UNTOLD);
  if (!known.ok) return refuse(known.problems, options);
  const parts: ComparisonPart[] = [];
  const read: string[] = [];
  const planned: PlannedFiring[] = [];
  const broken: Problem[] = [];
  const textOf = async (outcome: LogOutcome) => {
    broken.push(...outcome.problems);
    const { part } = outcome;
    if (part === null) return "";
    read.push(outcome.path);
    parts.push(options.jsonLines ? withoutCurve(part) : part);
    if (outcome.planned !== null) planned.push(outcome.planned);
    return options.jsonLines ? firingLine(part) : "";
  };
  const outcomes = manyLogs(paths, task, workers);
  if (options.json) for await (const outcome of outcomes) await textOf(outcome);
  const exit = options.json
    ? EXIT.fine
    : await tellLogs(outcomes, { total: paths.length, options, textOf });
  // One document holds either a comparison or why there is none.
  if (options.json && broken.length > 0) return refuse(broken, options);
  const hasTrials = planned.some(({ record }) => (record?.trials.length ?? 0) > 0);
  const comparison = compareParts(parts, hasTrials ? 1 : 2);
  if (!comparison.ok) return refuse(comparison.problems, options);
  const allFahrenheit = parts.every(({ isFahrenheit }) => isFahrenheit);
  const study = await studied(planned, options, { logs: paths, known: known.value });
  if (!study.ok) return refuse(study.problems, options);
  if (known.value !== undefined && study.value?.next == null)
    say("--kiln is not used: no record names trial tiles, so there is no next test", options);
  const base = baseOf(asked.value.shown.base, read);
  if (!base.ok) return refuse(base.problems, options);
  const { alignment } = asked.value.shown;
  const answered = {
    comparison: comparison.value,
    study: study.value,
    alignment,
    base: base.value,
  };
  return Math.max(exit, await shown(answered, options, allFahrenheit ? "F" : "C"));
}

/** Differences, tiles and next test of the firings, with the files of their glazes. */
async function studied(
  planned: readonly PlannedFiring[],
  options: CompareOptions,
  from: { readonly logs: readonly string[]; readonly known: OwnKiln | undefined },
): Promise<Result<FiringStudy | null>> {
  if (planned.length === 0) return ok(null);
  const { logs, known } = from;
  const ware = await namedWare(planned, { logs, glazes: options.glaze ?? [] });
  if (!ware.ok) return ware;
  for (const remark of ware.value.remarks) say(remark, options);
  return ok(
    studyFirings(planned, {
      named: ware.value.named,
      ...(known && { known: { kiln: known.kiln, offsetK: known.offset?.offsetK ?? null } }),
    }),
  );
}

/** What the closing line needs of a firing whose own line is written: nothing of its Curve. */
function withoutCurve(part: ComparisonPart): ComparisonPart {
  const { aligned } = part.firing;
  const ends = {
    ...aligned,
    timesSeconds: aligned.timesSeconds.slice(0, 2),
    tempsC: aligned.tempsC.slice(0, 2),
    gaps: [],
  };
  return { ...part, firing: { ...part.firing, aligned: ends } };
}

async function firingLine(part: ComparisonPart): Promise<string> {
  const { comparedLine } = await import("../../core/reports/documents/comparisonDocument.ts");
  return hiddenEscaped(JSON.stringify(comparedLine(part)));
}

interface Answered {
  readonly comparison: Comparison;
  /** Null when it was not looked at. */
  readonly study: FiringStudy | null;
  readonly alignment: Alignment;
  readonly base: number;
}

async function shown(
  answered: Answered,
  options: CompareOptions,
  logsUnit: "C" | "F",
): Promise<number> {
  const { comparison, study, alignment, base } = answered;
  const unit = options.unit ?? logsUnit;
  const written = await writePictures(options, {
    html: async () =>
      answerHtml(
        compareAnswer(comparison, {
          unit,
          alignment,
          base,
          ...(study && { study }),
          charts: await drawnCharts(answered, unit),
        }),
      ),
    picture: () => {
      const charts = study && studyCharts(comparison, study);
      return reviewPicture([
        ...[comparisonChart(comparison, alignment)].flatMap((make) => make?.({ unit }) ?? []),
        ...(charts ? [charts.firings({ unit })] : []),
        ...(charts?.spacing.map(({ chart }) => chart({ unit })) ?? []),
        ...(charts?.fits ? [charts.fits({ unit })] : []),
        ...(charts?.causes ? [charts.causes({ unit })] : []),
      ]);
    },
  });
  if (!written.ok) return refuse(written.problems, options);
  const next = await writeNext(study, options);
  if (!next.ok) return refuse(next.problems, options);
  if (options.jsonLines) {
    const { comparisonLine } = await import("../../core/reports/documents/comparisonDocument.ts");
    answerJsonLine(comparisonLine(comparison));
  } else if (options.json) {
    const { comparisonDocument } = await import(
      "../../core/reports/documents/comparisonDocument.ts"
    );
    answerJson(comparisonDocument(comparison, { study, alignment, base }));
  } else {
    const shownWith = { unit, alignment, base, ...(study && { study }) };
    const text = textOfAnswer(compareAnswer(comparison, shownWith), options, paintFor(options));
    if (!text.ok) return refuse(text.problems, options);
    answer(text.value);
  }
  return EXIT.fine;
}

async function drawnCharts({ comparison, study, alignment }: Answered, unit: "C" | "F") {
  const laid = comparisonChart(comparison, alignment);
  const overlay = laid && { overlay: (dark: boolean) => laid({ unit, dark }) };
  if (study === null) return drawn<string>({ ...overlay });
  const { firings, spacing, causes, fits } = studyCharts(comparison, study);
  const each = await drawn<string>({
    ...overlay,
    firings: (dark: boolean) => firings({ unit, dark }),
    ...(causes && { causes: (dark: boolean) => causes({ unit, dark }) }),
    ...(fits && { fits: (dark: boolean) => fits({ unit, dark }) }),
  });
  const byGlaze = Object.fromEntries(
    spacing.map(({ glaze, chart }) => [glaze, (dark: boolean) => chart({ unit, dark })]),
  );
  return { ...each, spacing: await drawn(byGlaze) };
}

/** Writes the schedule of the next test where `--next` asks for it. */
async function writeNext(
  study: FiringStudy | null,
  options: CompareOptions,
): Promise<Result<null>> {
  if (options.next === undefined) return ok(null);
  if (study === null)
    return failed({
      code: "command/not-studied",
      where: "--next",
      what: "the trials of these logs are not studied, so there is no next test to write",
      expected: `at most ${MOST_STUDIED} logs, and no --json-lines`,
      fix: "name the logs of the tests that belong together",
    });
  const schedule = nextSchedule(study);
  if (!schedule.ok) return schedule;
  const written = await writeOutput(options.next, scheduleYaml(schedule.value), {
    force: options.force === true,
  });
  if (!written.ok) return written;
  say(`wrote ${written.value}`, options);
  return ok(null);
}
