import type { NotABackup, OpenBackup } from "./items.ts";
import { openJson } from "./readJson.ts";
import { openZip } from "./readZip.ts";

/** Opens a backup of any version by its first bytes; it is read part by part and never held as a whole. */
export async function openBackup(file: Blob): Promise<OpenBackup | NotABackup> {
  const [first] = new Uint8Array(await file.slice(0, 1).arrayBuffer());
  // "{" or white space before it: JSON. A zip whose head is damaged is looked through all the same.
  const isText = first === undefined || first === 0x7b || first <= 0x20 || first === 0xef;
  return isText ? openJson(file) : openZip(file);
}
