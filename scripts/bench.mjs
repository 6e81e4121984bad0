import { must, setUp } from "./setUp.mjs";

setUp();
must("npx", ["vite", "build", "--logLevel", "warn"]);
must("npx", ["playwright", "test", "--config", "tests/bench/playwright.config.ts"]);
