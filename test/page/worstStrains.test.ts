import { readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { expandSchedule } from "../../src/core/schedule/expandSchedule.ts";
import { pieceOf } from "../../src/core/schedule/pieceOf.ts";
import { BODIES } from "../../src/core/ware/bodies.ts";
import { wareStrain } from "../../src/core/ware/wareStrain.ts";
import { readSchedule } from "../../src/node/readSchedule.ts";
import { worstStrains } from "../../src/page/draft/worstStrains.ts";
import { valued } from "../support/schedules.ts";

const FOLDER = join(import.meta.dirname, "../../schedules");

describe("the stress that the Draft table shows at every change", () => {
  it("is to the last digit what the whole reckoning comes to, for every schedule and body", async () => {
    const files = readdirSync(FOLDER).filter((name) => name.endsWith(".yaml"));
    expect(files.length).toBeGreaterThan(4);
    for (const file of files) {
      const schedule = valued(await readSchedule(join(FOLDER, file)));
      const { curve } = expandSchedule(schedule);
      for (const body of BODIES) {
        const piece = pieceOf({ ...schedule.ware, body });
        if (piece === null) throw new Error(`no piece of ${body.name}`);
        expect(worstStrains(curve, piece.ware), `${file}, ${body.name}`).toEqual(
          wareStrain(curve, piece.ware).worst,
        );
      }
    }
  });
});
