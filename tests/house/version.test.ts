import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import product from "../../package.json" with { type: "json" };

test("the newest version of the list of changes is that of the package, and of its lockfile", () => {
  const [newest] = /^## (\S+)/m.exec(readFileSync("CHANGELOG.md", "utf8"))?.slice(1) ?? [];
  const lock = JSON.parse(readFileSync("package-lock.json", "utf8")) as { readonly version: string };
  expect(newest).toBe(product.version);
  expect(lock.version).toBe(product.version);
});
