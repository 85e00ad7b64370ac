/** Beginnings of month names in the languages that loggers and spreadsheets are set to. */
const MONTHS: readonly (readonly string[])[] = [
  ["jan", "ene", "gen", "janv"],
  ["feb", "fev"],
  ["mar", "mrz", "maa", "mrt"],
  ["apr", "avr", "abr"],
  ["may", "mai", "mei", "mag", "maj"],
  ["jun", "juin", "giu"],
  ["jul", "juil", "lug"],
  ["aug", "aou", "ago"],
  ["sep", "set"],
  ["oct", "okt", "ott", "out"],
  ["nov"],
  ["dec", "dez", "dic"],
];

/** Month 1…12 of a name or its beginning, in several languages; 0 when it is none. */
export function monthOf(name: string): number {
  const plain = name
    .normalize("NFD")
    .replace(/[^a-zA-Z]/g, "")
    .toLowerCase();
  const at = MONTHS.findIndex((starts) => starts.some((start) => plain.startsWith(start)));
  return at + 1;
}
