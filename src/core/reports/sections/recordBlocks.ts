import type { WitnessOffset } from "../../cones/witnessOffset.ts";
import type { FiringReview } from "../../firing/FiringReview.ts";
import { printDifference, printTemperature } from "../../units/print.ts";
import type { TemperatureUnit } from "../../units/temperature.ts";
import type { Block, Cell } from "../Block.ts";
import { capitalised, stopped } from "../capitalised.ts";
import { momentText } from "../moments.ts";
import { seriesName } from "./coneWords.ts";

/** What was heard, what the witness cones said, and the lines of the record; each only if given. */
export function recordBlocks(review: FiringReview, unit: TemperatureUnit): readonly Block[] {
  return [
    ...heardBlocks(review, unit),
    ...witnessBlocks(review.offset, unit),
    ...(review.recordLines.length === 0
      ? []
      : ([
          { kind: "heading", text: "From the firing record" },
          { kind: "facts", facts: review.recordLines },
        ] as const)),
  ];
}

function heardBlocks(review: FiringReview, unit: TemperatureUnit): readonly Block[] {
  if (review.heard.length === 0) return [];
  const { startOfDaySeconds } = review.reading;
  return [
    { kind: "heading", text: "What was heard" },
    {
      kind: "list",
      items: review.heard.map(({ what, atSeconds, tempC, note }) => {
        const when =
          atSeconds === null
            ? ", at a time the log does not cover"
            : `: ${momentText(startOfDaySeconds, atSeconds)}`;
        const hot = tempC === null ? "" : `, at ${printTemperature(tempC, unit)}`;
        return `${stopped(`${capitalised(what)}${when}${hot}`)}${note === null ? "" : ` ${stopped(capitalised(note))}`}`;
      }),
    },
  ];
}

function witnessBlocks(offset: WitnessOffset | null, unit: TemperatureUnit): readonly Block[] {
  if (offset === null) return [];
  return [
    { kind: "heading", text: "What the witness cones say" },
    { kind: "sentence", text: offsetSentence(offset, unit) },
    {
      kind: "table",
      caption: `Witness cones: ${seriesName(offset.series)}`,
      columns: [
        { head: "cone", align: "left" },
        { head: "was seen", align: "left" },
        { head: "asks for", align: "right" },
      ],
      rows: offset.witnesses.map((witness): readonly Cell[] => [
        witness.cone,
        witness.said,
        witness.impliedK === null ? "no exact value" : signed(witness.impliedK, unit),
      ]),
    },
  ];
}

function offsetSentence(offset: WitnessOffset, unit: TemperatureUnit): string {
  const size = printDifference(Math.abs(offset.offsetK), unit);
  const reads = size.startsWith("0 ")
    ? "The thermocouple agrees with the witness cones to the degree"
    : `Judged by the witness cones the thermocouple reads about ${size} too ${offset.offsetK < 0 ? "high" : "low"}, give or take ${printDifference(offset.sigmaK, unit)}`;
  const { lowK, highK } = offset;
  if (lowK !== null && highK !== null)
    return `${reads}; anything from ${signed(lowK, unit)} to ${signed(highK, unit)} would fit what was seen.`;
  if (lowK !== null) return `${reads}; what was seen asks for at least ${signed(lowK, unit)}.`;
  if (highK !== null) return `${reads}; what was seen asks for at most ${signed(highK, unit)}.`;
  return `${reads}.`;
}

function signed(deltaK: number, unit: TemperatureUnit): string {
  return `${deltaK < 0 ? "−" : "+"}${printDifference(Math.abs(deltaK), unit)}`;
}
