import { existsSync, readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import product from "../../package.json" with { type: "json" };

const pages = ["DEVELOPERS.md", "README.md", "CONTRIBUTING.md"];

/** What stands in code: between backticks, also over two lines, and in fenced blocks. */
function codeIn(text: string): readonly string[] {
  const fenced = /^```.*\n([\s\S]*?)^```$/gm;
  const blocks = [...text.matchAll(fenced)].map(([, block = ""]) => block);
  const inline = [...text.replaceAll(fenced, "").matchAll(/`([^`]+)`/g)].map(([, code = ""]) => code);
  return [...blocks, ...inline];
}

/** Words with a slash inside, or with the ending of a file, and nothing that no path has. */
const isPath = (word: string): boolean =>
  /^[\w.@-]+(\/[\w.@-]+)+\/?$/.test(word) || /^[\w.-]+\.(tsx?|mjs|json|md|css|html)$/.test(word);

const pathsIn = (text: string): readonly string[] => [
  ...codeIn(text).flatMap((code) => code.split(/\s+/).filter(isPath)),
  ...[...text.matchAll(/\]\(([^)#]+)\)|\bsrc="([^"]+)"/g)]
    .map(([, link, image]) => link ?? image ?? "")
    .filter((address) => !/^[a-z]+:/.test(address)),
];

/** The scripts that are run by `npm`, which has short words for two of them. */
const scriptsIn = (text: string): readonly string[] =>
  codeIn(text)
    .flatMap((code) => [...code.matchAll(/\bnpm (?:run ([\w-]+)|(start|test)\b)/g)])
    .map(([, script, short]) => script ?? short ?? "");

describe.each(pages)("%s", (page) => {
  const text = readFileSync(page, "utf8");

  test("names no path that isn't there", () => {
    expect(pathsIn(text).filter((path) => !existsSync(path))).toEqual([]);
  });

  test("names no script that package.json lacks", () => {
    expect(scriptsIn(text).filter((script) => !(script in product.scripts))).toEqual([]);
  });
});

test("what reads these pages sees paths and scripts wherever they stand", () => {
  const text = [
    "Run `npm run unit\nsrc/none.ts` in `src/ui`, not `(at, id)`, `z.output` or `piece/<id>`.",
    "```\nnpm start\n```",
    "[more](MORE.md), [far](https://example.org/a.md)",
    '<img src="docs/none.png" />',
  ].join("\n");
  expect(pathsIn(text)).toEqual(["src/none.ts", "src/ui", "MORE.md", "docs/none.png"]);
  expect(scriptsIn(text)).toEqual(["start", "unit"]);
  expect(pages.map((page) => pathsIn(readFileSync(page, "utf8")).length)).toEqual([
    expect.toSatisfy((count: number) => count > 80),
    expect.toSatisfy((count: number) => count > 4),
    expect.toSatisfy((count: number) => count > 2),
  ]);
});

test("DEVELOPERS.md names every layer, every job, every subject and every folder of tests", () => {
  const named = new Set(pathsIn(readFileSync("DEVELOPERS.md", "utf8")));
  const folders = ["src", "src/ui", "src/ui/base", "src/physics", "src/logbook", "tests"].flatMap((folder) =>
    readdirSync(folder, { withFileTypes: true })
      .filter((entry) => entry.isDirectory())
      .map((entry) => join(folder, entry.name).replaceAll("\\", "/")),
  );
  expect(folders.filter((folder) => !named.has(folder))).toEqual([]);
});

test("DEVELOPERS.md stays below 200 lines", () => {
  expect(readFileSync("DEVELOPERS.md", "utf8").split("\n").length - 1).toBeLessThan(200);
});
