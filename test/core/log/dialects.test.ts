import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { choiceOf, firing, pairs, reading, type Style, wall, writeLog } from "./logBuilder.ts";

const SAMPLES = firing(200);
const TRUTH = pairs(reading(writeLog(SAMPLES)));

function twelve(seconds: number, marker: boolean): string {
  const { h, clock } = wall(seconds);
  const dial = h % 12 === 0 ? 12 : h % 12;
  return `${dial}${clock.slice(2)}${marker ? (h < 12 ? " AM" : " PM") : ""}`;
}

function elapsed(seconds: number): string {
  const h = Math.floor(seconds / 3600);
  const rest = seconds % 3600;
  return `${h}:${String(Math.floor(rest / 60)).padStart(2, "0")}:${String(rest % 60).padStart(2, "0")}`;
}

const comma = (tempC: number) => tempC.toFixed(1).replace(".", ",");
const epoch = (seconds: number) => 1_773_507_900 + seconds;

const STYLES: readonly (readonly [string, Style])[] = [
  ["semicolons and decimal commas", { delimiter: ";", temp: comma }],
  ["tabs and decimal commas", { delimiter: "\t", temp: comma }],
  ["bars", { delimiter: "|" }],
  ["runs of blanks", { delimiter: "   ", header: "Time(s)   Temp(°C)" }],
  ["CR LF line ends", { lineEnd: "\r\n" }],
  ["CR line ends", { lineEnd: "\r" }],
  ["commas with quoted decimal commas", { temp: (t) => `"${comma(t)}"` }],
  ["a unit row", { header: "Time,Temp\n[s],[°C]" }],
  ["units in the cells", { header: "Time (s),Kiln", temp: (t) => `${t.toFixed(1)} °C` }],
  [
    "a preamble of twelve lines",
    {
      preamble: Array.from({ length: 12 }, (_, i) => `Note ${i};some words, and more`),
    },
  ],
  ["a commented header", { header: "# Time (s),Temp (°C)" }],
  ["a sep line", { preamble: ["sep=;"], delimiter: ";" }],
  [
    "no header, elapsed hh:mm:ss and a unit above",
    { header: "", preamble: ["Unit: C"], time: elapsed },
  ],
  ["seconds with fractions", { time: (s) => s.toFixed(3) }],
  ["minutes", { header: "Time (min),Temp (°C)", time: (s) => String(s / 60) }],
  ["hours", { header: "hours,temp_C", time: (s) => String(s / 3600) }],
  ["unlabelled minutes", { header: "Time,Temp °C", time: (s) => String(s / 60) }],
  ["unlabelled hours", { header: "Time,Temp °C", time: (s) => String(s / 3600) }],
  ["elapsed hh:mm:ss", { header: "Elapsed,Temp °C", time: elapsed }],
  ["elapsed hh:mm", { header: "Elapsed,Temp °C", time: (s) => elapsed(s).slice(0, -3) }],
  ["ISO stamps", { header: "Time,Temp °C", time: (s) => `${wall(s).date}T${wall(s).clock}` }],
  [
    "ISO stamps with offset",
    { header: "t,Temp °C", time: (s) => `${wall(s).date}T${wall(s).clock}+01:00` },
  ],
  [
    "day-first stamps",
    {
      header: "Datum;Temp °C",
      delimiter: ";",
      temp: comma,
      time: (s) => `${wall(s).day}.03.2026 ${wall(s).clock}`,
    },
  ],
  [
    "month-first stamps with AM and PM",
    {
      header: "Date,Temp °C",
      time: (s) => `3/${wall(s).day}/26 ${twelve(s, true)}`,
    },
  ],
  [
    "month names",
    { header: "Date,Temp °C", time: (s) => `${wall(s).day}-Mar-2026 ${wall(s).clock}` },
  ],
  ["a 12-hour clock without AM and PM", { header: "Clock,Temp °C", time: (s) => twelve(s, false) }],
  ["time of day across midnight", { header: "Clock,Temp °C", time: (s) => wall(s).clock }],
  [
    "separate date and time",
    { header: "Date,Time,Temp °C", time: (s) => `${wall(s).date},${wall(s).clock}` },
  ],
  ["epoch seconds", { header: "ts,Temp °C", time: (s) => String(epoch(s)) }],
  ["epoch milliseconds", { header: "ts,Temp °C", time: (s) => `${epoch(s)}000` }],
  ["epoch microseconds", { header: "ts,Temp °C", time: (s) => `${epoch(s)}000000` }],
  ["epoch nanoseconds", { header: "ts,Temp °C", time: (s) => `${epoch(s)}000000000` }],
  [
    "spreadsheet days",
    {
      header: "Date,Temp °C",
      time: (s) => (46_095 + (61_500 + s) / 86_400).toFixed(9),
    },
  ],
  [
    "sample numbers and an interval above",
    {
      header: "No.,Temp °C",
      preamble: ["Sample interval: 5 min"],
      time: (s) => String(s / 300 + 1),
    },
  ],
  [
    "only temperatures and an interval above",
    {
      header: "Temp °C",
      preamble: ["Interval, 300 s"],
      delimiter: "",
      time: () => "",
    },
  ],
  ["ISO durations", { header: "Elapsed,Temp °C", time: (s) => `PT${s}S` }],
  [
    "days and hours",
    {
      header: "Elapsed,Temp °C",
      time: (s) => (s >= 86_400 ? `${Math.floor(s / 86_400)}.${elapsed(s % 86_400)}` : elapsed(s)),
    },
  ],
  ["°F", { header: "Time (s),Temp (°F)", temp: (t) => (t * 1.8 + 32).toFixed(2) }],
  ["°F without a label", { header: "Time (s),Temp", temp: (t) => (t * 1.8 + 32).toFixed(2) }],
  ["kelvin", { header: "Time,Temp\ns,K", temp: (t) => (t + 273.15).toFixed(2) }],
  ["a trailing delimiter", { temp: (t) => `${t.toFixed(1)},` }],
  [
    "thousands separators",
    { delimiter: ";", temp: (t) => t.toLocaleString("en-GB", { minimumFractionDigits: 1 }) },
  ],
  [
    "German thousands separators",
    { delimiter: ";", temp: (t) => t.toLocaleString("de-DE", { minimumFractionDigits: 1 }) },
  ],
];

