/** Below this many values sorting is as quick. */
const FEW = 64;
/** Halvings after which the rest is sorted: values may be laid out so that halving gains nothing. */
const MOST_ROUNDS = 100;

/**
 * The value that would stand at a place if the values were sorted; puts them in another order,
 * in which none before that place is greater and none after it is less.
 * By halving about a middle one (Hoare 1961), so in a time that grows as the number of values.
 * @param values Without NaN, and with more values than the place.
 */
export function selected(values: Float64Array, place: number): number {
  let from = 0;
  let to = values.length - 1;
  for (let round = 0; to - from > FEW && round < MOST_ROUNDS; round++) {
    const pivot = middleOfThree(values, from, to);
    let low = from;
    let high = to;
    while (low <= high) {
      while (values[low]! < pivot) low++;
      while (values[high]! > pivot) high--;
      if (low > high) break;
      const moved = values[low]!;
      values[low++] = values[high]!;
      values[high--] = moved;
    }
    if (place <= high) to = high;
    else if (place >= low) from = low;
    else return pivot;
  }
  return values.subarray(from, to + 1).sort()[place - from] as number;
}

function middleOfThree(values: Float64Array, from: number, to: number): number {
  const a = values[from]!;
  const b = values[(from + to) >> 1]!;
  const c = values[to]!;
  return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
}
