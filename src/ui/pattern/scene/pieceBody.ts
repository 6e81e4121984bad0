import { Group, Matrix4, Mesh, MeshBasicMaterial, MeshLambertMaterial, type Plane } from "three";
import type { Mesh as Shape } from "../../../geometry/mesh.ts";
import { fillPaint } from "./fillPaint.ts";
import type { SceneColours } from "./sceneColours.ts";
import type { SceneView } from "./sceneView.ts";
import { sectionCap } from "./sectionCap.ts";
import { colourBands, triangleList } from "./triangleList.ts";

/** The piece itself: its skin, opaque or as glass, its section with a filled face, coloured by thickness or by the fill. */
export type PieceBody = {
  readonly group: Group;
  readonly show: (view: SceneView, colours: SceneColours) => void;
  readonly dispose: () => void;
};

const glass = 0.3;
/** So that what lies on the skin is not half sunk in it. */
const aBitBack = { polygonOffset: true, polygonOffsetFactor: 1, polygonOffsetUnits: 1 } as const;

export function pieceBody(cutPlane: Plane): PieceBody {
  const group = new Group();
  const paint = fillPaint();
  const skin = new MeshLambertMaterial({ flatShading: true, ...aBitBack });
  // Glass writes its depth first, so that only its nearest faces are seen through.
  const veil = new MeshBasicMaterial({ colorWrite: false, ...aBitBack });
  const cap = sectionCap(cutPlane);
  paint.on(skin, new Matrix4());
  paint.on(cap.face, cap.faceMesh.matrix);
  let shown: Pick<SceneView, "mesh" | "bands"> & { readonly colours: SceneColours | null } = {
    mesh: { pos: new Float32Array(), idx: new Uint32Array() },
    bands: null,
    colours: null,
  };
  let geometry = triangleList(shown.mesh);
  const veilMesh = new Mesh(geometry, veil);
  const skinMesh = new Mesh(geometry, skin);
  // What is inside may stick out of the skin by half a cell: the glass is laid over it all the same.
  veilMesh.onBeforeRender = (renderer) => {
    if (!cap.faceMesh.visible) renderer.clearDepth();
  };
  veilMesh.renderOrder = 4;
  skinMesh.renderOrder = 5;
  group.add(...cap.parts, veilMesh, skinMesh);

  const setShape = (mesh: Shape): void => {
    geometry.dispose();
    geometry = triangleList(mesh);
    veilMesh.geometry = geometry;
    skinMesh.geometry = geometry;
    cap.setGeometry(geometry);
  };

  return {
    group,
    show: (view, colours) => {
      const isNewMesh = view.mesh !== shown.mesh;
      if (isNewMesh) setShape(view.mesh);
      if (view.bands !== null && (isNewMesh || view.bands !== shown.bands || colours !== shown.colours))
        colourBands(geometry, view.bands, colours);
      shown = { mesh: view.mesh, bands: view.bands, colours };
      const isGlass = view.isGlass && view.fill === null && view.bands === null;
      const isCut = view.cut !== null;
      if (view.bands === null) skin.color.copy(colours.pattern);
      else skin.color.setRGB(1, 1, 1);
      cap.face.color.copy(colours["band-backup"]).lerp(colours.pattern, 0.4);
      veilMesh.visible = isGlass;
      const needsNew = skin.vertexColors !== (view.bands !== null) || skin.transparent !== isGlass;
      skin.vertexColors = view.bands !== null;
      skin.transparent = isGlass;
      skin.depthWrite = !isGlass;
      skin.opacity = isGlass ? glass : 1;
      if (needsNew) skin.needsUpdate = true;
      for (const material of [skin, veil]) material.clippingPlanes = isCut ? [cutPlane] : null;
      const radius = geometry.boundingSphere?.radius ?? 1;
      cap.place(isCut ? { plane: cutPlane, radius, under: group } : null);
      paint.set(view.fill, colours);
    },
    dispose: () => {
      geometry.dispose();
      skin.dispose();
      veil.dispose();
      cap.dispose();
      paint.dispose();
    },
  };
}
