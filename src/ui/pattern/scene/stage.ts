import {
  DirectionalLight,
  Group,
  HemisphereLight,
  Mesh,
  MeshLambertMaterial,
  Plane,
  Scene,
  Vector3,
  WebGLRenderer,
} from "three";
import { eye, type Eye } from "./eye.ts";
import { outermost } from "./frameReach.ts";
import { boundsOf, type Bounds } from "./hangTurn.ts";
import { layLabels } from "./layLabels.ts";
import { heightLines, patchLines, ringLines, type Drawn } from "./lines.ts";
import { pieceBody } from "./pieceBody.ts";
import { placeMarks } from "./places.ts";
import { barShape } from "./barShape.ts";
import { plainGeometry } from "./triangleList.ts";
import type { Mesh as Shape } from "../../../geometry/mesh.ts";
import { asFiled, rotated, type Rotation } from "../../../geometry/rotation.ts";
import { sphereDirections } from "../../../geometry/sphereDirections.ts";
import { times, type Vec3 } from "../../../geometry/vector.ts";
import { sceneColours, type SceneColours } from "./sceneColours.ts";
import type { SceneView } from "./sceneView.ts";

/** What is drawn, redrawn only when something has changed. */
export type Stage = {
  readonly eye: Eye;
  readonly hung: Group;
  readonly cut: Plane;
  readonly show: (view: SceneView) => void;
  /** A turn or a place under way, before it is told. */
  readonly turnTo: (rotation: Rotation) => void;
  readonly bounds: () => Bounds;
  readonly ringRadius: () => number;
  readonly ask: () => void;
  readonly repaint: () => void;
  readonly picture: () => Promise<Blob | null>;
  readonly dispose: () => void;
};

const maxPixelRatio = 2;

/** Throws where the browser gives no WebGL. */
export function stage(canvas: HTMLCanvasElement): Stage {
  const renderer = new WebGLRenderer({
    canvas,
    antialias: true,
    stencil: true,
    alpha: false,
    powerPreference: "low-power",
  });
  renderer.localClippingEnabled = true;
  renderer.setPixelRatio(Math.min(maxPixelRatio, window.devicePixelRatio));
  const scene = new Scene();
  const hung = new Group();
  hung.matrixAutoUpdate = false;
  const cut = new Plane(new Vector3(0, 0, -1), 0);
  const body = pieceBody(cut);
  hung.add(body.group);
  scene.add(hung);
  let frame = 0;
  const draw = (): void => {
    frame = 0;
    layLabels(scene, view.camera, { width: canvas.clientWidth, height: canvas.clientHeight });
    renderer.render(scene, view.camera);
  };
  const ask = (): void => {
    if (frame === 0) frame = requestAnimationFrame(draw);
  };
  const view = eye(canvas, ask);
  // Light from over the shoulder, so that no view is in the dark.
  const sky = new HemisphereLight(0xffffff, 0x8a8478, 1.5);
  const lamp = new DirectionalLight(0xffffff, 2.1);
  lamp.position.set(-0.6, 0.9, 1);
  view.camera.add(lamp, lamp.target);
  lamp.target.position.set(0, 0, -1);
  scene.add(sky, view.camera);

  let colours: SceneColours = sceneColours(document.body);
  let shown: SceneView | null = null;
  let bounds: Bounds = { low: [-1, -1, -1], high: [1, 1, 1] };
  let drawn: readonly Drawn[] = [];

  /** What the eye must take in: the piece, its bars and the cup's level, or the rings while they are there. */
  const fit = (next: SceneView): void => {
    const parts = [...outermost(next.mesh), ...next.bars.flatMap(({ from, to }) => [from, to])];
    const cup = cupOf(next);
    const points =
      next.hand === "turn"
        ? sphereDirections(100).map((along) => times(along, ringRadius()))
        : [...parts.map((p) => rotated(next.rotation, p)), ...(cup === null ? [] : levelOf(bounds, cup))];
    view.fit(boundsOf({ pos: points.flat() }, asFiled), points);
  };
  const measure = (next: SceneView): void => {
    const before = { bounds, isTurn: shown?.hand === "turn", cup: cupOf(shown), bars: shown?.bars.length };
    if (shown?.mesh !== next.mesh || shown.rotation !== next.rotation)
      bounds = boundsOf(next.mesh, next.rotation);
    const isMoved = ([0, 1, 2] as const).some((k) => Math.abs(before.bounds.low[k] - bounds.low[k]) > 1e-3);
    const isNew = shown === null || isMoved || before.cup !== cupOf(next) || before.bars !== next.bars.length;
    if (isNew || before.isTurn !== (next.hand === "turn")) fit(next);
  };

  const show = (next: SceneView): void => {
    measure(next);
    shown = next;
    scene.background = colours.surface;
    setRotation(hung, next.rotation);
    placeCut(cut, next.cut, bounds);
    body.show(next, colours);
    for (const one of drawn) {
      one.group.removeFromParent();
      one.dispose();
    }
    const size = 0.011 * Math.hypot(...[0, 1, 2].map((k) => bounds.high[k]! - bounds.low[k]!));
    const pxToScale = view.pxToScale();
    const inMesh = [
      placeMarks(next, { colours, size, pxToScale }),
      patchLines(next.patches, colours),
      solids(
        next.bars.map((bar) => ({
          mesh: barShape(bar),
          colour: barColour(bar.kind, colours),
          isFaint: false,
        })),
      ),
      solids(next.pockets.map(({ mesh, colour }) => ({ mesh, colour: colours[colour], isFaint: true }))),
    ];
    const inShop = [
      ...(next.heights === null ? [] : [heightLines(next.heights, { bounds, colours, pxToScale })]),
      ...(next.hand === "turn" ? [ringLines(ringRadius(), colours)] : []),
    ];
    hung.add(...inMesh.map(({ group }) => group));
    for (const { group } of inShop) scene.add(group);
    drawn = [...inMesh, ...inShop];
    ask();
  };
  const ringRadius = (): number =>
    0.56 * Math.hypot(...[0, 1, 2].map((k) => bounds.high[k]! - bounds.low[k]!));

  const resized = new ResizeObserver(() => {
    const { clientWidth, clientHeight } = canvas;
    if (clientWidth === 0 || clientHeight === 0) return;
    renderer.setSize(clientWidth, clientHeight, false);
    view.resize(clientWidth, clientHeight);
    if (shown !== null) {
      show(shown);
      fit(shown);
    }
    draw();
  });
  resized.observe(canvas);
  canvas.addEventListener("webglcontextrestored", ask);

  return {
    eye: view,
    hung,
    cut,
    show,
    turnTo: (rotation) => {
      setRotation(hung, rotation);
      ask();
    },
    bounds: () => bounds,
    ringRadius,
    ask,
    repaint: () => {
      colours = sceneColours(document.body);
      if (shown !== null) show(shown);
    },
    picture: () =>
      new Promise((done) => {
        draw();
        canvas.toBlob(done, "image/jpeg", 0.9);
      }),
    dispose: () => {
      cancelAnimationFrame(frame);
      resized.disconnect();
      canvas.removeEventListener("webglcontextrestored", ask);
      view.controls.dispose();
      for (const one of drawn) one.dispose();
      body.dispose();
      renderer.dispose();
    },
  };
}

