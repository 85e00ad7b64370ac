import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import {
  chmodSync,
  existsSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { emptyFolder, fileWith, type Ran, undunted } from "../support/undunted.ts";

const COMMAND = join(import.meta.dirname, "../../dist/bin.js");
const LOG = readFileSync("logs/2026-03-14-b.csv", "utf8");

/** Tags and handlers, commands to a terminal, turned text, formulas, patterns of replacement. */
const NASTY =
  'n\u001b[31m\u009b2J\u202e\u2066\u0007\u0001</title></text></svg></style><script>alert(1)</script><img src=x onerror=y> " onload="z \' =1+1 $& $` ]]> `';
const NASTY_NAME = "<script>alert(2)<b onclick=k>\"'\n\u001b[2J\u202e";

/** What no terminal may be sent: control characters but the line feed, and what turns text round. */
const COMMANDS =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these must not come out
  /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u200e\u200f\u2028-\u202e\u2066-\u2069]/;

const RECORD = {
  formatVersion: 1,
  title: NASTY,
  kiln: NASTY,
  notes: NASTY,
  schedule: NASTY,
  thermocouple: { class: NASTY },
  ware: [{ name: NASTY, clay: NASTY, wall: "6 mm", widest: "100 mm", body: "stoneware cone 6" }],
  trials: ["0.4 mm", "0.8 mm"].map((coat, i) => ({
    piece: `${NASTY}${i}`,
    clay: NASTY,
    glaze: NASTY,
    coat,
    glazedSides: "one",
    crackSpacing: "3 mm",
    cracked: "crackle",
    note: NASTY,
  })),
  heard: [{ what: NASTY, at: "+14:30", note: NASTY }],
  found: [{ piece: NASTY, what: "crack", note: NASTY }],
};

const SCHEDULE = {
  formatVersion: 1,
  title: NASTY,
  unit: "C",
  cone: "5",
  segments: [
    { to: 1180, rate: 100, hold: "10 min", why: NASTY },
    { to: 100, rate: 60, why: NASTY },
  ],
  notes: NASTY,
};

/** A folder with a log, its record and a schedule that are nasty wherever a text may stand. */
function nastyFolder(): { readonly folder: string; readonly log: string } {
  const folder = emptyFolder();
  const log = `${NASTY_NAME}.csv`;
  const name = `"${NASTY.replaceAll('"', '""')} C"`;
  writeFileSync(
    join(folder, log),
    LOG.replace("kiln_C", () => name),
  );
  writeFileSync(join(folder, `${NASTY_NAME}.yaml`), JSON.stringify(RECORD));
  writeFileSync(join(folder, "s.yaml"), JSON.stringify(SCHEDULE));
  return { folder, log };
}

const { folder: FOLDER, log: NASTY_LOG } = nastyFolder();

function inFolder(...args: readonly string[]): Ran {
  return undunted(args, { cwd: FOLDER });
}

function expectTame(ran: Ran, ...exits: readonly number[]): void {
  expect(exits).toContain(ran.exit);
  expect(ran.out.match(COMMANDS)).toBeNull();
  expect(ran.err.match(COMMANDS)).toBeNull();
}

/** Elements and attributes that our pages and drawings are made of. */
const ELEMENTS =
  "html head meta title style body main h1 h2 section details summary p ul li pre dl dt dd article div table caption thead tbody tr th td span br strong figure figcaption svg g path rect line text defs clippath tspan circle lineargradient stop a".split(
    " ",
  );

/** Every tag of a page as a browser's tokenizer cuts it, with attribute names in lower case. */
function tagsOf(html: string): readonly { readonly name: string; readonly names: string[] }[] {
  const body = html.replace(/<style>[\s\S]*?<\/style>/, "<style></style>");
  const tags = body.matchAll(/<\/?([a-z][^\s/>]*)((?:"[^"]*"|'[^']*'|[^>"'])*)>/gi);
  return Array.from(tags, ([, name = "", rest = ""]) => ({
    name: name.toLowerCase(),
    names: Array.from(rest.replace(/"[^"]*"|'[^']*'/g, '""').matchAll(/[^\s=/"]+/g), ([each]) =>
      each.toLowerCase(),
    ),
  }));
}

