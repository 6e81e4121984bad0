/** A file being written, stream by stream, and handed back when it is whole. */
export type FileSink = {
  readonly stream: WritableStream<Uint8Array>;
  /** After the stream is closed: the file as it now lies where it was written. */
  readonly finish: () => Promise<Blob>;
  /** Takes away what was written. */
  readonly discard: () => Promise<void>;
};

type SavePicker = (options: {
  readonly suggestedName: string;
  readonly types: readonly {
    readonly description: string;
    readonly accept: Record<string, readonly string[]>;
  }[];
}) => Promise<FileSystemFileHandle>;

const pickerHere = (): SavePicker | null => {
  const picker: unknown = Reflect.get(window, "showSaveFilePicker");
  return typeof picker === "function" ? (picker.bind(window) as SavePicker) : null;
};

/**
 * Asks the person where to put a file and opens it for writing; "dismissed" where the dialog is closed, null where the
 * browser has no such dialog. Must be called from a tap.
 */
export async function pickedSink(name: string): Promise<FileSink | "dismissed" | null> {
  const pick = pickerHere();
  if (pick === null) return null;
  try {
    const handle = await pick({
      suggestedName: name,
      types: [{ description: "Dipbook backup", accept: { "application/zip": [".zip"] } }],
    });
    return await handleSink(handle, () => handle.createWritable().then((writing) => writing.truncate(0)));
  } catch (error) {
    if (error instanceof DOMException && error.name === "AbortError") return "dismissed";
    return null;
  }
}

const scratchName = "backup-in-progress.zip";

/**
 * A file nobody sees yet, to be handed over when it is whole: in the browser's own file system where that can be
 * written as a stream, else held in parts by the browser.
 */
export async function scratchSink(): Promise<FileSink> {
  try {
    const folder = await navigator.storage.getDirectory();
    const handle = await folder.getFileHandle(scratchName, { create: true });
    return await handleSink(handle, () => folder.removeEntry(scratchName));
  } catch {
    return partsSink();
  }
}

/** Removes the last scratch file; it must outlive its handing over, so that it is done before the next one. */
export async function clearScratch(): Promise<void> {
  try {
    await (await navigator.storage.getDirectory()).removeEntry(scratchName);
  } catch {
    // There was none, or there is no such file system.
  }
}

async function handleSink(handle: FileSystemFileHandle, discard: () => Promise<unknown>): Promise<FileSink> {
  const writing = await handle.createWritable();
  return {
    stream: writing,
    finish: async () => handle.getFile(),
    discard: async () => {
      await writing.abort().catch(() => undefined);
      await discard();
    },
  };
}

/** As much as is gathered before the browser is given it to keep, bytes. */
const partBytes = 4_000_000;

function partsSink(): FileSink {
  const parts: Blob[] = [];
  let waiting: Uint8Array<ArrayBuffer>[] = [];
  let bytes = 0;
  const put = (): void => {
    if (waiting.length > 0) parts.push(new Blob(waiting));
    waiting = [];
    bytes = 0;
  };
  return {
    stream: new WritableStream<Uint8Array>({
      write: (chunk) => {
        waiting.push(new Uint8Array(chunk));
        bytes += chunk.length;
        if (bytes >= partBytes) put();
      },
      close: put,
    }),
    finish: () => Promise.resolve(new Blob(parts, { type: "application/zip" })),
    discard: () => {
      parts.length = 0;
      return Promise.resolve();
    },
  };
}
