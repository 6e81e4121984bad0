import {
  BoxGeometry,
  ConeGeometry,
  Group,
  InstancedMesh,
  Matrix4,
  MeshLambertMaterial,
  OctahedronGeometry,
  Quaternion,
  SphereGeometry,
  Vector3,
  type BufferGeometry,
} from "three";
import { upOf } from "../../../geometry/rotation.ts";
import { ridgeLine } from "./lines.ts";
import type { ColourName, SceneColours } from "./sceneColours.ts";
import type { Place, PlaceKind, SceneView } from "./sceneView.ts";
import { floatingLabel, type LabelLook } from "./floatingLabel.ts";

type Look = {
  readonly colour: ColourName;
  readonly tag: LabelLook["shape"];
  readonly make: () => BufferGeometry;
  /** Bodies that stand above, about or below their point. */
  readonly stands: 1 | 0 | -1;
};

/** Each kind by its body, its label's outline and its colour. */
const looks: Readonly<Record<PlaceKind, Look>> = {
  air: { colour: "water", tag: "round", make: () => new ConeGeometry(0.7, 2, 20), stands: 1 },
  vent: { colour: "water", tag: "round", make: () => new ConeGeometry(0.7, 2, 20), stands: 1 },
  plastic: { colour: "hold", tag: "square", make: () => new OctahedronGeometry(1), stands: -1 },
  drain: { colour: "hold", tag: "square", make: () => new OctahedronGeometry(1), stands: -1 },
  gate: { colour: "ember", tag: "point", make: () => new BoxGeometry(1.5, 1.5, 1.5), stands: 0 },
  feeder: { colour: "clear", tag: "point", make: () => new SphereGeometry(0.95, 20, 14), stands: 0 },
  hot: { colour: "ember", tag: "square", make: () => new SphereGeometry(0.95, 20, 14), stands: 0 },
  thin: { colour: "hold", tag: "round", make: () => new SphereGeometry(0.6, 16, 12), stands: 0 },
  thick: { colour: "note", tag: "square", make: () => new SphereGeometry(0.6, 16, 12), stands: 0 },
};

export const labelHeightPx = 25;

/** Markers with their labels, in mesh mm, and the runs of ridges. */
export function placeMarks(
  { places, rotation }: Pick<SceneView, "places" | "rotation">,
  { colours, size, pxToScale }: { colours: SceneColours; size: number; pxToScale: number },
): { readonly group: Group; readonly dispose: () => void } {
  const group = new Group();
  const undo: (() => void)[] = [];
  const up = new Vector3(...upOf(rotation));
  const upright = new Quaternion().setFromUnitVectors(new Vector3(0, 1, 0), up);
  for (const kind of Object.keys(looks) as readonly PlaceKind[]) {
    const own = places.filter((place) => place.kind === kind);
    if (own.length === 0) continue;
    const bodies = bodiesOf(own, { look: looks[kind], colours, size, up, upright });
    group.add(bodies);
    undo.push(() => {
      bodies.geometry.dispose();
      bodies.dispose();
    });
  }
  for (const place of places) {
    const label = floatingLabel(tagLook(place, colours));
    for (const sprite of label.sprites) {
      sprite.position.set(...place.point);
      sprite.scale.set(label.aspect * labelHeightPx * pxToScale, labelHeightPx * pxToScale, 1);
      // What is chosen has its place first, then what was put, then what was found.
      sprite.userData["rank"] = place.isChosen ? 1 : place.isPut ? 2 : 3;
      group.add(sprite);
    }
    undo.push(label.dispose);
    if (place.ridge.length < 2) continue;
    const run = ridgeLine(place.ridge, { radius: 0.25 * size, colour: colours[looks[place.kind].colour] });
    group.add(run.group);
    undo.push(run.dispose);
  }
  return { group, dispose: () => undo.forEach((one) => one()) };
}

function bodiesOf(
  places: readonly Place[],
  {
    look,
    colours,
    size,
    up,
    upright,
  }: { look: Look; colours: SceneColours; size: number; up: Vector3; upright: Quaternion },
): InstancedMesh {
  const mesh = new InstancedMesh(look.make(), new MeshLambertMaterial(), places.length);
  const scale = new Vector3(size, size, size);
  const at = new Vector3();
  const matrix = new Matrix4();
  for (const [n, place] of places.entries()) {
    const grown = scale.clone().multiplyScalar(place.isChosen ? 1.5 : 1);
    at.set(...place.point).addScaledVector(up, look.stands * grown.x);
    mesh.setMatrixAt(n, matrix.compose(at, upright, grown));
    const colour = colours[look.colour].clone();
    mesh.setColorAt(n, place.isPut ? colour : colour.lerp(colours.raised, 0.55));
  }
  mesh.renderOrder = 8;
  mesh.frustumCulled = false;
  return mesh;
}

function tagLook({ kind, label, isPut, isChosen }: Place, colours: SceneColours): LabelLook {
  const colour = colours[looks[kind].colour];
  return {
    text: label,
    shape: looks[kind].tag,
    isInside: kind === "hot" || kind === "thick",
    fill: isPut ? colour : colours.raised,
    ink: isPut ? colours.ground : colour,
    line: isChosen ? colours.ink : colour,
  };
}
