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
  const buffer = await readInto(blob, spare.pop() ?? new ArrayBuffer(0));
  try {
    return await work(new Uint8Array(buffer, 0, blob.size));
  } finally {
    if (spare.length < mostSpare && buffer.byteLength <= largestSpare) spare.push(buffer);
  }
}

const leastBytes = 1_000_000;

/**
 * Readers at work. A browser may clear away a stream that nothing but its own pending read holds on to; the read then
 * never ends (seen in Chromium 156), and with it the backup it is of.
 */
const atWork = new Set<unknown>();

/** Keeps a reader from being cleared away until `work` has ended. */
export async function holding<T>(reader: unknown, work: () => Promise<T>): Promise<T> {
  atWork.add(reader);
  try {
    return await work();
  } finally {
    atWork.delete(reader);
  }
}

/**
 * Reads a blob to the front of `buffer`, or of a larger one where it does not hold it, and gives that back; the buffer
 * handed in is used up. Throws where the blob has fewer bytes than it says.
 */
export async function readInto(blob: Blob, buffer: ArrayBuffer): Promise<ArrayBuffer> {
  const { size } = blob;
  const reader = readerInto(blob);
  if (reader === null) return blob.arrayBuffer();
  return holding(reader, async () => {
    let held = buffer.byteLength >= size ? buffer : new ArrayBuffer(Math.max(size, leastBytes));
    // Each read takes the buffer away and gives it back with more in it.
    for (let at = 0; at < size;) {
      const { value } = await reader.read(new Uint8Array(held, at, size - at));
      if (value === undefined || value.length === 0) throw new Error(`read ${at} bytes, expected ${size}`);
      held = value.buffer;
      at += value.length;
    }
    return held;
  });
}

/** Null where the browser can't read into a buffer that is given to it. */
function readerInto(blob: Blob): ReadableStreamBYOBReader | null {
  try {
    return blob.stream().getReader({ mode: "byob" });
  } catch {
    return null;
  }
}
