import type { Finding } from "../findings/Finding.ts";
import { quoted } from "../findings/findingText.ts";
import type { LogFault, LogReading } from "../log/LogReading.ts";
import type { WatchFacts } from "./watchFindings.ts";

/** A thermocouple is silent when it misses as many usual steps, and so long [s]. */
const SILENT_STEPS = 3;
const SILENT_SECONDS = 120;

/** Rows at the end of the log without a reading from which on something is wrong. */
const ROWS_WITHOUT = 2;

/** What is wrong with the thermocouples and the log, rather than with the firing. */
export function sensorFindings(facts: WatchFacts): readonly Finding[] {
  return [...brokenFindings(facts), ...silentFindings(facts), ...rowFindings(facts)];
}

/** Open circuits and frozen readings that the reader of the log found. */
function brokenFindings(facts: WatchFacts): readonly Finding[] {
  const { reading, state } = facts;
  const faults = reading.faults.filter(({ kind }) => kind === "open" || kind === "stuck");
  const newest = newestSeconds(reading);
  return faults.map((fault) => {
    const isNow = newest - fault.toSeconds <= reading.intervalSeconds && isOut(fault, facts);
    const past = fault.kind === "open" && !isNow ? " It reads again." : "";
    return {
      topic: fault.kind === "open" ? "open thermocouple" : "frozen readings",
      severity: isNow ? "warning" : "caution",
      statement: `${sentence(fault)}${past}`,
      evidence: [{ name: "readings", value: fault.count, kind: "count" }],
      basis: "values that no thermocouple gives, or one value while all else moves",
      advice: isNow
        ? "Go and look: the controller may be blind. Check the thermocouple and its plug."
        : "Check the thermocouple and its plug.",
      zone: state.zones.length > 1 ? fault.channel : null,
      span: { fromSeconds: fault.fromSeconds, toSeconds: fault.toSeconds },
    };
  });
}

/** Whether a thermocouple is at fault for more than one reading by now. */
function isOut({ kind, channel, toSeconds }: LogFault, { reading, state }: WatchFacts): boolean {
  const zone = state.zones.find(({ name }) => name === channel);
  return (
    kind === "stuck" ||
    zone === undefined ||
    toSeconds - zone.atSeconds > 1.5 * reading.intervalSeconds
  );
}

/** Thermocouples that say nothing while the log goes on. */
function silentFindings({ reading, state }: WatchFacts): readonly Finding[] {
  const newest = newestSeconds(reading);
  const most = Math.max(SILENT_STEPS * reading.intervalSeconds, SILENT_SECONDS);
  return state.zones
    .filter(({ atSeconds }) => newest - atSeconds > most)
    .filter(
      ({ name }) =>
        !reading.faults.some(
          ({ kind, channel, toSeconds }) =>
            kind === "open" && channel === name && toSeconds >= newest - most,
        ),
    )
    .map(({ name, atSeconds, tempC }) => ({
      topic: "silent thermocouple",
      severity: "warning" as const,
      statement: `${quoted(name)} has given no reading for {silent}; its last was {last}.`,
      evidence: [
        { name: "silent", value: newest - atSeconds, kind: "duration" },
        { name: "last", value: tempC, kind: "temperature" },
      ],
      basis: "the other columns of the log go on",
      advice: "Go and look: check the thermocouple and its plug.",
      zone: null,
      span: { fromSeconds: atSeconds, toSeconds: newest },
    }));
}

/** Rows at the end of the log that gave no reading at all. */
function rowFindings({ reading, state, lines }: WatchFacts): readonly Finding[] {
  const { rejected } = reading.rows;
  let line = lines;
  let count = 0;
  for (let i = rejected.length - 1; i >= 0 && (rejected[i]?.line as number) >= line; i--) {
    line = (rejected[i]?.line as number) - 1;
    count++;
  }
  if (count < ROWS_WITHOUT) return [];
  const reason = quoted(rejected.at(-1)?.reason ?? "");
  return [
    {
      topic: "rows without a reading",
      severity: "warning",
      statement: `The last {rows} rows of the log gave no reading (${reason}); what is shown is older.`,
      evidence: [{ name: "rows", value: count, kind: "count" }],
      basis: "the end of the log",
      advice: "Go and look: an open thermocouple or a stopped logger may be the cause.",
      zone: null,
      span: { fromSeconds: state.nowSeconds, toSeconds: state.nowSeconds },
    },
  ];
}

/** Last moment at which any column of the log, or a fault in one, says something [s]. */
function newestSeconds({ channels, faults }: LogReading): number {
  const ends = channels.flatMap(({ curve, outputFraction }) => [
    ...(curve ? [curve.timesSeconds.at(-1)!] : []),
    ...(outputFraction ? [outputFraction.timesSeconds.at(-1) ?? 0] : []),
  ]);
  return Math.max(0, ...ends, ...faults.map(({ toSeconds }) => toSeconds));
}

function sentence({ what }: LogFault): string {
  const flat = quoted(what);
  return flat.charAt(0).toUpperCase() + flat.slice(1);
}
