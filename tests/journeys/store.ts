import type { Page } from "@playwright/test";

export type Line = {
  readonly id: string;
  readonly stream: string;
  readonly type: string;
  readonly at: number;
  readonly device: string;
  readonly body: Readonly<Record<string, unknown>>;
};

/** All rows of one table of the browser's store, read past the app and its screens. */
const rowsInStore = (page: Page, table: "entries" | "drafts"): Promise<readonly unknown[]> =>
  page.evaluate(
    (of) =>
      new Promise<unknown[]>((done, fail) => {
        const opening = indexedDB.open("dipbook");
        opening.addEventListener("error", () => fail(opening.error));
        opening.addEventListener("success", () => {
          const asking = opening.result.transaction(of).objectStore(of).getAll();
          asking.addEventListener("error", () => fail(asking.error));
          asking.addEventListener("success", () => {
            opening.result.close();
            done(asking.result);
          });
        });
      }),
    table,
  );

/** Every line that lies in the browser's store, oldest first. */
export const linesInStore = async (page: Page): Promise<readonly Line[]> =>
  ((await rowsInStore(page, "entries")) as readonly Line[]).toSorted((a, b) => a.at - b.at);

/** Forms as they lie half-written in the store. */
export const draftsInStore = (page: Page): Promise<readonly unknown[]> => rowsInStore(page, "drafts");

export const linesOf = async (page: Page, type: string): Promise<readonly Line[]> =>
  (await linesInStore(page)).filter((line) => line.type === type);
