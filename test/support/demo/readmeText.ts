import { DEMO_TRUTH } from "./crackleTiles.ts";
import type { DemoFiring } from "./DemoFiring.ts";
import type { DemoGlaze } from "./demoGlazes.ts";

/** The README of the demo folder, a row per firing and per glaze. */
export function readmeText(firings: readonly DemoFiring[], glazes: readonly DemoGlaze[]): string {
  return `# Demo logs

Nine firings of a studio that does not exist. The Tarrowmere studio, its people, kilns, clays and
glazes are invented, and so is every number: a seeded simulation of a kiln, a controller and
thermocouples wrote the logs, and the bend of the witness cones comes from the temperature that the
simulated ware had, which no thermocouple in the logs shows. Remarks were made up by hand. Use them
to see what Undunted says, not as evidence about glazes or clays.

The 24 tiles A1 to C8 of the firings of 21 February, 14 March and 11 April were made by the energy
that cracks set free in \`glaze-pond-ice.yaml\` on two bodies, with seeded scatter between tiles
(12 %), of counts and of coats (10 %). So the truth is known: spacing grows as the coat to the power
${DEMO_TRUTH.exponent}, on Tarrow dusk it is ${DEMO_TRUTH.duskOverWhite} of that on Tarrow white, with both sides glazed ${DEMO_TRUTH.bothOverOne} of that with one,
and the firing makes no difference, though the third went to cone 6 and the others to cone 5; the glaze shrinks ${DEMO_TRUTH.shrinksMore["Tarrow white"]} millionths per °C more than
Tarrow white and ${DEMO_TRUTH.shrinksMore["Tarrow dusk"]} more than Tarrow dusk. The tiles D1 to D4 of 23 May, all Tarrow white, were made in the
same way; only that D4 broke through the wall was set by hand. Whatever compares them is told none of
this.

Each log (\`.csv\`) has its firing record (\`.yaml\`) of the same name beside it. The glazes
(\`glaze-….yaml\`) are for \`undunted glaze\`, and \`undunted compare\` finds them by the name that the
tiles give; they were made up from ideal minerals and never fired. The bodies (\`body-….yaml\`) are
for \`--body\`.

| files | shows | origin | licence | edits |
| --- | --- | --- | --- | --- |
${firings.map(row).join("\n")}
${glazes.map(glazeRow).join("\n")}
| \`inked-tile.png\` | a crackled tile with its cracks dark from tea, above a ruler, for \`undunted measure\`; 100 mm are 1000 pixels | invented, drawn by the seeded script | as the project | none |
| \`pinging-shelf.wav\` | half a minute of hum, a door and 26 pings of two kinds, 8 bits, for \`undunted pings\` | invented, written by the seeded script | as the project | none |

\`page.png\` is a picture of the page (\`npm run shots:page -- logs/page.png\`),
\`2026-05-23-b.png\` the chart that \`undunted review logs/2026-05-23-b.csv --chart\` draws,
\`crackle-tiles.svg\` what \`undunted compare\` draws of the firings with the tiles A1 to C8.

To write them anew, byte for byte: \`npx tsx test/support/demo/generateLogs.ts\`. A test does the
same in memory and demands that nothing differs, so change the script, never the files.
`;
}

function row({ name, shows }: DemoFiring): string {
  return `| \`${name}.csv\`, \`.yaml\` | ${shows} | invented, written by the seeded script | as the project | none |`;
}

function glazeRow({ name, shows }: DemoGlaze): string {
  return `| \`${name}\` | ${shows} | invented, written by hand in the script | as the project | none |`;
}
