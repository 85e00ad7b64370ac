import { failed, ok, type Problem, type Result } from "../problem.ts";

/** How the samples of a WAV file are laid down. */
export interface WaveFormat {
  readonly coding: "whole" | "float";
  /** Bytes of one sample of one channel. */
  readonly sampleBytes: number;
  readonly channels: number;
  readonly sampleRateHz: number;
}

const PCM = 1;
const FLOAT = 3;
const EXTENSIBLE = 0xfffe;

/** Codes of compressed sound, by the name that a person may meet; from memory. */
const COMPRESSED: Readonly<Record<number, string>> = {
  2: "ADPCM",
  6: "A-law",
  7: "mu-law",
  17: "IMA ADPCM",
  80: "MPEG",
  85: "MP3",
  255: "AAC",
};

/** Samples a second below which a file can hold no click worth finding [Hz]; our own choice. */
const LEAST_RATE_HZ = 4000;

/**
 * The format of a WAV file from the bytes of its `fmt ` chunk.
 *
 * @returns `sound/compressed`, `sound/bits`, `sound/format` or `sound/slow-sampling` when the samples cannot be used.
 */
export function waveFormat(chunk: Uint8Array, where: string): Result<WaveFormat> {
  if (chunk.length < 16) return failed(broken(where, "its description of the samples is cut off"));
  const view = new DataView(chunk.buffer, chunk.byteOffset, chunk.byteLength);
  const written = view.getUint16(0, true);
  const tag = written === EXTENSIBLE && chunk.length >= 26 ? view.getUint16(24, true) : written;
  const format = {
    coding: tag === FLOAT ? "float" : "whole",
    sampleBytes: Math.ceil(view.getUint16(14, true) / 8),
    channels: view.getUint16(2, true),
    sampleRateHz: view.getUint32(4, true),
  } as const;
  if (tag !== PCM && tag !== FLOAT) return failed(compressed(where, tag));
  const widths = tag === FLOAT ? [4, 8] : [1, 2, 3, 4];
  if (!widths.includes(format.sampleBytes))
    return failed(bits(where, format.sampleBytes * 8, widths));
  if (format.channels === 0 || format.sampleRateHz === 0)
    return failed(broken(where, "it claims no channel, or no samples in a second"));
  if (format.sampleRateHz < LEAST_RATE_HZ) return failed(slow(where, format.sampleRateHz));
  return ok(format);
}

function broken(where: string, what: string): Problem {
  return {
    code: "sound/format",
    where,
    what,
    expected: "a WAV file with channels and a sample rate",
    fix: 'open it in a sound editor and "save as uncompressed WAV"',
  };
}

function compressed(where: string, tag: number): Problem {
  const name = COMPRESSED[tag];
  return {
    code: "sound/compressed",
    where,
    what: `its samples are compressed (${name === undefined ? `code ${tag}` : `${name}, code ${tag}`})`,
    expected: "uncompressed samples: whole numbers of 8 to 32 bits, or floating point",
    fix: 'open it in a sound editor and "save as uncompressed WAV", 16 bits, one channel',
  };
}

function bits(where: string, found: number, widths: readonly number[]): Problem {
  return {
    code: "sound/bits",
    where,
    what: `its samples have ${found} bits`,
    expected: `${widths.map((bytes) => bytes * 8).join(", ")} bits`,
    fix: 'open it in a sound editor and "save as uncompressed WAV", 16 bits',
  };
}

function slow(where: string, rateHz: number): Problem {
  return {
    code: "sound/slow-sampling",
    where,
    what: `it holds ${rateHz} samples a second; the tone of a click lies above what these can carry`,
    expected: `at least ${LEAST_RATE_HZ} samples a second, better 44100`,
    fix: "record anew at 44.1 or 48 kHz; converting this file cannot bring the clicks back",
  };
}

/** Which channel of a recording is listened to; `mix` is the mean of all. */
export type SoundChannel = "left" | "right" | "mix";

/**
 * Samples of one channel from the bytes of whole frames, full scale as −1 to 1.
 * What is no number in a floating-point file is taken for 0.
 *
 * @throws RangeError when the bytes are no whole number of frames, or the channel is not there.
 */
export function samplesOf(
  bytes: Uint8Array,
  format: WaveFormat,
  channel: SoundChannel,
): Float64Array {
  const frameBytes = format.sampleBytes * format.channels;
  if (bytes.length % frameBytes !== 0)
    throw new RangeError(`samplesOf: ${bytes.length} bytes are no whole frames of ${frameBytes}`);
  if (channel === "right" && format.channels < 2) throw new RangeError("samplesOf: one channel");
  const sample = sampleReader(new DataView(bytes.buffer, bytes.byteOffset, bytes.length), format);
  const result = new Float64Array(bytes.length / frameBytes);
  const chosen =
    channel === "mix"
      ? Array.from({ length: format.channels }, (_, i) => i)
      : [channel === "right" ? 1 : 0];
  for (let i = 0; i < result.length; i++) {
    let sum = 0;
    for (const one of chosen) sum += sample(i * frameBytes + one * format.sampleBytes);
    result[i] = Number.isFinite(sum) ? sum / chosen.length : 0;
  }
  return result;
}

function sampleReader(view: DataView, { coding, sampleBytes }: WaveFormat): (at: number) => number {
  if (coding === "float")
    return sampleBytes === 4
      ? (at) => view.getFloat32(at, true)
      : (at) => view.getFloat64(at, true);
  switch (sampleBytes) {
    case 1:
      return (at) => (view.getUint8(at) - 128) / 128;
    case 2:
      return (at) => view.getInt16(at, true) / 32768;
    case 3:
      return (at) => ((view.getInt8(at + 2) << 16) | view.getUint16(at, true)) / 8388608;
    default:
      return (at) => view.getInt32(at, true) / 2147483648;
  }
}
