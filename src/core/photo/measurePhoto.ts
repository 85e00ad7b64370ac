import { cautionsFor } from "../cautions/cautions.ts";
import { ok, type Result } from "../problem.ts";
import { countedCracks } from "./countedCracks.ts";
import { crackLines } from "./crackLines.ts";
import { type CrackProfile, crackProfile } from "./crackWidth.ts";
import { flattened } from "./flattened.ts";
import {
  type PhotoChoice,
  type PhotoInput,
  type PhotoMeasurement,
  type Plane,
  reduced,
} from "./PhotoMeasurement.ts";
import { photoFindings } from "./photoFindings.ts";
import { crackRefusal, groundRefusal, LEAST_WIDTH_PX, pictureRefusal } from "./photoProblems.ts";

/** Background: standard deviation as a share of the shorter side, wider than a cell may be. */
const BACKGROUND_SHARE = 1 / 12;

/** Width that cracks are brought to by making the picture smaller [px]. */
const WORKING_WIDTH_PX = 5;

/**
 * The spacing of the cracks in a photograph of an inked tile: even out the light, find dark lines,
 * thin them, count crossings along test lines in all directions.
 *
 * @param tell Is told how far it has come, 0–1, and what it is at.
 * @returns Problems `photo/…` where the picture cannot bear it; an uncracked tile is an answer.
 */
export function measurePhoto(
  input: PhotoInput,
  tell: (fraction: number, at: string) => void = () => {},
): Result<PhotoMeasurement> {
  const { picture, wishes, name } = input;
  const unfit = pictureRefusal(picture, name);
  if (unfit) return unfit;
  const background =
    wishes.backgroundPx ?? Math.min(picture.width, picture.height) * BACKGROUND_SHARE;
  tell(0, "evening out the light");
  const flat = flattened(picture, background);
  tell(0.3, "measuring the width of the cracks");
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
  return measuredFlat(input, { flat, profile, unevenness, choices, tell });
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
  readonly tell: (fraction: number, at: string) => void;
}

function measuredFlat(
  input: PhotoInput,
  { flat, profile, unevenness, choices, tell }: Flat,
): Result<PhotoMeasurement> {
  const { wishes, name, mmPerPx } = input;
  const tooThin = profile === null ? null : crackRefusal(profile, name);
  const searchWidth = Math.max(LEAST_WIDTH_PX, profile?.width ?? 0);
  const factor = Math.max(1, Math.floor(searchWidth / WORKING_WIDTH_PX));
  tell(0.4, "looking for cracks");
  const found = crackLines(reduced(flat, factor), {
    width: searchWidth / factor,
    ...(wishes.thresholdShare !== undefined && { share: wishes.thresholdShare }),
  });
  const isCracked =
    profile !== null && found.length >= Math.min(flat.width, flat.height) / factor / 2;
  const unfit = isCracked ? tooThin : groundRefusal(unevenness, name);
  if (unfit) return unfit;
  tell(0.8, "counting along lines");
  const counted = isCracked ? countedCracks(input, { ...found, factor, profile }) : null;
  if (counted && !counted.ok) return counted;
  const result = {
    corrected: null,
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
    found: {
      lines: found.lines,
      factor,
      counted: counted?.value.counted ?? [],
      margin: counted?.value.margin ?? 0,
      mergePx: counted?.value.mergePx ?? 0,
    },
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
