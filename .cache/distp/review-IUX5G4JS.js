import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  logPaths,
  manyLogs,
  tellLogs,
  workersFrom
} from "./chunk-SHH2OFVR.js";
import {
  reviewCharts
} from "./chunk-RJF4ZX2Q.js";
import "./chunk-ELCCSIMJ.js";
import {
  reviewPicture
} from "./chunk-CBVRRUI2.js";
import {
  drawn2 as drawn,
  writePictures
} from "./chunk-LCZWALSP.js";
import {
  logOptionsFrom
} from "./chunk-3SHC6X7O.js";
import {
  reportHtml
} from "./chunk-Q77PV3QE.js";
import "./chunk-QVADD2WS.js";
import "./chunk-6U5UKUNG.js";
import {
  readEarlierLogs,
  readersUnit,
  reviewBlocks,
  reviewText,
  reviewedLog
} from "./chunk-AXAUT6A2.js";
import "./chunk-AZI3ESL7.js";
import "./chunk-46CWPLZJ.js";
import "./chunk-6GRKVVXC.js";
import "./chunk-ETRUSM3K.js";
import "./chunk-GKWIKIYP.js";
import "./chunk-QVXNA4U3.js";
import "./chunk-I7PXXNWR.js";
import "./chunk-VTFWEP2W.js";
import "./chunk-I6LOXCIU.js";
import "./chunk-CQRY3XKN.js";
import "./chunk-N5S6N4PS.js";
import "./chunk-4ME6ZCIX.js";
import "./chunk-ZUGR3IIA.js";
import "./chunk-X6LO4HOH.js";
import "./chunk-XM3JYZUM.js";
import "./chunk-BX5CJHE4.js";
import "./chunk-S4DLFBTW.js";
import "./chunk-BNESJYXC.js";
import "./chunk-M4BL2XKO.js";
import {
  hasWarning
} from "./chunk-VFKPH3SJ.js";
import "./chunk-OGOFPCXR.js";
import "./chunk-4LHYQSW7.js";
import "./chunk-V6QCPP2T.js";
import "./chunk-F6MWUWUD.js";
import "./chunk-GU4RVAU5.js";
import {
  EXIT,
  answer,
  answerJson,
  coloured,
  paintFor,
  refuse,
  say
} from "./chunk-QOSRWPWR.js";
import "./chunk-NHPGJLL4.js";
import "./chunk-2XN66YSB.js";
import "./chunk-OQY4R7CT.js";
import "./chunk-WA5SZDQ5.js";
import "./chunk-2NHG2YQ4.js";
import "./chunk-IOGTIVWI.js";
import {
  MOMENT_FORMS,
  parseMoment
} from "./chunk-OBEK7CUI.js";
import "./chunk-PMYOLCKT.js";
import "./chunk-DDB2KZF2.js";
import "./chunk-GJAD4LJL.js";
import "./chunk-PYB7INDF.js";
import "./chunk-BKGWRYOW.js";
import "./chunk-O435DZD7.js";
import "./chunk-R2H4YYDI.js";
import {
  failed,
  ok
} from "./chunk-2ZNPDJKQ.js";
import "./chunk-OEDHJ3SZ.js";
import "./chunk-C7Q5CZLC.js";
import "./chunk-TBHH23HK.js";

// src/core/reports/reviewHtml.ts
function reviewHtml(review, options) {
  return reportHtml({
    title: review.title,
    language: "en",
    blocks: reviewBlocks(review, options)
  });
}

// src/core/firing/soundSaid.ts
var ASSUMED = { what: "pinging", note: "no words came with the time, so pinging is assumed" };
var IDLE_AT_END = /(?:^|\s)(?:at|about|around|from)$|[\s,;:–-]+$/i;
var IDLE_AT_START = /^[\s,;:–-]+/;
var MARKS_AT_END = /[,;:–-]+$/;
var MORE_TIME = /\d:\d|\d{4}-\d/;
function soundSaid(line) {
  const words = line.trim().split(/\s+/);
  for (let from = 0; from < words.length; from++) {
    const at = words.slice(from).join(" ");
    if (parseMoment(at) !== null) return sound(words.slice(0, from), at);
  }
  for (let to = words.length - 1; to > 0; to--) {
    const at = words.slice(0, to).join(" ").replace(MARKS_AT_END, "");
    if (parseMoment(at) !== null) return sound(words.slice(to), at);
  }
  return null;
}
function sound(words, at) {
  let what = words.join(" ").replace(IDLE_AT_START, "");
  while (IDLE_AT_END.test(what)) what = what.replace(IDLE_AT_END, "");
  if (MORE_TIME.test(what)) return null;
  return what === "" ? { ...ASSUMED, at } : { what, at };
}

