import demoLog from "../../../logs/2026-05-23-b.csv?raw";
import demoRecord from "../../../logs/2026-05-23-b.yaml?raw";
import type { KeptFile } from "../bench/KeptFile.ts";
import { NOTHING_TOLD, type ReviewWork } from "./reviewState.ts";

/** An invented firing to try the table with: its log and record; its schedule comes with the page. */
export function demoFiring(): ReviewWork {
  return {
    log: fileOf("2026-05-23-b.csv", demoLog),
    record: fileOf("2026-05-23-b.yaml", demoRecord),
    schedule: null,
    earlier: [],
    told: NOTHING_TOLD,
  };
}

function fileOf(name: string, text: string): KeptFile {
  return { name, bytes: new Uint8Array(new TextEncoder().encode(text)) };
}
