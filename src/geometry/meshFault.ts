export type MeshFaultCode =
  | "empty-file"
  | "unknown-format"
  | "utf16"
  | "bad-header"
  | "bad-number"
  | "bad-index"
  | "bad-size"
  | "bad-archive"
  | "bad-scene"
  | "cut-short"
  | "out-of-range"
  | "no-faces"
  | "no-area"
  | "flat"
  | "too-many-triangles"
  | "too-much-inside";

/** A file that cannot be trusted as a pattern: what was found, what was expected, and what its maker can do. */
export class MeshFault extends Error {
  readonly code: MeshFaultCode;
  readonly found: string;
  readonly expected: string;
  readonly remedy: string;

  constructor({ code, found, expected, remedy }: Pick<MeshFault, "code" | "found" | "expected" | "remedy">) {
    super(`found ${found}, expected ${expected}; ${remedy}`);
    this.name = "MeshFault";
    this.code = code;
    this.found = found;
    this.expected = expected;
    this.remedy = remedy;
  }
}
