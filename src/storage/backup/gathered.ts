/** As much as is written at a time, bytes. */
const writeBytes = 1_000_000;

/**
 * A stream that gathers small pieces in one buffer and writes them on when it is full. Each write to a file is a message
 * and a copy of its own for the browser: a few large ones leave it less to clear away.
 */
export function gathered(sink: WritableStream<Uint8Array>): WritableStream<Uint8Array> {
  const writer = sink.getWriter();
  const buffer = new Uint8Array(writeBytes);
  let held = 0;
  const flush = async (): Promise<void> => {
    // The buffer is filled anew only when the write has ended.
    if (held > 0) await writer.write(buffer.subarray(0, held));
    held = 0;
  };
  return new WritableStream<Uint8Array>({
    write: async (chunk) => {
      for (let at = 0; at < chunk.length;) {
        const piece = chunk.subarray(at, at + writeBytes - held);
        buffer.set(piece, held);
        held += piece.length;
        at += piece.length;
        if (held === writeBytes) await flush();
      }
    },
    close: async () => {
      await flush();
      await writer.close();
    },
    abort: (reason) => writer.abort(reason),
  });
}
