import { withoutHollows } from "../../geometry/closedHollows.ts";
import { dexelsOf, type Dexels } from "../../geometry/dexels.ts";
import type { Mesh } from "../../geometry/mesh.ts";
import { times, type Vec3 } from "../../geometry/vector.ts";
import { lighten } from "./lighten.ts";
import type { ReadyMesh } from "./openPattern.ts";

/** The mesh kept between questions, with what is costly to make again. */
export type AskedMesh = {
  /** The mesh, or the same with its closed hollows filled. */
  readonly as: (isFilled: boolean | undefined) => SizedMesh;
};

export type SizedMesh = {
  readonly inMm: (mmPerUnit: number) => Mesh;
  readonly displayInMm: (mmPerUnit: number) => Mesh;
  /** For a search over many directions. */
  readonly lightInMm: (mmPerUnit: number, most: number) => Promise<Mesh>;
  /** Columns for one way to hang, up and turned over. */
  readonly columns: (asked: { mmPerUnit: number; up: Vec3; columns: number }) => {
    readonly upward: Dexels;
    readonly downward: Dexels;
  };
};

export function askedMesh(ready: ReadyMesh): AskedMesh {
  const plain = sizedMesh(ready);
  let filled: SizedMesh | null = null;
  return {
    as: (isFilled) => {
      if (isFilled !== true) return plain;
      filled ??= sizedMesh(filledOf(ready));
      return filled;
    },
  };
}

function filledOf({ mesh, display }: ReadyMesh): ReadyMesh {
  const solid = withoutHollows(mesh);
  return { mesh: solid, display: display === mesh ? solid : withoutHollows(display) };
}

function sizedMesh({ mesh, display }: ReadyMesh): SizedMesh {
  const whole = scaledOnce(mesh);
  const shown = display === mesh ? whole : scaledOnce(display);
  let light: { readonly of: Mesh; readonly copy: Mesh } | null = null;
  let cut: { readonly key: string; readonly upward: Dexels; readonly downward: Dexels } | null = null;
  return {
    inMm: whole,
    displayInMm: shown,
    lightInMm: async (mmPerUnit, most) => {
      const of = whole(mmPerUnit);
      if (light?.of !== of) light = { of, copy: await lighten(of, most) };
      return light.copy;
    },
    columns: ({ mmPerUnit, up, columns }) => {
      const key = [mmPerUnit, columns, ...up].join(" ");
      if (cut?.key !== key) {
        const inMm = whole(mmPerUnit);
        cut = {
          key,
          upward: dexelsOf({ mesh: inMm, up, cells: columns }),
          downward: dexelsOf({ mesh: inMm, up: times(up, -1), cells: columns }),
        };
      }
      return cut;
    },
  };
}

/** Geometry keeps its own notes by mesh, so the same size must be the same mesh. */
function scaledOnce(mesh: Mesh): (mmPerUnit: number) => Mesh {
  let last: { readonly by: number; readonly inMm: Mesh } | null = null;
  return (by) => {
    if (!(by > 0 && by < Infinity)) throw new RangeError(`mmPerUnit must be above 0, found ${by}`);
    if (last?.by !== by) last = { by, inMm: { ...mesh, pos: mesh.pos.map((at) => at * by), unit: "mm" } };
    return last.inMm;
  };
}
