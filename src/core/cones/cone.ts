/** Series whose end points are modelled; the others are tables to look up. */
export type ConeSeries =
  | "self-supporting"
  | "self-supporting-iron-free"
  | "large"
  | "large-iron-free"
  | "small";

/** Every table that is shipped, modelled or not. */
export type TableSeries =
  | ConeSeries
  | "large-legacy"
  | "fairchild-peters-1926"
  | "pce"
  | "seger-jis"
  | "seger-european";

/** How far a cone has bent, in words a potter uses at the spy hole. */
export type Bend =
  | "upright"
  | "starting to bend"
  | "half down"
  | "nearly down"
  | "down"
  | "well past down";

/** What a Curve did to one cone. */
export interface ConeState {
  readonly cone: string;
  /** Share of the cone's heatwork budget, anchored to the table; 1 = down; counted to 10 000. */
  readonly heatwork: number;
  /** Above (+) or below (−) the end point [K, converted at the peak], anchored to the table. */
  readonly marginK: number;
  /** One sigma of the margin from the cone model alone [K]. */
  readonly marginSigmaK: number;
  readonly bend: Bend;
  /** When it went down [s], or null when it did not. */
  readonly downAtSeconds: number | null;
}

/** Where a Curve stands among the cones. */
export interface ConePosition {
  /** Last whole cone that is down; null when not even the softest of the series is. */
  readonly cone: string | null;
  /** Share of the way to the next cone, 0–1; null when there is no next cone. */
  readonly fraction: number | null;
  readonly next: string | null;
  /** `cone 5 + 60 %`, `below cone 022`, `cone 14 or more`. */
  readonly label: string;
  /** Number of whole cones, with fraction, on the index 0n → −n, n → n − 1; for differences only. */
  readonly index: number | null;
}

/** What the heat did: the answer of the cone model for one Curve. */
export interface Heatwork {
  readonly series: ConeSeries;
  readonly position: ConePosition;
  /** One sigma of the position in cones: thermocouple, place in the kiln and model. */
  readonly sigmaCones: number | null;
  /** The same without thermocouple and place: the model alone. */
  readonly modelSigmaCones: number | null;
  /** Added to the readings first [K]. */
  readonly offsetK: number;
  /** One sigma of that offset, the cone model at the chart's rates included [K]. */
  readonly offsetSigmaK: number;
  /** Nothing was allowed for, what kilns are usually out by, or what is known of this thermocouple. */
  readonly offsetIs: "none" | "usual" | "known";
  /** Highest temperature, the offset added [°C]. */
  readonly peakC: number;
  /** Mean rate over the last 100 K up to the peak's first near approach [°C/h]; null if not measured. */
  readonly lastHundredCPerHour: number | null;
  /** Rate at which a plain ramp would give the same effect at this peak [°C/h]. */
  readonly effectiveRateCPerHour: number | null;
  /** Why the answer reaches beyond what was published; empty when it does not. */
  readonly extrapolations: readonly string[];
  /** Every cone of the series with a model, softest first. */
  readonly cones: readonly ConeState[];
}