// src/cli/heardFrom.ts
function heardFrom(given) {
  const sounds = given.map(soundSaid);
  const understood = sounds.filter((sound2) => sound2 !== null);
  if (understood.length === given.length) return ok(understood);
  const together = given.join(" ");
  if (given.length > 1 && soundSaid(together) !== null && understood.length < 2)
    return failed({
      ...problem(together, `"${given.find((_, i) => sounds[i] === null)}" has no time`),
      fix: `put what was heard in quotes, together with its time: --heard "${together}"`
    });
  return failed(...given.filter((_, i) => sounds[i] === null).map((text) => timeless(text)));
}
var LIKE_A_MOMENT = /(?:\+\s*)?\d[\d:.T -]*(?:\s*[ap]\.?m\.?|h)?$/i;
function timeless(text) {
  const misread = LIKE_A_MOMENT.exec(text)?.[0];
  if (misread === void 0)
    return problem(text, `"${text}" has no time, so it cannot be placed in the log`);
  if (parseMoment(misread) !== null)
    return {
      ...problem("", `"${text}" names more than one time`),
      fix: 'one pair of quotes for each sound: --heard "a crack 14:05" "a crack 15:10"'
    };
  const words = text.slice(0, -misread.length);
  return problem(words, `"${misread}" is not a moment that can be read`);
}
function problem(words, what) {
  const before = words.trim() === "" ? "" : `${words.trim()} `;
  return {
    code: "command/heard",
    where: "--heard",
    what,
    expected: `words, then when it was heard: ${MOMENT_FORMS}`,
    fix: `--heard "${before}14:05", with a 24-hour clock`
  };
}

// src/cli/reviewContradiction.ts
var OF_ONE_LOG = ["json", "html", "chart", "record", "heard"];
var BESIDE_LINES = ["json", "html", "chart", "explain"];
var BESIDE_EXPLAIN = ["json", "html", "chart", "heard", "against"];
function reviewContradiction(logs, options) {
  const given = (names) => names.find((name) => options[name] !== void 0);
  const beside = options.jsonLines ? given(BESIDE_LINES) : void 0;
  if (beside !== void 0)
    return two("--json-lines", beside, "lines of JSON are the whole answer");
  const explained = options.explain ? given(BESIDE_EXPLAIN) : void 0;
  if (explained !== void 0)
    return two(
      "--explain",
      explained,
      "it tells in text how a log was read, and nothing of the firing"
    );
  const ofOne = given(OF_ONE_LOG);
  if (logs === 1 || ofOne === void 0) return null;
  return {
    code: "command/one-log",
    where: `--${ofOne}`,
    what: `${logs} logs are given`,
    expected: "one log, because this option speaks of one firing",
    fix: "one log at a time; or --json-lines for one JSON document a line, or undunted compare for a table of several"
  };
}
function two(one2, other, because) {
  return {
    code: "command/contradiction",
    where: "command line",
    what: `both ${one2} and --${other} are given`,
    expected: `one of them: ${because}`,
    fix: "drop one"
  };
}

// src/cli/commands/review.ts
async function run(given, options) {
  const asked = await askedOf(given, options);
  if (!asked.ok) return refuse(asked.problems, options);
  const { paths, ways, workers } = asked.value;
  const [alone, another] = paths;
  if (alone !== void 0 && another === void 0 && !options.jsonLines && !options.explain)
    return one(alone, ways, options);
  return tellLogs(manyLogs(paths, taskOf(ways, options), workers), {
    total: paths.length,
    options,
    textOf: ({ text }) => text
  });
}
async function askedOf(given, options) {
  const logOptions = logOptionsFrom(options);
  const heard = heardFrom(options.heard ?? []);
  const workers = workersFrom(options.workers);
  const files = await logPaths(given);
  if (!logOptions.ok || !heard.ok || !workers.ok || !files.ok)
    return failed(
      ...[logOptions, heard, workers, files].flatMap((part) => part.ok ? [] : part.problems)
    );
  const { paths, remarks } = files.value;
  const contradiction = reviewContradiction(paths.length, options);
  if (contradiction !== null) return failed(contradiction);
  for (const remark of remarks) say(remark, options);
  return ok({
    paths,
    workers: workers.value,
    ways: {
      logOptions: logOptions.value,
      heard: heard.value,
      recordPath: options.record ?? null,
      schedulePath: options.against ?? null,
      offers: paths.length === 1 && !options.quiet
    }
  });
}
function taskOf(ways, options) {
  const shown2 = { ways, unit: options.unit ?? null, coloured: coloured(options) };
  if (options.explain) return { kind: "explain", ...shown2 };
  const kilnLogs = options.kiln ?? null;
  return { kind: "review", ...shown2, kilnLogs, asLine: options.jsonLines === true };
}
async function one(path, ways, options) {
  const earlier = options.kiln === void 0 ? null : await readEarlierLogs(options.kiln);
  const { review, remarks } = await reviewedLog(path, { ...ways, earlier });
  for (const remark of remarks) say(remark, options);
  return review.ok ? shown(review.value, options) : refuse(review.problems, options);
}
async function shown(review, options) {
  const unit = options.unit ?? readersUnit(review);
  const charts = reviewCharts(review);
  const { strain } = charts;
  const written = await writePictures(options, {
    html: async () => reviewHtml(review, {
      unit,
      charts: await drawn({
        firing: (dark) => charts.firing({ unit, dark }),
        cooling: (dark) => charts.cooling({ unit, dark }),
        cones: (dark) => charts.cones({ unit, dark }),
        ...strain && { strain: (dark) => strain({ unit, dark }) }
      })
    }),
    picture: () => reviewPicture([
      charts.firing({ unit }),
      charts.cooling({ unit }),
      ...strain ? [strain({ unit })] : [],
      charts.cones({ unit })
    ])
  });
  if (!written.ok) return refuse(written.problems, options);
  if (options.json) {
    const { reviewDocument } = await import("./reviewDocument-BMTNFZZB.js");
    answerJson(reviewDocument(review));
  } else answer(reviewText(review, { unit, paint: paintFor(options) }));
  return hasWarning(review.findings) ? EXIT.no : EXIT.fine;
}
export {
  run
};
