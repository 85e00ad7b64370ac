import type { Stamp } from "./stamp.ts";

/** All of a written time but its seconds; thousands of rows share one. */
export type StampForm = Omit<Stamp, "seconds">;

/** The written times of a column. */
export interface Stamps {
  /** Seconds after midnight, or elapsed; NaN without a time [s]. */
  readonly seconds: Float64Array;
  /** Place of each row's form in `forms`; −1 where the cell holds no time. */
  readonly formOf: Int32Array;
  /** The different forms, as they first come. */
  readonly forms: readonly StampForm[];
}

/** The stamps of a column that is not written times. */
export const NO_STAMPS: Stamps = {
  seconds: new Float64Array(0),
  formOf: new Int32Array(0),
  forms: [],
};

/** A row's written time as one object; null where there is none. */
export function stampAt(stamps: Stamps, row: number): Stamp | null {
  const form = stamps.forms[stamps.formOf[row] ?? -1];
  return form === undefined ? null : { ...form, seconds: stamps.seconds[row] as number };
}

/** The first written time of a column; null when there is none. */
export function firstStamp(stamps: Stamps): Stamp | null {
  return stampAt(
    stamps,
    stamps.formOf.findIndex((form) => form >= 0),
  );
}

/** Share of all rows whose written time has a form with a property; 0 of no rows. */
export function formShare(stamps: Stamps, test: (form: StampForm) => boolean): number {
  const met = stamps.forms.map(test);
  const { formOf } = stamps;
  let count = 0;
  for (let row = 0; row < formOf.length; row++) if (met[formOf[row] as number] === true) count++;
  return count / Math.max(1, formOf.length);
}

/** Finds the number of a form, giving new forms the next one. */
export interface StampForms {
  readonly forms: readonly StampForm[];
  readonly numberOf: (form: StampForm) => number;
}

/** An empty collection of forms. */
export function stampForms(): StampForms {
  const forms: StampForm[] = [];
  const numbers = new Map<string, number>();
  return {
    forms,
    numberOf: (form) => {
      const key = keyOf(form);
      const known = numbers.get(key);
      if (known !== undefined) return known;
      numbers.set(key, forms.length);
      return forms.push(form) - 1;
    },
  };
}

function keyOf(form: StampForm): string {
  const date = [form.first, form.second, form.third].join("/");
  const clock = [form.clockFields, form.half, form.offsetMinutes, form.isSpan].join("/");
  return `${date} ${form.order} ${form.separator} ${clock}`;
}
