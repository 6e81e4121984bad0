import { expect, test } from "vitest";
import { airClasses } from "./airClasses.ts";
import { coatWaterOf, prewetKgM2 } from "./coatWater.ts";
import { geometryClasses } from "./geometryClasses.ts";
import { patternMaterials } from "./patternMaterials.ts";
import { practice } from "./practice.ts";

test("faster air has a stronger film, and each class lies within its own range", () => {
  const classes = Object.values(airClasses);
  for (const [i, { filmWM2K, low, high, speedMS }] of classes.entries()) {
    expect(filmWM2K).toBeGreaterThanOrEqual(low);
    expect(filmWM2K).toBeLessThanOrEqual(high);
    expect(filmWM2K).toBeGreaterThan(classes[i - 1]?.filmWM2K ?? 0);
    expect(speedMS).toBeGreaterThan(classes[i - 1]?.speedMS ?? 0);
  }
  expect(classes.map(({ filmWM2K }) => filmWM2K)).toEqual([4, 7, 10, 15, 25, 40]);
});

test("the worse a pocket, the harder the damp leaves it", () => {
  expect(Object.values(geometryClasses).map(({ pocketSM }) => pocketSM)).toEqual([0, 300, 1800, 6000]);
});

test("a first prime holds 80 g of water a square metre, a backup 200, half and six tenths of it critical", () => {
  expect(coatWaterOf("prime", 1)).toMatchObject({ waterKgM2: 0.08, criticalShare: 0.5 });
  expect(coatWaterOf("prime", 2)).toMatchObject({ waterKgM2: 0.1, criticalShare: 0.6 });
  expect(coatWaterOf("backup", 1)).toEqual(coatWaterOf("backup", 3));
  expect(coatWaterOf("backup", 1)).toMatchObject({ waterKgM2: 0.2, criticalShare: 0.6 });
  expect(coatWaterOf("seal", 1)).toMatchObject({ waterKgM2: 0.12, criticalShare: 0.75 });
  expect(prewetKgM2.value).toBeLessThan(coatWaterOf("prime", 1).waterKgM2);
});

test("wax grows several times more than any plastic", () => {
  const wax = patternMaterials.wax.growthPerK?.value ?? 0;
  for (const { isWax, growthPerK } of Object.values(patternMaterials))
    if (!isWax && growthPerK !== null) expect(wax / growthPerK.value).toBeGreaterThan(4);
  expect(Object.values(patternMaterials).filter(({ isWax }) => isWax)).toHaveLength(1);
});

test("every limit of practice says where it comes from", () => {
  for (const { source } of Object.values(practice)) expect(source.length).toBeGreaterThan(10);
});

test("the published limit of three Fahrenheit degrees is 1.7 K", () => {
  expect(Math.abs((3 * 5) / 9 - practice.primeSwingK.value)).toBeLessThan(0.05);
});
