import { dateOf, dayNumber, weekday } from "../../../src/core/log/text/calendar.ts";
import type { Levels } from "./axes.ts";

/** A moment to be written: wall clock [s since 1970] and time since the log began [s]. */
interface Written {
  readonly wall: number;
  readonly elapsed: number;
  readonly index: number;
}

/** What a column of times counts from, and so what a reader can know of it. */
type TimeKind = "dated" | "time of day" | "elapsed" | "counted";

/** A way to write times. */
export interface TimeStyle {
  readonly kind: TimeKind;
  readonly names: readonly string[];
  /** Text of the unit row below the names. */
  readonly units?: readonly string[];
  /** Smallest step it can show [s]. */
  readonly quantum: number;
  /** Cells of a moment; as many as names. */
  readonly cells: (at: Written) => readonly string[];
  /** Order of day and month in all-digit dates. */
  readonly order?: "day-first" | "month-first" | "year-first";
  /** Uses the decimal mark of the log. */
  readonly isDecimal?: boolean;
  /** Scale of bare numbers that only rates can tell [s]. */
  readonly bareScale?: number;
  /** Two fields that may be hours and minutes or minutes and seconds. */
  readonly twoFields?: boolean;
}

const two = (value: number) => String(value).padStart(2, "0");

interface Fields {
  readonly y: number;
  readonly mo: number;
  readonly d: number;
  readonly h: number;
  readonly mi: number;
  readonly s: number;
  readonly ms: number;
}

function fieldsOf(wall: number): Fields {
  const millis = Math.round(wall * 1000);
  const day = Math.floor(millis / 86_400_000);
  const rest = millis - day * 86_400_000;
  const { year, month, day: d } = dateOf(day);
  return {
    y: year,
    mo: month,
    d,
    h: Math.floor(rest / 3_600_000),
    mi: Math.floor((rest % 3_600_000) / 60_000),
    s: Math.floor((rest % 60_000) / 1000),
    ms: rest % 1000,
  };
}

const hms = ({ h, mi, s }: Fields) => `${two(h)}:${two(mi)}:${two(s)}`;
const ymd = ({ y, mo, d }: Fields) => `${y}-${two(mo)}-${two(d)}`;
const dial = ({ h }: Fields) => (h % 12 === 0 ? 12 : h % 12);

function dated(
  text: (at: Fields) => string,
  rest: Partial<Pick<TimeStyle, "quantum" | "order" | "names">> = {},
): TimeStyle {
  return {
    kind: "dated",
    names: rest.names ?? ["Date/Time"],
    quantum: rest.quantum ?? 1,
    cells: ({ wall }) => [text(fieldsOf(wall))],
    ...(rest.order === undefined ? {} : { order: rest.order }),
  };
}

function named(months: string, text: (at: Fields, month: string) => string): TimeStyle {
  const list = months.split(" ");
  return dated((at) => text(at, list[at.mo - 1] as string));
}

const dmy = ({ y, mo, d }: Fields, mark: string) => [two(d), two(mo), y].join(mark);

function halfDay(
  marks: readonly [string, string],
  text: (at: Fields, mark: string) => string,
): TimeStyle {
  const style = dated((at) => text(at, at.h < 12 ? marks[0] : marks[1]));
  return text === clockAfter ? { ...style, order: "day-first" } : style;
}

const ENGLISH = "Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec";

function epoch(scale: string): TimeStyle {
  return {
    kind: "dated",
    names: ["Timestamp"],
    quantum: 1,
    cells: ({ wall }) => [`${Math.round(wall)}${scale}`],
  };
}

function numbers(scale: number, rest: Partial<TimeStyle>): TimeStyle {
  return {
    kind: "elapsed",
    names: ["Time"],
    quantum: 1,
    isDecimal: true,
    cells: ({ elapsed }) => [
      scale === 1 ? String(elapsed) : (elapsed / scale).toFixed(scale === 60 ? 3 : 5),
    ],
    ...rest,
  };
}

function spans(text: (elapsed: number) => string, rest: Partial<TimeStyle> = {}): TimeStyle {
  return {
    kind: "elapsed",
    names: ["Elapsed"],
    quantum: 1,
    cells: ({ elapsed }) => [text(elapsed)],
    ...rest,
  };
}

const hoursOf = (elapsed: number) => Math.floor(elapsed / 3600);
const minutesOf = (elapsed: number) => Math.floor((elapsed % 3600) / 60);
const tail = (elapsed: number) => `${two(minutesOf(elapsed))}:${two(elapsed % 60)}`;

