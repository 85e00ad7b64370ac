import { CRACKLE_FIRINGS } from "./crackleFirings.ts";
import type { DemoFiring } from "./DemoFiring.ts";
import { DEMO_BODIES } from "./demoBodies.ts";
import { DEMO_GLAZES } from "./demoGlazes.ts";
import { fire } from "./fire.ts";
import { readmeText } from "./readmeText.ts";
import { recordText } from "./recordText.ts";
import { TROUBLED_FIRINGS } from "./troubledFirings.ts";
import { WARE_FIRINGS } from "./wareFirings.ts";

/** Every firing of the invented studio, in order of date. */
export const DEMO_FIRINGS: readonly DemoFiring[] = [
  ...CRACKLE_FIRINGS,
  ...WARE_FIRINGS,
  ...TROUBLED_FIRINGS,
].sort((a, b) => (a.name < b.name ? -1 : 1));

/** A file of the demo folder. */
export interface DemoFile {
  readonly name: string;
  readonly text: string;
}

/** The log and the record of one firing. */
export function demoFiles(firing: DemoFiring): readonly DemoFile[] {
  const fired = fire(firing.plan);
  return [
    { name: `${firing.name}.csv`, text: firing.shape(fired.samples, firing.start) },
    { name: `${firing.name}.yaml`, text: recordText(firing, fired) },
  ];
}

/** The README of the demo folder. */
export function demoReadme(): DemoFile {
  return {
    name: "README.md",
    text: readmeText(DEMO_FIRINGS, [...DEMO_GLAZES, ...Object.values(DEMO_BODIES)]),
  };
}
