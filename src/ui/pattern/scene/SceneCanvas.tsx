import {
  useEffect,
  useEffectEvent,
  useImperativeHandle,
  useLayoutEffect,
  useRef,
  useState,
  type KeyboardEvent,
  type Ref,
} from "react";
import { mountScene, type MountedScene } from "./mountScene.ts";
import styles from "./SceneCanvas.module.css";
import type { SceneEvents, SceneView } from "./sceneView.ts";

export type SceneHandle = Pick<MountedScene, "look" | "nearer" | "picture">;

/** The pattern in the round; says so in a word where the browser draws no such pictures. */
export function SceneCanvas(props: {
  readonly view: SceneView;
  readonly label: string;
  readonly onTap: SceneEvents["onTap"];
  readonly onMove: SceneEvents["onMove"];
  readonly onTurned: SceneEvents["onTurned"];
  readonly handle: Ref<SceneHandle>;
}) {
  const { view, label, onTap, onMove, onTurned, handle } = props;
  const canvas = useRef<HTMLCanvasElement>(null);
  const mounted = useRef<MountedScene | null>(null);
  const [isMissing, setIsMissing] = useState(() => !drawsInTheRound());
  const events = useEffectEvent((): SceneEvents => ({ onTap, onMove, onTurned }));

  useLayoutEffect(() => {
    if (canvas.current === null) return undefined;
    try {
      mounted.current = mountScene(canvas.current, () => events());
    } catch {
      queueMicrotask(() => setIsMissing(true));
      return undefined;
    }
    return () => {
      mounted.current?.dispose();
      mounted.current = null;
    };
  }, []);
  useEffect(() => mounted.current?.show(view), [view]);
  useImperativeHandle(handle, () => ({
    look: (name) => mounted.current?.look(name),
    nearer: (by) => mounted.current?.nearer(by),
    picture: async () => (await mounted.current?.picture()) ?? null,
  }));

  const onKeyDown = (event: KeyboardEvent): void => {
    const go = keys[event.key];
    if (go === undefined || mounted.current === null || event.altKey || event.ctrlKey || event.metaKey)
      return;
    event.preventDefault();
    go(mounted.current);
  };

  if (isMissing)
    return (
      <p className={styles["missing"]} role="status">
        This browser can’t show 3D pictures. Use the lists below instead.
      </p>
    );
  return (
    <canvas
      ref={canvas}
      className={styles["canvas"]}
      tabIndex={0}
      role="img"
      aria-label={label}
      onKeyDown={onKeyDown}
    />
  );
}

/** Asked once on a canvas of its own: one that has refused a context gives no other. */
function drawsInTheRound(): boolean {
  const context = document.createElement("canvas").getContext("webgl2");
  context?.getExtension("WEBGL_lose_context")?.loseContext();
  return context !== null;
}

const step = Math.PI / 12;
const keys: Readonly<Record<string, ((scene: MountedScene) => void) | undefined>> = {
  ArrowLeft: (scene) => scene.turn(-step, 0),
  ArrowRight: (scene) => scene.turn(step, 0),
  ArrowUp: (scene) => scene.turn(0, step),
  ArrowDown: (scene) => scene.turn(0, -step),
  "+": (scene) => scene.nearer(0.8),
  "=": (scene) => scene.nearer(0.8),
  "-": (scene) => scene.nearer(1.25),
  "1": (scene) => scene.look("front"),
  "2": (scene) => scene.look("side"),
  "3": (scene) => scene.look("top"),
};
