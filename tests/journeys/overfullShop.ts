import type { Page } from "@playwright/test";

/** Names as German shops give them: the longest words a screen has to bear. */
export const longNames = [
  "Gartentorpfostenabschlusskappe mit Wasserspeierauslaufstutzen",
  "Donaudampfschifffahrtsgesellschaftskapitänskajütentürdrücker",
  "Regenwasserspeicherbehälterüberlaufverschlussklappe, zweite Ausführung",
  "Sonnenuhrschattenzeigerbefestigungsplatte",
] as const;

/**
 * Makes of the shop in the browser's store an overfull one: everything that bears a name has a long one, notes run on, and
 * the rack has each piece several times. Past the app, so the page has to be loaded again.
 */
export const fillUp = (page: Page, copies = 3): Promise<void> =>
  page.evaluate(
    async ({ names, times }) => {
      const opened = await new Promise<IDBDatabase>((done, fail) => {
        const opening = indexedDB.open("dipbook");
        opening.addEventListener("error", () => fail(opening.error));
        opening.addEventListener("success", () => done(opening.result));
      });
      type Row = { readonly id?: string; readonly stream: string; readonly kind?: string };
      const all = (table: string): Promise<readonly Row[]> =>
        new Promise((done, fail) => {
          const asking = opened.transaction(table).objectStore(table).getAll();
          asking.addEventListener("error", () => fail(asking.error));
          asking.addEventListener("success", () => done(asking.result as readonly Row[]));
        });
      /** The same thing keeps one name wherever it is named. */
      const given = new Map<string, string>();
      const longer = (name: string): string => {
        const known = given.get(name);
        if (known !== undefined) return known;
        const made = `${names[given.size % names.length] ?? ""} ${given.size + 1}`;
        given.set(name, made);
        return made;
      };
      const run =
        "Mit der Wasserwaage ausgerichtet und dreimal nachgemessen; Schlickerviskositätsprüfung wiederholen. ";
      const lengthen = (value: unknown, key = ""): unknown => {
        if (typeof value === "string")
          return key === "name"
            ? longer(value)
            : /^(note|text|says|slurry)$/.test(key)
              ? run.repeat(2).trim()
              : value;
        if (Array.isArray(value)) return value.map((one) => lengthen(one));
        if (value === null || typeof value !== "object" || Object.getPrototypeOf(value) !== Object.prototype)
          return value;
        return Object.fromEntries(Object.entries(value).map(([part, one]) => [part, lengthen(one, part)]));
      };
      const [entries, rows] = [await all("entries"), await all("projections")];
      const copy = (row: Row, ids: readonly string[], mark: string): Row => {
        let text = JSON.stringify(row);
        for (const id of ids) text = text.replaceAll(`"${id}"`, `"${id}${mark}"`);
        return JSON.parse(text) as Row;
      };
      const write = opened.transaction(["entries", "projections"], "readwrite");
      const [log, made] = [write.objectStore("entries"), write.objectStore("projections")];
      for (const row of entries) log.put(lengthen(row));
      for (const row of rows) made.put(lengthen(row));
      for (const row of rows) {
        if (row.kind !== "piece") continue;
        const own = entries.filter(({ stream }) => stream === row.stream);
        const ids = [row.stream, row.stream.replace("piece/", ""), ...own.flatMap(({ id }) => id ?? [])];
        for (let time = 1; time <= times; time += 1)
          for (const one of [...own, row]) {
            const again = lengthen(copy(one, ids, `-${time}`));
            (one === row ? made : log).put(again);
          }
      }
      await new Promise<void>((done, fail) => {
        write.addEventListener("complete", () => done());
        write.addEventListener("error", () => fail(write.error));
      });
      opened.close();
    },
    { names: longNames, times: copies },
  );
