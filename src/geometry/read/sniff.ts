import { MeshFault } from "../meshFault.ts";
import { textOf } from "./floatScanner.ts";

/** As many bytes as are looked at before a format is chosen. */
export const sniffBytes = 1024;

type Sniffed = "stl-binary" | "stl-text" | "obj" | "ply" | "3mf";

/**
 * What a file is, from its first bytes, its name and its size. The bytes come before the name; a head that says "solid"
 * is text only when it reads as text and the size is not that of the binary facets it counts.
 */
export function sniffFormat(head: Uint8Array, name: string, sizeBytes: number): Sniffed {
  const extension = /\.([a-z0-9]+)$/i.exec(name.trim())?.[1]?.toLowerCase() ?? "";
  const start = textOf(head, 0, sniffBytes);
  if (start.startsWith("PK\u0003\u0004")) return "3mf";
  if (/^ply[\r\n]/.test(start)) return "ply";
  if (isBinaryStl(head, sizeBytes)) return "stl-binary";
  if (isUtf16(head)) throw utf16();
  const words = start.replace(/^\u00ef\u00bb\u00bf/, "").trimStart();
  const isText = !head.subarray(0, sniffBytes).some(isControl);
  if (isText && /^solid\b/i.test(words) && extension !== "obj") return "stl-text";
  if (extension === "obj" && isText) return "obj";
  if (isText && /^(#[^\n\r]*[\r\n]+\s*)*(v|o|g|vn|vt|mtllib)[ \t]/.test(words)) return "obj";
  if (extension === "stl" && !isText) return "stl-binary";
  if (extension === "stl" && /\bfacet\b/i.test(start)) return "stl-text";
  throw new MeshFault({
    code: "unknown-format",
    found: extension === "" ? "a file of no known kind" : `a .${extension} file of no known kind`,
    expected: "STL, OBJ, PLY or 3MF",
    remedy: "export the pattern as STL, OBJ, PLY or 3MF",
  });
}

/** No letter, blank or line end of a text. */
const isControl = (byte: number): boolean =>
  byte < 32 && !(byte >= 9 && byte <= 13) && byte !== 26 && byte !== 27;

function isBinaryStl(head: Uint8Array, sizeBytes: number): boolean {
  if (head.length < 84) return false;
  return new DataView(head.buffer, head.byteOffset).getUint32(80, true) * 50 + 84 === sizeBytes;
}

/** By its mark, or by letters that have an empty byte beside each. */
function isUtf16(head: Uint8Array): boolean {
  const [first, second] = [head[0], head[1]];
  if ((first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff)) return true;
  const pairs = Math.min(32, head.length >> 1);
  if (pairs < 4) return false;
  for (const empty of [0, 1]) {
    let all = true;
    for (let i = 0; i < pairs && all; i++)
      all = head[2 * i + empty] === 0 && head[2 * i + 1 - empty]! >= 9 && head[2 * i + 1 - empty]! < 127;
    if (all) return true;
  }
  return false;
}

const utf16 = (): MeshFault =>
  new MeshFault({
    code: "utf16",
    found: "text of two bytes a letter (UTF-16)",
    expected: "plain text (ASCII or UTF-8)",
    remedy: "save it as UTF-8, or export the pattern as binary STL",
  });