describe("a log of the same firing", () => {
  it.each(STYLES)("written with %s gives the same readings", (_, style) => {
    const found = pairs(reading(writeLog(SAMPLES, style)));
    expect(found.length).toBe(TRUTH.length);
    const largest = (at: 0 | 1) =>
      Math.max(...found.map((pair, i) => Math.abs(pair[at] - (TRUTH[i]?.[at] ?? Number.NaN))));
    expect(largest(0)).toBeLessThan(0.01);
    // °F and K are written to two digits here.
    expect(largest(1)).toBeLessThan(0.006);
  });

  it("is read from the numbers as they stand, without rounding", () => {
    expect(pairs(reading("Time (s),Temp (°F)\n0,70.1\n60,70.3\n120,71.7\n"))).toEqual([
      [0, (70.1 - 32) / 1.8],
      [60, (70.3 - 32) / 1.8],
      [120, (71.7 - 32) / 1.8],
    ]);
  });
});

describe("the encoding", () => {
  const text = writeLog(SAMPLES, { header: "Time (s);Température (°C)", delimiter: ";" });
  const wide = (bigEndian: boolean, mark: boolean) => {
    const codes = [...(mark ? "\uFEFF" : ""), ...text].map((c) => c.charCodeAt(0));
    return Uint8Array.from(
      codes.flatMap((c) => (bigEndian ? [c >> 8, c & 255] : [c & 255, c >> 8])),
    );
  };
  const narrow = (degree: number, e: number) =>
    Uint8Array.from([...text].map((c) => (c === "°" ? degree : c === "é" ? e : c.charCodeAt(0))));
  it.each([
    ["UTF-16, little end first, marked", wide(false, true), "utf-16le"],
    ["UTF-16, big end first, marked", wide(true, true), "utf-16be"],
    ["UTF-16, little end first, unmarked", wide(false, false), "utf-16le"],
    ["UTF-16, big end first, unmarked", wide(true, false), "utf-16be"],
    ["UTF-8 with a mark", new TextEncoder().encode(`\uFEFF${text}`), "utf-8"],
    ["windows-1252", narrow(0xb0, 0xe9), "windows-1252"],
    ["code page 850", narrow(0xf8, 0x82), "code page 850"],
    ["Mac Roman", narrow(0xa1, 0x8e), "macintosh"],
  ])("%s is found, with names and unit right", (_, bytes, encoding) => {
    const log = reading(bytes);
    expect(choiceOf(log, "encoding")).toBe(encoding);
    expect(log.channels[0]?.name).toBe("Température (°C)");
    expect(pairs(log)).toEqual(TRUTH);
  });
});

describe("for any firing", () => {
  const samples = fc
    .array(fc.integer({ min: -40, max: 60 }), { minLength: 30, maxLength: 80 })
    .map((steps) => {
      let tempC = 20;
      return steps.map((step, i) => {
        tempC = Math.max(15, tempC + step / 10);
        return { seconds: i * 60, tempC: Math.round(tempC * 10) / 10 };
      });
    });

  it("a °F copy, a decimal-comma copy and a UTF-16 copy give one reading", () => {
    fc.assert(
      fc.property(samples, (list) => {
        const truth = pairs(reading(writeLog(list)));
        const inF = pairs(
          reading(
            writeLog(list, {
              header: "Time (s),Temp (°F)",
              temp: (t) => (t * 1.8 + 32).toFixed(6),
            }),
          ),
        );
        const inComma = pairs(reading(writeLog(list, { delimiter: ";", temp: comma })));
        const bytes = Uint8Array.from(
          [...`\uFEFF${writeLog(list)}`].flatMap((c) => [
            c.charCodeAt(0) & 255,
            c.charCodeAt(0) >> 8,
          ]),
        );
        expect(inComma).toEqual(truth);
        expect(pairs(reading(bytes))).toEqual(truth);
        expect(inF.length).toBe(truth.length);
        inF.forEach(([, tempC], i) => {
          expect(Math.abs(tempC - (truth[i]?.[1] ?? Number.NaN))).toBeLessThan(1e-5);
        });
      }),
      { numRuns: 40 },
    );
  });

  it("shifting all stamps changes nothing but the start", () => {
    fc.assert(
      fc.property(samples, fc.integer({ min: 0, max: 4 * 86_400 }), (list, shift) => {
        const style = (by: number): Style => ({
          header: "Time,Temp °C",
          time: (s) => `${wall(s + by).date} ${wall(s + by).clock}`,
        });
        const plain = reading(writeLog(list, style(0)));
        const shifted = reading(writeLog(list, style(shift)));
        expect(pairs(shifted)).toEqual(pairs(plain));
        expect(shifted.start).toBe(`${wall(shift).date}T${wall(shift).clock}`);
      }),
      { numRuns: 40 },
    );
  });
});
