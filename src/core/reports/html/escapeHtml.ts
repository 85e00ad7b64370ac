import { inert } from "../inert.ts";

const ENTITIES: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** Text from anywhere as text of a page: harmless, and safe inside quoted attributes too. */
export function escapeHtml(text: string): string {
  return inert(text).replace(/[&<>"']/g, (character) => ENTITIES[character]!);
}
