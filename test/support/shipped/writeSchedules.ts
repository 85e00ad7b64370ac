import { writeFileSync } from "node:fs";
import { derivedFiles } from "./derivedSchedules.ts";

const folder = new URL("../../../schedules/", import.meta.url);
for (const { name, text } of derivedFiles()) writeFileSync(new URL(name, folder), text);
