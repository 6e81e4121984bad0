import { afterEach, expect, test } from "vitest";
import { backupOf } from "../../../tests/fixtures/backups.ts";
import { freshShop, removeShops } from "../../../tests/fixtures/freshShop.ts";
import { dayOne, hour } from "../../../tests/fixtures/logLines.ts";
import { bytesOf, shopOf } from "../../../tests/fixtures/notedShop.ts";
import type { ShopDb } from "../rows.ts";
import { judgeRow } from "./judgeRow.ts";
import { openBackup } from "./openBackup.ts";
import { restoreBackup } from "./restoreBackup.ts";

afterEach(removeShops);

const now = dayOne + 100 * hour;

/** The same numbers every time: a small generator of 32-bit numbers (mulberry32, public domain). */
function numbers(seed: number): () => number {
  let state32 = seed;
  return () => {
    state32 = (state32 + 0x6d2b79f5) | 0;
    let t = Math.imul(state32 ^ (state32 >>> 15), 1 | state32);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/**
 * The suite's number, each of them restored. By hand far more go through the reading alone, from which every line and
 * picture of a restore comes, and each hundredth is restored:
 * `VITE_DIPBOOK_MUTATIONS=100000 npx vitest run --project browser src/storage/backup/mutated.browser.test.ts`.
 */
const mutations = Number(import.meta.env["VITE_DIPBOOK_MUTATIONS"] ?? 500);
const seed = Number(import.meta.env["VITE_DIPBOOK_SEED"] ?? 7);
const restoreEach = mutations > 500 ? 100 : 1;

type CameIn = {
  readonly rows: readonly { readonly id: string }[];
  readonly photos: readonly { readonly id: string; readonly blob: Blob }[];
};

async function restoredOf(file: Blob, db: ShopDb): Promise<CameIn> {
  const restored = await restoreBackup(db, file, { settings: true });
  const found = { rows: await db.entries.toArray(), photos: await db.photos.toArray() };
  if (!restored.ok) expect(found).toEqual({ rows: [], photos: [] });
  for (const table of db.tables) await table.clear();
  return found;
}

async function readOf(file: Blob): Promise<CameIn> {
  const opened = await openBackup(file);
  const rows: { readonly id: string }[] = [];
  const photos: { readonly id: string; readonly blob: Blob }[] = [];
  if ("code" in opened) return { rows, photos };
  for await (const item of opened.items({}))
    if (item.kind === "photo") photos.push({ id: item.id, blob: item.blob() });
    else if (item.kind === "line") {
      const judged = judgeRow(item.row, item.mayBeAside);
      if (judged.kind !== "bad") rows.push(judged.row);
    }
  return { rows, photos };
}

test(
  "of 500 mutated backups none brings in an altered line or picture, and none stops the program",
  async () => {
    const db = await shopOf(12, ["a", "b"]);
    const good = new Map((await db.entries.toArray()).map((row) => [row.id, JSON.stringify(row)]));
    const bytes = await bytesOf(await backupOf(db, { now }));
    const next = numbers(seed);
    const { db: other } = freshShop();
    await other.open();
    for (let i = 0; i < mutations; i += 1) {
      const spoilt = bytes.slice();
      for (let hits = 1 + Math.floor(next() * 4); hits > 0; hits -= 1)
        spoilt[Math.floor(next() * spoilt.length)] = Math.floor(next() * 256);
      const file = new Blob([
        spoilt.slice(0, next() < 0.2 ? Math.floor(next() * spoilt.length) : spoilt.length),
      ]);
      const { rows, photos } = i % restoreEach === 0 ? await restoredOf(file, other) : await readOf(file);
      for (const row of rows) expect(good.get(row.id), `mutation ${i}`).toBe(JSON.stringify(row));
      for (const { id, blob } of photos) {
        const got = await bytesOf(blob);
        const is = [id, blob.type, got.length];
        expect(is, `mutation ${i}`).toEqual([id === "a" ? "a" : "b", "image/jpeg", 3000]);
        expect(
          got.every((byte) => byte === (id === "a" ? 1 : 2)),
          `mutation ${i}`,
        ).toBe(true);
      }
    }
  },
  240_000 * Math.max(1, mutations / 5000),
);
