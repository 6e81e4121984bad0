import type { GatingBar, Section } from "../../../geometry/gatingBars.ts";
import type { Mesh } from "../../../geometry/mesh.ts";
import { minus, plus, squareTo, times, unit, type Vec3 } from "../../../geometry/vector.ts";

const sides = 24;

/** A bar as a closed mesh: straight between its two sections, flat at both ends. Lengths of the bar. */
export function barShape({ from, to, fromSection, toSection }: GatingBar): Mesh {
  const [u, v] = squareTo(unit(minus(to, from)));
  const corners = fromSection.kind === "rectangle" && toSection.kind === "rectangle" ? 4 : sides;
  const ring = (middle: Vec3, section: Section): readonly Vec3[] =>
    Array.from({ length: corners }, (_, n) => {
      const [x, y] = outlineOf(section, (2 * Math.PI * n) / corners + Math.PI / 4);
      return plus(middle, plus(times(u, x), times(v, y)));
    });
  const points = [...ring(from, fromSection), ...ring(to, toSection), from, to];
  const idx: number[] = [];
  for (let n = 0; n < corners; n++) {
    const next = (n + 1) % corners;
    idx.push(n, next, corners + next, n, corners + next, corners + n);
    idx.push(2 * corners, next, n, 2 * corners + 1, corners + n, corners + next);
  }
  return { pos: Float32Array.from(points.flat()), idx: Uint32Array.from(idx), unit: "mm" };
}

/** Of four corners at 45°, 135° … those of the rectangle; of more, where each ray leaves it. */
function outlineOf(section: Section, angle: number): readonly [number, number] {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  if (section.kind === "round") return [(section.diameter / 2) * cos, (section.diameter / 2) * sin];
  const most = Math.max(Math.abs(cos), Math.abs(sin));
  return [((section.width / 2) * cos) / most, ((section.height / 2) * sin) / most];
}
