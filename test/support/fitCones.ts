/**
 * Rewrites the shipped cone constants from the shipped tables: `npx tsx test/support/fitCones.ts`.
 */
import { execFileSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { CONE_TABLES } from "../../src/core/cones/cone.ts";
import { fitKinetics } from "../../src/core/cones/fitKinetics.ts";

const target = fileURLToPath(new URL("../../src/core/cones/kinetics.ts", import.meta.url));
const constants = JSON.stringify(fitKinetics(CONE_TABLES));

writeFileSync(
  target,
  `import type { ConeSeries } from "./cone.ts";
import type { ConeKinetics } from "./ConeKinetics.ts";

/** Constants fitted to the published tables by fitKinetics; a test holds them to it. Softest first. */
export const KINETICS: Readonly<Record<ConeSeries, readonly ConeKinetics[]>> = ${constants};
`,
);
execFileSync("npx", ["biome", "check", "--write", target], { stdio: "inherit" });
