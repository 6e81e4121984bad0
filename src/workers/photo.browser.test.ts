import { describe, expect, test, vi } from "vitest";
import { makePhotoClient } from "./photoClient.ts";

/** A photo as a phone would take it: left half dark, right half light, with grain so that it has some weight. */
async function takePhoto({ widthPx, heightPx }: { widthPx: number; heightPx: number }): Promise<Blob> {
  const canvas = new OffscreenCanvas(widthPx, heightPx);
  const pen = canvas.getContext("2d");
  if (!pen) throw new Error("no 2d drawing");
  const pixels = pen.createImageData(widthPx, heightPx);
  const rgba = new Uint32Array(pixels.data.buffer);
  let grain = 1;
  for (let i = 0; i < rgba.length; i++) {
    grain = (grain * 16_807) % 2_147_483_647;
    const grey = (i % widthPx < widthPx / 2 ? 20 : 200) + (grain % 40);
    rgba[i] = 0xff_00_00_00 + grey * 0x01_01_01;
  }
  pen.putImageData(pixels, 0, 0);
  return canvas.convertToBlob({ type: "image/jpeg", quality: 0.95 });
}

/** Exif, orientation 6: the camera was held upright and the picture must be turned a quarter to the right. */
const turnedRight = [
  0xff, 0xe1, 0x00, 0x22, 0x45, 0x78, 0x69, 0x66, 0x00, 0x00, 0x4d, 0x4d, 0x00, 0x2a, 0x00, 0x00, 0x00, 0x08,
  0x00, 0x01, 0x01, 0x12, 0x00, 0x03, 0x00, 0x00, 0x00, 0x01, 0x00, 0x06, 0x00, 0x00, 0x00, 0x00, 0x00, 0x00,
] as const;

async function withExif(photo: Blob): Promise<Blob> {
  const start = photo.slice(0, 2);
  return new Blob([start, new Uint8Array(turnedRight), photo.slice(2)], { type: "image/jpeg" });
}

async function hasExif(photo: Blob): Promise<boolean> {
  return new TextDecoder("latin1").decode(await photo.arrayBuffer()).includes("Exif\u0000");
}

/** Grey, 0–255, at a point of the picture given in shares of its width and height. */
async function greyAt(
  photo: Blob,
  { right, down }: { right: number; down: number },
): Promise<number | undefined> {
  const picture = await createImageBitmap(photo);
  const pen = new OffscreenCanvas(picture.width, picture.height).getContext("2d");
  pen?.drawImage(picture, 0, 0);
  return pen?.getImageData(Math.floor(right * picture.width), Math.floor(down * picture.height), 1, 1)
    .data[0];
}

describe("a photo taken at the rack", () => {
  test("of 12 megapixels is stored at 1600 px and a fraction of its bytes", async () => {
    const photo = await takePhoto({ widthPx: 4032, heightPx: 3024 });
    const result = await makePhotoClient().shrink(photo);
    if (!result.ok) throw new Error(result.why);
    expect(result).toMatchObject({ widthPx: 1600, heightPx: 1200 });
    expect(result.photo.type).toBe("image/jpeg");
    expect(result.photo.size).toBeLessThan(photo.size / 2);
    const stored = await createImageBitmap(result.photo);
    expect([stored.width, stored.height]).toEqual([1600, 1200]);
    expect(await greyAt(result.photo, { right: 0.25, down: 0.5 })).toBeLessThan(90);
    expect(await greyAt(result.photo, { right: 0.75, down: 0.5 })).toBeGreaterThan(170);
  });

  test("upright comes out upright, and without the camera's notes", async () => {
    const photo = await withExif(await takePhoto({ widthPx: 800, heightPx: 600 }));
    expect(await hasExif(photo)).toBe(true);
    const result = await makePhotoClient().shrink(photo);
    if (!result.ok) throw new Error(result.why);
    expect(result).toMatchObject({ widthPx: 600, heightPx: 800 });
    expect(await hasExif(result.photo)).toBe(false);
    // Turned a quarter to the right, the dark left half is on top.
    expect(await greyAt(result.photo, { right: 0.5, down: 0.25 })).toBeLessThan(90);
    expect(await greyAt(result.photo, { right: 0.5, down: 0.75 })).toBeGreaterThan(170);
  });

  test("clear parts of a drawing become white", async () => {
    const canvas = new OffscreenCanvas(40, 40);
    canvas.getContext("2d");
    const result = await makePhotoClient().shrink(await canvas.convertToBlob({ type: "image/png" }));
    if (!result.ok) throw new Error(result.why);
    expect(await greyAt(result.photo, { right: 0.5, down: 0.5 })).toBeGreaterThan(250);
  });
});

describe("what can go wrong", () => {
  test("a file that is no picture is said to be unreadable, and the next one still works", async () => {
    const client = makePhotoClient();
    const [bad, good] = await Promise.all([
      client.shrink(new Blob(["not a picture"], { type: "image/jpeg" })),
      client.shrink(await takePhoto({ widthPx: 64, heightPx: 48 })),
    ]);
    expect(bad).toEqual({ ok: false, why: "unreadable" });
    expect(good).toMatchObject({ ok: true, widthPx: 64, heightPx: 48 });
  });

  test("an aborted one ends, the ones behind it go on", async () => {
    const client = makePhotoClient();
    const photo = await takePhoto({ widthPx: 2000, heightPx: 1500 });
    const small = await takePhoto({ widthPx: 64, heightPx: 48 });
    const running = new AbortController();
    const queued = new AbortController();
    const results = [
      client.shrink(photo, running.signal),
      client.shrink(small, queued.signal),
      client.shrink(small),
      client.shrink(small, AbortSignal.abort()),
    ];
    const ended = vi.spyOn(Worker.prototype, "terminate");
    queued.abort();
    expect(ended).not.toHaveBeenCalled();
    running.abort();
    expect(ended).toHaveBeenCalledOnce();
    ended.mockRestore();
    expect((await Promise.all(results)).map((result) => (result.ok ? result.widthPx : result.why))).toEqual([
      "aborted",
      "aborted",
      64,
      "aborted",
    ]);
  });

  test("a worker that does not load is told, for each picture", async () => {
    const client = makePhotoClient(() => new Worker("data:text/javascript,throw 1", { type: "module" }));
    const small = await takePhoto({ widthPx: 64, heightPx: 48 });
    const none = { ok: false, why: "no-worker" };
    expect(await Promise.all([client.shrink(small), client.shrink(small)])).toEqual([none, none]);
  });

  test("a browser without workers is told too", async () => {
    const client = makePhotoClient(() => {
      throw new Error("no workers here");
    });
    const small = await takePhoto({ widthPx: 64, heightPx: 48 });
    expect(await client.shrink(small)).toEqual({ ok: false, why: "no-worker" });
  });
});
