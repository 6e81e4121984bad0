import { MeshFault } from "../meshFault.ts";

export const mostTriangles = 10_000_000;
/** No coordinate of a pattern reaches this in any unit; larger ones are misread bytes. */
export const widestCoordinate = 1e6;
/** The longest line, tag or record kept while waiting for the rest of it, bytes. */
export const longestPiece = 4_194_304;

/** A MeshFault once a file holds more triangles than a browser can carry. */
export function refuseTooMany(triangles: number): void {
  if (triangles <= mostTriangles) return;
  throw new MeshFault({
    code: "too-many-triangles",
    found: `more than ${mostTriangles} triangles`,
    expected: `at most ${mostTriangles}`,
    remedy: "thin the mesh out in the program it was made with",
  });
}

export const outOfRange = (value: number, where: string): MeshFault =>
  new MeshFault({
    code: "out-of-range",
    found: `the coordinate ${value} ${where}`,
    expected: "a finite number within a million",
    remedy: "export the pattern again; the file is damaged or of another kind than its name says",
  });

export const cutShort = (found: string, expected: string): MeshFault =>
  new MeshFault({
    code: "cut-short",
    found,
    expected,
    remedy: "the file ends too early; copy or export it again",
  });

export const noFaces = (found: string): MeshFault =>
  new MeshFault({
    code: "no-faces",
    found,
    expected: "a surface of triangles",
    remedy: "export it as a mesh, not as points or lines",
  });
