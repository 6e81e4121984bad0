import type { Quantity } from "./units.ts";

type FieldWords = { readonly name: string; readonly quantity: Quantity };

/** Fields of the log by the names their entries give them, in a maker's words and with what kind of number each is. */
const fields: Readonly<Record<string, FieldWords | undefined>> = {
  altitudeM: { name: "altitude", quantity: "m" },
  airC: { name: "air temperature", quantity: "temp" },
  rh: { name: "humidity", quantity: "percent" },
  surfaceC: { name: "surface temperature", quantity: "temp" },
  massG: { name: "weight", quantity: "g" },
  wallMm: { name: "wall", quantity: "mm" },
  headM: { name: "head", quantity: "m" },
  spanMm: { name: "size of the wall part", quantity: "mm" },
  widthMm: { name: "width of the wall part", quantity: "mm" },
  lengthMm: { name: "length of the wall part", quantity: "mm" },
  diameterMm: { name: "diameter of the wall part", quantity: "mm" },
  areaM2: { name: "surface area", quantity: "m2" },
  metalKg: { name: "metal weight", quantity: "kg" },
  massKg: { name: "metal poured", quantity: "kg" },
  metalLitre: { name: "metal volume", quantity: "litre" },
  drainS: { name: "drain time", quantity: "s" },
  leftShare: { name: "water left", quantity: "percent" },
  number: { name: "coat number", quantity: "plain" },
  step: { name: "place in the recipe", quantity: "plain" },
  kilnC: { name: "kiln temperature", quantity: "temp" },
  peakC: { name: "peak temperature", quantity: "temp" },
  holdMin: { name: "hold time", quantity: "min" },
  shellC: { name: "shell temperature", quantity: "temp" },
  metalC: { name: "metal temperature", quantity: "temp" },
  outOfKilnMin: { name: "time out of the kiln", quantity: "min" },
  cupS: { name: "cup time", quantity: "s" },
  slurryC: { name: "slurry temperature", quantity: "temp" },
  densityGCm3: { name: "density", quantity: "density" },
  pH: { name: "pH", quantity: "plain" },
  targetDryness: { name: "dryness wanted", quantity: "percent" },
  morMPa: { name: "fired strength", quantity: "MPa" },
  safetyFactor: { name: "safety factor", quantity: "plain" },
  floorMm: { name: "least wall", quantity: "mm" },
  dryingFactor: { name: "own drying factor", quantity: "plain" },
  coats: { name: "number of coats", quantity: "plain" },
  name: { name: "a name", quantity: "plain" },
  room: { name: "a room", quantity: "plain" },
  roomId: { name: "a room", quantity: "plain" },
  reason: { name: "a reason", quantity: "plain" },
  text: { name: "some words", quantity: "plain" },
};

export const fieldWords = (field: string): FieldWords =>
  fields[field.split(".").at(-1) ?? field] ?? { name: field, quantity: "plain" };
