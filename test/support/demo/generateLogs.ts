import { writeFileSync } from "node:fs";
import { DEMO_FIRINGS, demoFiles, demoReadme } from "./demoFiles.ts";

const folder = new URL("../../../logs/", import.meta.url);
for (const { name, text } of [...DEMO_FIRINGS.flatMap(demoFiles), demoReadme()])
  writeFileSync(new URL(name, folder), text);
