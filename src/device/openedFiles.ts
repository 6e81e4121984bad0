type Launch = { readonly files?: readonly FileSystemFileHandle[] | undefined };
type LaunchQueue = { readonly setConsumer: (consumer: (launch: Launch) => void) => void };

/**
 * Calls back with the first file the system opened the app with ("open with"), also with one opened before anyone asked:
 * the browser keeps it. Does nothing where a browser has no such door. The last caller gets them.
 */
export function onOpenedFile(listener: (file: File) => void): void {
  const queue: unknown = Reflect.get(globalThis, "launchQueue");
  if (!isQueue(queue)) return;
  queue.setConsumer(({ files }) => {
    const first = files?.[0];
    // A file moved away since it was opened is no file.
    if (first !== undefined) void first.getFile().then(listener, () => undefined);
  });
}

function isQueue(value: unknown): value is LaunchQueue {
  return typeof value === "object" && value !== null && "setConsumer" in value;
}
