/** A band of tones that is listened to by itself. */
export interface SoundBand {
  readonly lowHz: number;
  readonly highHz: number;
}

/** What is kept of short pieces of sound, one number a piece each. */
export interface SoundFrames {
  /** Length of a piece [s]. */
  readonly hopSeconds: number;
  readonly sampleRateHz: number;
  readonly bands: readonly SoundBand[];
  /** Mean square in each band, full scale 1. */
  readonly energies: readonly Float64Array[];
  /** Mean square of the steps from sample to sample in each band; with the energy it tells the tone. */
  readonly steps: readonly Float64Array[];
  /** Mean square below the bands, where hum and thuds are. */
  readonly low: Float64Array;
  /** Greatest absolute value above the hum. */
  readonly peaks: Float64Array;
  /** Samples at full scale in the sound as recorded. */
  readonly fullScale: Float64Array;
  /** Samples that are exactly 0. */
  readonly zeros: Float64Array;
}

/** Length of a piece [s]; our own choice: shorter than the attack of speech, longer than that of a click. */
const HOP_SECONDS = 0.002;

/** Lower edges of the bands [Hz], octaves above hum and the ground tones of speech; our own choice. */
const LOWER_EDGES_HZ = [700, 1400, 2800, 5600, 11200] as const;
const HIGHEST_HZ = 20_000;
const HUM_BELOW_HZ = 500;
const THUD_BELOW_HZ = 350;

/** Part of full scale that counts as full scale: the largest positive number of 8 bits is 0.992 of it. */
const FULL_SCALE = 0.99;

/** The bands that a sample rate can carry. */
function soundBands(sampleRateHz: number): readonly SoundBand[] {
  const most = Math.min(HIGHEST_HZ, 0.45 * sampleRateHz);
  return LOWER_EDGES_HZ.filter((edge) => edge * 1.25 < most).map((lowHz) => ({
    lowHz,
    highHz: Math.min(2 * lowHz, most),
  }));
}

/** Samples in a piece at a sample rate. */
export function hopSamples(sampleRateHz: number): number {
  return Math.max(1, Math.round(HOP_SECONDS * sampleRateHz));
}

/** Empty room for so many pieces. */
export function emptyFrames(sampleRateHz: number, count: number): SoundFrames {
  const bands = soundBands(sampleRateHz);
  return {
    hopSeconds: hopSamples(sampleRateHz) / sampleRateHz,
    sampleRateHz,
    bands,
    energies: bands.map(() => new Float64Array(count)),
    steps: bands.map(() => new Float64Array(count)),
    low: new Float64Array(count),
    peaks: new Float64Array(count),
    fullScale: new Float64Array(count),
    zeros: new Float64Array(count),
  };
}

/** Measures whole pieces of sound, one block after the other. */
export interface FrameMeter {
  /** Writes the pieces of a block from an index on; the block must be a whole number of pieces. */
  readonly measure: (block: Float64Array, into: SoundFrames, from: number) => void;
}

/** A meter for a sample rate, at the start of a recording. */
export function frameMeter(sampleRateHz: number): FrameMeter {
  const hop = hopSamples(sampleRateHz);
  const noHum = cutOff("below", HUM_BELOW_HZ, sampleRateHz);
  const onlyLow = cutOff("above", THUD_BELOW_HZ, sampleRateHz);
  const bands = soundBands(sampleRateHz).map(({ lowHz, highHz }) => ({
    filter: bandPass(lowHz, highHz, sampleRateHz),
    last: { value: 0 },
  }));
  return {
    measure(block, into, from) {
      if (block.length % hop !== 0)
        throw new RangeError(`frameMeter: ${block.length} samples are no whole pieces of ${hop}`);
      const work = new Float64Array(block.length);
      const clear = new Float64Array(block.length);
      countExtremes(block, hop, into, from);
      onlyLow[0].run(block, work);
      onlyLow[1].run(work, work);
      meanSquares(work, hop, into.low, from);
      noHum[0].run(block, clear);
      noHum[1].run(clear, clear);
      peaksOf(clear, hop, into.peaks, from);
      bands.forEach(({ filter, last }, b) => {
        filter.run(clear, work);
        meanSquares(work, hop, into.energies[b]!, from);
        const end = work[work.length - 1]!;
        toSteps(work, last.value);
        last.value = end;
        meanSquares(work, hop, into.steps[b]!, from);
      });
    },
  };
}

