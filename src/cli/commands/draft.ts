import { answerHtml } from "../../core/answers/answerHtml.ts";
import { draftAnswer } from "../../core/answers/draftAnswer.ts";
import { draftCharts } from "../../core/charts/chartsOf.ts";
import { reviewPicture } from "../../core/charts/reviewPicture.ts";
import { hasWarning } from "../../core/findings/Finding.ts";
import { ok, type Problem, type Result } from "../../core/problem.ts";
import { draftDocument } from "../../core/reports/documents/draftDocument.ts";
import { parseStart } from "../../core/schedule/clock.ts";
import { type Draft, draftSchedule } from "../../core/schedule/draftSchedule.ts";
import { scheduleYaml } from "../../core/schedule/scheduleFile.ts";
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
import { type DraftedInput, type DraftWishOptions, draftedInput } from "../draftedInput.ts";
import { drawn, writePictures } from "../pictures.ts";
import { textOfAnswer } from "../showAnswer.ts";

interface DraftOptions extends CommonOptions, DraftWishOptions {
  readonly start?: string;
  readonly output?: string;
}

/** `undunted draft SCHEDULE`: what this schedule will do; with options, a new or a better one. */
export async function run(path: string | undefined, options: DraftOptions): Promise<number> {
  const start =
    options.start === undefined ? ok(null) : parseStart(options.start, "--start", wallNow());
  const input = await draftedInput(path, options);
  const unwanted = nothingToWrite(options);
  const problems = [
    ...[input, start].flatMap((result) => (result.ok ? [] : result.problems)),
    ...(unwanted === null ? [] : [unwanted]),
  ];
  if (!input.ok || !start.ok || problems.length > 0) return refuse(problems, options);
  const { schedule, known } = input.value;
  const draft = draftSchedule({ schedule, start: start.value, ...known });
  if (options.output === "-") answer(scheduleYaml(schedule));
  else {
    const shown = await report(draft, input.value, options);
    if (!shown.ok) return refuse(shown.problems, options);
  }
  return hasWarning(draft.findings) ? EXIT.no : EXIT.fine;
}

/** Writes what is to be written, then answers with the report. */
async function report(
  draft: Draft,
  input: DraftedInput,
  options: DraftOptions,
): Promise<Result<null>> {
  const { schedule, mending, assumed, thermocouple } = input;
  const unit = options.unit ?? schedule.unit;
  const context = {
    unit,
    assumed,
    ...(thermocouple !== null && { thermocouple }),
    ...(mending && { mending }),
  };
  const charts = draftCharts(draft);
  const { strain } = charts;
  const pictures = await writePictures(options, {
    html: async () =>
      answerHtml(
        draftAnswer(draft, {
          ...context,
          charts: await drawn<string>({
            firing: (dark) => charts.firing({ unit, dark }),
            cooling: (dark) => charts.cooling({ unit, dark }),
            cones: (dark) => charts.cones({ unit, dark }),
            ...(strain && { strain: (dark: boolean) => strain({ unit, dark }) }),
          }),
        }),
      ),
    picture: () =>
      reviewPicture([
        charts.firing({ unit }),
        charts.cooling({ unit }),
        ...(strain ? [strain({ unit })] : []),
        charts.cones({ unit }),
      ]),
  });
  if (!pictures.ok) return pictures;
  if (options.output !== undefined) {
    const written = await writeOutput(options.output, scheduleYaml(schedule), {
      force: options.force === true,
    });
    if (!written.ok) return written;
    say(`wrote ${written.value}`, options);
  }
  if (options.json) answerJson(draftDocument(draft, mending?.repair ?? null));
  else {
    const text = textOfAnswer(draftAnswer(draft, context), options, paintFor(options));
    if (!text.ok) return text;
    answer(text.value);
  }
  if (isMade(options) && options.output === undefined)
    say("not written; -o FILE writes it, -o - prints it alone", options);
  return ok(null);
}

/** The wall time of this machine, without a zone. */
function wallNow(): string {
  const now = new Date();
  return new Date(now.getTime() - now.getTimezoneOffset() * 60_000).toISOString().slice(0, 19);
}

function isMade(options: DraftOptions): boolean {
  return Boolean(
    options.new || options.solve || options.repair || (options.atMost ?? []).length > 0,
  );
}

function nothingToWrite(options: DraftOptions): Problem | null {
  if (options.output === undefined || isMade(options)) return null;
  return {
    code: "command/nothing-to-write",
    where: "-o",
    what: "the schedule is drafted as it is, so there is nothing new to write",
    expected: "-o together with --new, --solve, --repair or --at-most",
    fix: "add --repair, or leave -o out",
  };
}
