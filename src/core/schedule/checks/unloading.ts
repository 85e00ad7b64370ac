import type { Finding } from "../../findings/Finding.ts";
import { basedOn } from "../../sources/basedOn.ts";
import { finding, type Judged } from "./Judged.ts";

/** Unload at or below [°C]; and what an open lid risks above [°C]. */
export const UNLOAD_C = 100;

/** When the ware may come out. */
export function checkUnloading(judged: Judged): readonly Finding[] {
  const { curve } = judged.expansion;
  const endC = curve.tempsC.at(-1)!;
  if (endC <= UNLOAD_C + 0.5) return [];
  const coolAt = judged.untilCool.timesSeconds.at(-1)!;
  return [
    finding({
      topic: "unloading",
      severity: "note",
      statement:
        "The schedule ends at {end}; by itself the kiln falls to {unload} in about {wait}, {total} after the start.",
      evidence: [
        { name: "end", value: endC, kind: "temperature" },
        { name: "unload", value: UNLOAD_C, kind: "temperature" },
        { name: "wait", value: coolAt - judged.endSeconds, kind: "duration" },
        { name: "total", value: coolAt, kind: "duration" },
      ],
      basis: `${basedOn("unload at 100 to 120 °C (210 to 250 °F)", "opening-practice")}; natural cooling of ${judged.kiln.basis}`,
      advice: "Leave the lid shut until {unload}.",
      span: { fromSeconds: judged.endSeconds, toSeconds: coolAt },
    }),
  ];
}

/** What slow cooling does and does not do for a crackle glaze. */
export function checkCrackle(judged: Judged): readonly Finding[] {
  if (!judged.schedule.ware.crackle) return [];
  return [
    finding({
      topic: "crackle",
      severity: "note",
      statement:
        "A crackle glaze usually begins to crack below about {below}, and goes on for days; slow cooling through the inversions guards the clay, it neither makes nor prevents crackle.",
      evidence: [{ name: "below", value: 450, kind: "temperature" }],
      basis:
        "our own estimate: a 0.4 mm coat, stiff near 600 °C, whose expansion is above the body's by 0.75 to 2 millionths per kelvin first cracks 150 to 400 °C below that",
      advice: "Write down when you hear pinging, and look again after a day and after a week.",
    }),
  ];
}
