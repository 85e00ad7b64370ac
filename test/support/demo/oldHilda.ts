import { TOP_LOADER_180 } from "./kiln.ts";

/** Old Hilda on an ordinary day: shut, new elements, run to the end of the programme. */
export const OLD_HILDA = {
  build: TOP_LOADER_180,
  elements: 1,
  opened: [],
  stopAfterHours: 60,
  switchedOffAfterHours: null,
};

/** The same, in the words of the studio. */
export const OLD_HILDA_SAYS = "Old Hilda, 180 litre top loader, 10.5 kW";
