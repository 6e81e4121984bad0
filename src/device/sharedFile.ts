/** Files handed to the app by the phone's share sheet wait here until the page takes them. */
const shelf = "shared-files";
const slot = "shared-file";

/** Path the manifest's share target posts to, below the app's own. */
export const sharePath = "patterns/open";
/** Form field the manifest names for the file. */
export const shareField = "mesh";

/**
 * Keeps the first file of a shared form for the page and gives where to go: the list of patterns, told whether there is
 * something to take. For the service worker.
 */
export async function stashShared(
  request: Request,
  { scope }: { readonly scope: string },
): Promise<Response> {
  const file = await fileOf(request);
  if (file !== null) {
    const headers = { "content-type": "application/octet-stream", "x-name": encodeURIComponent(file.name) };
    const cache = await caches.open(shelf);
    await cache.put(new URL(slot, scope), new Response(file, { headers }));
  }
  return Response.redirect(new URL(`patterns?shared=${file === null ? "none" : "1"}`, scope).href, 303);
}

async function fileOf(request: Request): Promise<File | null> {
  try {
    const file = (await request.formData()).get(shareField);
    return file instanceof File ? file : null;
  } catch {
    return null;
  }
}

/** The waiting file, once; null when there is none. For the page. */
export async function takeShared({ scope }: { readonly scope: string }): Promise<File | null> {
  if (!("caches" in globalThis)) return null;
  const cache = await caches.open(shelf);
  const at = new URL(slot, scope);
  const kept = await cache.match(at);
  if (kept === undefined) return null;
  const file = new File([await kept.blob()], decodeURIComponent(kept.headers.get("x-name") ?? "shared"));
  await cache.delete(at);
  return file;
}