function countExtremes(block: Float64Array, hop: number, into: SoundFrames, from: number): void {
  for (let piece = 0; piece * hop < block.length; piece++) {
    let full = 0;
    let zero = 0;
    for (let i = piece * hop; i < (piece + 1) * hop; i++) {
      const value = block[i]!;
      if (value >= FULL_SCALE || value <= -FULL_SCALE) full++;
      if (value === 0) zero++;
    }
    into.fullScale[from + piece] = full;
    into.zeros[from + piece] = zero;
  }
}

function meanSquares(block: Float64Array, hop: number, into: Float64Array, from: number): void {
  for (let piece = 0; piece * hop < block.length; piece++) {
    let sum = 0;
    for (let i = piece * hop; i < (piece + 1) * hop; i++) sum += block[i]! ** 2;
    into[from + piece] = sum / hop;
  }
}

function peaksOf(block: Float64Array, hop: number, into: Float64Array, from: number): void {
  for (let piece = 0; piece * hop < block.length; piece++) {
    let most = 0;
    for (let i = piece * hop; i < (piece + 1) * hop; i++)
      most = Math.max(most, Math.abs(block[i]!));
    into[from + piece] = most;
  }
}

/** Turns values into the steps between them, in place. */
function toSteps(block: Float64Array, before: number): void {
  let previous = before;
  for (let i = 0; i < block.length; i++) {
    const value = block[i]!;
    block[i] = value - previous;
    previous = value;
  }
}

/** A filter of two poles and two zeros that remembers where it was. */
interface Biquad {
  /** Filters a block after those before it; input and output may be the same array. */
  readonly run: (input: Float64Array, output: Float64Array) => void;
}

/** A filter that lets a band through, its gain 1 in the geometric middle; edges in Hz. */
function bandPass(lowHz: number, highHz: number, sampleRateHz: number): Biquad {
  const { cosine, alpha } = angles(
    Math.sqrt(lowHz * highHz),
    Math.sqrt(lowHz * highHz) / (highHz - lowHz),
    sampleRateHz,
  );
  return biquad([alpha, 0, -alpha], [1 + alpha, -2 * cosine, 1 - alpha]);
}

/** Two filters in a row that together cut off below (or above) a frequency, 24 dB an octave, flat beside it. */
function cutOff(
  side: "below" | "above",
  cornerHz: number,
  sampleRateHz: number,
): readonly [Biquad, Biquad] {
  const make = (quality: number) => {
    const { cosine, alpha } = angles(cornerHz, quality, sampleRateHz);
    const edge = side === "below" ? (1 + cosine) / 2 : (1 - cosine) / 2;
    const middle = side === "below" ? -2 * edge : 2 * edge;
    return biquad([edge, middle, edge], [1 + alpha, -2 * cosine, 1 - alpha]);
  };
  // The two quality factors of a maximally flat filter of order four: 1/(2 cos 22.5°), 1/(2 cos 67.5°).
  return [make(0.5 / Math.cos(Math.PI / 8)), make(0.5 / Math.cos((3 * Math.PI) / 8))];
}

function angles(frequencyHz: number, quality: number, sampleRateHz: number) {
  const turn = (2 * Math.PI * frequencyHz) / sampleRateHz;
  return { cosine: Math.cos(turn), alpha: Math.sin(turn) / (2 * quality) };
}

type Three = readonly [number, number, number];

function biquad(zeros: Three, poles: Three): Biquad {
  const [b0, b1, b2] = zeros.map((value) => value / poles[0]) as unknown as Three;
  const [, a1, a2] = poles.map((value) => value / poles[0]) as unknown as Three;
  const state = new Float64Array(2);
  return {
    run(input, output) {
      let [s1, s2] = state as unknown as [number, number];
      for (let i = 0; i < input.length; i++) {
        const x = input[i]!;
        const y = b0 * x + s1;
        s1 = b1 * x - a1 * y + s2;
        s2 = b2 * x - a2 * y;
        output[i] = y;
      }
      // Numbers too small to be exact slow the machine down and mean nothing.
      state[0] = Math.abs(s1) < 1e-30 ? 0 : s1;
      state[1] = Math.abs(s2) < 1e-30 ? 0 : s2;
    },
  };
}
