import { expect, test } from "@playwright/test";
import { lnPair, logPairLikelihood } from "../../src/physics/evidence/calibration.ts";
import { learnShop } from "../../src/physics/evidence/shopLearning.ts";
import { figuresOf, show } from "./measure.ts";

const pairCount = 300;
const groupCount = 9;

/** Coats looked at some hours before and after they were dry, in shops that run a fifth slow, more or less. */
const pairs = Array.from({ length: pairCount }, (_, i) => {
  const dryAtS = 7200 * Math.exp(0.2 + 0.25 * Math.sin(7 * i));
  return {
    predictedS: 7200,
    wetAtS: i % 3 === 0 ? null : dryAtS - 900 - 60 * (i % 11),
    dryAtS: i % 5 === 0 && i % 3 !== 0 ? null : dryAtS + 1200 + 60 * (i % 13),
    weight: 1,
    group: `${i % groupCount}`,
  };
});

const taken = (work: () => void): number => {
  const start = performance.now();
  work();
  return performance.now() - start;
};

test("learning from three hundred coats in nine groups, beside one likelihood of each", () => {
  const bounds = pairs.map(lnPair);
  let sum = 0;
  const floor = Array.from({ length: 200 }, () =>
    taken(() => {
      for (const one of bounds) sum += logPairLikelihood(one, 0.2, 0.25);
    }),
  );
  expect(sum).toBeLessThan(0);
  const learning = Array.from({ length: 12 }, () =>
    taken(() => {
      expect(learnShop(pairs).groups.size).toBe(groupCount);
    }),
  );
  const [once, whole] = [figuresOf(floor), figuresOf(learning)];
  console.log(`\n${pairCount} pairs in ${groupCount} groups\n`);
  console.log(show("one likelihood of every pair (floor)", once));
  console.log(show("the shop and its groups learned anew", whole));
  console.log(`  in floors: ${(whole.median / once.median).toFixed(0)}\n`);
});
