import fc from "fast-check";
import { expect, test } from "vitest";
import { crossingsOf } from "./crossings.ts";

const place = fc.double({ min: -50, max: 50, noNaN: true });

test("a column that stands exactly on the edge of two triangles passes one of them, never none or both", () => {
  fc.assert(
    fc.property(
      place,
      place,
      place,
      place,
      fc.double({ min: 0.01, max: 0.99, noNaN: true }),
      (pu, pv, qu, qv, share) => {
        fc.pre(Math.abs(pv - qv) > 1);
        const v = pv + share * (qv - pv);
        const u = pv < qv ? pu + ((qu - pu) * (v - pv)) / (qv - pv) : qu + ((pu - qu) * (v - qv)) / (pv - qv);
        // Edge p–q, a triangle to its left and one to its right, the edge run through both ways.
        const uvw = Float64Array.from([pu, pv, 0, qu, qv, 0, u - 200, v, 0, u + 200, v, 0]);
        const raster = { nu: 1, nv: 1, pitch: 1, u0: u - 0.5, v0: v - 0.5 };
        expect(crossingsOf(Uint32Array.from([0, 1, 2, 1, 0, 3]), uvw, raster).count).toBe(1);
        expect(crossingsOf(Uint32Array.from([1, 2, 0, 3, 1, 0]), uvw, raster).count).toBe(1);
      },
    ),
    { numRuns: 500 },
  );
});

test("six triangles round one corner: a column on the corner leaves by one, counted with sign", () => {
  fc.assert(
    fc.property(place, place, fc.double({ min: 0, max: 6, noNaN: true }), (u, v, turn) => {
      const round = [0, 1, 2, 3, 4, 5].map((n) => turn + (n * Math.PI) / 3);
      const uvw = Float64Array.from([
        u,
        v,
        0,
        ...round.flatMap((a) => [u + 3 * Math.cos(a), v + 3 * Math.sin(a), 1]),
      ]);
      const idx = Uint32Array.from(round.flatMap((_, n) => [0, n + 1, ((n + 1) % 6) + 1]));
      const { count, enters } = crossingsOf(idx, uvw, { nu: 1, nv: 1, pitch: 1, u0: u - 0.5, v0: v - 0.5 });
      // Rounding may turn a sliver over; what it adds it then takes away.
      const leaving = [...enters.subarray(0, count)].reduce((sum, e) => sum + 1 - 2 * e, 0);
      expect(leaving).toBe(1);
    }),
  );
});
