import type { WaveFormat } from "./waveFormat.ts";

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
