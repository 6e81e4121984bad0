import { expect, test } from "vitest";
import { anchorAt, bandPath, linePath, plotFrame } from "./plotFrame.ts";

// 200 px from 50 to 250 along the bottom, 100 px from 128 up to 28.
const frame = plotFrame({ width: 262, height: 100, x: [10, 20], y: [0, 4] });

test("the ends of both axes are the ends of the panel, and what is past them is held there", () => {
  expect([frame.x(10), frame.x(15), frame.x(20)]).toEqual([50, 150, 250]);
  expect([frame.y(0), frame.y(1), frame.y(4)]).toEqual([128, 103, 28]);
  expect([frame.x(-3), frame.x(99), frame.y(-1), frame.y(9)]).toEqual([50, 250, 128, 28]);
});

test("a place on the picture is read back as the value drawn there", () => {
  for (const value of [10, 12.5, 20]) expect(frame.at(frame.x(value))).toBeCloseTo(value, 9);
  expect([frame.at(0), frame.at(300)]).toEqual([10, 20]);
  const log = plotFrame({ width: 262, height: 100, x: [1, 16], y: [1, 16], isLog: true });
  expect(log.at(log.x(3))).toBeCloseTo(3, 9);
});

test("a doubling is as long everywhere on a logarithmic scale", () => {
  const { y } = plotFrame({ width: 262, top: 0, height: 100, x: [1, 16], y: [1, 16], isLog: true });
  expect(y(1) - y(2)).toBeCloseTo(25, 9);
  expect(y(8) - y(16)).toBeCloseTo(25, 9);
  expect(y(40)).toBe(0);
});

test("an axis with no length draws at its beginning", () => {
  const flat = plotFrame({ width: 262, height: 100, x: [5, 5], y: [0, 0] });
  expect([flat.x(5), flat.y(0)]).toEqual([50, 128]);
});

test("a line stops at a hole, and a lone point is a short stroke", () => {
  const at = (value: number) => ({ at: 10 + value, value });
  expect(linePath([at(0), at(1), null, at(2), null, at(3), at(4)], frame)).toBe(
    "M50.0 128.0L70.0 103.0M90.0 78.0h1M110.0 53.0L130.0 28.0",
  );
  expect(linePath([], frame)).toBe("");
});

test("a band goes along its upper ends and back along its lower ones", () => {
  const band = [
    { at: 10, low: 0, high: 1 },
    { at: 20, low: 1, high: 2 },
  ];
  expect(bandPath(band, frame)).toBe("M50.0 103.0L250.0 78.0L250.0 103.0L50.0 128.0Z");
  expect(bandPath([], frame)).toBe("");
});

test("a word over an upright stays in the picture", () => {
  expect([51, 150, 249].map((px) => anchorAt(px, frame))).toEqual(["start", "middle", "end"]);
});
