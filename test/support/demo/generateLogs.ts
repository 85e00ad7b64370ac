import { writeFileSync } from "node:fs";
import { DEMO_BODIES } from "./demoBodies.ts";
import { DEMO_FIRINGS, demoFiles, demoReadme } from "./demoFiles.ts";
import { DEMO_GLAZES } from "./demoGlazes.ts";
import { DEMO_PHOTO, greyPng, inkedTile } from "./inkedTile.ts";
import { DEMO_SOUND, pingingShelf } from "./pingingShelf.ts";

const folder = new URL("../../../logs/", import.meta.url);
for (const { name, text } of [
  ...DEMO_FIRINGS.flatMap(demoFiles),
  ...DEMO_GLAZES,
  ...Object.values(DEMO_BODIES),
  demoReadme(),
])
  writeFileSync(new URL(name, folder), text);
writeFileSync(new URL(DEMO_PHOTO, folder), greyPng(inkedTile()));
writeFileSync(new URL(DEMO_SOUND, folder), pingingShelf());
