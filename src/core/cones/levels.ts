/** The different readings of a Curve: far fewer than readings, since an instrument shows steps. */
export interface Levels {
  /** Number of each reading's level. */
  readonly levelOf: Int32Array;
  /** Temperature of each level [°C]. */
  readonly tempsC: Float64Array;
}

/** With fewer readings nothing is won. */
const FEWEST_READINGS = 2000;
/** Readings to each level from which it is worth to look a level up. */
const LEAST_SHARE = 4;
/** Places of the table of levels; a power of two. */
const PLACES = 1 << 17;

const NUMBER = new Float64Array(1);
const HALVES = new Int32Array(NUMBER.buffer);

/** The levels of readings, or null when nearly every reading is another one. */
export function levelsOf(tempsC: Float64Array): Levels | null {
  const most = Math.min(PLACES / 2, Math.floor(tempsC.length / LEAST_SHARE));
  if (tempsC.length < FEWEST_READINGS) return null;
  const levelOf = new Int32Array(tempsC.length);
  const levels = new Float64Array(most);
  const table = new Int32Array(PLACES).fill(-1);
  let count = 0;
  for (let i = 0; i < tempsC.length; i++) {
    const tempC = tempsC[i] as number;
    let place = placeOf(tempC);
    while ((table[place] as number) >= 0 && levels[table[place] as number] !== tempC)
      place = (place + 1) & (PLACES - 1);
    if ((table[place] as number) < 0) {
      if (count === most) return null;
      table[place] = count;
      levels[count++] = tempC;
    }
    levelOf[i] = table[place] as number;
  }
  return { levelOf, tempsC: levels.subarray(0, count) };
}

/** Where a level is looked for first; the same for 0 and −0. */
function placeOf(tempC: number): number {
  NUMBER[0] = tempC + 0;
  const mixed = Math.imul((HALVES[0] as number) ^ (HALVES[1] as number), 0x9e37_79b1);
  return (mixed >>> 15) & (PLACES - 1);
}
