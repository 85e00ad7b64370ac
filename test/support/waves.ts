/** How a made-up WAV file is laid down. */
export interface WaveShape {
  readonly sampleRateHz: number;
  readonly bits?: 8 | 16 | 24 | 32 | 64;
  readonly isFloat?: boolean;
  /** With the format's long description (WAVE_FORMAT_EXTENSIBLE). */
  readonly isExtensible?: boolean;
  /** With sizes over 4 GB in a chunk of their own (RF64). */
  readonly isLong?: boolean;
  /** Chunks between description and samples, which a reader must pass over. */
  readonly between?: readonly { readonly id: string; readonly bytes: Uint8Array }[];
  /** Format code instead of the true one. */
  readonly code?: number;
  /** Size of the samples that the file claims instead of the true one. */
  readonly claimedBytes?: number;
}

/** A WAV file of one channel or several, full scale −1 to 1; what lies outside is cut off. */
export function waveFile(channels: readonly Float64Array[], shape: WaveShape): Uint8Array {
  const { sampleRateHz, bits = 16, isFloat = false } = shape;
  const data = samplesAsBytes(channels, bits, isFloat);
  const size = shape.claimedBytes ?? data.length;
  const parts = [
    ...(shape.isLong
      ? [chunk("ds64", numbers([data.length + 100, 8], [data.length, 8], [0, 8], [0, 4]))]
      : []),
    chunk("fmt ", formatBytes(channels.length, sampleRateHz, { bits, isFloat, shape })),
    ...(shape.between ?? []).map(({ id, bytes }) => chunk(id, bytes)),
    latin("data"),
    numbers([shape.isLong ? 0xffffffff : size, 4]),
    data,
  ];
  const body = Buffer.concat(parts);
  return Buffer.concat([
    latin(shape.isLong ? "RF64" : "RIFF"),
    numbers([shape.isLong ? 0xffffffff : body.length + 4, 4]),
    latin("WAVE"),
    body,
  ]);
}

function formatBytes(
  channels: number,
  rateHz: number,
  { bits, isFloat, shape }: { bits: number; isFloat: boolean; shape: WaveShape },
): Uint8Array {
  const code = shape.code ?? (isFloat ? 3 : 1);
  const frame = (channels * bits) / 8;
  const plain = (tag: number) =>
    numbers([tag, 2], [channels, 2], [rateHz, 4], [rateHz * frame, 4], [frame, 2], [bits, 2]);
  if (!shape.isExtensible) return plain(code);
  // Size of what follows, bits in use, speakers, then the code again and the rest of its name.
  const rest = Uint8Array.from([0, 0, 0, 0, 16, 0, 128, 0, 0, 170, 0, 56, 155, 113]);
  return Buffer.concat([plain(0xfffe), numbers([22, 2], [bits, 2], [0, 4], [code, 2]), rest]);
}

function samplesAsBytes(channels: readonly Float64Array[], bits: number, isFloat: boolean): Buffer {
  const bytes = bits / 8;
  const count = channels[0]?.length ?? 0;
  const out = Buffer.alloc(count * channels.length * bytes);
  let at = 0;
  for (let i = 0; i < count; i++)
    for (const channel of channels) {
      const value = channel[i] as number;
      if (isFloat) bits === 32 ? out.writeFloatLE(value, at) : out.writeDoubleLE(value, at);
      else {
        const half = 2 ** (bits - 1);
        const whole = Math.max(-half, Math.min(half - 1, Math.round(value * half)));
        if (bits === 8) out.writeUInt8(whole + 128, at);
        else out.writeIntLE(whole, at, bytes);
      }
      at += bytes;
    }
  return out;
}

function chunk(id: string, bytes: Uint8Array): Buffer {
  const padding = Buffer.alloc(bytes.length % 2);
  return Buffer.concat([latin(id), numbers([bytes.length, 4]), bytes, padding]);
}

function latin(text: string): Buffer {
  return Buffer.from(text, "latin1");
}

function numbers(...pairs: readonly (readonly [value: number, bytes: number])[]): Buffer {
  return Buffer.concat(
    pairs.map(([value, bytes]) => {
      const out = Buffer.alloc(bytes);
      if (bytes === 8) out.writeBigUInt64LE(BigInt(value));
      else out.writeUIntLE(value, 0, bytes);
      return out;
    }),
  );
}
