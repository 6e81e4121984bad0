import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, normalize } from "node:path";
import { expect, test } from "vitest";

const imported = /(?:\bfrom|\bimport|\bimport\(|new URL\()\s*["'](\.{1,2}\/[^"'\n?]+)/g;

type Arrows = ReadonlyMap<string, readonly string[]>;

/** Which file of `src` imports which, `import type` and lazy imports included; tests left out. */
function arrowsOf(folder: string): Arrows {
  const files = readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => /\.tsx?$/.test(name) && !name.includes(".test."))
    .map((name) => join(folder, name));
  const known = new Set(files);
  const importsOf = (file: string): readonly string[] =>
    [...readFileSync(file, "utf8").matchAll(imported)]
      .map(([, path]) => normalize(join(dirname(file), path ?? "")))
      .filter((target) => known.has(target));
  return new Map(files.map((file) => [file, importsOf(file)]));
}

/** The same between folders, `depth` names deep. */
function betweenFolders(arrows: Arrows, depth: number): Arrows {
  const folderOf = (file: string): string => dirname(file).split("/").slice(0, depth).join("/");
  const joined = new Map<string, Set<string>>();
  for (const [file, targets] of arrows)
    for (const target of targets) {
      const [from, to] = [folderOf(file), folderOf(target)];
      if (from !== to) joined.set(from, (joined.get(from) ?? new Set()).add(to));
    }
  return new Map([...joined].map(([from, to]) => [from, [...to]]));
}

/** The first way found that comes back to where it began; null where there is none. */
function circleIn(arrows: Arrows): readonly string[] | null {
  const done = new Set<string>();
  const walk = (at: string, way: readonly string[]): readonly string[] | null => {
    if (way.includes(at)) return [...way.slice(way.indexOf(at)), at];
    if (done.has(at)) return null;
    for (const next of arrows.get(at) ?? []) {
      const circle = walk(next, [...way, at]);
      if (circle !== null) return circle;
    }
    done.add(at);
    return null;
  };
  for (const start of arrows.keys()) {
    const circle = walk(start, []);
    if (circle !== null) return circle;
  }
  return null;
}

const arrows = arrowsOf("src");

test("what reads the imports sees types, lazy ones and workers", () => {
  expect(arrows.get("src/main.tsx")).toEqual(
    expect.arrayContaining(["src/start.tsx", "src/storage/backup/makeBackup.ts", "src/device/update.ts"]),
  );
  expect(
    circleIn(
      new Map([
        ["a", ["b"]],
        ["b", ["c"]],
        ["c", ["b"]],
      ]),
    ),
  ).toEqual(["b", "c", "b"]);
});

test("no file comes back to itself by its imports, those of types included", () => {
  expect(circleIn(arrows)).toBeNull();
});

test("no part of the page comes back to itself, nor a folder inside a part, nor a subject of the sums", () => {
  const inside = (path: string): Arrows => new Map([...arrows].filter(([file]) => file.startsWith(path)));
  expect(circleIn(betweenFolders(inside("src/ui/"), 3))).toBeNull();
  expect(circleIn(betweenFolders(inside("src/ui/"), 4))).toBeNull();
  expect(circleIn(betweenFolders(inside("src/physics/"), 3))).toBeNull();
});
