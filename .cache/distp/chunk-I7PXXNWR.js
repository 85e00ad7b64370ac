import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  kelvinFromCelsius
} from "./chunk-R2H4YYDI.js";

// src/core/kiln/heatBalance.ts
var STEFAN_BOLTZMANN = 5670374419e-17;
function radiatedWattPerM2(tempC, roomC) {
  return STEFAN_BOLTZMANN * (fourthPower(kelvinFromCelsius(tempC)) - fourthPower(kelvinFromCelsius(roomC)));
}
function fourthPower(value) {
  const square = value * value;
  return square * square;
}
function lossKPerSecond(constants, tempC, roomC) {
  return constants.conductionPerSecond * (tempC - roomC) + constants.radiationM2KPerJ * radiatedWattPerM2(tempC, roomC);
}
var SOAKING_FROM_C = 1e3;
var SOAKING_FACTOR = 0.85;
function climbShare(tempC) {
  return tempC > SOAKING_FROM_C ? SOAKING_FACTOR : 1;
}

// src/core/kiln/twoNode.ts
function twoNodeRates(constants) {
  const { pullKPerSecond, inwardPerSecond, soakPerSecond, outwardPerSecond, radiationM2KPerJ } = constants;
  return ({ hotC, brickC }, { output, roomC }) => ({
    hotC: pullKPerSecond * output - inwardPerSecond * (hotC - brickC) - radiationM2KPerJ * radiatedWattPerM2(hotC, roomC),
    brickC: soakPerSecond * (hotC - brickC) - outwardPerSecond * (brickC - roomC)
  });
}
function stateAfter(rates, state, drive, seconds) {
  const along = (slope, share) => ({
    hotC: state.hotC + slope.hotC * seconds * share,
    brickC: state.brickC + slope.brickC * seconds * share
  });
  const k1 = rates(state, drive);
  const k2 = rates(along(k1, 0.5), drive);
  const k3 = rates(along(k2, 0.5), drive);
  const k4 = rates(along(k3, 1), drive);
  const mean = (of) => (of(k1) + 2 * of(k2) + 2 * of(k3) + of(k4)) / 6;
  return along({ hotC: mean((k) => k.hotC), brickC: mean((k) => k.brickC) }, 1);
}

export {
  radiatedWattPerM2,
  lossKPerSecond,
  climbShare,
  twoNodeRates,
  stateAfter
};
