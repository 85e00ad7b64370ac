/** A filter of two poles and two zeros that remembers where it was. */
export interface Biquad {
  /** Filters a block after those before it; input and output may be the same array. */
  readonly run: (input: Float64Array, output: Float64Array) => void;
}

/** A filter that lets a band through, its gain 1 in the geometric middle; edges in Hz. */
export function bandPass(lowHz: number, highHz: number, sampleRateHz: number): Biquad {
  const { cosine, alpha } = angles(
    Math.sqrt(lowHz * highHz),
    Math.sqrt(lowHz * highHz) / (highHz - lowHz),
    sampleRateHz,
  );
  return biquad([alpha, 0, -alpha], [1 + alpha, -2 * cosine, 1 - alpha]);
}

/** Two filters in a row that together cut off below (or above) a frequency, 24 dB an octave, flat beside it. */
export function cutOff(
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
        const x = input[i] as number;
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
