import fc from "fast-check";
import { expect, test } from "vitest";
import { cutPolygon } from "./polygon.ts";

/** A star-shaped polygon: corners at rising angles, each at a distance of its own. */
const star = fc.array(fc.double({ min: 0.2, max: 5, noNaN: true }), { minLength: 3, maxLength: 24 });
const polygonOf = (radii: readonly number[], lean: number): Float64Array =>
  Float64Array.from(
    radii.flatMap((r, i) => {
      const angle = (2 * Math.PI * i) / radii.length;
      return [r * Math.cos(angle), r * Math.sin(angle), lean * r * Math.sin(angle)];
    }),
  );
const areaOf = (places: Float64Array, corners: readonly number[]): number => {
  let twice = 0;
  for (let i = 0; i < corners.length; i += 3) {
    const [a, b, c] = corners.slice(i, i + 3).map((v) => [places[3 * v]!, places[3 * v + 1]!]);
    twice += Math.abs((b![0]! - a![0]!) * (c![1]! - a![1]!) - (b![1]! - a![1]!) * (c![0]! - a![0]!));
  }
  return twice / 2;
};

test("a polygon of any dents is cut into as many triangles as it has corners less two, which cover it once", () => {
  fc.assert(
    fc.property(star, fc.double({ min: -2, max: 2, noNaN: true }), (radii, lean) => {
      const places = polygonOf(radii, lean);
      const cut = cutPolygon(places);
      const n = radii.length;
      expect(cut.length).toBe(3 * (n - 2));
      let twice = 0;
      for (let i = 0; i < n; i++) {
        const j = (i + 1) % n;
        twice += places[3 * i]! * places[3 * j + 1]! - places[3 * i + 1]! * places[3 * j]!;
      }
      expect(areaOf(places, cut)).toBeCloseTo(twice / 2, 6);
    }),
    { numRuns: 200 },
  );
});

test("a polygon that crosses itself is cut all the same", () => {
  expect(cutPolygon(Float64Array.from([0, 0, 0, 2, 2, 0, 2, 0, 0, 0, 2, 0]))).toHaveLength(6);
});
