/** Fitted constants of one cone. */
export interface ConeKinetics {
  readonly cone: string;
  /** Apparent activation energy E [kJ/mol]. */
  readonly activationKJ: number;
  /** End point of the bare model on a plain ramp of 60 °C/h [°C]; with E it fixes the pre-factor. */
  readonly endPoint60C: number;
}
