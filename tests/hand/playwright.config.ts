import { defineConfig } from "@playwright/test";
import base from "../../playwright.config.ts";

/** Proofs that take long and are run by hand: `npx playwright test --config tests/hand/playwright.config.ts`. */
export default defineConfig({
  ...base,
  testDir: ".",
  outputDir: "../../test-results/hand",
  testMatch: "**/*.hand.ts",
  workers: 1,
  retries: 0,
  timeout: 3_600_000,
  reporter: [["list"]],
});
