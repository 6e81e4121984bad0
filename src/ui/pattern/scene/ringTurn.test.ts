import { describe, expect, test } from "vitest";
import { caught, gripOf, ringTurn, type SeenRing } from "./ringTurn.ts";

/** A ring seen face on: radius 100 px about (200, 200), turning as its axis points at the eye. */
const ring = (axis: "x" | "z", radius: number, isFront = true): SeenRing => ({
  axis,
  points: Array.from({ length: 72 }, (_, n) => ({
    x: 200 + radius * Math.cos((Math.PI * n) / 36),
    y: 200 - radius * Math.sin((Math.PI * n) / 36),
    isFront,
  })),
});

describe("turning the piece by a ring", () => {
  test("a finger too far from any ring takes none", () => {
    expect(gripOf([ring("z", 100)], { x: 200, y: 200 }, 26)).toBeNull();
  });

  test("takes the ring under the finger, and of two as near the one in front", () => {
    expect(gripOf([ring("x", 60), ring("z", 100)], { x: 300, y: 200 }, 26)?.axis).toBe("z");
    expect(gripOf([ring("x", 100, false), ring("z", 100)], { x: 300, y: 200 }, 26)?.axis).toBe("z");
  });

  test("where two rings cross, takes the one that runs across the screen there", () => {
    // Seen nearly edge on: at its far right it runs into the screen.
    const edgeOn: SeenRing = {
      ...ring("x", 100),
      points: ring("x", 100).points.map((p) => ({ ...p, y: 200 + (p.y - 200) / 20 })),
    };
    expect(gripOf([edgeOn, ring("z", 100)], { x: 299, y: 198 }, 26)?.axis).toBe("z");
  });

  test("a drag along the rim by its radius is one radian, the other way is one back", () => {
    const grip = gripOf([ring("z", 100)], { x: 300, y: 200 }, 26)!;
    expect(ringTurn(grip, { x: 0, y: -100 })).toBeCloseTo(1, 2);
    expect(ringTurn(grip, { x: 0, y: 100 })).toBeCloseTo(-1, 2);
    expect(ringTurn(grip, { x: 80, y: 0 })).toBeCloseTo(0, 6);
  });

  test("is caught by whole steps of 15° when near one, and free between", () => {
    const step = Math.PI / 12;
    expect(caught(6 * step + 0.03)).toBeCloseTo(6 * step, 12);
    expect(caught(0.02)).toBe(0);
    expect(caught(2.5 * step)).toBe(2.5 * step);
  });
});
