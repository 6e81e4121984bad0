import fc from "fast-check";
import { expect, test } from "vitest";
import { boxes, unwelded } from "../../tests/meshes/testSolids.ts";
import { dropDegenerate, weldMesh } from "./weld.ts";

const loose = unwelded(boxes([[0, 1, 0, 2, 0, 3]]));

test("a cube of loose facets has eight corners, whichever of its zeros are negative", () => {
  fc.assert(
    fc.property(
      fc.array(fc.boolean(), { minLength: loose.pos.length, maxLength: loose.pos.length }),
      (isMinus) => {
        const pos = loose.pos.map((at, i) => (at === 0 && isMinus[i] === true ? -0 : at));
        const welded = weldMesh({ pos, idx: loose.idx });
        expect(welded.pos).toHaveLength(24);
        expect(welded.idx).toHaveLength(36);
        for (let i = 0; i < 36; i++)
          for (let k = 0; k < 3; k++)
            expect(welded.pos[3 * welded.idx[i]! + k]! + 0).toBe(pos[3 * loose.idx[i]! + k]! + 0);
      },
    ),
    { numRuns: 40 },
  );
});

test("points next to each other in the last bit stay two", () => {
  const next = Math.fround(1 + 2 ** -23);
  const pos = Float32Array.from([1, 0, 0, next, 0, 0, 0, 1, 0]);
  expect(weldMesh({ pos, idx: Uint32Array.of(0, 1, 2) }).pos).toHaveLength(9);
});

test("points of no triangle are left out, and a welded mesh is given back as it is", () => {
  const pos = Float32Array.from([9, 9, 9, 0, 0, 0, 1, 0, 0, 8, 8, 8, 0, 1, 0]);
  const welded = weldMesh({ pos, idx: Uint32Array.of(1, 2, 4) });
  expect([...welded.pos]).toEqual([0, 0, 0, 1, 0, 0, 0, 1, 0]);
  expect(weldMesh(welded)).toBe(welded);
  expect(() => weldMesh({ pos, idx: Uint32Array.of(1, 2, 5) })).toThrow(RangeError);
});

test("any points weld to as many as a set of their texts holds", () => {
  const small = fc.constantFrom(0, 1, -1, 0.1, 1e-30, 3);
  fc.assert(
    fc.property(fc.array(fc.tuple(small, small, small), { minLength: 3, maxLength: 300 }), (points) => {
      const idx = Uint32Array.from({ length: points.length - (points.length % 3) }, (_, i) => i);
      const welded = weldMesh({ pos: Float32Array.from(points.flat()), idx });
      const texts = new Set(points.slice(0, idx.length).map((p) => p.map(Math.fround).join()));
      expect(welded.pos).toHaveLength(3 * texts.size);
    }),
    { numRuns: 100 },
  );
});

test("only triangles that name a place twice are dropped", () => {
  const idx = Uint32Array.of(0, 1, 2, 0, 0, 1, 2, 1, 2, 2, 1, 0);
  const { mesh, degenerate } = dropDegenerate({ pos: new Float32Array(9), idx });
  expect([degenerate, [...mesh.idx]]).toEqual([2, [0, 1, 2, 2, 1, 0]]);
});

test("a soup in doubles or a plain list welds as one in floats does", () => {
  const { pos, idx } = loose;
  const welded = weldMesh(loose);
  for (const other of [Float64Array.from(pos), [...pos]])
    expect(weldMesh({ pos: other as unknown as Float32Array, idx })).toEqual(welded);
});
