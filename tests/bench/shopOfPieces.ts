/** Fills a page's own store with a large invented shop, by plain IndexedDB writes; runs inside the page. */
export async function fillShop({
  pieces,
  entries,
  now,
}: {
  pieces: number;
  entries: number;
  now: number;
}): Promise<number> {
  const db = await new Promise<IDBDatabase>((done, fail) => {
    const open = indexedDB.open("dipbook");
    open.addEventListener("success", () => done(open.result));
    open.addEventListener("error", () => fail(open.error ?? new Error("the store did not open")));
  });
  const hour = 3_600_000;
  const device = crypto.randomUUID();
  let serial = 0;
  const id = (): string => {
    const tail = (serial++).toString(16).padStart(12, "0");
    return `019a0000-0000-7000-8000-${tail}`;
  };
  const line = (stream: string, type: string, at: number, body: unknown) => ({
    id: id(),
    stream,
    type,
    at,
    recordedAt: at,
    zone: "Europe/Berlin",
    device,
    version: 1,
    body,
  });
  const rows: unknown[] = [];
  const coat = (number: number) => ({
    number,
    step: number - 1,
    kind: number <= 2 ? "prime" : number === 3 ? "intermediate" : "backup",
    stuccoId: number <= 2 ? "80-120" : number === 3 ? "50-100" : "16-30",
    bucketId: number <= 2 ? "first-prime" : "first-backup",
    roomId: "first",
    prewet: false,
  });
  for (let i = 0; i < pieces; i++) {
    const stream = `piece/${id()}`;
    const start = now - 60 * hour - i * 60_000;
    rows.push(
      line(stream, "piece-started", start, {
        plan: {
          name: `Piece ${i + 1}`,
          recipeId: "start-general",
          alloyId: "c87300",
          headM: 0.3,
          part: { kind: "round", diameterMm: 90 },
        },
        roomId: "first",
      }),
    );
    for (let n = 1; n <= 5; n++) rows.push(line(stream, "coat-dipped", start + n * 11 * hour, coat(n)));
    for (let n = 0; n < 5; n++)
      rows.push(line(stream, "note-written", start + n * hour, { text: "weighed" }));
  }
  for (let h = 0; h < 72; h += 3)
    rows.push(line("room/first", "air-read", now - h * hour, { airC: 20, rh: 0.5, air: "room-fan" }));
  for (let old = 0; rows.length < entries; old++) {
    const stream = `piece/${id()}`;
    const start = now - (100 + old) * 24 * hour;
    rows.push(
      line(stream, "piece-started", start, {
        plan: { name: `Old piece ${old + 1}`, recipeId: "start-general" },
        roomId: "first",
      }),
    );
    for (let n = 1; n <= 9; n++) rows.push(line(stream, "coat-dipped", start + n * 11 * hour, coat(n)));
    for (let n = 0; n < 88; n++)
      rows.push(line(stream, "note-written", start + n * hour, { text: "weighed" }));
    rows.push(line(stream, "piece-archived", start + 110 * hour, { archived: true }));
  }
  for (let from = 0; from < rows.length; from += 5000) {
    const write = db.transaction("entries", "readwrite", { durability: "relaxed" });
    const store = write.objectStore("entries");
    for (const row of rows.slice(from, from + 5000)) store.put(row);
    await new Promise<void>((done, fail) => {
      write.addEventListener("complete", () => done());
      write.addEventListener("abort", () => fail(write.error ?? new Error("the write was aborted")));
    });
  }
  db.close();
  return rows.length;
}
