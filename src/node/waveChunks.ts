import type { ByteSource } from "./byteSource.ts";

/** Where the samples of a WAV file lie, and how they are described. */
export interface WaveChunks {
  /** Bytes of the `fmt ` chunk; null when there is none before the samples. */
  readonly format: Uint8Array | null;
  /** First byte of the samples, and how many there are; null when there are none. */
  readonly data: {
    readonly from: number;
    readonly bytes: number;
    /** Bytes that the file claims and does not hold; 0 when whole, null when it never said how many. */
    readonly missing: number | null;
  } | null;
}

/** Size that stands where the true one does not fit, or was never filled in. */
const NO_SIZE = 0xffffffff;

/** A description of samples is far smaller; what claims more is broken. */
const LARGEST_FORMAT = 1024;

/**
 * Walks the chunks of a WAV file until the samples: `ds64` gives sizes over 4 GB (RF64), what is
 * neither description nor samples (LIST, bext, fact, JUNK) is passed over.
 */
export async function waveChunks(source: ByteSource): Promise<WaveChunks> {
  let format: Uint8Array | null = null;
  let longSize: number | null = null;
  let at = 12;
  while (at + 8 <= source.size) {
    const head = await source.read(at, 8);
    const id = new TextDecoder("latin1").decode(head.subarray(0, 4));
    const size = new DataView(head.buffer, head.byteOffset, 8).getUint32(4, true);
    const body = at + 8;
    if (id === "data") return { format, data: dataAt(source, body, { size, longSize }) };
    if (id === "fmt ")
      format = Uint8Array.from(await source.read(body, Math.min(size, LARGEST_FORMAT)));
    if (id === "ds64") longSize = await longDataSize(source, body);
    at = body + size + (size % 2);
  }
  return { format, data: null };
}

function dataAt(
  source: ByteSource,
  from: number,
  { size, longSize }: { readonly size: number; readonly longSize: number | null },
): WaveChunks["data"] {
  const there = source.size - from;
  const claimed = size === NO_SIZE && longSize !== null ? longSize : size;
  // A recorder that was cut off never went back to write the size.
  if (claimed === 0 || claimed === NO_SIZE) return { from, bytes: there, missing: null };
  return { from, bytes: Math.min(claimed, there), missing: Math.max(0, claimed - there) };
}

async function longDataSize(source: ByteSource, at: number): Promise<number | null> {
  const bytes = await source.read(at, 16);
  if (bytes.length < 16) return null;
  return Number(new DataView(bytes.buffer, bytes.byteOffset, 16).getBigUint64(8, true));
}
