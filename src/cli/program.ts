import { Command, Option } from "commander";

/** A command's work: returns the exit code. */
type Run<Arguments extends readonly unknown[]> = (...given: Arguments) => Promise<number>;

const VERSION = "0.1.0";

/** What help says of commands that take many logs. */
const MANY_LOGS = `
A folder stands for the logs in it: every file but records, pictures, pages and
README; folders inside it are left aside, and all that is left aside is counted.
A log that cannot be read is told and counted, and stops no other one.
Lines of --json-lines: undunted schema review-line, compare-line.
Exit code over many logs: 2 when one could not be read, else 1 when one has a
warning (review), else 0.`;

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
2 wrong use or unreadable input, 70 a fault of undunted itself, 130 stopped by Ctrl-C.`,
    );

  common(
    program
      .command("draft")
      .description("Lay out a schedule: clock times, cone reached, inversions, findings")
      .argument("[schedule]", "schedule file (YAML or JSON), or - for standard input")
      .option(
        "--start <time>",
        'when the kiln is switched on: "2026-12-01 18:00", "Dec 1 6pm", "tomorrow 18:00"',
      )
      .option("--offset <degrees>", "add to thermocouple readings, from witness cones: 8C, -12F")
      .option("--new", "write a schedule for --cone and the ware below")
      .addOption(
        new Option(
          "--solve <part>",
          "change one thing so that the cone falls by the end of the top hold",
        ).choices(["peak", "hold", "rate"]),
      )
      .option("--repair", "mend every finding with the smallest change in time")
      .option(
        "--at-most <rate>",
        'keep to a rate, as often as needed: "60 C/h from 620 C to 520 C"',
        (rate: string, before: readonly string[]) => [...before, rate],
        [],
      )
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
        .argument(
          "<log...>",
          "logs (any delimited table of time and temperature), or folders of logs",
        )
        .option("--explain", "tell only how the log was read, decision by decision")
        .option("--all", "of many logs, print the screen of each instead of one for all")
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
      { pictures: true, many: true },
    ),
  )
    .addHelpText("after", MANY_LOGS)
    .action(async (paths: string[], options) =>
      setExit(await load(import("./commands/review.ts"))(paths, options)),
    );

  logOptions(
    common(
      program
        .command("compare")
        .description(
          "Several firings and their trial tiles side by side, and which test to do next",
        )
        .argument("<log...>", "two or more logs, or folders of logs, best with their records")
        .option(
          "--align <where>",
          'where the firings are laid over each other: peak, start, 600C on the way down, "600C rising"',
        )
        .option("--base <log>", "the log that the others are held against; the first, if left out")
        .option("--next <file>", "write the schedule of the next test: next.yaml")
        .option(
          "--kiln <log...>",
          "past logs of the kiln that the next test goes into: its schedule asks no more of it",
        )
        .option(
          "--glaze <file...>",
          "files of the glazes on the tiles; else glaze-NAME.yaml beside the logs",
        ),
      { pictures: true, many: true },
    ),
  )
    .addHelpText("after", MANY_LOGS)
    .action(async (paths: string[], options) =>
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

  logOptions(
    common(
      program
        .command("watch")
        .description(
          "Follow a log that is still growing: cone, rate, what to expect, what is wrong",
        )
        .argument("<log>", "the file that the logger writes; it may come later")
        .option("--cone <cone>", "the cone that is wanted; else the schedule's or the record's")
        .option("--record <file>", "firing record; else the .yaml beside the log, if there is one")
        .option("--against <schedule>", "the schedule that is being fired")
        .option("--kiln <log...>", "past logs of the kiln, for its cooling and its thermocouple")
        .option("--every <time>", "time between looks", "10s")
        .option("--until-still <time>", "ends when the file has not changed for so long", "30min"),
      { pictures: false, lines: true },
    ),
  ).action(async (path: string, options) =>
    setExit(await load(import("./commands/watch.ts"))(path, options)),
  );

  common(
    program
      .command("measure")
      .description("Crack spacing from a photograph of an inked tile")
      .argument("<photo>", "photograph, PNG or JPEG, looking straight down")
      .option("--scale <places>", 'two places and their distance: "120,80 1320,84 50mm"')
      .option("--width <length>", "width of the picture, or of its --crop: 100mm")
      .option(
        "--corners <places>",
        "corners clockwise from top left, width and height; undoes slant",
      )
      .option("--crop <box>", "part to measure, left,top,width,height in pixels: 200,150,2400,2400")
      .option("--overlay <file>", "write the picture with cracks and lines drawn in, as .png")
      .option("--html <file>", "write a report as one self-contained page")
      .option("--force", "replace files that are there already")
      .option("--count <numbers>", "your own count along lines A and B, to compare: 17,21")
      .optionsGroup("Found from the picture unless you say:")
      .addOption(
        new Option("--pattern <kind>", "what the spacing is worked out for").choices([
          "net",
          "parallel",
        ]),
      )
      .option("--line-width <pixels>", "width of a crack")
      .option("--background <pixels>", "how far the background is evened out")
      .option("--threshold <share>", "faintest crack, as a share of the usual one: 0.4")
      .option("--merge <pixels>", "crossings closer than this are one")
      .option("--angles <degrees>", "directions of the test lines: 0,90"),
    { pictures: false, rooms: true },
  ).action(async (path: string, options) =>
    setExit(await load(import("./commands/measure.ts"))(path, options)),
  );

  logOptions(
    common(
      program
        .command("pings")
        .description("When and how loud glaze pings in a recording; never open a kiln to listen")
        .argument("<recording>", "uncompressed WAV recording, or - for standard input")
        .option("--started <time>", 'when the recording began: "21:05", or +11:30 into the log')
        .option("--log <file>", "log of the kiln beside it, for the temperature of each ping")
        .addOption(
          new Option("--channel <channel>", "which of two channels to hear").choices([
            "left",
            "right",
            "mix",
          ]),
        )
        .option("--clipped", "count even where most pings are louder than was recorded")
        .optionsGroup("Found from the recording, or usual, unless you say:")
        .option("--threshold <decibels>", "how far a ping stands out of the quiet: 12dB")
        .option("--attack <decibels>", "how far a ping jumps up at once: 7dB")
        .option("--apart <time>", "pings closer than this are one: 60ms")
        .option("--floor <time>", "time over which the quiet level is taken: 10s"),
      { pictures: true },
    ),
  ).action(async (path: string, options) =>
    setExit(await load(import("./commands/pings.ts"))(path, options)),
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

  common(
    program
      .command("glaze")
      .description("A glaze from its recipe or oxides: formula, expansion, batch, slip, cautions")
      .argument("<file...>", "glaze files (YAML or JSON), or - for standard input")
      .option("--batch <mass>", "weigh out this much dry glaze: 2kg, 500g, 5lb")
      .option("--density <density>", "of the slip: 1.45, 65g/50mL, 29oz/imperial-pint")
      .option("--bucket <volume>", "with --density, what is in this much slip: 5L, 500mL")
      .option("--dry-coat <mass/area>", "dry glaze on a surface, for its fired coat: 10g/100cm2")
      .addOption(new Option("--weights <unit>", "unit for the scales").choices(["g", "oz"])),
    { pictures: false, rooms: true },
  )
    .option("--html <file>", "write a report as one self-contained page")
    .option("--force", "replace files that are there already")
    .action(async (paths: string[], options) =>
      setExit(await load(import("./commands/glaze.ts"))(paths, options)),
    );

  program
    .command("page")
    .description("Open the offline page: draft, review and compare in a browser, without a network")
    .option("-o, --output <file>", "write the page instead; - prints it")
    .option("--force", "replace a file that is there already")
    .option("-q, --quiet", "say nothing on standard error but problems")
    .action(async (options) => setExit(await load(import("./commands/page.ts"))(options)));

  program
    .command("schema")
    .description("Print the JSON Schema of a file or a document")
    .argument(
      "[name]",
      "schedule, record, body, glaze-file, review, draft, compare, kiln, measure, pings, cones, glaze, watch, review-line, compare-line, problems",
    )
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

function common(
  command: Command,
  has: {
    readonly pictures: boolean;
    readonly lines?: boolean;
    readonly many?: boolean;
    readonly rooms?: boolean;
  },
): Command {
  if (has.pictures || has.rooms)
    command.option(
      "--more <parts>",
      "print further parts by name, as the last line of the answer lists them: cooling,cones; all",
      (part: string, before: readonly string[] = []) => [...before, part],
    );
  if (has.many)
    command
      .option("--json", "print one JSON document instead of text")
      .option("--json-lines", "print one JSON document a line, one a firing")
      .option("--workers <count>", "threads for many logs; one a core when left out");
  else if (has.lines) command.option("--json-lines", "print one JSON document a line, one a look");
  else command.option("--json", "print one JSON document instead of text");
  command.addOption(
    new Option("--unit <unit>", "show temperatures in °C or °F").choices(["C", "F"]),
  );
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
    .option(
      "--role <column=role...>",
      "what a column is: temperature, set-point, output, cold-junction, other",
    )
    .addOption(
      new Option("--time-kind <kind>", "what the time column holds").choices([
        "elapsed",
        "clock-24h",
        "clock-12h",
        "epoch",
        "spreadsheet",
        "spreadsheet-1904",
        "count",
      ]),
    )
    .addOption(
      new Option("--time-unit <unit>", "unit of elapsed time").choices([
        "ms",
        "s",
        "min",
        "h",
        "d",
      ]),
    )
    .option("--day-first", "dates are day/month/year")
    .option("--month-first", "dates are month/day/year")
    .option("--year-first", "dates are year/month/day, the year with two digits")
    .option("--header <line>", "line with the names of the columns, from 1, or none")
    .addOption(
      new Option("--layout <layout>", "a column for each channel, or a row").choices([
        "wide",
        "long",
      ]),
    )
    .option("--delimiter <mark>", 'mark between cells: ",", ";", tab, "|", blanks, wide-blanks')
    .addOption(
      new Option("--decimal <mark>", "decimal mark; the other one is between thousands").choices([
        ".",
        ",",
      ]),
    )
    .option("--encoding <name>", "text encoding: utf-8, windows-1252, cp437, …")
    .option("--interval <time>", 'time between rows when the log holds none: "30 s"')
    .addOption(
      new Option("--thermocouple <type>", "type of the thermocouples, for a log in mV").choices([
        ..."KNSRBJT",
      ]),
    )
    .option("--cold-junction <temperature>", "of the terminals, for a log in mV: 25C, 77F");
}
