import { spawnSync } from "node:child_process";
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, relative, resolve } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";

/** What every part of the page may import. */
const core = ["physics", "geometry", "trade", "logbook", "rules", "storage", "workers", "device"];

/** The base of the page and its six jobs. */
const jobs = ["ui/base", "ui/air", "ui/pattern", "ui/shop", "ui/bucket", "ui/fire", "ui/making"];

/** The layers and the layers each may import; DEVELOPERS.md draws the same. */
const below: Readonly<Record<string, readonly string[]>> = {
  physics: [],
  geometry: ["physics"],
  trade: ["physics"],
  logbook: ["physics", "geometry", "trade"],
  rules: ["physics", "geometry", "trade", "logbook"],
  storage: ["physics", "geometry", "trade", "logbook"],
  workers: ["physics", "geometry"],
  device: [],
  rescue: [],
  "ui/base": core,
  "ui/air": [...core, "ui/base"],
  "ui/pattern": [...core, "ui/base"],
  "ui/shop": [...core, "ui/base"],
  "ui/bucket": [...core, "ui/base", "ui/shop"],
  "ui/fire": [...core, "ui/base", "ui/air", "ui/pattern"],
  "ui/making": [...core, "ui/base", "ui/air", "ui/pattern", "ui/shop", "ui/fire"],
  "ui/shell": [...core, ...jobs],
};
const layers = Object.keys(below);
const typeOf = (layer: string): string => `Kept${layer.replace("/", "")}`;

type LayerConfig = {
  readonly compilerOptions: { readonly lib: readonly string[] };
  readonly references: readonly { readonly path: string }[];
};
const configOf = (layer: string): LayerConfig =>
  JSON.parse(readFileSync(`src/${layer}/tsconfig.json`, "utf8")) as LayerConfig;

const foldersIn = (path: string): readonly string[] =>
  readdirSync(path, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((folder) => folder.name);

test("every folder of src, and of its ui, is a layer of the table", () => {
  const folders = [
    ...foldersIn("src").filter((name) => name !== "ui"),
    ...foldersIn("src/ui").map((name) => `ui/${name}`),
  ];
  expect(folders.sort()).toEqual([...layers].sort());
});

test.each(layers)("%s references the layers below it and no other", (layer) => {
  expect(
    configOf(layer)
      .references.map(({ path }) => relative("src", join("src", layer, path)))
      .sort(),
  ).toEqual([...(below[layer] ?? [])].sort());
});

test.each(["physics", "geometry", "trade", "logbook", "rules"])("%s knows no DOM", (layer) => {
  expect(configOf(layer).compilerOptions.lib).toEqual(["es2023"]);
});

/** Sheets that a file of this layer takes from one it may not import; the compiler doesn't see them. */
const sheetsFromAbove = (layer: string, folder = join("src", layer)): readonly string[] =>
  readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => join(folder, name))
    .flatMap((file) =>
      [...readFileSync(file, "utf8").matchAll(/\bfrom "(\.[^"]+\.css)"/g)]
        .map(([, path = ""]) => relative("src", join(dirname(file), path)).replaceAll("\\", "/"))
        .filter((sheet) => ![layer, ...(below[layer] ?? [])].some((one) => sheet.startsWith(`${one}/`)))
        .map((sheet) => `${file}: ${sheet}`),
    );

test.each(layers)("%s takes no style sheet from above or from beside it", (layer) => {
  expect(sheetsFromAbove(layer)).toEqual([]);
});

test("a style sheet from above is seen", () => {
  // As if the roof were a job: it takes sheets of the base, which the core has none of.
  expect(sheetsFromAbove("device", join("src", "ui", "shell")).length).toBeGreaterThan(0);
});

describe("a violation planted in a copy", () => {
  let copy = "";
  let types = "";
  const plants = new Map<string, string>();
  const run = (command: string, args: readonly string[]): string => {
    const { stdout, stderr } = spawnSync(command, args, { cwd: copy, encoding: "utf8" });
    return `${stdout}${stderr}`;
  };
  const plant = (layer: string, name: string, text: string): void => {
    plants.set(`${layer}/${name}`, text);
    writeFileSync(join(copy, "src", layer, name), text);
  };

  const build = (): string => run("npx", ["tsc", "-b", ...layers.map((layer) => `src/${layer}`)]);

  beforeAll(() => {
    copy = mkdtempSync(join(tmpdir(), "dipbook-layers-"));
    for (const file of ["tsconfig.base.json", ".oxlintrc.json", "package.json"])
      cpSync(file, join(copy, file));
    symlinkSync(resolve("node_modules"), join(copy, "node_modules"), "junction");
    for (const layer of layers) {
      mkdirSync(join(copy, "src", layer), { recursive: true });
      cpSync(`src/${layer}/tsconfig.json`, join(copy, "src", layer, "tsconfig.json"));
      writeFileSync(join(copy, "src", layer, "kept.ts"), `export type ${typeOf(layer)} = "${layer}";\n`);
    }
    for (const layer of layers) {
      const refused = layers.filter((other) => other !== layer && !(below[layer] ?? []).includes(other));
      for (const other of refused)
        plant(
          layer,
          `up-${other.replace("/", "-")}.ts`,
          `import type { ${typeOf(other)} } from "${relative(layer, other)}/kept.ts";\nexport type Up = ${typeOf(other)};\n`,
        );
    }
    for (const layer of ["physics", "geometry", "trade", "logbook", "rules"])
      plant(layer, "dom.ts", "export const width = window.innerWidth;\n");
    for (const layer of ["physics", "geometry", "trade"])
      plant(layer, "package.ts", `import { z } from "zod";\nexport const text = z.string();\n`);
    types = build();
  }, 600_000);

  afterAll(() => rmSync(copy, { recursive: true, force: true }));

  test("an upward or sideways import, type-only too, does not compile", () => {
    const refused = types.split("\n").filter((line) => line.includes("error TS6307"));
    const missed = [...plants.keys()]
      .filter((name) => name.includes("/up-"))
      .filter((name) => !refused.some((line) => line.startsWith(`src/${name}`)));
    expect(missed).toEqual([]);
  });

  test("the DOM in the core does not compile", () => {
    const missed = [...plants.keys()].filter(
      (name) => name.endsWith("/dom.ts") && !types.includes(`src/${name}`),
    );
    expect(missed).toEqual([]);
  });

  test("a package in physics, geometry or trade is refused by lint", () => {
    const lint = run("npx", ["oxlint", "src"]);
    const missed = ["physics", "geometry", "trade"].filter(
      (layer) => !lint.includes(`src/${layer}/package.ts`),
    );
    expect(missed, lint).toEqual([]);
    expect(lint).toContain("import no package");
  });

  test("a tree with nothing planted compiles", () => {
    for (const name of plants.keys()) rmSync(join(copy, "src", name));
    expect(build().trim()).toBe("");
  }, 600_000);
});
