import firstLog from "../../../logs/2026-02-21-b.csv?raw";
import firstRecord from "../../../logs/2026-02-21-b.yaml?raw";
import secondLog from "../../../logs/2026-03-14-b.csv?raw";
import secondRecord from "../../../logs/2026-03-14-b.yaml?raw";
import thirdLog from "../../../logs/2026-04-11-a.csv?raw";
import thirdRecord from "../../../logs/2026-04-11-a.yaml?raw";
import glaze from "../../../logs/glaze-pond-ice.yaml?raw";
import type { KeptFile } from "../bench/KeptFile.ts";
import { withLaid } from "../worker/readGroup.ts";

/** Three invented firings of one studio with their trial tiles and their glaze, to try the table with. */
export function demoFirings(): readonly KeptFile[] {
  const files = [
    fileOf("2026-02-21-b.csv", firstLog),
    fileOf("2026-02-21-b.yaml", firstRecord),
    fileOf("2026-03-14-b.csv", secondLog),
    fileOf("2026-03-14-b.yaml", secondRecord),
    fileOf("2026-04-11-a.csv", thirdLog),
    fileOf("2026-04-11-a.yaml", thirdRecord),
    fileOf("glaze-pond-ice.yaml", glaze),
  ];
  return withLaid([], files);
}

function fileOf(name: string, text: string): KeptFile {
  return { name, bytes: new Uint8Array(new TextEncoder().encode(text)) };
}
