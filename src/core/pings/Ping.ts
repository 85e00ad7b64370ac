/** One click that was heard. */
export interface Ping {
  /** From the start of the recording to its onset [s]; good to 10 ms, to 3 ms when it stands out by 20 dB. */
  readonly atSeconds: number;
  /** Loudness over the quiet level of the band in which it stands out most [dB]. */
  readonly overFloorDb: number;
  /** Its highest peak above the hum, full scale being 0 [dBFS]. */
  readonly levelDbfs: number;
  /** Middle of its tones [Hz]. */
  readonly pitchHz: number;
  /** Time in which it dies away by 20 dB [ms]; null when it sinks into the quiet level too soon to tell. */
  readonly decayMs: number | null;
  /** Whether it reaches full scale, so that it was louder than recorded. */
  readonly isClipped: boolean;
}

/** Sounds that stood out and were not taken for pings, by the reason. */
export interface OtherSounds {
  /** Swelled instead of starting at once: speech, wind, a passing car. */
  readonly slow: number;
  /** Started at once and stayed: a motor, a tap. */
  readonly lasting: number;
  /** Mostly below 350 Hz: a door, a step. */
  readonly thuds: number;
  /** Sharp, but within a second of other noise: consonants of speech, rattling. */
  readonly amongNoise: number;
}

/** How clicks are told from the rest; what was not given is found from the recording or our own choice. */
export interface PingSettings {
  /** A click stands out by this many dB in a band; null: from the scatter of the quiet level itself. */
  readonly thresholdDb: number | null;
  /** Clicks closer than this are one [s]. */
  readonly apartSeconds: number;
  /** A click is louder by this much than what was there 6 to 20 ms before [dB]. */
  readonly attackDb: number;
  /** The quiet level is taken over this time [s]. */
  readonly floorSeconds: number;
}

/**
 * Our own choices, tried on made-up sounds only: clicks 60 ms apart so that the echo of a room is
 * no second click; 7 dB in 6 ms, which voices, fans and footsteps stay below.
 */
export const USUAL_SETTINGS: PingSettings = {
  thresholdDb: null,
  apartSeconds: 0.06,
  attackDb: 7,
  floorSeconds: 10,
};
