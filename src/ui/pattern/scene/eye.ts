import { PerspectiveCamera, Vector3 } from "three";
import { OrbitControls } from "three/examples/jsm/controls/OrbitControls.js";
import { frameReach } from "./frameReach.ts";
import type { Vec3 } from "../../../geometry/vector.ts";
import type { Bounds } from "./hangTurn.ts";
import type { ViewName } from "./sceneView.ts";

/** The camera and the hands on it: one finger turns, two fingers move nearer and aside. */
export type Eye = {
  readonly camera: PerspectiveCamera;
  readonly controls: OrbitControls;
  /** Takes in a box, filled by these points of it. */
  readonly fit: (bounds: Bounds, points: readonly Vec3[]) => void;
  readonly look: (view: ViewName) => void;
  readonly turn: (across: number, upward: number) => void;
  readonly nearer: (by: number) => void;
  readonly resize: (width: number, height: number) => void;
  /** World size, at distance 1, of one pixel of the screen. */
  readonly pxToScale: () => number;
};

const fovDeg = 28;
/** Kept free at the edges of the frame: a label stands above its point and half its width beside it. */
const labelRoomPx = { across: 18, upward: 22 };
const from: Readonly<Record<ViewName, readonly [number, number, number]>> = {
  front: [0, -1, 0.02],
  side: [1, 0, 0.02],
  top: [0, -0.02, 1],
  slant: [0.45, -1, 0.42],
};

export function eye(canvas: HTMLCanvasElement, changed: () => void): Eye {
  const camera = new PerspectiveCamera(fovDeg, 1, 1, 10_000);
  camera.up.set(0, 0, 1);
  const controls = new OrbitControls(camera, canvas);
  controls.rotateSpeed = 0.9;
  controls.zoomSpeed = 0.9;
  let radius = 1;
  let width = 1;
  let height = 1;
  let filled: readonly Vec3[] = [];
  /** How much nearer or further the hands have brought it than what fills the frame. */
  let share = 1;
  const looked = new Vector3();
  const middle = new Vector3();
  const halfFov = (fovDeg * Math.PI) / 360;

  /** How far the eye stands that sees all of it, with room for the labels round it. */
  const reach = (direction: Vector3): number => {
    const slope = Math.tan(halfFov);
    const room = (length: number, px: number): number => Math.max(0.4, 1 - (2 * px) / length);
    return frameReach({
      points: filled,
      middle: [middle.x, middle.y, middle.z],
      direction: [direction.x, direction.y, direction.z],
      up: [camera.up.x, camera.up.y, camera.up.z],
      slopeX: slope * camera.aspect * room(width, labelRoomPx.across),
      slopeY: slope * room(height, labelRoomPx.upward),
    });
  };
  const stand = (direction: Vector3): void => {
    looked.copy(direction).normalize();
    share = 1;
    camera.position.copy(middle).addScaledVector(looked, reach(looked));
    controls.target.copy(middle);
    controls.minDistance = 0.05 * radius;
    controls.maxDistance = 12 * radius;
    camera.near = 0.02 * radius;
    camera.far = 30 * radius;
    camera.updateProjectionMatrix();
    controls.update();
    changed();
  };
  // Turned, a long piece would leave the frame or shrink in it: the eye comes nearer or goes back as it turns.
  controls.addEventListener("change", () => {
    const out = camera.position.clone().sub(controls.target);
    const far = out.length();
    out.normalize();
    if (out.angleTo(looked) < 1e-4) share = far / reach(looked);
    else {
      looked.copy(out);
      camera.position.copy(controls.target).addScaledVector(looked, share * reach(looked));
    }
    changed();
  });

  return {
    camera,
    controls,
    fit: ({ low, high }, points) => {
      filled = points;
      middle.set((low[0] + high[0]) / 2, (low[1] + high[1]) / 2, (low[2] + high[2]) / 2);
      radius = Math.max(1e-3, Math.hypot(high[0] - low[0], high[1] - low[1], high[2] - low[2]) / 2);
      const direction = camera.position.clone().sub(controls.target);
      stand(
        direction.length() > 1e-6 && camera.position.lengthSq() > 0 ? direction : new Vector3(...from.slant),
      );
    },
    look: (view) => stand(new Vector3(...from[view])),
    turn: (across, upward) => {
      const out = camera.position.clone().sub(controls.target);
      out.applyAxisAngle(camera.up, across);
      const side = new Vector3().crossVectors(camera.up, out).normalize();
      const tilted = out.clone().applyAxisAngle(side, -upward);
      const angle = tilted.angleTo(camera.up);
      camera.position.copy(controls.target).add(angle > 0.03 && angle < Math.PI - 0.03 ? tilted : out);
      controls.update();
      changed();
    },
    nearer: (by) => {
      const out = camera.position.clone().sub(controls.target).multiplyScalar(by);
      const far = Math.min(controls.maxDistance, Math.max(controls.minDistance, out.length()));
      camera.position.copy(controls.target).add(out.setLength(far));
      controls.update();
      changed();
    },
    resize: (wide, tall) => {
      width = Math.max(1, wide);
      height = Math.max(1, tall);
      camera.aspect = Math.max(0.1, width / height);
      camera.updateProjectionMatrix();
    },
    pxToScale: () => (2 * Math.tan(halfFov)) / height,
  };
}
