import { playwright } from "@vitest/browser-playwright";
import react from "@vitejs/plugin-react";
import { defineConfig } from "vitest/config";
import { chromiumArgs, chromiumPath } from "./tests/chromium.ts";

export default defineConfig({
  plugins: [react()],
  test: {
    projects: [
      {
        extends: true,
        test: {
          name: "core",
          setupFiles: ["tests/propertySeed.ts"],
          // Ends only what is stuck: no machine is too slow for a test.
          testTimeout: 60_000,
          hookTimeout: 120_000,
          environment: "node",
          include: ["src/**/*.test.ts", "tests/house/**/*.test.ts"],
          exclude: ["**/*.browser.test.*"],
        },
      },
      {
        extends: true,
        optimizeDeps: {
          include: [
            "react",
            "react-dom",
            "react-dom/client",
            "react/jsx-dev-runtime",
            "dexie",
            "dexie-react-hooks",
            "zustand",
            "@nanostores/i18n",
            "nanostores",
            "wouter",
            "zod",
            "uuid",
            "fast-check",
            "@testing-library/react",
            "@testing-library/user-event",
            "@date-fns/tz",
            "date-fns/addDays",
            "date-fns/constants",
            "date-fns/differenceInCalendarDays",
            "date-fns/isSameDay",
            "date-fns/lightFormat",
            "date-fns/startOfDay",
            "date-fns/subDays",
            "lucide-react",
            "workbox-window",
            "papaparse",
            "three",
            "three/examples/jsm/controls/OrbitControls.js",
            "meshoptimizer/simplifier",
          ],
        },
        test: {
          name: "browser",
          setupFiles: ["tests/propertySeed.ts"],
          testTimeout: 90_000,
          hookTimeout: 90_000,
          expect: { poll: { timeout: 20_000 } },
          include: ["src/**/*.browser.test.{ts,tsx}"],
          browser: {
            enabled: true,
            headless: true,
            screenshotFailures: false,
            provider: playwright({
              launchOptions: { executablePath: chromiumPath(), args: [...chromiumArgs] },
            }),
            instances: [{ browser: "chromium" }],
          },
        },
      },
    ],
  },
});
