import { lengthUnitMm } from "../lengthUnit.ts";
import { weldMesh } from "../weld.ts";
import { noFaces, outOfRange, refuseTooMany, widestCoordinate } from "./limits.ts";
import { badScene, modelReader } from "./modelPart.ts";
import type { ModelObject, ModelPart, Placed, Placement } from "./modelPart.ts";
import { notesOf } from "./reader.ts";
import type { ReadMesh, Reader } from "./reader.ts";
import { attributeOf, nameOf, tagScanner } from "./tags.ts";
import { zipReader } from "./zip.ts";

const deepest = 32;
const same: Placement = [1, 0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0];

/**
 * 3MF: the objects its build places, with components within components, in one mesh in the unit of its root model
 * (3MF core specification 1.3; further models by the production extension 1.1). Supports are left out.
 */
export function threeMfReader(): Reader<ReadMesh> {
  const parts = new Map<string, ModelPart>();
  let root = "";
  const zip = zipReader((entry) => {
    const path = entry.replace(/^\//, "").toLowerCase();
    if (path === "_rels/.rels")
      return tagScanner((tag) => {
        if (tag.closing || !/(^|:)Relationship$/.test(nameOf(tag))) return;
        if (attributeOf(tag, "Type")?.endsWith("/3dmodel") !== true) return;
        root = (attributeOf(tag, "Target") ?? "").replace(/^\//, "").toLowerCase();
      });
    if (!path.endsWith(".model")) return null;
    const part: ModelPart = { path, unit: "mm", objects: new Map(), items: [] };
    parts.set(path, part);
    return modelReader(part);
  });

  function end(): ReadMesh {
    zip.end();
    const part = parts.get(root) ?? parts.get("3d/3dmodel.model") ?? parts.values().next().value;
    if (part === undefined) throw noFaces("an archive without a model");
    return assemble(parts, part);
  }

  return { feed: zip.feed, end };
}

type Instance = { readonly object: ModelObject; readonly placement: Placement };

function assemble(parts: ReadonlyMap<string, ModelPart>, root: ModelPart): ReadMesh {
  const instances: Instance[] = [];
  let triangles = 0;
  let visits = 0;
  let supports = 0;

  function place({ path, id }: Placed, placement: Placement, above: readonly ModelObject[]): void {
    const part = parts.get(path);
    const object = part?.objects.get(id);
    if (part === undefined || object === undefined) throw badScene(`object ${id}, which is not in the file,`);
    if (above.includes(object)) throw badScene(`object ${id} as a component of itself`);
    if (above.length >= deepest || ++visits > 100_000) throw badScene("components nested without end");
    if (object.isSupport) {
      supports++;
      return;
    }
    // Counted before anything is made, so that a few nested lines cannot ask for millions of copies.
    triangles += object.idx.n / 3;
    refuseTooMany(triangles);
    if (object.idx.n > 0) instances.push({ object, placement: inUnitOf(root, part, placement) });
    for (const component of object.components)
      place(component, after(component.placement, placement), [...above, object]);
  }

  const placed = root.items.length > 0;
  const items = placed ? root.items : unusedObjects(root);
  for (const item of items) place(item, item.placement ?? same, []);
  if (triangles === 0) throw noFaces("a model that places no surface");
  return {
    ...weldMesh(merge(instances, triangles)),
    unit: root.unit,
    format: "3mf",
    notes: notesOf({ "supports-skipped": supports, "objects-unplaced": placed ? 0 : items.length }),
  };
}

/** Objects that are no component of another: what a model without a build must mean. */
function unusedObjects({ path, objects }: ModelPart): readonly Placed[] {
  const used = new Set([...objects.values()].flatMap(({ components }) => components.map(({ id }) => id)));
  return [...objects.keys()].filter((id) => !used.has(id)).map((id) => ({ path, id, placement: null }));
}

function merge(instances: readonly Instance[], triangles: number): { pos: Float32Array; idx: Uint32Array } {
  const pos = new Float32Array(instances.reduce((sum, { object }) => sum + object.pos.n, 0));
  const idx = new Uint32Array(3 * triangles);
  let p = 0;
  let t = 0;
  for (const { object, placement } of instances) {
    const first = p / 3;
    const { data, n } = object.pos;
    for (let i = 0; i < n; i += 3)
      for (let k = 0; k < 3; k++) {
        const value = coordinate(placement, k, data[i]!, data[i + 1]!, data[i + 2]!);
        if (!(Math.abs(value) < widestCoordinate))
          throw outOfRange(value, `of object ${object.id} where it is placed`);
        pos[p++] = value;
      }
    // A mirrored solid would be inside out.
    const [second, third] = determinant(placement) < 0 ? [2, 1] : [1, 2];
    const corners = object.idx;
    for (let i = 0; i < corners.n; i += 3) {
      idx[t++] = first + corners.data[i]!;
      idx[t++] = first + corners.data[i + second]!;
      idx[t++] = first + corners.data[i + third]!;
    }
  }
  return { pos, idx };
}

const coordinate = (m: Placement, k: number, x: number, y: number, z: number): number =>
  x * m[k]! + y * m[3 + k]! + z * m[6 + k]! + m[9 + k]!;

/** The placement that does `inner` first, then `outer`. */
function after(inner: Placement | null, outer: Placement): Placement {
  if (inner === null) return outer;
  return [0, 3, 6, 9].flatMap((row) =>
    [0, 1, 2].map(
      (k) =>
        inner[row]! * outer[k]! +
        inner[row + 1]! * outer[3 + k]! +
        inner[row + 2]! * outer[6 + k]! +
        (row === 9 ? outer[9 + k]! : 0),
    ),
  );
}

function inUnitOf(root: ModelPart, part: ModelPart, placement: Placement): Placement {
  if (determinant(placement) === 0) throw badScene("an object placed flat");
  if (part.unit === root.unit) return placement;
  const scale = lengthUnitMm[part.unit] / lengthUnitMm[root.unit];
  return after([scale, 0, 0, 0, scale, 0, 0, 0, scale, 0, 0, 0], placement);
}

const determinant = (m: Placement): number =>
  m[0]! * (m[4]! * m[8]! - m[5]! * m[7]!) -
  m[1]! * (m[3]! * m[8]! - m[5]! * m[6]!) +
  m[2]! * (m[3]! * m[7]! - m[4]! * m[6]!);
