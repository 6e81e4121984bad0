import { describe, expect, test } from "vitest";
import { cupSeconds, cupViscosityMm2S, firstMix } from "./slurry.ts";

describe("a cup as people write it", () => {
  test.each([
    ["Zahn 4", "zahn-4"],
    ["zahn4", "zahn-4"],
    ["ZAHN #4", "zahn-4"],
    ["Zahn cup no. 4", "zahn-4"],
    ["Ford Cup 4", "ford-4"],
    ["iso-4mm", "iso-4"],
    ["ISO 4 mm", "iso-4"],
    ["ISO 2431 4 mm", "iso-4"],
  ])("a cup written %s is %s", (written, cup) => {
    expect(cupViscosityMm2S({ cup: written, seconds: 50 })).toEqual(cupViscosityMm2S({ cup, seconds: 50 }));
    expect(cupSeconds({ cup: written, viscosityMm2S: 100 })).toEqual(cupSeconds({ cup, viscosityMm2S: 100 }));
  });

  test.each(["", "4", "zahn", "Zahn 9", "Zahn 44", "DIN 4", "toString", "zahn-4 or 5"])(
    "a cup written %j is unknown, and the refusal says it as written",
    (cup) => {
      expect(cupViscosityMm2S({ cup, seconds: 50 })).toEqual({ ok: false, code: "unknown-cup", cup });
      expect(cupSeconds({ cup, viscosityMm2S: 50 })).toEqual({ ok: false, code: "unknown-cup", cup });
    },
  );

  test("what is no word at all is unknown too", () =>
    expect(cupViscosityMm2S({ cup: null as never, seconds: 50 })).toMatchObject({ code: "unknown-cup" }));
});

describe("a first mix told in few words", () => {
  const binder = { binderGCm3: 1.2, binderSilica: 0.3 };
  test("without a word of the binder it is a sol of 30 % with 1.20 on its label", () =>
    expect(firstMix({ volumeL: 20, flourGCm3: 2.2, ratio: 1.7 })).toEqual(
      firstMix({ volumeL: 20, flourGCm3: 2.2, ratio: 1.7, ...binder }),
    ));
  test("a ratio that is not known leaves the share of volume to decide", () => {
    const told = { volumeL: 20, flourGCm3: 2.2, flourVolumeFraction: 0.48, ...binder };
    expect(firstMix({ ...told, ratio: undefined })).toEqual(firstMix(told));
  });
  test("with neither it is told what is missing", () => {
    const neither = { volumeL: 20, flourGCm3: 2.2 } as Parameters<typeof firstMix>[0];
    expect(() => firstMix(neither)).toThrow(/^ratio or flourVolumeFraction must be told/);
  });
});
