/** How long a store may take to answer before that is said, ms. */
const patienceMs = 10_000;

/**
 * The store as the browser has it, opened in whatever version it lies there and without any of the app's rules: for
 * reading when the app's own opening fails. Nothing is made and nothing is changed. Null where there is no such store.
 */
export function openRaw(name: string): Promise<IDBDatabase | null> {
  return new Promise((done, fail) => {
    const asking = indexedDB.open(name);
    const late = setTimeout(
      () => fail(new Error(`the browser's storage gave no answer in ${patienceMs / 1000} seconds`)),
      patienceMs,
    );
    asking.addEventListener("upgradeneeded", () => {
      // There was none: an empty one must not be left behind.
      asking.transaction?.abort();
    });
    asking.addEventListener("success", () => {
      clearTimeout(late);
      // Whoever wants to upgrade or delete it must not wait for a reader.
      asking.result.addEventListener("versionchange", () => asking.result.close());
      done(asking.result);
    });
    asking.addEventListener("error", () => {
      clearTimeout(late);
      if (asking.error?.name === "AbortError") done(null);
      else fail(asking.error ?? new Error("the store could not be opened"));
    });
  });
}

/** The keys of a table in order; none where the store has no such table. */
export const rawKeys = (db: IDBDatabase, table: string): Promise<readonly IDBValidKey[]> =>
  db.objectStoreNames.contains(table)
    ? answered(db.transaction(table).objectStore(table).getAllKeys())
    : Promise.resolve([]);

/** One row by its key; undefined where there is none. */
export const rawRow = (db: IDBDatabase, table: string, key: IDBValidKey): Promise<unknown> =>
  answered(db.transaction(table).objectStore(table).get(key));

/** The rows of a table, some at a time and each read by its key, so that one that can't be read costs no other. */
export async function* rawRows(
  db: IDBDatabase,
  table: string,
  {
    page = 200,
    onUnreadable,
  }: { readonly page?: number; readonly onUnreadable?: (key: IDBValidKey) => void } = {},
): AsyncGenerator<readonly unknown[]> {
  const keys = await rawKeys(db, table);
  for (let start = 0; start < keys.length; start += page) {
    const some = keys.slice(start, start + page);
    yield await rawRowsOf(db, table, some, onUnreadable);
  }
}

/** The rows of these keys, as far as they can be read. */
export async function rawRowsOf(
  db: IDBDatabase,
  table: string,
  keys: readonly IDBValidKey[],
  onUnreadable?: (key: IDBValidKey) => void,
): Promise<readonly unknown[]> {
  const rows = await Promise.allSettled(keys.map((key) => rawRow(db, table, key)));
  return rows.flatMap((row, i): readonly unknown[] => {
    const key = keys[i];
    if (row.status === "fulfilled") return row.value === undefined ? [] : [row.value];
    if (key !== undefined) onUnreadable?.(key);
    return [];
  });
}

const answered = <T>(asking: IDBRequest<T>): Promise<T> =>
  new Promise((done, fail) => {
    asking.addEventListener("success", () => done(asking.result));
    asking.addEventListener("error", () => fail(asking.error ?? new Error("a row could not be read")));
  });