const cupOf = (view: SceneView | null): number | null => view?.heights?.cup?.atMm ?? null;

const levelOf = ({ low, high }: Bounds, at: number): readonly Vec3[] =>
  [low[0], high[0]].flatMap((x) => [low[1], high[1]].map((y): Vec3 => [x, y, at]));

function setRotation(hung: Group, [x, y, z]: Rotation): void {
  hung.matrix.set(x[0], x[1], x[2], 0, y[0], y[1], y[2], 0, z[0], z[1], z[2], 0, 0, 0, 0, 1);
  hung.updateMatrixWorld(true);
}

/** Kept is what lies on the low side, so that a cut from the front or from above looks into the piece. */
function placeCut(plane: Plane, cut: SceneView["cut"], { low, high }: Bounds): void {
  if (cut === null) return;
  const k = cut.axis === "side" ? 0 : cut.axis === "front" ? 1 : 2;
  const at = low[k] + (high[k] - low[k]) * cut.share;
  // The front is at low y: there the near half goes away.
  const sign = k === 1 ? 1 : -1;
  plane.normal.set(k === 0 ? sign : 0, k === 1 ? sign : 0, k === 2 ? sign : 0);
  plane.constant = -sign * at;
}

const barColour = (kind: string, colours: SceneColours) =>
  kind === "vent"
    ? colours.water
    : kind === "drain"
      ? colours.hold
      : kind === "feeder"
        ? colours.clear
        : colours.ember;

function solids(
  parts: readonly { readonly mesh: Shape; readonly colour: SceneColours["ink"]; readonly isFaint: boolean }[],
): Drawn {
  const group = new Group();
  const undo: (() => void)[] = [];
  for (const { mesh, colour, isFaint } of parts) {
    const geometry = plainGeometry(mesh);
    const material = new MeshLambertMaterial({ color: colour, flatShading: true });
    const solid = new Mesh(geometry, material);
    // Before the glass of the piece, which is laid over what is inside.
    solid.renderOrder = isFaint ? 0 : 3;
    group.add(solid);
    undo.push(() => {
      geometry.dispose();
      material.dispose();
    });
  }
  return { group, dispose: () => undo.forEach((one) => one()) };
}
