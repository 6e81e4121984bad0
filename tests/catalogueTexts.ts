import { readdirSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

export type CatalogueText = {
  readonly file: string;
  readonly part: string;
  readonly key: string;
  /** With its placeholders as they are written, "{coat}". */
  readonly text: string;
};

const folder = "src/ui/base/words";

/** A text with nothing given keeps its placeholders; one that goes by a number is read in both its forms. */
const formsOf = (text: unknown): readonly string[] =>
  typeof text === "string"
    ? [text]
    : typeof text === "function"
      ? [...new Set([1, 2].map((count) => String((text as (given: number) => unknown)(count))))]
      : [];

/** Every text of the catalogue, by the file and part it stands in. */
export async function textsOfCatalogue(): Promise<readonly CatalogueText[]> {
  const files = readdirSync(folder).filter((name) => name.endsWith(".ts") && !name.endsWith(".test.ts"));
  const all = await Promise.all(
    files.map(async (file) => {
      const parts = (await import(pathToFileURL(join(process.cwd(), folder, file)).href)) as object;
      return Object.entries(parts).flatMap(([part, texts]) =>
        typeof texts === "object" && texts !== null
          ? Object.entries(texts).flatMap(([key, text]) =>
              formsOf(text).map((form) => ({ file, part, key, text: form })),
            )
          : [],
      );
    }),
  );
  return all.flat();
}
