import type { Finding } from "../findings/Finding.ts";
import { basedOn } from "../sources/bibliography.ts";
import type {
  CorrectedCount,
  CountedCracks,
  PhotoInput,
  PhotoMeasurement,
} from "./PhotoMeasurement.ts";
import { correctedWords, lengthFigure } from "./trialEntry.ts";

/** Relative accuracy to aim at. */
const AIM = 0.1;
/** Disagreement of two counts that is worth a look; own judgement. */
const DISAGREEMENT = 0.1;
/** Share of cracks hidden behind a neighbour that is worth saying; own judgement. */
const MANY_HIDDEN = 0.03;

/** What has to be said about a measurement from a photograph, worst first. */
export function photoFindings(
  result: Pick<PhotoMeasurement, "cracks" | "leastVisibleMm" | "corrected">,
  input: Pick<PhotoInput, "isWhole" | "isSquared" | "isOnPage">,
): readonly Finding[] {
  const { cracks, corrected } = result;
  const isOnPage = input.isOnPage === true;
  return [
    ...(corrected === null ? [] : [correctedByHand(corrected)]),
    ...(cracks === null ? [noCracks(result.leastVisibleMm)] : crackFindings(cracks)),
    ...(input.isWhole ? [whole(isOnPage)] : []),
    ...(input.isSquared ? [] : [slant(isOnPage)]),
  ];
}

function correctedByHand(corrected: CorrectedCount): Finding {
  const { lost } = corrected;
  const meets = lost === 1 ? "correction meets" : "corrections meet";
  return note({
    topic: "corrected by hand",
    severity: lost > 0 ? "caution" : "note",
    statement: `The count was corrected: ${correctedWords(corrected)}${lost > 0 ? `; ${lost} ${meets} no crossing any more and change${lost === 1 ? "s" : ""} nothing` : ""}`,
    basis: "what you saw in the picture, on the same test lines",
  });
}

function crackFindings(cracks: CountedCracks): readonly Finding[] {
  return [
    ...countFindings(cracks),
    ...(cracks.relativeAccuracy > AIM ? [accuracy(cracks)] : []),
    ...(cracks.hiddenShare > MANY_HIDDEN ? [hidden(cracks)] : []),
    ...(cracks.direction?.isDirectional ? [directional(cracks.direction)] : []),
  ];
}

function note(finding: Pick<Finding, "topic" | "statement"> & Partial<Finding>): Finding {
  const { statement, advice = "", ...rest } = finding;
  return {
    severity: "note",
    evidence: [],
    basis: "",
    zone: null,
    span: null,
    ...rest,
    statement: `${statement}.`,
    advice: advice === "" ? "" : `${advice}.`,
  };
}

function noCracks(leastVisibleMm: number): Finding {
  return note({
    topic: "no cracks",
    statement: `No line in the picture stands out from its noise. An inked crack, half as bright as the glaze, would have been seen from about ${lengthFigure(leastVisibleMm)} mm of width; the width holds good to a factor of two either way`,
    basis: "the noise of the picture itself; half as bright is our assumption",
    advice:
      "Count it as uncracked only if ink was rubbed in; look again after some weeks, for cracks can come late",
  });
}

function countFindings({ checkLines }: CountedCracks): readonly Finding[] {
  const asked = checkLines.flatMap(({ ownCount, crossings }) =>
    ownCount === null ? [] : [{ own: ownCount, ours: crossings.places.length }],
  );
  if (asked.length === 0) return [];
  const total = (which: "own" | "ours") => asked.reduce((sum, each) => sum + each[which], 0);
  const apart = asked.reduce((sum, { own, ours }) => sum + Math.abs(own - ours), 0);
  const isFar = apart > DISAGREEMENT * total("ours");
  return [
    note({
      topic: "your own count",
      severity: isFar ? "caution" : "note",
      statement: `Along lines A and B you counted ${total("own")} cracks, this count has ${total("ours")}; line by line you differ by ${apart}`,
      basis: "two counts of the same two lines",
      advice: isFar
        ? "Look at the picture with the lines drawn in: what you see counts. Faint cracks that were missed need a lower --threshold, false ones a higher"
        : "",
    }),
  ];
}

function accuracy({ relativeAccuracy }: CountedCracks): Finding {
  return note({
    topic: "accuracy",
    statement: `The spacing is known to ± ${Math.round(100 * relativeAccuracy)} %; the usual aim is 10 %`,
    basis: basedOn("relative accuracy of at most 10 % as the usual aim", "astm-e112"),
    advice: "Photograph a larger part of the tile, or several tiles of one trial",
  });
}

function hidden({ hiddenShare }: CountedCracks): Finding {
  const share = `about ${Math.round(100 * hiddenShare)} %`;
  return note({
    topic: "cracks close together",
    severity: hiddenShare > AIM ? "caution" : "note",
    statement: `Cracks nearer to each other than two of their widths count as one. Judging by the pairs a little farther apart, ${share} of the cracks are hidden so; the spacing allows for them`,
    basis:
      "as many pairs are taken to lie nearer than two widths as between two and four, give or take half",
    advice: "A nearer photograph, and less ink, tell close cracks apart",
  });
}

function directional(direction: NonNullable<CountedCracks["direction"]>): Finding {
  return note({
    topic: "direction",
    statement: `The cracks run one way more than the other: along a line at ${direction.alongDeg}° from the level, clockwise, one meets a crack every ${lengthFigure(direction.alongMm)} mm, square to it every ${lengthFigure(direction.acrossMm)} mm, ${direction.ratio.toFixed(1)} times as often`,
    basis: "counts in each direction, against their scatter between strips of the picture",
    advice: "Compare it only with tiles that lay and were glazed the same way",
  });
}

function whole(isOnPage: boolean): Finding {
  return note({
    topic: "the whole picture",
    statement:
      "The whole picture was measured: a ruler, writing or the edge of the tile in it is counted as cracks",
    basis: "no part of it was picked out",
    advice: isOnPage
      ? "Where it shows more than glaze, move the corners of the part to measure onto the glaze"
      : "Where it shows more than glaze, pick out the glaze with --crop",
  });
}

function slant(isOnPage: boolean): Finding {
  return note({
    topic: "slant",
    statement:
      "Nothing says whether the camera looked straight down. A slant of 10 degrees shortens one direction by 1.5 %, one of 20 degrees by 6 %",
    basis: "the cosine of the angle",
    advice: isOnPage
      ? "Hold the camera straight above the tile, its back level with the glaze; where it was not, photograph the tile again"
      : "Give --corners with the four corners of the tile, and its size, to take the slant out",
  });
}
