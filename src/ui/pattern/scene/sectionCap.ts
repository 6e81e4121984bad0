import {
  AlwaysStencilFunc,
  BackSide,
  DecrementWrapStencilOp,
  DoubleSide,
  FrontSide,
  IncrementWrapStencilOp,
  Matrix4,
  Mesh,
  MeshBasicMaterial,
  MeshLambertMaterial,
  NotEqualStencilFunc,
  PlaneGeometry,
  Quaternion,
  ReplaceStencilOp,
  Vector3,
  type BufferGeometry,
  type Object3D,
  type Plane,
} from "three";

/**
 * A filled face where a plane cuts a closed skin: back faces count up and front faces down in the stencil behind the plane,
 * and where the sum is not 0 the plane lies within the solid.
 */
export type SectionCap = {
  readonly parts: readonly Mesh[];
  readonly face: MeshLambertMaterial;
  readonly faceMesh: Mesh;
  readonly setGeometry: (geometry: BufferGeometry) => void;
  readonly place: (
    at: { readonly plane: Plane; readonly radius: number; readonly under: Object3D } | null,
  ) => void;
  readonly dispose: () => void;
};

export function sectionCap(plane: Plane): SectionCap {
  const counters = [BackSide, FrontSide].map((side) => {
    const op = side === BackSide ? IncrementWrapStencilOp : DecrementWrapStencilOp;
    return new MeshBasicMaterial({
      side,
      colorWrite: false,
      depthWrite: false,
      depthTest: false,
      stencilWrite: true,
      stencilFunc: AlwaysStencilFunc,
      stencilFail: op,
      stencilZFail: op,
      stencilZPass: op,
      clippingPlanes: [plane],
    });
  });
  const face = new MeshLambertMaterial({
    side: DoubleSide,
    stencilWrite: true,
    stencilRef: 0,
    stencilFunc: NotEqualStencilFunc,
    stencilFail: ReplaceStencilOp,
    stencilZFail: ReplaceStencilOp,
    stencilZPass: ReplaceStencilOp,
  });
  const passes = counters.map((material) => new Mesh(undefined, material));
  const faceMesh = new Mesh(new PlaneGeometry(1, 1), face);
  faceMesh.matrixAutoUpdate = false;
  faceMesh.frustumCulled = false;
  faceMesh.onAfterRender = (renderer) => renderer.clearStencil();
  for (const pass of passes) pass.renderOrder = 1;
  faceMesh.renderOrder = 2;
  const parts = [...passes, faceMesh];
  return {
    parts,
    face,
    faceMesh,
    setGeometry: (geometry) => {
      for (const pass of passes) pass.geometry = geometry;
    },
    place: (at) => {
      for (const part of parts) part.visible = at !== null;
      if (at === null) return;
      const middle = at.plane.coplanarPoint(new Vector3());
      const turn = new Quaternion().setFromUnitVectors(new Vector3(0, 0, 1), at.plane.normal);
      const size = 4 * at.radius;
      const inShop = new Matrix4().compose(middle, turn, new Vector3(size, size, 1));
      at.under.updateMatrixWorld(true);
      faceMesh.matrix.copy(at.under.matrixWorld).invert().multiply(inShop);
      faceMesh.matrixWorldNeedsUpdate = true;
    },
    dispose: () => {
      faceMesh.geometry.dispose();
      for (const material of [...counters, face]) material.dispose();
    },
  };
}
