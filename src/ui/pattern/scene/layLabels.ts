import { Sprite, Vector3, type Camera, type Scene } from "three";
import { labelPlaces, type LabelBox } from "./labelPlaces.ts";

/**
 * Moves the labels of a scene aside on the screen, each from its own point, so that none covers another. Sprites at one
 * point with one text are one label. Heights beside the piece are laid first: they are a ruler.
 */
export function layLabels(
  scene: Scene,
  camera: Camera,
  { width, height }: { width: number; height: number },
): void {
  const labels: { readonly sprites: Sprite[]; readonly box: LabelBox }[] = [];
  const at = new Vector3();
  camera.updateMatrixWorld();
  scene.updateMatrixWorld();
  const perPixel = 2 / (camera.projectionMatrix.elements[5] * height);
  scene.traverse((one) => {
    if (!(one instanceof Sprite)) return;
    const last = labels.at(-1);
    const own = (one.userData["own"] ??= [0.5 - one.center.x, one.center.y - 0.5]) as [number, number];
    if (last !== undefined && last.sprites[0]!.material.map === one.material.map) {
      last.sprites.push(one);
      return;
    }
    at.setFromMatrixPosition(one.matrixWorld).project(camera);
    labels.push({
      sprites: [one],
      box: {
        x: ((at.x + 1) / 2) * width,
        y: ((1 - at.y) / 2) * height,
        wide: one.scale.x / perPixel,
        high: one.scale.y / perPixel,
        rank: one.userData["rank"] === undefined ? 0 : Number(one.userData["rank"]),
        own,
      },
    });
  });
  for (const [n, [across, down]] of labelPlaces(labels.map(({ box }) => box)).entries())
    for (const sprite of labels[n]!.sprites) sprite.center.set(0.5 - across, 0.5 + down);
}
