import type { Block } from "../reports/Block.ts";
import { type Answer, type Room, type ScreenPart, screenOf } from "./Answer.ts";
import { heading, roomsOf, sentence } from "./rooms.ts";

/** A report to answer with, and what of it belongs on the screen. */
interface ReportInput {
  readonly title: string;
  readonly blocks: readonly Block[];
  /** Room of what stands before the first heading. */
  readonly lead: string;
  /** Rooms whose beginnings stand on the screen, in this order, and how many blocks of each. */
  readonly key: Readonly<Record<string, number>>;
}

/** Findings that are shown at most. */
const MOST_FINDINGS = 4;

/**
 * A report as an answer: what stands before its first heading, what is serious, the beginnings of the
 * rooms that matter, then notes as far as they fit. All of the report is in the rooms.
 */
export function reportAnswer({ title, blocks, lead, key }: ReportInput): Answer {
  const rooms = roomsOf(blocks, lead);
  return {
    title,
    when: null,
    rooms,
    screen: screenOf([
      ...headParts(blocks),
      ...findingParts(blocks, (severity) => severity !== "note", 1),
      ...Object.entries(key).flatMap(([name, count], at) => keyParts(rooms, { name, count, at })),
      ...findingParts(blocks, (severity) => severity === "note", 6),
      { rank: 0, blocks: careBlocks(blocks) },
    ]),
  };
}

function headParts(blocks: readonly Block[]): readonly ScreenPart[] {
  const end = blocks.findIndex(({ kind }) => kind === "heading");
  const head = (end < 0 ? blocks : blocks.slice(0, end)).filter(
    ({ kind }) => kind !== "chart" && kind !== "picture",
  );
  return head.map((block, at) => ({ rank: at === 0 ? 0 : 3, blocks: [block] }));
}

function findingParts(
  blocks: readonly Block[],
  wanted: (severity: string) => boolean,
  rank: number,
): readonly ScreenPart[] {
  const found = blocks.flatMap((block) =>
    block.kind === "finding" && wanted(block.severity) ? [block] : [],
  );
  return found.slice(0, MOST_FINDINGS).map((block, at) => ({
    rank: rank + at,
    blocks: [
      {
        kind: "list",
        items: [
          `${block.severity === "warning" ? "Warning: " : ""}${block.statement} ${block.advice}`.trim(),
        ],
      } satisfies Block,
    ],
  }));
}

function keyParts(
  rooms: readonly Room[],
  { name, count, at }: { readonly name: string; readonly count: number; readonly at: number },
): readonly ScreenPart[] {
  const room = rooms.find((each) => each.name === name);
  if (room === undefined) return [];
  const [first, ...rest] = room.blocks;
  const titled = first?.kind === "heading" ? [heading(first.text), ...rest.slice(0, count)] : [];
  return [{ rank: 2 + at, blocks: titled.length > 1 ? titled : room.blocks.slice(0, count) }];
}

/** The caution that a crackled surface calls for. */
function careBlocks(blocks: readonly Block[]): readonly Block[] {
  return blocks.some((block) => block.kind === "caution" && block.topic === "crackle and food")
    ? [sentence("Crackled ware is not for food or drink.", "caution")]
    : [];
}