function expectOwnTags(html: string): void {
  const tags = tagsOf(html);
  expect(tags.length).toBeGreaterThan(20);
  for (const { name, names } of tags) {
    expect(ELEMENTS).toContain(name);
    for (const each of names) expect(each).not.toMatch(/^on|^(?:src|srcdoc|action|formaction)$/);
  }
  expect(html.replaceAll("\n", "").match(COMMANDS)).toBeNull();
  // What stands between tags opens none of its own.
  expect(html.replace(/<\/?[a-z!][^<>]*>/gi, "")).not.toContain("<");
}

describe("hostile names, titles and notes", () => {
  it.each([
    ["review", ["review", NASTY_LOG]],
    ["review --against", ["review", NASTY_LOG, "--against", "s.yaml"]],
    ["compare", ["compare", NASTY_LOG, NASTY_LOG]],
    ["kiln", ["kiln", NASTY_LOG, NASTY_LOG]],
    ["draft", ["draft", "s.yaml"]],
  ])("make no element or handler in the page of %s", (_, args) => {
    const page = `${args.join("-").replaceAll(/\W/g, "")}.html`;
    expectTame(inFolder(...args, "--html", page), 0, 1);
    const html = readFileSync(join(FOLDER, page), "utf8");
    expectOwnTags(html);
    expect(html).toContain("&lt;script&gt;alert(1)");
  });

  it.each([".svg", ".png"])("make a whole drawing with the ending %s", (ending) => {
    for (const args of [
      ["review", NASTY_LOG],
      ["draft", "s.yaml"],
    ]) {
      const file = `${args[0]}${ending}`;
      expectTame(inFolder(...args, "--chart", file), 0, 1);
      if (ending === ".svg") expectOwnTags(readFileSync(join(FOLDER, file), "utf8"));
    }
  });

  it.each([
    [
      ["review", NASTY_LOG],
      [0, 1],
    ],
    [
      ["review", NASTY_LOG, "--json"],
      [0, 1],
    ],
    [["compare", NASTY_LOG, NASTY_LOG, "--json"], [0]],
    [
      ["kiln", NASTY_LOG, "--json"],
      [0, 1],
    ],
    [
      ["draft", "s.yaml"],
      [0, 1],
    ],
    [
      ["draft", "s.yaml", "--json"],
      [0, 1],
    ],
    [
      ["draft", "s.yaml", "--repair", "-o", "-"],
      [0, 1],
    ],
    [
      ["watch", NASTY_LOG, "--every", "0.05s", "--until-still", "0.1s"],
      [0, 1],
    ],
    [
      ["watch", NASTY_LOG, "--every", "0.05s", "--until-still", "0.1s", "--json-lines"],
      [0, 1],
    ],
    [["review", `${NASTY}.csv`], [2]],
    [["review", `${NASTY}.csv`, "--json"], [2]],
    [["review", NASTY_LOG, "--column", NASTY], [2]],
    [["review", NASTY_LOG, "--heard", NASTY], [2]],
    [["review", NASTY_LOG, "--chart", NASTY], [2]],
    [["review", NASTY_LOG, `--${NASTY}`], [2]],
    [["review", NASTY_LOG, `--${NASTY}`, "--json"], [2]],
    [["review", NASTY_LOG, "--unit", NASTY], [2]],
    [["draft", "s.yaml", "--start", NASTY], [2]],
    [["draft", "--new", "--cone", NASTY, "--body", NASTY, "--cooling", NASTY], [2]],
    [["cones", NASTY], [2]],
    [["cones", "--series", NASTY], [2]],
    [["schema", NASTY], [2]],
    [[NASTY], [2]],
  ])("send no command to a terminal, by %j", (args, exits) => {
    expectTame(inFolder(...args), ...exits);
  });

  it("come whole through JSON and YAML all the same", () => {
    const document = JSON.parse(inFolder("draft", "s.yaml", "--json").out);
    expect(JSON.stringify(document)).toContain(JSON.stringify(NASTY).slice(1, -1));
    const yaml = inFolder("draft", "s.yaml", "--repair", "-o", "-").out;
    const again = undunted(["draft", "-", "--json"], { input: yaml });
    expect(again.out).toContain(JSON.stringify(NASTY).slice(1, 8));
    expect(JSON.parse(again.out).title ?? NASTY).toBe(NASTY);
  });
});

