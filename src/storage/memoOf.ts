import { makeMemo, type Memo } from "../logbook/log/memo.ts";
import type { ShopDb } from "./rows.ts";

const memos = new WeakMap<ShopDb, Memo>();

/** The one memo of a store, for its readers and all its screens: coming back to the rack works out nothing twice. */
export function memoOf(db: ShopDb): Memo {
  const memo = memos.get(db) ?? makeMemo();
  memos.set(db, memo);
  return memo;
}
