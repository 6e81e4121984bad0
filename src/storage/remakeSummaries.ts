import { rebuildProjections, type Rebuilt } from "./rebuild.ts";
import { openShopDb } from "./shopDb.ts";

/** Opens the store of this name for nothing but making its rows again, for when the app itself can't be drawn. */
export async function remakeSummaries(name: string): Promise<Rebuilt> {
  const db = openShopDb(name);
  try {
    return await rebuildProjections(db);
  } finally {
    db.close();
  }
}