describe("names of what every object has", () => {
  it.each(["__proto__", "constructor", "toString"])("%s is no schema, series or cone", (word) => {
    for (const args of [
      ["schema", word],
      ["cones", "--series", word],
      ["cones", word],
      ["draft", "--new", "--cone", "5", "--body", word],
      ["draft", "--new", "--cone", "5", "--cooling", `hold 900 ${word} 1h`],
      ["review", "logs/2026-03-14-b.csv", "--column", word],
      ["review", "logs/2026-03-14-b.csv", "--time-column", word],
    ])
      expect(undunted(args)).toMatchObject({ exit: 2, err: expect.stringContaining(word) });
  });

  it("are column names like any other", () => {
    const log = LOG.replace("kiln_C", "__proto__ C").replace("time", "constructor time");
    const ran = undunted(["review", fileWith("log.csv", log), "--json"]);
    expect([0, 1]).toContain(ran.exit);
    expect(ran.out).toContain("__proto__ C");
  });

  it("are unknown keys of a schedule, in YAML and in JSON", () => {
    const yaml = "formatVersion: 1\ntitle: t\nunit: C\n__proto__: { cone: '5' }\nconstructor: 1\n";
    const json =
      '{"formatVersion":1,"title":"t","unit":"C","segments":[{"to":900,"rate":100}],"__proto__":{"cone":"5"},"constructor":1}';
    for (const path of [fileWith("s.yaml", yaml), fileWith("s.json", json)]) {
      const { exit, err } = undunted(["draft", path]);
      expect(exit).toBe(2);
      expect(err).toContain('"__proto__" is not a key');
      expect(err).toContain('"constructor" is not a key');
    }
  });
});

const HEAD = "formatVersion: 1\ntitle: t\nunit: C\n";
const SEGMENTS = "segments:\n  - { to: 1000, rate: 100 }\n";

/** Nine lists, each of ten times the one before: a thousand million words when written out. */
const LAUGHS = Array.from({ length: 9 }, (_, i) => {
  const before = i === 0 ? "x" : `*l${i - 1}`;
  return `l${i}: &l${i} [${Array(10).fill(before).join(", ")}]\n`;
}).join("");

describe("a document that is made to be too much", () => {
  it.each([
    ["aliases of aliases", `${HEAD}${LAUGHS}${SEGMENTS}`, /an alias \(\*\) repeats too much/],
    ["an alias of itself", `${HEAD}notes: &a [*a]\n${SEGMENTS}`, /notes is a list/],
    ["deep lists", `${HEAD}notes: ${"[".repeat(100_000)}`, /nested too deeply/],
    ["deep groups", `${HEAD}notes: ${"{a: ".repeat(60_000)}`, /nested too deeply/],
    ["one key twice", `${HEAD}title: again\n${SEGMENTS}`, /a key stands there twice/],
    [
      "40 000 keys",
      `${HEAD}${Array.from({ length: 40_000 }, (_, i) => `k${i}: 1\n`).join("")}${SEGMENTS}`,
      // 20 of them are told.
      /39980 more things are wrong/,
    ],
    ["two documents", `${HEAD}${SEGMENTS}---\n${HEAD}`, /a line --- begins a second document/],
    ["code", `${HEAD}notes: !!js/function "x"\n${SEGMENTS}`, /Unresolved tag/],
    ["3 MB", `${HEAD}notes: "${"x".repeat(3_000_000)}"\n`, /more than 2 MB/],
  ])("(%s) is refused with a problem", (_, text, says) => {
    const ran = undunted(["draft", fileWith("s.yaml", text)]);
    expect(ran.exit).toBe(2);
    expect(ran.err).toMatch(says);
    expect(ran.err.length).toBeLessThan(8000);
  });
});

