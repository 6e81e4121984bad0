import { millisecondsInMinute as minuteMs } from "date-fns/constants";

export type HandOverResult = "shared" | "saved" | "dismissed" | "failed";

/**
 * Gives a file to the person: by the phone's share sheet, or as a download where that is missing or refuses.
 *
 * `by: "download"` goes straight to the download, for files the phone opens by itself, as a calendar file.
 * A page is not told whether a download was kept; "saved" says it was started.
 */
export async function handOver({
  blob,
  name,
  by = "share",
}: {
  readonly blob: Blob;
  readonly name: string;
  readonly by?: "share" | "download" | undefined;
}): Promise<HandOverResult> {
  if (by === "download") return download(blob, name);
  const files = [new File([blob], name, { type: blob.type })];
  if (typeof navigator.canShare !== "function" || !navigator.canShare({ files })) return download(blob, name);
  try {
    await navigator.share({ files, title: name });
    return "shared";
  } catch (error) {
    // AbortError is the person closing the sheet; anything else is the phone refusing this file.
    const closed = error instanceof DOMException && error.name === "AbortError";
    return closed ? "dismissed" : download(blob, name);
  }
}

/** Long enough for a slow phone to have read the file. */
const keepUrlMs = minuteMs;

function download(blob: Blob, name: string): HandOverResult {
  try {
    const url = URL.createObjectURL(blob);
    const link = document.createElement("a");
    link.href = url;
    link.download = name;
    document.body.append(link);
    link.click();
    link.remove();
    setTimeout(() => URL.revokeObjectURL(url), keepUrlMs);
    return "saved";
  } catch {
    return "failed";
  }
}
