import { Group } from "three";
import { plus, squareTo, times, type Vec3 } from "../../../geometry/vector.ts";
import type { Bounds } from "./hangTurn.ts";
import type { SceneColours } from "./sceneColours.ts";
import type { Heights, Patch } from "./sceneView.ts";
import { dashes, strokes, type Stroke } from "./strokes.ts";
import { floatingLabel } from "./floatingLabel.ts";

export type Drawn = { readonly group: Group; readonly dispose: () => void };

/** Things put together in a group and taken down together. */
function gathered(): Drawn & {
  readonly put: (...args: Parameters<typeof strokes>) => void;
  readonly undo: (() => void)[];
} {
  const group = new Group();
  const undo: (() => void)[] = [];
  return {
    group,
    undo,
    put: (runs, look) => {
      if (runs.length === 0) return;
      const { mesh, dispose } = strokes(runs, look);
      group.add(mesh);
      undo.push(dispose);
    },
    dispose: () => undo.forEach((one) => one()),
  };
}

/** Beside the piece, in the shop's axes: a ruler with an arrow up, and the level in the cup. */
export function heightLines(
  heights: Heights,
  { bounds, colours, pxToScale }: { bounds: Bounds; colours: SceneColours; pxToScale: number },
): Drawn {
  const drawn = gathered();
  const { low, high } = bounds;
  const tall = heights.highMm - heights.lowMm;
  const wide = Math.max(tall, high[0] - low[0], high[1] - low[1]);
  const gap = 0.07 * wide;
  const radius = 0.0022 * wide;
  const [x, y] = [high[0] + gap, (low[1] + high[1]) / 2];
  const tip = Math.max(heights.cup?.atMm ?? heights.highMm, heights.highMm) + 0.08 * wide;
  const wing = 0.02 * wide;
  const soft = colours["ink-soft"];
  const ticks = heights.ticks.map(({ aboveMm }): Stroke => [
    [x - 0.3 * gap, y, heights.lowMm + aboveMm],
    [x + 0.3 * gap, y, heights.lowMm + aboveMm],
  ]);
  const arrow: readonly Stroke[] = [
    [
      [x, y, heights.lowMm],
      [x, y, tip],
    ],
    [
      [x - wing, y, tip - 2 * wing],
      [x, y, tip],
    ],
    [
      [x + wing, y, tip - 2 * wing],
      [x, y, tip],
    ],
  ];
  drawn.put([...arrow, ...ticks], { radius, colour: soft });
  const say = (text: string, at: Vec3, isStrong: boolean): void => {
    const ink = isStrong ? colours.ink : soft;
    const label = floatingLabel({ text, shape: "plain", fill: colours.surface, ink, line: colours.surface });
    for (const sprite of label.sprites) {
      const size = (isStrong ? 20 : 17) * pxToScale;
      sprite.center.set(0, 0.5);
      sprite.position.set(...at);
      sprite.scale.set(label.aspect * size, size, 1);
      drawn.group.add(sprite);
    }
    drawn.undo.push(label.dispose);
  };
  for (const { aboveMm, label } of heights.ticks)
    say(label, [x + 0.45 * gap, y, heights.lowMm + aboveMm], false);
  if (heights.cup === null) return drawn;
  const cup = heights.cup.atMm;
  const ring: readonly Vec3[] = [
    [low[0] - gap, low[1] - gap, cup],
    [x, low[1] - gap, cup],
    [x, high[1] + gap, cup],
    [low[0] - gap, high[1] + gap, cup],
  ];
  const rim = ring.flatMap((corner, n) => dashes([corner, ring[(n + 1) % 4]!], 0.03 * wide));
  drawn.put(rim, { radius: 1.4 * radius, colour: colours.ember });
  say(heights.cup.label, [x + 0.45 * gap, y, cup], true);
  return drawn;
}

/** Flats as their widest round patch on the surface, mesh mm. */
export function patchLines(patches: readonly Patch[], colours: SceneColours): Drawn {
  const drawn = gathered();
  for (const { point, normal, widthMm } of patches) {
    const [u, v] = squareTo(normal);
    const middle = plus(point, times(normal, 0.01 * widthMm));
    const around = (n: number): Vec3 => {
      const angle = (Math.PI * n) / 24;
      const [a, b] = [(widthMm / 2) * Math.cos(angle), (widthMm / 2) * Math.sin(angle)];
      return plus(middle, plus(times(u, a), times(v, b)));
    };
    const rim = Array.from({ length: 48 }, (_, n): Stroke => [around(n), around(n + 1)]);
    drawn.put(rim, { radius: 0.012 * widthMm, colour: colours.note });
  }
  return drawn;
}

/** The run of a ridge, mesh mm, drawn over the piece. */
export function ridgeLine(
  ridge: readonly Vec3[],
  { radius, colour }: { radius: number; colour: SceneColours["ink"] },
): Drawn {
  const drawn = gathered();
  drawn.put(
    ridge.slice(1).map((to, n): Stroke => [ridge[n]!, to]),
    { radius, colour, isOver: true },
  );
  return drawn;
}

/** Three rings to turn the piece by, in the shop's axes, as points in turning order. */
export const ringPoints = (axis: "x" | "y" | "z", radius: number): readonly Vec3[] =>
  Array.from({ length: 72 }, (_, n): Vec3 => {
    const [a, b] = [radius * Math.cos((Math.PI * n) / 36), radius * Math.sin((Math.PI * n) / 36)];
    return axis === "x" ? [0, a, b] : axis === "y" ? [b, 0, a] : [a, b, 0];
  });

export function ringLines(radius: number, colours: SceneColours): Drawn {
  const drawn = gathered();
  for (const [axis, colour] of [
    ["x", colours.ember],
    ["y", colours.clear],
    ["z", colours.note],
  ] as const) {
    const points = ringPoints(axis, radius);
    drawn.put(
      points.map((point, n): Stroke => [point, points[(n + 1) % points.length]!]),
      { radius: 0.008 * radius, colour, isOver: true },
    );
  }
  return drawn;
}
