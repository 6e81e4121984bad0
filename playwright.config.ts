import { defineConfig } from "@playwright/test";
import { chromiumArgs, chromiumPath } from "./tests/chromium.ts";

export default defineConfig({
  testDir: "tests/journeys",
  testMatch: "**/*.e2e.ts",
  fullyParallel: false,
  workers: 2,
  // Waits are for states; these only end a journey that is stuck, also on a machine several times slower.
  timeout: 240_000,
  expect: { timeout: 30_000 },
  reporter: [["list"], ["json", { outputFile: ".reports/journeys.json" }]],
  outputDir: "test-results",
  use: {
    browserName: "chromium",
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    locale: "en-GB",
    timezoneId: "Europe/Berlin",
    launchOptions: { executablePath: chromiumPath(), args: [...chromiumArgs] },
    trace: "off",
  },
});
