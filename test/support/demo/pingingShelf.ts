import { seededEven } from "../../../src/core/math/distributions.ts";
import { omoriTimes } from "../../../src/core/pings/omoriLaw.ts";
import { addClicks, addHum, addPink, silence } from "../clicks.ts";
import { waveFile } from "../waves.ts";

/** Name of the invented recording in the demo folder. */
export const DEMO_SOUND = "pinging-shelf.wav";

const RATE = 8000;
const SECONDS = 36;

/** Half a minute beside a shelf of cooling ware: hum, a room, 26 pings of two kinds, and a door. */
export function pingingShelf(): Uint8Array {
  const sound = silence(SECONDS, RATE);
  const even = seededEven(2026);
  addHum(sound, RATE, { mainsHz: 50, peak: 0.02 });
  addPink(sound, 0.012, 26);
  const times = omoriTimes({ p: 0.75, c: 4 }, { count: 26, seconds: SECONDS - 2, even });
  addClicks(
    sound,
    RATE,
    times.map((at, i) => ({
      atSeconds: at + 1,
      pitchHz: (i % 4 === 0 ? 950 : 2600) * 2 ** (0.3 * (even() - 0.5)),
      peak: (i % 4 === 0 ? 0.5 : 0.25) * (0.6 + 0.8 * even()),
      dyingSeconds: 0.004 + 0.008 * even(),
    })),
  );
  addClicks(sound, RATE, [{ atSeconds: 27.3, pitchHz: 80, peak: 0.6, dyingSeconds: 0.09 }]);
  return waveFile([sound], { sampleRateHz: RATE, bits: 8 });
}
