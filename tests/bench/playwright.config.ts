import { defineConfig } from "@playwright/test";
import base from "../../playwright.config.ts";

export default defineConfig({
  ...base,
  testDir: ".",
  testMatch: "**/*.bench.ts",
  workers: 1,
  timeout: 600_000,
  reporter: [["list"]],
});
