import * as fc from "fast-check";
import { expect, test } from "vitest";
import { targetSize } from "./photoShrink.ts";

test("a phone's photo is brought to 1600 px, lying or standing", () => {
  expect(targetSize({ widthPx: 4032, heightPx: 3024 })).toEqual({ widthPx: 1600, heightPx: 1200 });
  expect(targetSize({ widthPx: 3024, heightPx: 4032 })).toEqual({ widthPx: 1200, heightPx: 1600 });
});

test("a small picture is left at its size", () => {
  expect(targetSize({ widthPx: 640, heightPx: 480 })).toEqual({ widthPx: 640, heightPx: 480 });
  expect(targetSize({ widthPx: 1600, heightPx: 1600 })).toEqual({ widthPx: 1600, heightPx: 1600 });
});

test("a strip keeps at least one pixel across", () => {
  expect(targetSize({ widthPx: 20_000, heightPx: 2 })).toEqual({ widthPx: 1600, heightPx: 1 });
});

test("no picture grows, passes the limit, or changes shape by more than a pixel", () => {
  const side = fc.integer({ min: 1, max: 20_000 });
  fc.assert(
    fc.property(side, side, fc.integer({ min: 1, max: 4000 }), (widthPx, heightPx, limitPx) => {
      const size = targetSize({ widthPx, heightPx, limitPx });
      expect(Math.max(size.widthPx, size.heightPx)).toBe(Math.min(limitPx, Math.max(widthPx, heightPx)));
      const scale = Math.max(size.widthPx, size.heightPx) / Math.max(widthPx, heightPx);
      expect(Math.abs(size.widthPx - widthPx * scale)).toBeLessThan(1);
      expect(Math.abs(size.heightPx - heightPx * scale)).toBeLessThan(1);
    }),
  );
});

test.each([0, -3, 2.5, Number.NaN])("a side of %d px is refused", (widthPx) => {
  expect(() => targetSize({ widthPx, heightPx: 10 })).toThrow(`found ${widthPx}`);
});
