import type { WrittenRecord } from "./DemoFiring.ts";

type GivenBody = NonNullable<NonNullable<WrittenRecord["trials"]>[number]["body"]>;

/** A body file of the demo folder. */
interface DemoBody {
  readonly name: string;
  readonly shows: string;
  readonly text: string;
  /** The same as a firing record writes it; a new object each time, so that YAML makes no anchors. */
  readonly given: () => GivenBody;
}

/** The clays of the invented studio that crackle tiles were made of. */
export const DEMO_BODIES = {
  "Tarrow white": {
    name: "body-tarrow-white.yaml",
    shows: "the studio's stoneware, as the listed one is",
    text: `# Invented, like the studio.
formatVersion: 1
base: stoneware cone 6
name: Tarrow white
`,
    given: () => ({ base: "stoneware cone 6", name: "Tarrow white" }),
  },
  "Tarrow dusk": {
    name: "body-tarrow-dusk.yaml",
    shows: "a dark grey stoneware that shrinks less, so that the same glaze crackles closer on it",
    text: `# Invented, like the studio.
formatVersion: 1
base: stoneware cone 6
name: Tarrow dusk
matrixExpansionPerK:
  value: 4.1e-6
  source: invented
`,
    given: () => ({
      base: "stoneware cone 6",
      name: "Tarrow dusk",
      matrixExpansionPerK: { value: 4.1e-6, source: "invented" },
    }),
  },
} as const satisfies Record<string, DemoBody>;