describe("a file that is no file", () => {
  const pipe = join(emptyFolder(), "pipe.csv");
  spawnSync("mkfifo", [pipe]);
  it.each([
    [["review", "/dev/zero"], "log/empty"],
    [["review", "/dev/urandom"], "log/not-text"],
    [["draft", "/dev/zero"], "file/too-large"],
    [["review", "logs/2026-03-14-b.csv", "--record", "/dev/zero"], "file/too-large"],
    [["watch", "/dev/zero"], "watch/not-a-file"],
    [["watch", pipe], "watch/not-a-file"],
    [["draft", emptyFolder()], "file/folder"],
  ])("ends %j with a problem", (args, code) => {
    const ran = undunted(args);
    expect(ran.err).toContain(`(${code})`);
    expect(ran.exit).toBe(2);
  });

  it("is not opened when it only lies beside a log", () => {
    const folder = emptyFolder();
    const log = join(folder, "a.csv");
    writeFileSync(log, LOG);
    spawnSync("mkfifo", [join(folder, "a.yaml")]);
    expect([0, 1]).toContain(undunted(["review", log]).exit);
  });

  it("is not read by way of a record that names it as the schedule", () => {
    const folder = emptyFolder();
    const log = join(folder, "a.csv");
    writeFileSync(log, LOG);
    const away = "../".repeat(12);
    for (const schedule of ["/dev/zero", `${away}dev/zero`, `${away}etc`, "/etc/passwd"]) {
      writeFileSync(join(folder, "a.yaml"), JSON.stringify({ ...RECORD, schedule }));
      const ran = undunted(["review", log]);
      expect([0, 1]).toContain(ran.exit);
      expect(ran.err).toContain("neither beside it nor in ../schedules");
    }
  });
});

describe("a log that is made to be too much", () => {
  it.each([
    ["4 MB of cells in one line", "1,".repeat(2_000_000), "log/"],
    ["4 MB of one word", "x".repeat(4_000_000), "log/no-table"],
    ["20 000 columns", `${"1,".repeat(20_000)}\n`.repeat(20), "log/"],
    ["a gzip that breaks off", gzipSync(LOG).subarray(0, 2000), "file/broken-gzip"],
    ["a gzip of a gzip", gzipSync(gzipSync(LOG)), "log/not-text"],
    ["a gzip of 300 MB of words", gzipSync(Buffer.alloc(300_000_000, "word\n")), "log/no-table"],
  ])("(%s) is refused with a problem, in 512 MB", (_, content, code) => {
    const ran = undunted(["review", fileWith("log.csv", content)], {
      env: { NODE_OPTIONS: "--max-old-space-size=512" },
    });
    expect(ran.err).toContain(`(${code}`);
    expect(ran.exit).toBe(2);
    expect(ran.err.length).toBeLessThan(3000);
  });
});

describe("file names", () => {
  it("may hold newlines, quotes, dashes and dots", () => {
    const folder = emptyFolder();
    for (const name of ["-a.csv", "a\nb.csv", "a\"b'c.csv", "..csv", "a b;rm -rf x.csv"]) {
      writeFileSync(join(folder, name), LOG);
      const ran = undunted(["review", "--quiet", "--", name], { cwd: folder });
      expect([0, 1], name).toContain(ran.exit);
    }
  });

  it("that begin with a dash are no options in a command that is offered", () => {
    const folder = emptyFolder();
    const record = JSON.stringify({ formatVersion: 1, title: "t", kiln: "one" });
    const earlier = LOG.replaceAll("2026-03-14", "2026-02-14").replaceAll(
      "2026-03-15",
      "2026-02-15",
    );
    for (const [name, text] of [
      ["-b.csv", LOG],
      ["-a.csv", earlier],
    ] as const) {
      writeFileSync(join(folder, name), text);
      writeFileSync(join(folder, name.replace("csv", "yaml")), record);
    }
    const ran = undunted(["review", "--", "-b.csv"], { cwd: folder });
    expect(ran.err).toContain("undunted review ./-b.csv --kiln ./-a.csv");
  });
});

