import { defineConfig } from "@playwright/test";
import base from "../../playwright.config.ts";

export default defineConfig({
  ...base,
  testDir: ".",
  outputDir: "../../test-results/bench",
  testMatch: "**/*.bench.ts",
  workers: 1,
  timeout: 300_000,
  use: { ...base.use, actionTimeout: 20_000 },
  reporter: [["list"]],
});
