import type { LengthUnit } from "../../geometry/mesh.ts";
import type { MeshFormat, ReadNote } from "../../geometry/read/reader.ts";
import type { FoundPattern } from "./foundPattern.ts";

export type OpenedPattern = {
  /** Hex, by what is in the file: `fileId`. */
  readonly id: string;
  readonly file: {
    readonly name: string;
    readonly sizeBytes: number;
    readonly format: MeshFormat;
    readonly unit: LengthUnit | null;
    readonly notes: readonly ReadNote[];
  };
  readonly found: FoundPattern;
};
