/** Rows in one block; a power of two. */
const BLOCK_ROWS = 8_192;

/** A row's place in its block is its number and this. */
export const SLOT_MASK = BLOCK_ROWS - 1;

/** The kinds of array that grow. */
type Values = Float64Array | Int32Array;

/** Values of one column that grow by blocks, so that no value is copied while they come. */
export interface Growing<A extends Values> {
  /** The block being filled; written by whoever has the row. */
  block: A;
  readonly full: A[];
  readonly make: (length: number) => A;
}

/** An empty column of floating-point numbers. */
export function growingFloats(): Growing<Float64Array> {
  const make = (length: number) => new Float64Array(length);
  return { block: make(BLOCK_ROWS), full: [], make };
}

/** An empty column of whole numbers. */
export function growingInts(): Growing<Int32Array> {
  const make = (length: number) => new Int32Array(length);
  return { block: make(BLOCK_ROWS), full: [], make };
}

/** Puts the full block away and begins the next. */
export function nextBlock<A extends Values>(values: Growing<A>): void {
  values.full.push(values.block);
  values.block = values.make(BLOCK_ROWS);
}

/** All values in one array; the blocks are let go of. */
export function gathered<A extends Values>(values: Growing<A>, count: number): A {
  if (values.full.length === 0) return values.block.subarray(0, count) as A;
  const all = values.make(count);
  let at = 0;
  for (const block of values.full.splice(0)) {
    all.set(block, at);
    at += block.length;
  }
  all.set(values.block.subarray(0, count - at), at);
  values.block = values.make(0);
  return all;
}
