import type { LengthUnit } from "./mesh.ts";

/** Millimetres in each unit a mesh file may name; inch and foot are exact by the agreement of 1959. */
export const lengthUnitMm: Readonly<Record<LengthUnit, number>> = {
  micron: 0.001,
  mm: 1,
  cm: 10,
  m: 1000,
  inch: 25.4,
  foot: 304.8,
};
