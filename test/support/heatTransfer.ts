/**
 * Textbook heat transfer in closed form, written apart from the core and leaning on nothing of it.
 * Tests hold it against printed numbers first, and the core against it then.
 */

/** Stefan–Boltzmann constant, as textbooks print it [W/m²K⁴]. */
const STEFAN_W_PER_M2K4 = 5.67e-8;

/** A body of one temperature throughout: its heat, and how its surface takes heat up. */
export interface LumpedBody {
  readonly densityKgPerM3: number;
  readonly heatCapacityJPerKgK: number;
  /** Volume over surface: a sixth of the diameter of a ball, half the thickness of a plate [m]. */
  readonly volumeOverSurfaceM: number;
  /** Heat taken up by the surface [W/m²K]. */
  readonly transferWPerM2K: number;
}

/** Time constant of a lumped body, ρcV/(hA) [s]. */
export function lumpedSeconds(body: LumpedBody): number {
  const heat = body.densityKgPerM3 * body.heatCapacityJPerKgK * body.volumeOverSurfaceM;
  return heat / body.transferWPerM2K;
}

/** How far a lumped body is behind a ramp that began at rest [K]: rτ(1 − e^(−t/τ)). */
export function lumpedRampLagK(ramp: {
  readonly rateCPerHour: number;
  readonly lumpedSeconds: number;
  readonly seconds: number;
}): number {
  const final = (ramp.rateCPerHour / 3600) * ramp.lumpedSeconds;
  return final * (1 - Math.exp(-ramp.seconds / ramp.lumpedSeconds));
}

/**
 * Share of its final lag that the middle of a slab has behind its faces, after a ramp began at rest:
 * 1 − (32/π³) Σ (−1)ⁿ (2n + 1)⁻³ exp(−(2n + 1)² π² Fo/4), Carslaw & Jaeger, §3.5.
 *
 * @param fourier αt/L² with L half the thickness.
 */
export function slabRampShare(fourier: number): number {
  let sum = 0;
  for (let n = 0; n < 60; n++) {
    const odd = 2 * n + 1;
    sum += ((-1) ** n * Math.exp((-odd * odd * Math.PI ** 2 * fourier) / 4)) / odd ** 3;
  }
  return 1 - (32 / Math.PI ** 3) * sum;
}

/** One-term plane wall: ζ tan ζ = Bi, C₁ = 4 sin ζ/(2ζ + sin 2ζ). */
export function planeWall(biot: number): { readonly zeta: number; readonly c1: number } {
  let [low, high] = [0, Math.PI / 2];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (middle * Math.sin(middle) > biot * Math.cos(middle)) high = middle;
    else low = middle;
  }
  return { zeta: low, c1: (4 * Math.sin(low)) / (2 * low + Math.sin(2 * low)) };
}

/** Radiation between black faces nearly alike, 4σT³ [W/m²K]. */
export function blackWPerM2K(tempK: number): number {
  return 4 * STEFAN_W_PER_M2K4 * tempK ** 3;
}

/** A grey face in wide surroundings, and the air along it. */
export interface GreyFace {
  readonly emissivity: number;
  readonly airWPerM2K: number;
}

/** Heat given up by a grey face to surroundings and air of one temperature [W/m²]. */
export function givenUpWPerM2(face: GreyFace, faceK: number, aroundK: number): number {
  const radiated = face.emissivity * STEFAN_W_PER_M2K4 * (faceK ** 4 - aroundK ** 4);
  return radiated + face.airWPerM2K * (faceK - aroundK);
}

/** Air at one temperature along a standing wall. */
export interface AirFilm {
  readonly tempK: number;
  /** Kinematic viscosity and thermal diffusivity [m²/s]. */
  readonly viscosityM2PerS: number;
  readonly diffusivityM2PerS: number;
  readonly conductivityWPerMK: number;
}

/** Natural convection along a standing wall, Churchill & Chu: Rayleigh, Nusselt, and h [W/m²K]. */
export function standingWall(
  air: AirFilm,
  wall: { readonly heightM: number; readonly excessK: number },
): { readonly rayleigh: number; readonly nusselt: number; readonly wPerM2K: number } {
  const prandtl = air.viscosityM2PerS / air.diffusivityM2PerS;
  const rayleigh =
    ((9.81 / air.tempK) * wall.excessK * wall.heightM ** 3) /
    (air.viscosityM2PerS * air.diffusivityM2PerS);
  const spread = (1 + (0.492 / prandtl) ** (9 / 16)) ** (8 / 27);
  const nusselt = (0.825 + (0.387 * rayleigh ** (1 / 6)) / spread) ** 2;
  return { rayleigh, nusselt, wPerM2K: (nusselt * air.conductivityWPerMK) / wall.heightM };
}

/**
 * Time in which a lumped body cools by radiation alone [s], Bejan & Kraus, Heat Transfer Handbook,
 * equation 3.283 solved for the time.
 *
 * @param emissivityOverHeat εA/(ρVc) [m²K/J].
 */
export function radiatingSeconds(
  emissivityOverHeat: number,
  temps: { readonly fromK: number; readonly toK: number; readonly aroundK: number },
): number {
  const { fromK, toK, aroundK } = temps;
  const left = (tempK: number) =>
    Math.log(Math.abs((aroundK + tempK) / (aroundK - tempK))) + 2 * Math.atan(tempK / aroundK);
  return (left(toK) - left(fromK)) / (4 * STEFAN_W_PER_M2K4 * emissivityOverHeat * aroundK ** 3);
}

/** Temperature of a body after a time, by Runge–Kutta steps of a second on its rate [K/s]. */
export function rungeKuttaK(
  rate: (tempK: number, seconds: number) => number,
  start: { readonly tempK: number; readonly seconds: number },
): number {
  let tempK = start.tempK;
  for (let at = 0; at < start.seconds; at++) {
    const a = rate(tempK, at);
    const b = rate(tempK + a / 2, at + 0.5);
    const c = rate(tempK + b / 2, at + 0.5);
    const d = rate(tempK + c, at + 1);
    tempK += (a + 2 * b + 2 * c + d) / 6;
  }
  return tempK;
}

/** A brittle body, as far as thermal shock goes. */
export interface BrittleBody {
  readonly strengthMPa: number;
  readonly poisson: number;
  readonly youngMPa: number;
  readonly expansionPerK: number;
  readonly conductivityWPerMK: number;
  readonly diffusivityM2PerS: number;
}

/** Thermal shock parameters: R = σ(1 − ν)/(Eα) [K] and R′ = kR [W/m]. */
export function shockParameters(body: BrittleBody): {
  readonly temperatureK: number;
  readonly wPerM: number;
} {
  const temperatureK =
    (body.strengthMPa * (1 - body.poisson)) / (body.youngMPa * body.expansionPerK);
  return { temperatureK, wPerM: body.conductivityWPerMK * temperatureK };
}

/**
 * Fastest ramp that a plate stands by the gradient through it alone [°C/h]: σ(1 − ν)·3λ/(αE r²cρ),
 * Štubňa, Trník, Chmelík & Vozár 2011, doi 10.5772/19199, with r half the thickness.
 */
export function fastestPlateCPerHour(body: BrittleBody, halfThicknessM: number): number {
  const { temperatureK } = shockParameters(body);
  return (3600 * 3 * temperatureK * body.diffusivityM2PerS) / halfThicknessM ** 2;
}
