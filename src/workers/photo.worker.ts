import type { PhotoJob, PhotoReply } from "./photoMessages.ts";
import { jpegQuality, targetSize } from "./photoShrink.ts";

addEventListener("message", (event: MessageEvent<PhotoJob>) => {
  void shrink(event.data).then((reply) => postMessage(reply));
});

async function shrink({ id, file }: PhotoJob): Promise<PhotoReply> {
  if (typeof OffscreenCanvas === "undefined") return { id, ok: false, why: "missing" };
  // The camera's turn is applied here, as the drawn copy no longer carries it.
  const picture = await createImageBitmap(file, { imageOrientation: "from-image" }).catch(() => null);
  if (picture === null) return { id, ok: false, why: "unreadable" };
  try {
    const { widthPx, heightPx } = targetSize({ widthPx: picture.width, heightPx: picture.height });
    return { id, ok: true, photo: await asJpeg(picture, { widthPx, heightPx }), widthPx, heightPx };
  } catch {
    return { id, ok: false, why: "failed" };
  } finally {
    // A 12 megapixel picture is 49 MB until it is let go.
    picture.close();
  }
}

async function asJpeg(
  picture: ImageBitmap,
  { widthPx, heightPx }: { readonly widthPx: number; readonly heightPx: number },
): Promise<Blob> {
  const canvas = new OffscreenCanvas(widthPx, heightPx);
  const pen = canvas.getContext("2d", { alpha: false });
  if (pen === null) throw new Error("no 2d drawing");
  pen.fillStyle = "#fff";
  pen.fillRect(0, 0, widthPx, heightPx);
  pen.imageSmoothingQuality = "high";
  pen.drawImage(picture, 0, 0, widthPx, heightPx);
  return canvas.convertToBlob({ type: "image/jpeg", quality: jpegQuality });
}
