/** Beginnings of month names in the languages that loggers and spreadsheets are set to. */
const MONTHS: readonly (readonly string[])[] = [
  ["jan", "ene", "gen", "janv", "sty", "tammi"],
  ["feb", "fev", "lut", "helmi"],
  ["mar", "mrz", "maa", "mrt"],
  ["apr", "avr", "abr", "kwi", "huhti"],
  ["may", "mai", "mei", "mag", "maj", "touko"],
  ["jun", "juin", "giu", "cze", "kesa"],
  ["jul", "juil", "lug", "lip", "heina"],
  ["aug", "aou", "ago", "sie", "elo"],
  ["sep", "set", "wrz", "syys"],
  ["oct", "okt", "ott", "out", "paz", "loka"],
  ["nov", "lis", "marras"],
  ["dec", "dez", "dic", "gru", "joulu"],
];

/** Month 1…12 of a name or its beginning, in several languages; 0 when it is none. */
export function monthOf(name: string): number {
  const plain = name
    .normalize("NFD")
    .replace(/[^a-zA-Z]/g, "")
    .toLowerCase();
  let month = 0;
  let longest = 0;
  // The longest beginning counts: `marraskuu` is the Finnish November, and begins as March does elsewhere.
  MONTHS.forEach((starts, at) => {
    for (const start of starts)
      if (start.length > longest && plain.startsWith(start)) {
        month = at + 1;
        longest = start.length;
      }
  });
  return month;
}
