import { describe, expect, test } from "vitest";
import { makeBell } from "./tone.ts";
import { placeBeeps, ringing } from "./tonePattern.ts";

const rate = 44_100;

/** Loudest sample of each tenth of a second, 0–1, of a ringing set `inS` ahead. */
async function loudness({
  inS,
  rounds,
  takenBack = false,
}: {
  inS: number;
  rounds: number;
  takenBack?: boolean;
}) {
  const audio = new OfflineAudioContext(1, rate * 5, rate);
  const takeBack = placeBeeps(audio, { beeps: ringing(rounds), fromS: inS });
  if (takenBack) takeBack();
  const samples = (await audio.startRendering()).getChannelData(0);
  const tenth = rate / 10;
  return Array.from({ length: 50 }, (_, i) =>
    samples
      .subarray(i * tenth, (i + 1) * tenth)
      .reduce((most, sample) => Math.max(most, Math.abs(sample)), 0),
  );
}

describe("a tone set ahead", () => {
  test("is silent until its time, then loud, then over", async () => {
    const tenths = await loudness({ inS: 2, rounds: 1 });
    expect(Math.max(...tenths.slice(0, 20))).toBe(0);
    expect(tenths[20]).toBeGreaterThan(0.6);
    expect(Math.max(...tenths.slice(29))).toBeLessThan(0.001);
  });

  test("rings again each round", async () => {
    const tenths = await loudness({ inS: 0, rounds: 3 });
    for (const start of [0, 16, 32]) expect(Math.max(...tenths.slice(start, start + 3))).toBeGreaterThan(0.6);
    for (const rest of [9, 25, 41]) expect(Math.max(...tenths.slice(rest, rest + 6))).toBeLessThan(0.001);
  });

  test("taken back before its time makes no sound", async () => {
    expect(Math.max(...(await loudness({ inS: 2, rounds: 3, takenBack: true })))).toBe(0);
  });
});

test("a bell nobody touched says it is locked or ready, rings or not, and closes", async () => {
  const bell = makeBell();
  expect(bell.state()).toBe("locked");
  const unlocked = await bell.unlock();
  expect(["ready", "locked"]).toContain(unlocked);
  expect(bell.ring({ inS: 30, rounds: 2 })).toBe(unlocked);
  bell.silence();
  await bell.close();
  expect(bell.state()).toBe("locked");
});