/** Ways to write times, by their level on the axis. */
export const TIME_STYLES: Readonly<Record<Levels["time"], TimeStyle>> = {
  "ISO with T": dated((at) => `${ymd(at)}T${hms(at)}`),
  "ISO with blank": dated((at) => `${ymd(at)} ${hms(at)}`),
  "ISO with fraction": dated((at) => `${ymd(at)} ${hms(at)}.${String(at.ms).padStart(3, "0")}`),
  "ISO with decimal comma": dated(
    (at) => `${ymd(at)}T${hms(at)},${String(at.ms).padStart(3, "0")}`,
  ),
  "ISO with Z": dated((at) => `${ymd(at)}T${hms(at)}Z`),
  "ISO with offset": dated((at) => `${ymd(at)}T${hms(at)}+02:00`),
  "ISO with short offset": dated((at) => `${ymd(at)} ${hms(at)}-0500`),
  "ISO to the minute": dated((at) => `${ymd(at)} ${two(at.h)}:${two(at.mi)}`, { quantum: 60 }),
  "compact ISO": dated((at) => `${at.y}${two(at.mo)}${two(at.d)}T${hms(at).replaceAll(":", "")}`),
  "epoch s": epoch(""),
  "epoch ms": epoch("000"),
  "epoch µs": epoch("000000"),
  "epoch ns": epoch("000000000"),
  "serial days": {
    kind: "dated",
    names: ["Date"],
    quantum: 1,
    isDecimal: true,
    cells: ({ wall }) => [(wall / 86_400 + 25_569).toFixed(8)],
  },
  "day first slashes": dated((at) => `${dmy(at, "/")} ${hms(at)}`, { order: "day-first" }),
  "day first dots": dated((at) => `${dmy(at, ".")} ${hms(at)}`, { order: "day-first" }),
  "day first dashes": dated((at) => `${dmy(at, "-")} ${hms(at)}`, { order: "day-first" }),
  "day first dots 2-digit year": dated(
    (at) => `${two(at.d)}.${two(at.mo)}.${two(at.y % 100)} ${hms(at)}`,
    { order: "day-first" },
  ),
  "day first to the minute": dated((at) => `${at.d}/${at.mo}/${at.y} ${at.h}:${two(at.mi)}`, {
    order: "day-first",
    quantum: 60,
  }),
  "month first slashes": dated((at) => `${two(at.mo)}/${two(at.d)}/${at.y} ${hms(at)}`, {
    order: "month-first",
  }),
  "month first 2-digit year": dated((at) => `${at.mo}/${at.d}/${two(at.y % 100)} ${hms(at)}`, {
    order: "month-first",
  }),
  "month first AM PM": dated(
    (at) =>
      `${at.mo}/${at.d}/${at.y} ${dial(at)}:${two(at.mi)}:${two(at.s)} ${at.h < 12 ? "AM" : "PM"}`,
    { order: "month-first" },
  ),
  "year first slashes": dated((at) => `${at.y}/${two(at.mo)}/${two(at.d)} ${hms(at)}`),
  "year first 2-digit": dated((at) => `${two(at.y % 100)}-${two(at.mo)}-${two(at.d)} ${hms(at)}`, {
    order: "year-first",
  }),
  "English month": named(ENGLISH, (at, month) => `${two(at.d)}-${month}-${at.y} ${hms(at)}`),
  "English month first": named(ENGLISH, (at, month) => `${month} ${at.d}, ${at.y} ${hms(at)}`),
  "German month": named(
    "Jan Feb Mär Apr Mai Jun Jul Aug Sep Okt Nov Dez",
    (at, month) => `${at.d}. ${month}. ${at.y} ${hms(at)}`,
  ),
  "French month": named(
    "janvier février mars avril mai juin juillet août septembre octobre novembre décembre",
    (at, month) => `${at.d} ${month} ${at.y} ${hms(at)}`,
  ),
  "Spanish month": named(
    "ene feb mar abr may jun jul ago sept oct nov dic",
    (at, month) => `${two(at.d)}-${month}-${at.y} ${hms(at)}`,
  ),
  "Italian month": named(
    "gen feb mar apr mag giu lug ago set ott nov dic",
    (at, month) => `${two(at.d)}/${month}/${at.y} ${hms(at)}`,
  ),
  "Dutch month": named(
    "jan feb mrt apr mei jun jul aug sep okt nov dec",
    (at, month) => `${at.d} ${month} ${at.y} ${hms(at)}`,
  ),
  "Portuguese month": named(
    "jan fev mar abr mai jun jul ago set out nov dez",
    (at, month) => `${two(at.d)}/${month}/${at.y} ${hms(at)}`,
  ),
  "weekday and date": dated((at) => `${weekdayOf(at)} ${ymd(at)} ${hms(at)}`),
  "12-hour AM PM": halfDay([" AM", " PM"], clockAfter),
  "12-hour a.m.": halfDay([" a.m.", " p.m."], clockAfter),
  "12-hour spaced p. m.": halfDay([" a. m.", " p. m."], clockAfter),
  "12-hour Chinese": halfDay(["上午", "下午"], clockBehind),
  "12-hour Japanese": halfDay(["午前", "午後"], clockBehind),
  "12-hour Korean": halfDay(["오전", "오후"], (at, mark) => clockBehind(at, `${mark} `)),
  "12-hour Greek": halfDay([" πμ", " μμ"], clockAfter),
  "12-hour unmarked": dated((at) => `${ymd(at)} ${two(dial(at))}:${two(at.mi)}:${two(at.s)}`),
  "date and time columns": pair(false),
  "date where it changes": pair(true),
  "time of day": ofDay(hms, 1),
  "time of day to the minute": ofDay(({ h, mi }) => `${h}:${two(mi)}`, 60),
  "time of day AM PM": ofDay(
    (at) => `${dial(at)}:${two(at.mi)}:${two(at.s)} ${at.h < 12 ? "AM" : "PM"}`,
    1,
  ),
  "elapsed h:mm:ss": spans((elapsed) => `${hoursOf(elapsed)}:${tail(elapsed)}`),
  "elapsed d.hh:mm:ss": spans(
    (elapsed) => `${Math.floor(elapsed / 86_400)}.${two(hoursOf(elapsed) % 24)}:${tail(elapsed)}`,
  ),
  "elapsed 1d 02:03": spans(
    (elapsed) =>
      `${Math.floor(elapsed / 86_400)}d ${two(hoursOf(elapsed) % 24)}:${two(minutesOf(elapsed))}`,
    { quantum: 60 },
  ),
  "elapsed PT": spans((elapsed) => `PT${hoursOf(elapsed)}H${minutesOf(elapsed)}M${elapsed % 60}S`),
  "elapsed mm:ss": spans((elapsed) => `${two(Math.floor(elapsed / 60))}:${two(elapsed % 60)}`, {
    twoFields: true,
  }),
  "elapsed hh:mm": spans((elapsed) => `${two(hoursOf(elapsed))}:${two(minutesOf(elapsed))}`, {
    twoFields: true,
    quantum: 60,
  }),
  "decimal s labelled": numbers(1, { names: ["Time (s)"], units: ["s"] }),
  "decimal min labelled": numbers(60, { names: ["Time (min)"], units: ["min"] }),
  "decimal h labelled": numbers(3600, { names: ["Time (h)"], units: ["h"] }),
  "decimal s bare": numbers(1, { bareScale: 1 }),
  "decimal min bare": numbers(60, { bareScale: 60 }),
  "decimal h bare": numbers(3600, { bareScale: 3600 }),
  "sample number": {
    kind: "counted",
    names: ["No."],
    quantum: 1,
    cells: ({ index }) => [String(index)],
  },
  "no time column": { kind: "counted", names: [], quantum: 1, cells: () => [] },
};

function weekdayOf(at: Fields): string {
  const day = dayNumber(at.y, at.mo, at.d);
  return ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"][weekday(day)] as string;
}

function clockAfter(at: Fields, mark: string): string {
  return `${dmy(at, "/")} ${dial(at)}:${two(at.mi)}:${two(at.s)}${mark}`;
}

function clockBehind(at: Fields, mark: string): string {
  return `${at.y}/${two(at.mo)}/${two(at.d)} ${mark}${dial(at)}:${two(at.mi)}:${two(at.s)}`;
}

function pair(onlyChanges: boolean): TimeStyle {
  let last = "";
  return {
    kind: "dated",
    names: ["Date", "Time"],
    quantum: 1,
    order: "day-first",
    cells: ({ wall, index }) => {
      const at = fieldsOf(wall);
      const date = dmy(at, ".");
      const isSame = onlyChanges && index > 0 && date === last;
      last = date;
      return [isSame ? "" : date, hms(at)];
    },
  };
}

function ofDay(text: (at: Fields) => string, quantum: number): TimeStyle {
  return {
    kind: "time of day",
    names: ["Time"],
    quantum,
    cells: ({ wall }) => [text(fieldsOf(wall))],
  };
}
