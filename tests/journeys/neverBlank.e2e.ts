import { expect, test, type Page } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { visitOnceThenOffline } from "./offline.ts";
import { serveBuilt, type Site } from "./site.ts";

const heading = (page: Page, name: string) => page.getByRole("heading", { level: 1, name });
const key = (page: Page, name: string) => page.getByRole("button", { name });
const rack = (page: Page) => page.getByRole("list", { name: "Pieces in work" });

const hour = 3_600_000;
const noon = Date.UTC(2026, 2, 2, 12);

/**
 * Makes the store as an older program did, before the app is opened for the first time, with a piece for each name in
 * its log and no summaries. A page of nothing is left open on it where `isHeld`.
 */
async function olderStore(
  page: Page,
  { url, names = [], isHeld }: { url: string; names?: readonly string[]; isHeld: boolean },
): Promise<void> {
  await page.route("**/older", (route) => route.fulfill({ contentType: "text/html", body: "<p>older</p>" }));
  await page.goto(`${url}/older`);
  const lines = names.map((name, i) => ({
    id: `line-${i}`,
    stream: `piece/p${i}`,
    type: "piece-started",
    at: noon + i * hour,
    recordedAt: noon + i * hour,
    zone: "UTC",
    device: "d",
    version: 2,
    body: { plan: { name }, roomId: "first" },
  }));
  await page.evaluate(
    ([rows, stays]) =>
      new Promise<void>((done, fail) => {
        const asking = indexedDB.open("dipbook", 10);
        asking.addEventListener("upgradeneeded", () => {
          const { result } = asking;
          const entries = result.createObjectStore("entries", { keyPath: "id" });
          entries.createIndex("[stream+at]", ["stream", "at"]);
          for (const row of rows) entries.add(row);
          result
            .createObjectStore("projections", { keyPath: "stream" })
            .createIndex("[kind+shelf]", ["kind", "shelf"]);
          result.createObjectStore("photos", { keyPath: "id" });
          result.createObjectStore("settings", { keyPath: "key" });
          result.createObjectStore("drafts", { keyPath: "key" });
        });
        asking.addEventListener("success", () => {
          if (!stays) asking.result.close();
          done();
        });
        asking.addEventListener("error", fail);
      }),
    [lines, isHeld] as const,
  );
}

/** Lets the second summary that is written wait, its transaction open, until `letGo` is called in the page. */
const holdUpgrade = (page: Page): Promise<unknown> =>
  page.addInitScript(() => {
    const put = Reflect.get<IDBObjectStore, "put">(IDBObjectStore.prototype, "put");
    let [written, isLetGo] = [0, false];
    Object.assign(window, { letGo: () => (isLetGo = true) });
    IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...row: [unknown, IDBValidKey?]) {
      const asking = put.apply(this, row);
      if (this.name !== "projections" || ++written !== 2) return asking;
      const wait = (event: Event): void => {
        if (isLetGo) return;
        event.stopImmediatePropagation();
        // A transaction that is asked nothing ends by itself.
        const again = (): void => {
          if (isLetGo) asking.dispatchEvent(new Event("success"));
          else this.count().addEventListener("success", again);
        };
        again();
      };
      asking.addEventListener("success", wait);
      return asking;
    };
  });

