import type { Mesh } from "../../src/geometry/mesh.ts";

/** A closed, bumpy ball of about `triangles` triangles, 200 across: no two points alike, coordinates of full length. */
export function bumpyBall(triangles: number): Mesh {
  const around = Math.round(Math.sqrt(triangles));
  const bands = Math.round(triangles / 2 / around) + 1;
  const pos = new Float32Array(3 * ((bands - 1) * around + 2));
  const idx = new Uint32Array(6 * (bands - 1) * around);
  const put = (v: number, down: number, turn: number): void => {
    const r = 100 + 6 * Math.sin(7 * turn) * Math.sin(9 * down) * Math.sin(down);
    pos[3 * v] = r * Math.sin(down) * Math.cos(turn);
    pos[3 * v + 1] = r * Math.sin(down) * Math.sin(turn);
    pos[3 * v + 2] = r * Math.cos(down);
  };
  const at = (band: number, gore: number): number => (band - 1) * around + (gore % around);
  const [top, bottom] = [(bands - 1) * around, (bands - 1) * around + 1];
  put(top, 0, 0);
  put(bottom, Math.PI, 0);
  for (let band = 1; band < bands; band++)
    for (let gore = 0; gore < around; gore++)
      put(at(band, gore), (Math.PI * band) / bands, (2 * Math.PI * gore) / around);
  let n = 0;
  const add = (a: number, b: number, c: number): void => {
    idx[n++] = a;
    idx[n++] = b;
    idx[n++] = c;
  };
  for (let gore = 0; gore < around; gore++) {
    add(top, at(1, gore), at(1, gore + 1));
    for (let band = 1; band < bands - 1; band++) {
      add(at(band, gore), at(band + 1, gore), at(band + 1, gore + 1));
      add(at(band, gore), at(band + 1, gore + 1), at(band, gore + 1));
    }
    add(at(bands - 1, gore), bottom, at(bands - 1, gore + 1));
  }
  return { pos, idx };
}
