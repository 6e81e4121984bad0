import type { Format } from "./units.ts";

export type EntryNames = {
  readonly format: Format;
  readonly room: (id: string) => string;
  readonly bucket: (id: string) => string;
  readonly recipe: (id: string) => string;
  /** Its name in this shop, which may have alloys of its own. */
  readonly alloy: (id: string) => string;
};
