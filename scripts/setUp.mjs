import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";

const stamp = "node_modules/.dipbook-lock";

/** Runs a command with its output shown; exits with its code when it fails. */
export function must(command, args, options = {}) {
  const done = spawnSync(command, args, {
    stdio: "inherit",
    shell: process.platform === "win32",
    ...options,
  });
  if (done.status !== 0) process.exit(done.status ?? 1);
}

/** Installs what package-lock.json names, unless that very lock is installed already. */
export function setUp() {
  const [major = 0, minor = 0] = process.versions.node.split(".").map(Number);
  if (major < 20 || (major === 20 && minor < 19)) {
    console.error(
      `Dipbook needs Node 20.19 or newer; this is ${process.versions.node}. Install a newer Node and run again.`,
    );
    process.exit(1);
  }
  const lock = createHash("sha256").update(readFileSync("package-lock.json")).digest("hex");
  if (existsSync(stamp) && readFileSync(stamp, "utf8") === lock) return;
  must("npm", ["ci"]);
  mkdirSync("node_modules", { recursive: true });
  writeFileSync(stamp, lock);
}
