import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, rmSync } from "node:fs";
import { delimiter, join } from "node:path";
import { must, setUp } from "./setUp.mjs";

const names = ["chromium", "chromium-browser", "google-chrome-stable", "google-chrome", "chrome"];
const usualPlaces = [
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
];

function hasChromium() {
  if (process.env.CHROME_PATH) return true;
  const folders = (process.env.PATH ?? "").split(delimiter);
  return (
    names.some((name) => folders.some((folder) => existsSync(join(folder, name)))) ||
    usualPlaces.some((place) => existsSync(place))
  );
}

/** A browser of this machine, or Debian's own installed by root; anything else is for the person to do. */
function findOrInstallChromium() {
  if (hasChromium()) return;
  if (process.getuid?.() !== 0 || !existsSync("/usr/bin/apt-get")) {
    console.error("No Chromium or Chrome found. Install one, or name it in CHROME_PATH, and run again.");
    process.exit(1);
  }
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  must("apt-get", ["update", "-qq"], { env });
  must(
    "apt-get",
    ["-o", "DPkg::Lock::Timeout=300", "install", "-y", "-qq", "--no-install-recommends", "chromium"],
    { env },
  );
}

const tally = { passed: 0, failed: 0 };
const failedSteps = [];
const whatFailed = [];

function step(name, command, args) {
  console.log(`\n— ${name}`);
  const started = Date.now();
  const { status } = spawnSync(command, args, { stdio: "inherit", shell: process.platform === "win32" });
  console.log(
    `  ${name}: ${status === 0 ? "ok" : "FAILED"} in ${((Date.now() - started) / 1000).toFixed(1)} s`,
  );
  if (status !== 0) failedSteps.push(name);
}

/** Adds what a runner itself reports, so that a run that executed nothing cannot look green. */
function count(report, read) {
  if (!existsSync(report)) return void failedSteps.push(`${report} is missing`);
  const { passed, failed, found } = read(JSON.parse(readFileSync(report, "utf8")));
  if (passed + failed === 0) failedSteps.push(`${report} holds no test`);
  tally.passed += passed;
  tally.failed += failed;
  whatFailed.push(...found);
}

const fromVitest = ({ numPassedTests, numFailedTests, testResults }) => ({
  passed: numPassedTests,
  failed: numFailedTests,
  found: testResults.flatMap(({ name, status, message, assertionResults }) => {
    const failed = assertionResults.filter((test) => test.status === "failed");
    const tests = failed.map((test) => `${name}: ${test.fullName}\n${test.failureMessages.join("\n")}`);
    return tests.length === 0 && status === "failed" ? [`${name}\n${message}`] : tests;
  }),
});
const failedSpecs = ({ suites = [], specs = [] }) => [
  ...specs.filter(({ ok, tests }) => !ok || tests.some(({ status }) => status === "flaky")),
  ...suites.flatMap(failedSpecs),
];
const fromPlaywright = ({ stats, ...report }) => ({
  passed: stats.expected,
  failed: stats.unexpected + stats.flaky,
  found: failedSpecs(report).map(({ file, title, tests }) => {
    const errors = tests.flatMap(({ results }) => results.flatMap((result) => result.errors));
    return `${file}: ${title}\n${errors.map(({ message }) => message).join("\n")}`;
  }),
});

setUp();
findOrInstallChromium();
rmSync(".reports", { recursive: true, force: true });
mkdirSync(".reports", { recursive: true });

step("types", "npx", ["tsc", "-b"]);
step("lint", "npx", ["oxlint", "--type-aware", "--deny-warnings"]);
step("format", "npx", ["prettier", "--check", "--log-level", "warn", "."]);
step("dead code", "npx", ["knip"]);
// Nothing in src that only tests use.
step("dead code of the app", "npx", ["knip", "--production"]);
const vitest = (project) => [
  "vitest",
  "run",
  "--project",
  project,
  "--reporter=default",
  "--reporter=json",
  `--outputFile.json=.reports/${project}.json`,
];
step("core", "npx", vitest("core"));
step("browser", "npx", vitest("browser"));
step("build", "npx", ["vite", "build", "--logLevel", "warn"]);
step("journeys", "npx", ["playwright", "test"]);
count(".reports/core.json", fromVitest);
count(".reports/browser.json", fromVitest);
count(".reports/journeys.json", fromPlaywright);

// Once more at the end, where whoever sees only the end of the output finds them.
for (const text of whatFailed) console.log(`\n✗ ${text.slice(0, 3000)}`);
if (failedSteps.length > 0) console.log(`\nNot passed: ${failedSteps.join(", ")}`);
console.log(`\n${tally.passed} passed, ${tally.failed + failedSteps.length} failed`);
process.exit(failedSteps.length > 0 || tally.failed > 0 ? 1 : 0);