describe("files that are written", () => {
  const small = ["draft", "schedules/cone-5-glaze.yaml", "--repair"];
  const written = (path: string, ...more: readonly string[]) =>
    undunted([...small, "-o", path, ...more]);

  it("replace nothing without --force, not even a link that leads nowhere", () => {
    const folder = emptyFolder();
    const [mine, link] = [join(folder, "mine.yaml"), join(folder, "link.yaml")];
    writeFileSync(mine, "mine");
    symlinkSync("nowhere", link);
    for (const path of [mine, link])
      expect(written(path)).toMatchObject({ exit: 2, err: expect.stringContaining("file/exists") });
    expect(readFileSync(mine, "utf8")).toBe("mine");
    expect(lstatSync(link).isSymbolicLink()).toBe(true);
    expect(readdirSync(folder).sort()).toEqual(["link.yaml", "mine.yaml"]);
  });

  it("replace a link itself with --force, and never what it leads to", () => {
    const folder = emptyFolder();
    const [mine, link] = [join(folder, "mine.yaml"), join(folder, "link.yaml")];
    writeFileSync(mine, "mine");
    symlinkSync("mine.yaml", link);
    expect(written(link, "--force").exit).not.toBe(2);
    expect(readFileSync(mine, "utf8")).toBe("mine");
    expect(lstatSync(link).isFile()).toBe(true);
  });

  it("never replace a folder, a device or a link to one, with --force either", () => {
    const folder = emptyFolder();
    symlinkSync("/dev/null", join(folder, "null.yaml"));
    for (const path of [folder, "/dev/null", join(folder, "null.yaml")])
      expect(written(path, "--force").err).toContain("file/not-a-file");
    expect(lstatSync("/dev/null").isCharacterDevice()).toBe(true);
  });

  it("need a folder that is there, and a name that is not too long", () => {
    const folder = emptyFolder();
    expect(written(join(folder, "no", "x.yaml")).err).toContain("its folder is not there");
    expect(written(join(folder, "x".repeat(300))).err).toContain("file/name-too-long");
    writeFileSync(join(folder, "file"), "");
    expect(written(join(folder, "file", "x.yaml")).err).toContain("is a file, not a folder");
    expect(readdirSync(folder)).toEqual(["file"]);
  });

  it.skipIf(process.getuid?.() === 0)("are not written where one may not write", () => {
    const folder = join(emptyFolder(), "kept");
    mkdirSync(folder);
    chmodSync(folder, 0o500);
    expect(written(join(folder, "x.yaml")).err).toContain("you may not write there");
  });

  it("are whole or not there when there is no room", () => {
    const folder = emptyFolder();
    const args = ["review", "logs/2026-03-14-b.csv", "-q", "--chart", join(folder, "x.svg")];
    // Files may have at most 4 blocks of 512 or 1024 bytes; the drawing has some ten thousand bytes.
    const ran = spawnSync(
      "sh",
      ["-c", 'ulimit -f 4; exec "$@"', "sh", process.execPath, COMMAND, ...args],
      { encoding: "utf8" },
    );
    expect(ran.stderr).toContain("file/no-room");
    expect(readdirSync(folder)).toEqual([]);
  });

  it("are whole or not there when the writer is killed", async () => {
    const folder = emptyFolder();
    const page = join(folder, "r.html");
    const whole = undunted(["review", "logs/2026-03-14-b.csv", "--html", page]);
    expect(whole.exit).not.toBe(2);
    const length = readFileSync(page).length;
    for (const afterSeconds of [0.2, 0.5, 0.9]) {
      const child = started(["review", "logs/2026-03-14-b.csv", "--html", page, "--force"]);
      setTimeout(() => child.kill("SIGKILL"), afterSeconds * 1000);
      await ended(child);
      expect(readFileSync(page).length).toBe(length);
    }
  });
});

function started(args: readonly string[]): ChildProcess {
  return spawn(process.execPath, [COMMAND, ...args], { stdio: ["ignore", "pipe", "ignore"] });
}

function ended(child: ChildProcess): Promise<number | null> {
  return new Promise((done) => child.on("close", (exit) => done(exit)));
}

describe("standard output and error", () => {
  it("may be closed by their reader", () => {
    const script = '"$@" 2>&1 | head -c 10';
    const logs = readdirSync("logs").filter((name) => name.endsWith(".csv"));
    const args = [process.execPath, COMMAND, "review", ...logs.map((name) => `logs/${name}`)];
    const ran = spawnSync("sh", ["-c", script, "sh", ...args], { encoding: "utf8" });
    expect(ran.stdout.length).toBe(10);
    expect(ran.stderr).toBe("");
  });

  it.skipIf(!existsSync("/dev/full"))("say so when a full disk is behind them", () => {
    const ran = spawnSync(
      "sh",
      ["-c", '"$@" > /dev/full', "sh", process.execPath, COMMAND, "cones"],
      {
        encoding: "utf8",
      },
    );
    expect(ran.status).toBe(2);
    expect(ran.stderr).toContain("the system says ENOSPC");
    expect(ran.stderr).not.toMatch(/^\s+at /m);
  });

  it("end with 130 when a watch is stopped by Ctrl-C", async () => {
    const child = started(["watch", "logs/2026-03-14-b.csv", "--json-lines"]);
    child.stdout?.once("data", () => child.kill("SIGINT"));
    expect(await ended(child)).toBe(130);
  });
});