test.describe("a store that can't be opened is said on a plain page", () => {
  let site: Site;
  test.beforeEach(async () => {
    site = await serveBuilt();
  });
  test.afterEach(() => site.close());

  test("a browser without storage", async ({ page }) => {
    await page.addInitScript(() => {
      for (const place of [window, Window.prototype]) {
        Object.defineProperty(place, "indexedDB", { value: undefined, configurable: true });
      }
    });
    await page.goto(site.url);
    await expect(heading(page, "This browser gives Dipbook no place to keep a log")).toBeVisible();
    await expect(key(page, "Try again")).toBeVisible();
  });

  for (const { fault, title } of [
    { fault: "SecurityError", title: "The browser does not let Dipbook open its log" },
    { fault: "UnknownError", title: "The log could not be opened" },
  ])
    test(`an opening that ends in ${fault}`, async ({ page }) => {
      await page.addInitScript((name) => {
        IDBFactory.prototype.open = () => {
          throw new DOMException("the disk said no", name);
        };
      }, fault);
      await page.goto(site.url);
      await expect(heading(page, title)).toBeVisible();
      await expect(page.getByText(/the disk said no/)).toBeVisible();
      await key(page, "Save a backup").click();
      await expect(page.getByRole("status")).toHaveText(/That did not work\..*the disk said no/);
    });

  test("an opening that fails as after a killed browser, and goes through at a later try", async ({
    page,
  }) => {
    await page.addInitScript(() => {
      const open = Reflect.get<IDBFactory, "open">(IDBFactory.prototype, "open");
      let isHeld = true;
      Object.assign(window, { letGo: () => (isHeld = false) });
      IDBFactory.prototype.open = function (this: IDBFactory, ...args: [string, number?]) {
        if (isHeld) throw new DOMException("Internal error opening backing store", "UnknownError");
        return open.apply(this, args);
      };
    });
    await page.goto(site.url);
    await expect(heading(page, "The log could not be opened")).toBeVisible();
    await page.evaluate(() => (Reflect.get(window, "letGo") as () => void)());
    await expect(page.getByRole("navigation", { name: "Main" })).toBeVisible();
    await expect(heading(page, "The log could not be opened")).toBeHidden();
  });

  test("an opening that never answers, and answers after all", async ({ page }) => {
    await page.addInitScript(() => {
      const open = Reflect.get<IDBFactory, "open">(IDBFactory.prototype, "open");
      const held: (() => void)[] = [];
      Object.assign(window, { letGo: () => held.forEach((go) => go()) });
      IDBFactory.prototype.open = function (this: IDBFactory, ...args: [string, number?]) {
        const asking = open.apply(this, args);
        const stopped = (event: Event): void => {
          if (Reflect.get(asking, "goes") === true) return;
          event.stopImmediatePropagation();
          held.push(() => {
            Reflect.set(asking, "goes", true);
            asking.dispatchEvent(new Event("success"));
          });
        };
        asking.addEventListener("success", stopped);
        return asking;
      };
    });
    await page.goto(site.url);
    await expect(heading(page, "The browser's storage does not answer")).toBeVisible();
    await page.evaluate(() => (Reflect.get(window, "letGo") as () => void)());
    await expect(page.getByRole("navigation", { name: "Main" })).toBeVisible();
    await expect(heading(page, "The browser's storage does not answer")).toBeHidden();
  });

  test("an older tab that holds the store, until it is closed", async ({ page }) => {
    // An older program is one whose store has a lower version and that does not let go when asked.
    await olderStore(page, { url: site.url, isHeld: true });
    const second = await page.context().newPage();
    await second.goto(site.url);
    await expect(heading(second, "Another tab has an older Dipbook open")).toBeVisible();
    await page.close();
    await expect(second.getByRole("navigation", { name: "Main" })).toBeVisible();
    await expect(heading(second, "Another tab has an older Dipbook open")).toBeHidden();
  });

  test("an upgrade that runs shows how far it is, with nothing to press, and ends in the app", async ({
    page,
  }) => {
    await olderStore(page, { url: site.url, names: ["Badger", "Heron", "Otter"], isHeld: false });
    await holdUpgrade(page);
    await page.goto(site.url);
    await expect(heading(page, "Getting the log ready for this version")).toBeVisible();
    await expect(page.getByText("1 of 3 pieces, rooms and runs.")).toBeVisible();
    await expect(page.getByText(/^Leave this page open\./)).toBeVisible();
    await expect(page.getByRole("button")).toHaveCount(0);
    await page.evaluate(() => (Reflect.get(window, "letGo") as () => void)());
    await expect(rack(page).getByText("Otter", { exact: true })).toBeVisible();
    await expect(rack(page).getByText("Badger", { exact: true })).toBeVisible();
    await expect(heading(page, "Getting the log ready for this version")).toBeHidden();
  });

  test("a store of a newer program, from which a backup can still be saved", async ({ page }) => {
    await page.goto(site.url);
    await expect(page.getByRole("navigation", { name: "Main" })).toBeVisible();
    await page.evaluate(
      () =>
        new Promise((done, fail) => {
          const asking = indexedDB.open("dipbook", 300);
          asking.addEventListener("success", () => {
            asking.result.close();
            done(null);
          });
          asking.addEventListener("error", fail);
        }),
    );
    await page.reload();
    await expect(heading(page, "This log was written by a newer Dipbook")).toBeVisible();
    const saving = page.waitForEvent("download");
    await key(page, "Save a backup").click();
    await saving;
    await expect(page.getByRole("status")).toHaveText(/^Backup made and checked: 0 entries, 0 photos/);
  });

  test("a program that can't be loaded", async ({ page }) => {
    await page.route(/assets\/start-.*\.js/, (route) => route.abort());
    await page.goto(site.url);
    await expect(heading(page, "Dipbook could not be shown")).toBeVisible();
    await page.unroute(/assets\/start-.*\.js/);
    await key(page, "Try again").click();
    await expect(page.getByRole("navigation", { name: "Main" })).toBeVisible();
  });
});

