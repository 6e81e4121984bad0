import type { ShopDb } from "./rows.ts";

const photoMaxBytes = 15_000_000;

/** A picture made of dots and of a bearable size; a drawing can hold a script and is none. */
export const isPhoto = ({ type, size }: Pick<Blob, "type" | "size">): boolean =>
  /^image\/(?!svg)[a-z0-9.+-]{1,40}$/.test(type) && size <= photoMaxBytes;

/** Keeps a picture under the id its entry names; it is in the store when this resolves. */
export async function putPhoto(db: ShopDb, blob: Blob, id: string): Promise<void> {
  if (!isPhoto(blob))
    throw new RangeError(`expected a picture of at most 15 MB, got ${blob.type}, ${blob.size} bytes`);
  await db.transaction("rw", db.photos, () => db.photos.put({ id, blob }));
}

export async function getPhoto(db: ShopDb, id: string): Promise<Blob | null> {
  return (await db.photos.get(id))?.blob ?? null;
}
