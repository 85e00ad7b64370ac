import { type SoundChannel, samplesOf } from "../core/pings/samplesOf.ts";
import type { WaveFormat } from "../core/pings/waveFormat.ts";
import { failed, ok, type Problem, type Result } from "../core/problem.ts";
import type { ByteSource } from "./byteSource.ts";

/** Samples of a recording where they lie. */
export interface SoundData {
  readonly source: ByteSource;
  readonly from: number;
  readonly bytes: number;
  readonly format: WaveFormat;
}

/** Pieces that are compared, spread over the whole, and their length [s]. */
const PIECES = 40;
const PIECE_SECONDS = 0.5;

/** Channels differ from this part of their loudness on; our own choice. */
const SAME_SHARE = 0.01;

/** A channel is dead below this part of the other. */
const DEAD_SHARE = 0.001;

/**
 * The channel to listen to: the one asked for, the only one, either of two that are the same, or
 * the one of two that is not dead. Otherwise a person has to choose.
 *
 * @returns `sound/channels` or `sound/no-such-channel`.
 */
export async function chosenChannel(
  data: SoundData,
  { asked, where }: { readonly asked: SoundChannel | null; readonly where: string },
): Promise<Result<{ readonly channel: SoundChannel; readonly notes: readonly string[] }>> {
  const { channels } = data.format;
  if (asked === "right" && channels < 2)
    return failed({
      code: "sound/no-such-channel",
      where,
      what: "it has one channel only",
      expected: "--channel left or mix, or none at all",
      fix: "leave --channel out",
    });
  if (asked !== null)
    return ok({ channel: asked, notes: channels < 2 ? [] : [`listened to: ${asked}`] });
  if (channels === 1) return ok({ channel: "left", notes: [] });
  if (channels > 2) return failed(choose(where, `it has ${channels} channels`));
  const { left, right, difference } = await loudnessOf(data);
  const most = Math.max(left, right);
  if (difference <= SAME_SHARE * most)
    return ok({ channel: "left", notes: ["both channels are the same; the left one was heard"] });
  if (right <= DEAD_SHARE * most)
    return ok({ channel: "left", notes: ["the right channel is dead; the left one was heard"] });
  if (left <= DEAD_SHARE * most)
    return ok({ channel: "right", notes: ["the left channel is dead; the right one was heard"] });
  const ratio = 20 * Math.log10(left / right);
  return failed(
    choose(
      where,
      `its two channels differ; the left one is ${Math.abs(ratio).toFixed(0)} dB ${ratio < 0 ? "quieter" : "louder"}`,
    ),
  );
}

function choose(where: string, what: string): Problem {
  return {
    code: "sound/channels",
    where,
    what,
    expected: "one channel to listen to: --channel left, right or mix (the mean of all)",
    fix: "--channel left, or the one whose microphone was nearer; mix when both heard the same",
  };
}

/** Root mean squares over pieces spread over the recording. */
async function loudnessOf({ source, from, bytes, format }: SoundData) {
  const frameBytes = format.sampleBytes * format.channels;
  const frames = Math.floor(bytes / frameBytes);
  const piece = Math.min(frames, Math.ceil(PIECE_SECONDS * format.sampleRateHz));
  const sums = { left: 0, right: 0, difference: 0 };
  for (let k = 0; k < PIECES; k++) {
    const first = Math.floor(((frames - piece) * k) / (PIECES - 1));
    const got = await source.read(from + first * frameBytes, piece * frameBytes);
    const whole = got.subarray(0, got.length - (got.length % frameBytes));
    const left = samplesOf(whole, format, "left");
    const right = samplesOf(whole, format, "right");
    for (let i = 0; i < left.length; i++) {
      const [l, r] = [left[i] as number, right[i] as number];
      sums.left += l * l;
      sums.right += r * r;
      sums.difference += (l - r) ** 2;
    }
  }
  return {
    left: Math.sqrt(sums.left),
    right: Math.sqrt(sums.right),
    difference: Math.sqrt(sums.difference),
  };
}
