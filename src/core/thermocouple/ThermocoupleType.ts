/** Letter of a standardised thermocouple: two wires with a published emf. */
export type ThermocoupleType = "K" | "N" | "S" | "R" | "B" | "J" | "T";

/** The letters, those of kilns first. */
export const THERMOCOUPLE_TYPES: readonly ThermocoupleType[] = ["K", "N", "S", "R", "B", "J", "T"];
