import type { Page } from "@playwright/test";

export type Line = {
  readonly id: string;
  readonly stream: string;
  readonly type: string;
  readonly at: number;
  readonly device: string;
  readonly body: Readonly<Record<string, unknown>>;
};

/** Every line that lies in the browser's store, oldest first, read past the app and its screens. */
export const linesInStore = (page: Page): Promise<readonly Line[]> =>
  page.evaluate(
    () =>
      new Promise<Line[]>((done, fail) => {
        const opening = indexedDB.open("dipbook");
        opening.addEventListener("error", () => fail(opening.error));
        opening.addEventListener("success", () => {
          const asking = opening.result.transaction("entries").objectStore("entries").getAll();
          asking.addEventListener("error", () => fail(asking.error));
          asking.addEventListener("success", () => {
            opening.result.close();
            done((asking.result as Line[]).toSorted((a, b) => a.at - b.at));
          });
        });
      }),
  );

export const linesOf = async (page: Page, type: string): Promise<readonly Line[]> =>
  (await linesInStore(page)).filter((line) => line.type === type);
