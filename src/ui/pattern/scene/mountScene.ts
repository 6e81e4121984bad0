import { Raycaster, Vector2, Vector3 } from "three";
import { rotated, turnedBy, type Rotation } from "../../../geometry/rotation.ts";
import { rayTreeOf, type RayTree } from "../../../geometry/rayTree.ts";
import type { Mesh } from "../../../geometry/mesh.ts";
import type { Vec3 } from "../../../geometry/vector.ts";
import { onFingers, type HeldMark } from "./fingers.ts";
import { ringPoints } from "./lines.ts";
import { pickPiece, type Hit } from "./pickPiece.ts";
import { caught, gripOf, ringTurn, type ScreenPoint, type SeenRing } from "./ringTurn.ts";
import { onThemeChange } from "./sceneColours.ts";
import type { SceneEvents, SceneView, ViewName } from "./sceneView.ts";
import { stage } from "./stage.ts";

export type MountedScene = {
  readonly show: (view: SceneView) => void;
  readonly look: (view: ViewName) => void;
  readonly turn: (across: number, upward: number) => void;
  readonly nearer: (by: number) => void;
  readonly picture: () => Promise<Blob | null>;
  readonly dispose: () => void;
};

const fingerPx = 26;

/** The picture on a canvas; throws where the browser gives no WebGL. */
export function mountScene(canvas: HTMLCanvasElement, events: () => SceneEvents): MountedScene {
  const on = stage(canvas);
  let view: SceneView | null = null;
  let tree: { readonly of: Mesh; readonly tree: RayTree } | null = null;
  const caster = new Raycaster();

  const hitAt = (at: ScreenPoint): Hit | null => {
    if (view === null) return null;
    if (tree?.of !== view.mesh) tree = { of: view.mesh, tree: rayTreeOf(view.mesh) };
    const spot = new Vector2((2 * at.x) / canvas.clientWidth - 1, 1 - (2 * at.y) / canvas.clientHeight);
    caster.setFromCamera(spot, on.eye.camera);
    const toMesh = on.hung.matrixWorld.clone().invert();
    const from = caster.ray.origin.clone().applyMatrix4(toMesh);
    const along = caster.ray.direction.clone().transformDirection(toMesh);
    const isCut = view.cut !== null;
    const { rotation } = view;
    const isThere = (p: Vec3): boolean => on.cut.distanceToPoint(new Vector3(...rotated(rotation, p))) >= 0;
    return pickPiece(tree.tree, {
      from: from.toArray(),
      along: along.toArray(),
      isThere: isCut ? isThere : undefined,
    });
  };

  const onScreen = (shop: Vec3): ScreenPoint => {
    const p = new Vector3(...shop).project(on.eye.camera);
    return { x: ((p.x + 1) / 2) * canvas.clientWidth, y: ((1 - p.y) / 2) * canvas.clientHeight };
  };

  const takeRing = (at: ScreenPoint, { rotation }: SceneView): HeldMark | null => {
    const radius = on.ringRadius();
    const away = on.eye.camera.position.length();
    const rings = (["x", "y", "z"] as const).map((axis): SeenRing => ({
      axis,
      points: ringPoints(axis, radius).map((p) => ({
        ...onScreen(p),
        isFront: on.eye.camera.position.distanceTo(new Vector3(...p)) < away,
      })),
    }));
    const grip = gripOf(rings, at, fingerPx);
    if (grip === null) return null;
    let turned: Rotation = rotation;
    return {
      drag: (_, by) => {
        turned = turnedBy(rotation, grip.axis, caught(ringTurn(grip, by)));
        on.turnTo(turned);
      },
      drop: (isKept) => {
        if (isKept) events().onTurned(turned);
        else on.turnTo(rotation);
      },
    };
  };

  const takePlace = (at: ScreenPoint, shown: SceneView): HeldMark | null => {
    const near = shown.places
      .filter(({ canMove }) => canMove)
      .map((place) => ({ place, seen: onScreen(rotated(shown.rotation, place.point)) }))
      .map(({ place, seen }) => ({ place, apart: Math.hypot(seen.x - at.x, seen.y - at.y) }))
      .filter(({ apart }) => apart <= fingerPx)
      .sort((a, b) => a.apart - b.apart)[0];
    if (near === undefined) return null;
    let last: Hit | null = null;
    return {
      drag: (to) => {
        const hit = hitAt(to);
        if (hit === null || view === null) return;
        last = hit;
        const places = view.places.map((one) =>
          one.id === near.place.id ? { ...one, point: hit.point, ridge: [], isChosen: true } : one,
        );
        on.show({ ...view, places });
      },
      drop: (isKept) => {
        if (isKept && last !== null) events().onMove(near.place.id, last);
        else if (view !== null) on.show(view);
      },
    };
  };

  const forget = [
    onFingers(
      canvas,
      {
        take: (at) =>
          view === null ? null : view.hand === "turn" ? takeRing(at, view) : takePlace(at, view),
        tap: (at) => {
          const hit = view?.hand === "tap" ? hitAt(at) : null;
          if (hit !== null) events().onTap(hit);
        },
      },
      (isHeld) => {
        on.eye.controls.enabled = !isHeld;
      },
    ),
    onThemeChange(on.repaint),
  ];

  return {
    show: (next) => {
      view = next;
      on.show(next);
    },
    look: on.eye.look,
    turn: on.eye.turn,
    nearer: on.eye.nearer,
    picture: on.picture,
    dispose: () => {
      for (const one of forget) one();
      on.dispose();
    },
  };
}
