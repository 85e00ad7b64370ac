/** Advance widths of the letters from space to tilde in Source Sans 3 Regular [1/1000 em], read from the shipped font file. */
const ADVANCES = [
  200, 289, 426, 497, 497, 824, 609, 249, 303, 303, 418, 497, 249, 311, 249, 350, 497, 497, 497,
  497, 497, 497, 497, 497, 497, 497, 249, 249, 497, 497, 497, 425, 847, 543, 588, 571, 615, 527,
  494, 617, 652, 263, 479, 579, 486, 727, 647, 664, 566, 664, 569, 534, 536, 645, 515, 786, 513,
  476, 539, 303, 350, 303, 497, 500, 542, 504, 553, 456, 555, 496, 292, 504, 544, 246, 247, 495,
  255, 829, 547, 542, 555, 555, 347, 419, 338, 544, 467, 719, 446, 467, 425, 303, 241, 303, 497,
];

/** Any other letter [1/1000 em]: an accented vowel, a dash or a degree sign is no wider. */
const OTHER = 550;

/** Room for the semibold weight and for the wider fonts of the stack. */
const SPARE = 1.05;

/** Width of one line of text [px] at a font size [px], a little on the generous side. */
export function textWidth(text: string, fontSize: number): number {
  let thousandths = 0;
  for (const letter of text)
    thousandths += ADVANCES[(letter.codePointAt(0) as number) - 32] ?? OTHER;
  return (SPARE * thousandths * fontSize) / 1000;
}

/** A text cut to a width [px], with an ellipsis where it was cut. */
function cutToWidth(text: string, fontSize: number, width: number): string {
  if (textWidth(text, fontSize) <= width) return text;
  const letters = [...text];
  while (letters.length > 0 && textWidth(`${letters.join("")}…`, fontSize) > width) letters.pop();
  return `${letters.join("").trimEnd()}…`;
}

/** A text as at most so many lines of a width [px], broken at spaces; what is left over is cut. */
export function wrappedToWidth(
  text: string,
  fontSize: number,
  width: number,
  lines: number,
): readonly string[] {
  const words = text.split(" ");
  const wrapped: string[] = [];
  while (words.length > 0 && wrapped.length < lines - 1) {
    let line = words.shift() as string;
    while (words.length > 0 && textWidth(`${line} ${words[0]}`, fontSize) <= width)
      line += ` ${words.shift()}`;
    wrapped.push(cutToWidth(line, fontSize, width));
  }
  return words.length > 0 ? [...wrapped, cutToWidth(words.join(" "), fontSize, width)] : wrapped;
}
