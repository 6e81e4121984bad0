import { readKilnCsv } from "./kilnCsv.ts";
import type { KilnCsvJob, KilnCsvReply } from "./kilnCsvMessages.ts";

addEventListener("message", ({ data: { file, options } }: MessageEvent<KilnCsvJob>) => {
  void file
    .text()
    .then((text) => tell({ says: "read", read: readKilnCsv(text, options) }))
    .catch(() => tell({ says: "failed" }));
});

const tell = (reply: KilnCsvReply): void => postMessage(reply);
