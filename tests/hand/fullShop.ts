import type { Page } from "@playwright/test";

/** Fills the store of the open page past its screens: pieces with notes, and photos of random bytes. */
export const fillShop = (page: Page, size: { entries: number; photos: number; photoBytes: number }) =>
  page.evaluate(async ({ entries, photos, photoBytes }) => {
    const db = await new Promise<IDBDatabase>((done, fail) => {
      const asking = indexedDB.open("dipbook");
      asking.addEventListener("success", () => done(asking.result));
      asking.addEventListener("error", fail);
    });
    const ended = (writing: IDBTransaction): Promise<unknown> =>
      new Promise((done, fail) => {
        writing.addEventListener("complete", done);
        writing.addEventListener("error", fail);
        writing.addEventListener("abort", fail);
      });
    const from = Date.UTC(2026, 0, 5);
    const linesAPiece = 100;
    let writing = db.transaction("entries", "readwrite");
    for (let i = 0; i < entries; i += 1) {
      const piece = Math.floor(i / linesAPiece);
      const isFirst = i % linesAPiece === 0;
      const photo = i < photos ? { photos: [`photo-${i}`] } : {};
      writing.objectStore("entries").add({
        id: `e${String(i).padStart(7, "0")}`,
        stream: `piece/p${piece}`,
        type: isFirst ? "piece-started" : "note-written",
        at: from + i * 60_000,
        recordedAt: from + i * 60_000,
        zone: "UTC",
        device: "d",
        version: 2,
        body: isFirst
          ? { plan: { name: `Piece ${piece}` }, roomId: "first" }
          : { text: `Note ${i}: the outer coat is even, no bare edge.`, ...photo },
      });
    }
    await ended(writing);
    const bytes = new Uint8Array(photoBytes);
    for (let i = 0; i < photos; i += 1) {
      for (let at = 0; at < photoBytes; at += 65_536)
        crypto.getRandomValues(bytes.subarray(at, Math.min(photoBytes, at + 65_536)));
      writing = db.transaction("photos", "readwrite", {
        durability: i === photos - 1 ? "strict" : "relaxed",
      });
      writing
        .objectStore("photos")
        .add({ id: `photo-${i}`, blob: new Blob([bytes], { type: "image/jpeg" }) });
      await ended(writing);
    }
    db.close();
  }, size);

/** SHA-256 over every entry and every photo in the order of their ids, and how many there are. */
export const sumOfShop = (page: Page): Promise<string> =>
  page.evaluate(async () => {
    const db = await new Promise<IDBDatabase>((done, fail) => {
      const asking = indexedDB.open("dipbook");
      asking.addEventListener("success", () => done(asking.result));
      asking.addEventListener("error", fail);
    });
    const asked = <T>(asking: IDBRequest<T>): Promise<T> =>
      new Promise((done, fail) => {
        asking.addEventListener("success", () => done(asking.result));
        asking.addEventListener("error", fail);
      });
    const sum = async (bytes: BufferSource): Promise<string> =>
      Array.from(new Uint8Array(await crypto.subtle.digest("SHA-256", bytes)), (b) =>
        b.toString(16).padStart(2, "0"),
      ).join("");
    const entries = await asked(db.transaction("entries").objectStore("entries").getAll());
    const entriesSum = await sum(new TextEncoder().encode(JSON.stringify(entries)));
    const ids = await asked(db.transaction("photos").objectStore("photos").getAllKeys());
    let photosSum = "";
    for (const id of ids) {
      if (typeof id !== "string") throw new Error("a photo's key is a text");
      const { blob } = (await asked(db.transaction("photos").objectStore("photos").get(id))) as {
        blob: Blob;
      };
      const own = `${id} ${blob.type} ${await sum(await blob.arrayBuffer())}`;
      photosSum = await sum(new TextEncoder().encode(photosSum + own));
    }
    db.close();
    return `${entries.length} entries ${entriesSum}, ${ids.length} photos ${photosSum}`;
  });
