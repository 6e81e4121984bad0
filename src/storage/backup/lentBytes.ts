/** Buffers nobody uses just now; what is larger is let go again. */
const spare: ArrayBuffer[] = [];
const mostSpare = 2;
const largestSpare = 16_000_000;

/**
 * The bytes of a photo or of a stretch of a file, lent until `work` ends and not to be kept. They are read into the same
 * buffer again and again: a new one for each would leave hundreds of megabytes for the browser to clear away.
 */
export async function withBytes<T>(
  blob: Blob,
  work: (bytes: Uint8Array<ArrayBuffer>) => T | Promise<T>,
): Promise<T> {
  const reader = readerInto(blob);
  if (reader === null) return work(new Uint8Array(await blob.arrayBuffer()));
  const { bytes, buffer } = await filled(reader, { buffer: spareOf(blob.size), size: blob.size });
  try {
    return await work(bytes);
  } finally {
    if (spare.length < mostSpare && buffer.byteLength <= largestSpare) spare.push(buffer);
  }
}

/** Null where the browser can't read into a buffer that is given to it. */
function readerInto(blob: Blob): ReadableStreamBYOBReader | null {
  try {
    return blob.stream().getReader({ mode: "byob" });
  } catch {
    return null;
  }
}

function spareOf(bytes: number): ArrayBuffer {
  const found = spare.pop();
  return found !== undefined && found.byteLength >= bytes
    ? found
    : new ArrayBuffer(Math.max(bytes, 1_000_000));
}

/** Each read takes the buffer away and gives it back with more in it. */
async function filled(
  reader: ReadableStreamBYOBReader,
  { buffer, size }: { readonly buffer: ArrayBuffer; readonly size: number },
): Promise<{ readonly bytes: Uint8Array<ArrayBuffer>; readonly buffer: ArrayBuffer }> {
  let held = buffer;
  let at = 0;
  while (at < size) {
    const { value } = await reader.read(new Uint8Array(held, at, size - at));
    if (value === undefined || value.length === 0) throw new Error(`read ${at} bytes, expected ${size}`);
    held = value.buffer;
    at += value.length;
  }
  return { bytes: new Uint8Array(held, 0, at), buffer: held };
}
