import { readFileSync, readdirSync } from "node:fs";
import { basename, join } from "node:path";
import { expect, test } from "vitest";

const walk = (folder: string): readonly string[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap((entry) =>
    entry.isDirectory() ? walk(join(folder, entry.name)) : [join(folder, entry.name)],
  );
const sources = [...walk("src"), ...walk("tests")].filter((file) => /\.(ts|tsx)$/.test(file));
const linesOf = (file: string): number => readFileSync(file, "utf8").split("\n").length - 1;

test("no source file passes 300 lines", () => {
  expect(sources.filter((file) => linesOf(file) > 300).map((file) => `${file}: ${linesOf(file)}`)).toEqual(
    [],
  );
});

test("no file or folder is named for nothing in particular", () => {
  const vague = /(^|\/)(utils?|helpers?|common|misc|types|index)(\.tsx?)?(\/|$)/;
  expect(sources.filter((file) => vague.test(file.replaceAll("\\", "/")))).toEqual([]);
});

test("components are named in PascalCase, everything else in camelCase", () => {
  const odd = sources
    .filter((file) => file.startsWith("src"))
    .filter(
      (file) =>
        !/^([A-Z][A-Za-z0-9]*\.tsx|[A-Z][A-Za-z0-9]*\.browser\.test\.tsx|[a-z][A-Za-z0-9]*(\.browser)?(\.test|\.worker)?\.tsx?)$/.test(
          basename(file),
        ),
    );
  expect(odd).toEqual([]);
});

test("every journey, bench and truth file lies where it belongs", () => {
  expect(
    sources.filter((file) => file.endsWith(".e2e.ts") && !file.startsWith(join("tests", "journeys"))),
  ).toEqual([]);
});
