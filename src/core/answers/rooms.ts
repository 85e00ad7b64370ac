import type { Block } from "../reports/Block.ts";
import type { Room } from "./Answer.ts";

/** The room that holds what stands under each heading of any report. */
const ROOM_OF_HEADING: Readonly<Record<string, string>> = {
  Findings: "findings",
  "What kind of crack is it?": "cracks",
  "Piece by piece": "cracks",
  "Why this counts": "cracks",
  "How to tell which": "cracks",
  "Tell me more": "cracks",
  "What to change next time": "next",
  "Through the inversions": "cooling",
  "Stress in the ware": "stress",
  Cones: "cones",
  "What the witness cones say": "cones",
  "Ramps and holds": "timeline",
  Timeline: "timeline",
  "Where in the kiln": "zones",
  "Against the plan": "plan",
  "What was heard": "record",
  "From the firing record": "record",
  "How the log was read": "reading",
  "What the ware was taken to be": "ware",
  "What this rests on": "sources",
  "Take care": "safety",
  "What was changed": "changes",
  "Why, and what each mend costs": "changes",
  "What the kiln must do, and what cannot be mended": "changes",
  "On your kiln": "kiln",
  "What had to be assumed": "assumed",
  "Side by side": "firings",
  "What differed": "differences",
  "What cannot be told apart": "mixed",
  "What governs the spacing": "crackle",
  "How the glazes fit their clays": "fit",
  "The tiles": "tiles",
  "Which test next": "next",
  "Thermocouples towards one another": "firings",
  "How fast it goes": "speed",
  "Firing by firing": "firings",
  "How it was found": "method",
  "For the firing record": "record",
  "Look for yourself": "look",
  "When they came": "times",
  "How hot it was": "heat",
  "The loudest": "loudest",
  "How they were told from other sounds": "method",
  "Lines for the firing record": "record",
  "Batch sheet": "batch",
  Slip: "slip",
  Coat: "coat",
  "Fit on the body": "fit",
  "Stress when cold": "fit",
  "How far to trust this": "fit",
  Crackle: "crackle",
  "Into the wall": "crackle",
  Later: "crackle",
  "Measured against computed": "measured",
  Expansion: "expansion",
  "Set point": "expansion",
  Formula: "formula",
  "What a laboratory found given off": "leaching",
};

/**
 * A report's blocks as rooms: each heading goes to the room that is named for it, what stands before
 * the first to the room `lead`; a heading of somebody's own words opens no room of its own. Alarms are
 * the screen's alone.
 */
export function roomsOf(blocks: readonly Block[], lead: string): readonly Room[] {
  const rooms = new Map<string, Block[]>();
  let name = lead;
  for (const block of blocks) {
    if (block.kind === "alarm") continue;
    if (block.kind === "heading") name = ROOM_OF_HEADING[block.text] ?? name;
    rooms.set(name, [...(rooms.get(name) ?? []), block]);
  }
  return [...rooms].map(([room, held]) => ({ name: room, blocks: held }));
}

/** A heading as a block. */
export function heading(text: string): Block {
  return { kind: "heading", text };
}

/** A sentence as a block. */
export function sentence(text: string, style?: "caution" | "faint"): Block {
  return { kind: "sentence", text, ...(style && { style }) };
}
