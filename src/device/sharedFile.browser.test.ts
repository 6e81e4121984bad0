import { beforeEach, expect, test, vi } from "vitest";
import { onOpenedFile } from "./openedFiles.ts";
import { shareField, sharePath, stashShared, takeShared } from "./sharedFile.ts";

const scope = "https://shop.example/dipbook/";
const posted = (file: File | null): Request => {
  const body = new FormData();
  body.set("title", "a figure");
  if (file !== null) body.set(shareField, file);
  return new Request(new URL(sharePath, scope), { method: "POST", body });
};
const placeOf = async (request: Request): Promise<string | null> =>
  (await stashShared(request, { scope })).headers.get("location");

beforeEach(async () => {
  await takeShared({ scope });
});

test("a shared file waits for the page under its own name, and is taken once", async () => {
  const file = new File([new Uint8Array([1, 2, 3])], "heron – wing.stl");
  expect(await placeOf(posted(file))).toBe(`${scope}patterns?shared=1`);
  const taken = await takeShared({ scope });
  expect(taken?.name).toBe("heron – wing.stl");
  expect(new Uint8Array(await taken!.arrayBuffer())).toEqual(new Uint8Array([1, 2, 3]));
  expect(await takeShared({ scope })).toBeNull();
});

test("the last file shared is the one that waits", async () => {
  await stashShared(posted(new File(["a"], "a.stl")), { scope });
  await stashShared(posted(new File(["b"], "b.stl")), { scope });
  expect((await takeShared({ scope }))?.name).toBe("b.stl");
  expect(await takeShared({ scope })).toBeNull();
});

test("a share without a file, or a form that can't be read, leads to the list and says so", async () => {
  expect(await placeOf(posted(null))).toBe(`${scope}patterns?shared=none`);
  const odd = new Request(new URL(sharePath, scope), { method: "POST", body: "no form" });
  expect(await placeOf(odd)).toBe(`${scope}patterns?shared=none`);
  expect(await takeShared({ scope })).toBeNull();
});

test("a file the system opens the app with is handed on", async () => {
  const consumers: ((launch: unknown) => void)[] = [];
  vi.stubGlobal("launchQueue", { setConsumer: (one: (launch: unknown) => void) => consumers.push(one) });
  const got: string[] = [];
  onOpenedFile((file) => got.push(file.name));
  consumers[0]?.({ files: [{ getFile: async () => new File(["x"], "horn.obj") }] });
  consumers[0]?.({ files: [] });
  consumers[0]?.({});
  consumers[0]?.({ files: [{ getFile: async () => Promise.reject(new DOMException("gone")) }] });
  await expect.poll(() => got).toEqual(["horn.obj"]);
  vi.unstubAllGlobals();
  onOpenedFile(() => got.push("never"));
  expect(got).toEqual(["horn.obj"]);
});
