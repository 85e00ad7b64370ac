import { cautionsFor } from "../cautions/cautionsFor.ts";
import { ok, type Result } from "../problem.ts";
import type { Plane } from "./blurred.ts";
import { countedCracks } from "./countedCracks.ts";
import { crackLines } from "./crackLines.ts";
import { type CrackProfile, crackProfile } from "./crackWidth.ts";
import { flattened } from "./flattened.ts";
import type { PhotoChoice, PhotoInput, PhotoMeasurement } from "./PhotoMeasurement.ts";
import { photoFindings } from "./photoFindings.ts";
import { crackRefusal, groundRefusal, LEAST_WIDTH_PX, pictureRefusal } from "./photoProblems.ts";
import { reduced } from "./reduced.ts";

/** Background: standard deviation as a share of the shorter side, wider than a cell may be. */
const BACKGROUND_SHARE = 1 / 12;

/** Width that cracks are brought to by making the picture smaller [px]. */
const WORKING_WIDTH_PX = 5;

/**
 * The spacing of the cracks in a photograph of an inked tile: even out the light, find dark lines,
 * thin them, count crossings along test lines in all directions.
 *
 * @returns Problems `photo/…` where the picture cannot bear it; an uncracked tile is an answer.
 */
export function measurePhoto(input: PhotoInput): Result<PhotoMeasurement> {
  const { picture, wishes, name } = input;
  const unfit = pictureRefusal(picture, name);
  if (unfit) return unfit;
  const background =
    wishes.backgroundPx ?? Math.min(picture.width, picture.height) * BACKGROUND_SHARE;
  const flat = flattened(picture, background);
  const { profile: seen, unevenness } = crackProfile(flat);
  const profile = widthAsWished(seen, wishes.lineWidthPx);
  const choices: readonly PhotoChoice[] = [
    {
      what: "background",
      value: `${background.toFixed(0)} pixels`,
      because:
        wishes.backgroundPx === undefined
          ? "a twelfth of the shorter side, wider than a cell may be"
          : "as you said",
    },
  ];
  return measuredFlat(input, { flat, profile, unevenness, choices });
}

function widthAsWished(
  seen: CrackProfile | null,
  widthPx: number | undefined,
): CrackProfile | null {
  return seen === null || widthPx === undefined ? seen : { ...seen, width: widthPx };
}

interface Flat {
  readonly flat: Plane;
  readonly profile: CrackProfile | null;
  readonly unevenness: number;
  readonly choices: readonly PhotoChoice[];
}

function measuredFlat(
  input: PhotoInput,
  { flat, profile, unevenness, choices }: Flat,
): Result<PhotoMeasurement> {
  const { wishes, name, mmPerPx } = input;
  const tooThin = profile === null ? null : crackRefusal(profile, name);
  const searchWidth = Math.max(LEAST_WIDTH_PX, profile?.width ?? 0);
  const factor = Math.max(1, Math.floor(searchWidth / WORKING_WIDTH_PX));
  const found = crackLines(reduced(flat, factor), {
    width: searchWidth / factor,
    ...(wishes.thresholdShare !== undefined && { share: wishes.thresholdShare }),
  });
  const isCracked =
    profile !== null && found.length >= Math.min(flat.width, flat.height) / factor / 2;
  const unfit = isCracked ? tooThin : groundRefusal(unevenness, name);
  if (unfit) return unfit;
  const counted = isCracked ? countedCracks(input, { ...found, factor, profile }) : null;
  if (counted && !counted.ok) return counted;
  const result = {
    cracks: counted?.value.cracks ?? null,
    leastVisibleMm: found.leastVisibleWidth * factor * mmPerPx,
  };
  return ok({
    ...result,
    name,
    widthMm: input.picture.width * mmPerPx,
    heightMm: input.picture.height * mmPerPx,
    mmPerPx,
    scaleFrom: input.scaleFrom,
    choices: [
      ...choices,
      ...searchChoices({
        profile,
        factor,
        wishes,
        smoothings: found.smoothings,
        share: found.share,
      }),
      ...(counted?.value.choices ?? []),
    ],
    findings: photoFindings(result, input),
    cautions: result.cracks === null ? [] : cautionsFor({ crackle: true }),
    found: { lines: found.lines, factor, counted: counted?.value.counted ?? [] },
  });
}

function searchChoices(search: {
  readonly profile: CrackProfile | null;
  readonly factor: number;
  readonly wishes: PhotoInput["wishes"];
  readonly smoothings: readonly number[];
  readonly share: number;
}): readonly PhotoChoice[] {
  const { profile, factor, wishes, smoothings, share } = search;
  const pixels = (value: number) => (value * factor).toFixed(1);
  return [
    ...(profile === null
      ? []
      : [
          {
            what: "width of the cracks",
            value: `${profile.width.toFixed(1)} pixels`,
            because:
              wishes.lineWidthPx === undefined
                ? `measured square across them in ${profile.measured} places`
                : "as you said",
          },
        ]),
    ...(factor === 1
      ? []
      : [
          {
            what: "made smaller",
            value: `${factor} times`,
            because: "the cracks are wide enough to be followed so",
          },
        ]),
    {
      what: "smoothing",
      value: `${smoothings.map(pixels).join(", ")} pixels`,
      because:
        "0.29 of the width of the cracks, at which a dark bar has one ridge, and up to twice",
    },
    {
      what: "threshold",
      value: `${Math.round(100 * share)} % of the usual crack`,
      because:
        wishes.thresholdShare === undefined
          ? "and well above the noise of the ground"
          : "as you said",
    },
  ];
}
