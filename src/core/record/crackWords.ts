import type { FoundOnWare } from "./FiringRecord.ts";

/** What words say of a crack; null where they say nothing of it. */
export type CrackWords = Omit<FoundOnWare, "piece" | "note">;

/** A kind of fault that a record can name, and the words by which people call it. */
type Named = readonly [what: NonNullable<FoundOnWare["what"]>, words: RegExp];

/** Most telling first: the first that a text holds is what it speaks of. */
const WHAT: readonly Named[] = [
  [
    "S-crack",
    /\bs[- ]?(?:shaped? )?(?:crack|split)|crack\w* (?:in|like) an? ['"]?s\b|\bs[- ]shaped?\b/i,
  ],
  ["shivering", /shiver|\bflak\w+|peel\w*|popp?(?:ed|ing|s) (?:right )?off|slivers?\b/i],
  [
    "drying crack",
    /\bdr(?:y|ied|ying)[- ]crack|crack\w* (?:\w+ )?(?:in|while|when|during|on|from|as it) (?:it )?dr(?:y|ied|ying)|crack\w* (?:\w+ ){0,3}(?:bone[- ]dry|greenware|leather[- ]hard)/i,
  ],
  [
    "bisque crack",
    /\b(?:bisqu?e?|biscuit)(?:[- ]?fir\w+)?[- ]crack|crack\w* (?:\w+ ){0,4}(?:bisqu?e|bisqu?ed|biscuit)\b|(?:bisqu?e|biscuit) (?:\w+ ){0,3}(?:already |was |were )?crack/i,
  ],
  ["burst", /\bburst|explo\w+|bl(?:ew|own) (?:up|apart|out)|blow[- ]?out/i],
  ["dunt", /\bdunt/i],
  ["crazing", /\bcraz/i],
  ["crackle", /\bcrackl|\bcraquel/i],
  [
    "through-crack",
    /through[- ]?(?:the[- ]wall[- ])?crack|crack\w* (?:\w+ ){0,3}(?:right |all the way |clean )?through|\bsplit|\bshatter|\bbr(?:oke|oken)\b|\bin (?:two|half|halves|pieces|bits)\b|fell apart|came apart/i,
  ],
  ["chip", /\bchip/i],
  ["pinhole", /\bpin-?hol/i],
  ["blister", /\bblister/i],
  ["crawling", /\bcrawl/i],
  ["crack", /\bcrack(?!l)|\bhairline|\bfissure/i],
];

const EDGES = [
  [
    "rounded under glaze",
    /round(?:ed)?\b|glaze (?:has |had )?(?:run|ran|flow\w*|filled|healed|sealed)|(?:filled|healed|sealed|bridged) (?:in |over )?(?:with|by) glaze|glazed over|soft edge/i,
  ],
  ["sharp", /\bsharp|\braw edge|\bclean (?:break|edge)/i],
] as const;

const WHERE = [
  ["rim", /\brims?\b|\blips?\b|\bedge of the (?:plate|bowl|platter)/i],
  ["handle", /\bhandles?\b/i],
  ["foot", /\bfoot(?:[- ]?ring)?\b|\bfeet\b/i],
  ["base", /\bbases?\b|\bbottoms?\b|\bfloors?\b/i],
  ["wall", /\bwalls?\b|\bbelly\b|\bshoulder\b/i],
] as const;

const PATTERN = [
  ["S", /\bs[- ]shaped?\b|\bs[- ]crack/i],
  ["spiral", /\bspiral/i],
  ["network", /\bnet(?:work)?\b|\bmesh\b|\bweb\b|\ball over\b|\ball[- ]over\b/i],
  ["star", /\bstars?\b/i],
  [
    "one long line",
    /\b(?:one|a|single) (?:\w+ )?(?:long|straight) (?:\w+ )?(?:line|crack)|rim to (?:foot|base|rim)|\bin (?:two|half|halves)\b|hairline/i,
  ],
] as const;

const WHEN = [
  [
    "before firing",
    /before (?:it was |i |we )?(?:the )?(?:glaz|fir|load)\w*|(?:already|was there|were there|seen|noticed|there) (?:\w+ ){0,3}(?:bisqu?e|biscuit|greenware|dry)/i,
  ],
  [
    "days later",
    /(?:days?|weeks?|months?|years?) (?:later|after)|after (?:a |some |two |three |several )?(?:days|weeks?|months?)|next (?:day|week|morning)/i,
  ],
  ["hours later", /hours? (?:later|after)|that (?:evening|night)|same (?:day|evening)/i],
  [
    "before unloading",
    /(?:still )?in the kiln|on the shelf|before (?:i |we )?(?:unload|opening|taking)/i,
  ],
  ["at unloading", /(?:at|on|when|while|in|after) (?:i |we )?(?:unload|open)\w*|out of the kiln/i],
] as const;

const RINGS = [
  ["dull", /\brings? dull|\bdull\b|\bdead (?:ring|sound)|\bthud|\bclunk|\brattl/i],
  ["clear", /\brings? (?:clear|true|like a bell)|\bclear ring|\bsound ring/i],
] as const;

const DENIED =
  /\b(?:no|not|never|none|nothing|without|free of|isn't|wasn't|aren't|weren't|didn't)\b(?: \S+){0,3} $/i;

/** Words as people write them, read for what they say of a crack; what is denied is not said. */
export function crackWords(text: string): CrackWords {
  return {
    what: firstOf(WHAT, text),
    edges: firstOf(EDGES, text),
    where: earliestOf(WHERE, text),
    pattern: firstOf(PATTERN, text),
    when: firstOf(WHEN, text),
    rings: firstOf(RINGS, text),
  };
}

function firstOf<W>(list: readonly (readonly [W, RegExp])[], text: string): W | null {
  return list.find(([, words]) => saidAt(words, text) !== null)?.[0] ?? null;
}

function earliestOf<W>(list: readonly (readonly [W, RegExp])[], text: string): W | null {
  const places = list.flatMap(([word, words]) => {
    const at = saidAt(words, text);
    return at === null ? [] : [{ word, at }];
  });
  return places.toSorted((a, b) => a.at - b.at)[0]?.word ?? null;
}

/** Where a text says it without a "no" before it; null where it does not. */
function saidAt(words: RegExp, text: string): number | null {
  for (const { index } of text.matchAll(new RegExp(words.source, "gi"))) {
    const clause =
      text
        .slice(0, index)
        .split(/[.;,:!?]|\bbut\b/i)
        .at(-1) ?? "";
    if (!DENIED.test(clause)) return index;
  }
  return null;
}
