import { basename } from "node:path";
import { type Listening, listener } from "../core/pings/listener.ts";
import type { PingSettings } from "../core/pings/Ping.ts";
import type { SoundFacts } from "../core/pings/PingReview.ts";
import { soundKind, soundProblems } from "../core/pings/soundProblems.ts";
import {
  type SoundChannel,
  samplesOf,
  type WaveFormat,
  waveFormat,
} from "../core/pings/waveFormat.ts";
import { failed, ok, type Problem, type Result } from "../core/problem.ts";
import { printDuration } from "../core/text/quantities.ts";
import { type ByteSource, byteSource, type WaveChunks, waveChunks } from "./readInput.ts";

/** A recording as it was read and heard. */
export interface HeardSound {
  readonly sound: SoundFacts;
  readonly heard: Listening;
}

/** What a person decides about a recording. */
export interface SoundOptions {
  readonly channel: SoundChannel | null;
  readonly settings: PingSettings;
  /** Told now and then how far the listening is [s of s]. */
  readonly progress?: (seconds: number, whole: number) => void;
}

/** Samples that are read at a time, all channels counted: about a megabyte. */
const BLOCK_BYTES = 2 ** 20;

/** Progress is told after each such part of a recording [s]. */
const PROGRESS_SECONDS = 3600;

/** Samples in floating point have no rounding to speak of; this keeps logarithms finite. */
const FLOAT_LEAST_ENERGY = 1e-12;

/**
 * Reads a WAV recording by its content and listens to it, block by block, so that a day of sound
 * needs no more memory than a minute.
 *
 * @returns `sound/…` when it is no WAV, is compressed, has channels that differ, is silent, too
 * short or overdriven; `file/…` when it cannot be opened.
 */
export async function readSound(path: string, options: SoundOptions): Promise<Result<HeardSound>> {
  const source = await byteSource(path);
  if (!source.ok) return source;
  const name = path === "-" ? "standard input" : basename(path);
  try {
    const start = await source.value.read(0, 12);
    const kind = soundKind(start);
    if (kind.kind !== "wav")
      return failed(notWav(name, kind.kind === "other" ? kind.name : null, source.value.size));
    return await listenTo(source.value, name, options);
  } finally {
    await source.value.close();
  }
}

async function listenTo(
  source: ByteSource,
  name: string,
  options: SoundOptions,
): Promise<Result<HeardSound>> {
  const chunks = await waveChunks(source);
  if (chunks.format === null || chunks.data === null) return failed(noSamples(name, chunks));
  const format = waveFormat(chunks.format, name);
  if (!format.ok) return format;
  const data: SoundData = { source, ...chunks.data, format: format.value };
  const channel = await chosenChannel(data, { asked: options.channel, where: name });
  if (!channel.ok) return channel;
  const heard = await heardBlocks(data, channel.value.channel, options);
  const problems = soundProblems(heard, name);
  if (problems.length > 0) return failed(...problems);
  return ok({
    sound: {
      name,
      format: formatWords(format.value),
      notes: [...missingNotes(chunks.data, format.value), ...channel.value.notes],
    },
    heard,
  });
}

async function heardBlocks(
  { source, from, bytes, format }: SoundData,
  channel: SoundChannel,
  { settings, progress }: SoundOptions,
): Promise<Listening> {
  const ear = listener({
    sampleRateHz: format.sampleRateHz,
    leastEnergy:
      format.coding === "float" ? FLOAT_LEAST_ENERGY : 4 ** (1 - 8 * format.sampleBytes) / 12,
    settings,
  });
  const frameBytes = format.sampleBytes * format.channels;
  const block = frameBytes * Math.max(1, Math.floor(BLOCK_BYTES / frameBytes));
  const bytesInPart = PROGRESS_SECONDS * format.sampleRateHz * frameBytes;
  for (let at = 0; at + frameBytes <= bytes; at += block) {
    const wanted = Math.floor(Math.min(block, bytes - at) / frameBytes) * frameBytes;
    const got = await source.read(from + at, wanted);
    ear.push(samplesOf(got.subarray(0, got.length - (got.length % frameBytes)), format, channel));
    if (Math.floor((at + block) / bytesInPart) > Math.floor(at / bytesInPart))
      progress?.(
        (at + block) / (bytesInPart / PROGRESS_SECONDS),
        bytes / (bytesInPart / PROGRESS_SECONDS),
      );
    if (got.length < wanted) break;
  }
  return ear.finish();
}

function formatWords({ coding, sampleBytes, channels, sampleRateHz }: WaveFormat): string {
  const samples = `${sampleBytes * 8}-bit ${coding === "float" ? "floating point" : "whole numbers"}`;
  return `${samples}, ${channels === 1 ? "one channel" : `${channels} channels`}, ${sampleRateHz} samples a second`;
}

function missingNotes(
  { missing }: NonNullable<WaveChunks["data"]>,
  { sampleBytes, channels, sampleRateHz }: WaveFormat,
): readonly string[] {
  if (missing === null)
    return [
      "the file never says how long it is, as when a recorder is cut off: all that is there was heard",
    ];
  if (missing === 0) return [];
  const seconds = missing / (sampleBytes * channels * sampleRateHz);
  return [
    `the file is cut short: it claims ${printDuration(seconds)} more than it holds; what is there was heard`,
  ];
}

function notWav(where: string, name: string | null, bytes: number): Problem {
  return {
    code: "sound/not-wav",
    where,
    what:
      name !== null
        ? `it is ${name}`
        : bytes === 0
          ? "it is empty"
          : "its first bytes are those of no sound file that is known here",
    expected: "a WAV recording (RIFF or RF64), whatever the file is called",
    fix: 'open it in a sound editor and "save as uncompressed WAV", 16 bits, one channel',
  };
}

function noSamples(where: string, { format }: WaveChunks): Problem {
  return {
    code: "sound/no-samples",
    where,
    what:
      format === null
        ? "nothing in it describes its samples before they begin"
        : "it holds no samples",
    expected: "a WAV file with a description (fmt) and samples (data)",
    fix: "copy it from the recorder again; what was cut off while copying is lost",
  };
}

/** Samples of a recording where they lie. */
interface SoundData {
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
async function chosenChannel(
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
      const [l, r] = [left[i]!, right[i]!];
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
