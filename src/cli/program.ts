import { Command, Option } from "commander";

/** A command's work: returns the exit code. */
type Run<Arguments extends readonly unknown[]> = (...given: Arguments) => Promise<number>;

const VERSION = "0.1.0";

/** The command tree; every command loads its work only when it runs. */
export function buildProgram(setExit: (code: number) => void): Command {
  const program = new Command("undunted")
    .description(
      "Draft kiln firings that this ware can bear, and read what a firing did:\nthe cone it reached, how fast it cooled, crackle or dunting.",
    )
    .version(VERSION)
    .helpCommand(false)
    .showSuggestionAfterError()
    .addHelpText(
      "after",
      `
Examples:
  $ undunted draft schedules/cone-5-slow-cool.yaml --start "2026-12-01 18:00"
  $ undunted review logs/2026-03-14-b.csv --html review.html
  $ undunted cones 5

Exit codes: 0 fine, 1 it ran and the answer is no (a warning, a cone not reached),
2 wrong use or unreadable input, 70 a fault of undunted itself.`,
    );

  common(
    program
      .command("draft")
      .description("Lay out a schedule: clock times, cone reached, inversions, findings")
      .argument("[schedule]", "schedule file (YAML or JSON), or - for standard input")
      .option("--start <time>", 'when the kiln is switched on: "2026-12-01 18:00"')
      .option("--offset <degrees>", "add to thermocouple readings, from witness cones: 8C, -12F")
      .option("--new", "write a schedule for --cone and the ware below")
      .addOption(
        new Option("--solve <part>", "change one thing so that the cone is just down").choices([
          "peak",
          "hold",
          "rate",
        ]),
      )
      .option("--repair", "mend every finding with the smallest change in time")
      .option("-o, --output <file>", "write the new schedule; - prints it alone")
      .optionsGroup("Ware, kiln and wishes:")
      .option("--cone <cone>", "the cone to reach: 5, 05, 5.5")
      .option(
        "--body <words>",
        "clay body: stoneware, porcelain 10, cristobalitic, earthenware; or a file: my-clay.yaml",
      )
      .option("--wall <length>", "thickness of the walls: 6, 1/4in")
      .option("--base <length>", "thickness of the base; the wall's when left out")
      .option("--width <length>", "widest piece: 150mm, 16in")
      .option("--damp", "the ware goes in damp")
      .option("--cooling <way>", 'natural, slow, or "hold 900C 1h" on the way down')
      .option("--within <time>", "longest it may take, down to 100 °C: 36h")
      .option(
        "--series <name>",
        "kind of cone: self-supporting, large, small, self-supporting-iron-free, large-iron-free",
      )
      .option("--kiln <log...>", "past logs of the kiln, and the witness cones beside them")
      .option(
        "--power <watts>",
        "with --kiln, from the plate of the kiln, for the electricity: 10.5kW",
      )
      .option("--tariff <price>", "with --kiln and --power, price of a kilowatt-hour: 0.30"),
    { pictures: true },
  ).action(async (path: string | undefined, options) =>
    setExit(await load(import("./commands/draft.ts"))(path, options)),
  );

  logOptions(
    common(
      program
        .command("review")
        .description("Say what a logged firing did")
        .argument("<log...>", "log files (any delimited table of time and temperature)")
        .option("--record <file>", "firing record; else the .yaml beside the log, if there is one")
        .option("--against <schedule>", "compare with this schedule")
        .option(
          "--heard <sound...>",
          'what was heard and when: "a crack 14:05", "ticking +11:30" from the start; a time alone is pinging; write it after the log',
        )
        .option(
          "--kiln <log...>",
          "past logs of the kiln, and the records beside them: what has changed since",
        ),
      { pictures: true },
    ),
  ).action(async (paths: string[], options) =>
    setExit(await load(import("./commands/review.ts"))(paths, options)),
  );

  logOptions(
    common(
      program
        .command("compare")
        .description("Several firings side by side, aligned at the peak")
        .argument("<log...>", "two or more log files"),
      { pictures: true },
    ),
  ).action(async (paths: string[], options) =>
    setExit(await load(import("./commands/compare.ts"))(paths, options)),
  );

  logOptions(
    common(
      program
        .command("kiln")
        .description("What the logs of one kiln teach: its speed, its cooling, what has changed")
        .argument("<log...>", "log files of one kiln, best with the controller's output")
        .option("--power <watts>", "wattage of the elements, for energy: 10.5kW, 4400W")
        .option("--tariff <price>", "price of a kilowatt-hour: 0.30"),
      { pictures: true },
    ),
  ).action(async (paths: string[], options) =>
    setExit(await load(import("./commands/kiln.ts"))(paths, options)),
  );

  common(
    program
      .command("cones")
      .description("The published end points of cones, and what a rate does to them")
      .argument("[cone]", "one cone: 5, 05, 5.5")
      .option("--series <name>", "self-supporting, large, small, …", "self-supporting"),
    { pictures: false },
  ).action(async (cone: string | undefined, options) =>
    setExit(await load(import("./commands/cones.ts"))(cone, options)),
  );

  program
    .command("schema")
    .description("Print the JSON Schema of a file or a document")
    .argument("[name]", "schedule, record, body, review, draft, compare, kiln, cones, problems")
    .option("--json", "accepted for sameness; the schema is JSON already")
    .action(async (name: string | undefined, options) =>
      setExit(await load(import("./commands/schema.ts"))(name, options)),
    );
  return program;
}

/** The `run` of a command's module, once it is there. */
function load<Arguments extends readonly unknown[]>(
  module: Promise<{ readonly run: Run<Arguments> }>,
): Run<Arguments> {
  return async (...given) => (await module).run(...given);
}

function common(command: Command, has: { readonly pictures: boolean }): Command {
  command
    .option("--json", "print one JSON document instead of text")
    .addOption(new Option("--unit <unit>", "show temperatures in °C or °F").choices(["C", "F"]));
  if (has.pictures)
    command
      .option("--html <file>", "write a report as one self-contained page")
      .option("--chart <file>", "write the chart as .svg or .png")
      .option("--force", "replace files that are there already");
  return command
    .option("--color", "colour even when the output is not a terminal")
    .option("--no-color", "no colour")
    .option("-q, --quiet", "say nothing on standard error but problems");
}

function logOptions(command: Command): Command {
  return command
    .optionsGroup("What the reader cannot know from the log:")
    .option("--column <name...>", "temperature columns to read, by name or position")
    .option("--time-column <name>", "column that holds the time")
    .addOption(new Option("--log-unit <unit>", "unit of the log").choices(["C", "F", "K"]))
    .addOption(new Option("--time-unit <unit>", "unit of elapsed time").choices(["s", "min", "h"]))
    .option("--day-first", "dates are day/month/year")
    .option("--month-first", "dates are month/day/year")
    .option("--delimiter <mark>", 'mark between cells: ",", ";", tab, "|", blanks')
    .addOption(new Option("--decimal <mark>", "decimal mark").choices([".", ","]))
    .option("--encoding <name>", "text encoding: utf-8, windows-1252, cp437, …")
    .option("--interval <time>", 'time between rows when the log holds none: "30 s"');
}