/** Changes one row of the store's summaries, as a fault of the disk might. */
const spoilRow = (page: Page, name: string, how: "null" | "hollow") =>
  page.evaluate(
    ([wanted, change]) =>
      new Promise<void>((done, fail) => {
        const asking = indexedDB.open("dipbook");
        asking.addEventListener("error", fail);
        asking.addEventListener("success", () => {
          const store = asking.result.transaction("projections", "readwrite").objectStore("projections");
          const all = store.getAll();
          all.addEventListener("success", () => {
            const row = (all.result as { kind: string; state: { plan?: { name: string } } | null }[]).find(
              ({ state }) => state?.plan?.name === wanted,
            );
            store.put({ ...row, state: change === "null" ? null : { ...row?.state, coats: null } });
            store.transaction.addEventListener("complete", () => {
              asking.result.close();
              done();
            });
          });
        });
      }),
    [name, how] as const,
  );

for (const how of ["null", "hollow"] as const)
  test(`a summary that is ${how === "null" ? "empty" : "damaged inside"} costs no other piece, and is made again`, async ({
    page,
  }) => {
    await visitOnceThenOffline(page, "2026-03-02T08:00:00+01:00");
    const maker = makerAt(page, handsOn(page));
    await maker.startPiece("Badger");
    await maker.startPiece("Gate finial");
    await spoilRow(page, "Badger", how);
    await page.reload();
    await expect(rack(page).getByText("Gate finial", { exact: true })).toBeVisible();
    await expect(page.getByText(/can't be shown here/)).toBeVisible();
    for (const path of ["/dip", "/rooms", "/fire", "/shop", "/settings", "/due", "/timeline", "/buckets"]) {
      await page.goto(new URL(path, page.url()).href);
      await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
      await expect(page.getByText("This screen could not be shown")).toBeHidden();
    }
    await maker.goTo("Rack");
    await maker.tap(maker.key("Rebuild the summaries").first());
    await expect(rack(page).getByText("Badger", { exact: true })).toBeVisible();
    await expect(page.getByText(/can't be shown here/)).toBeHidden();
  });

test("a sum that throws in the running app makes a card of its piece, and the others go on", async ({
  page,
}) => {
  await visitOnceThenOffline(page, "2026-03-02T08:00:00+01:00");
  const maker = makerAt(page, handsOn(page));
  await maker.startPiece("Badger");
  await maker.startPiece("Gate finial");
  const card = page.getByRole("region", { name: "Badger can't be shown here" });
  await spoilRow(page, "Badger", "hollow");
  // The next thing that is logged has the rack worked out again, the page still the same.
  await maker.startPiece("Otter", { recipe: "General bronze (9 coats)" });
  await expect(card).toBeVisible();
  await expect(card.getByText(/^What went wrong: ./)).toBeVisible();
  await expect(rack(page).getByText("Gate finial", { exact: true })).toBeVisible();
  await maker.dipCoat("Prime", "Otter");
  await expect(rack(page).getByRole("link", { name: /Otter/ })).toContainText("1/");
  await maker.tap(card.getByRole("link", { name: "Open its log" }));
  await maker.onScreen("Badger");
  await expect(maker.logLines()).toHaveCount(1);
});
