import type { DemoFiring } from "./DemoFiring.ts";

/** The README of the demo folder, a row per firing. */
export function readmeText(firings: readonly DemoFiring[]): string {
  return `# Demo logs

Nine firings of a studio that does not exist. The Tarrowmere studio, its people, kilns, clays and
glazes are invented, and so is every number: a seeded simulation of a kiln, a controller and
thermocouples wrote the logs, and the bend of the witness cones comes from the temperature that the
simulated ware had, which no thermocouple in the logs shows. Crack spacings and remarks were made up
by hand. Use them to see what Undunted says, not as evidence about glazes or clays.

Each log (\`.csv\`) has its firing record (\`.yaml\`) of the same name beside it.

| files | shows | origin | licence | edits |
| --- | --- | --- | --- | --- |
${firings.map(row).join("\n")}

\`2026-05-23-b.png\` is the chart that \`undunted review logs/2026-05-23-b.csv --chart\` draws.

To write them anew, byte for byte: \`npx tsx test/support/demo/generateLogs.ts\`. A test does the
same in memory and demands that nothing differs, so change the script, never the files.
`;
}

function row({ name, shows }: DemoFiring): string {
  return `| \`${name}.csv\`, \`.yaml\` | ${shows} | invented, written by the seeded script | as the project | none |`;
}
