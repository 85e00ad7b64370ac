/** Something that can hurt, said once, at the place where it matters. */
export interface Caution {
  /** What it is about: `kiln`, `opening`, `fumes`, `dust`, `crackle and food`, `attendance`. */
  readonly topic: string;
  readonly text: string;
}
