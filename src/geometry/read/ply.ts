import { indexedSurface } from "./indexed.ts";
import type { IndexedSurface } from "./indexed.ts";
import { cutShort } from "./limits.ts";
import { join } from "./pieces.ts";
import { plyBinaryBody } from "./plyBinary.ts";
import { plyHeaderOf } from "./plyHeader.ts";
import type { PlyHeader } from "./plyHeader.ts";
import { plyTextBody } from "./plyText.ts";
import { notesOf } from "./reader.ts";
import type { ReadMesh, Reader } from "./reader.ts";

type Opened = { readonly header: PlyHeader; readonly surface: IndexedSurface; readonly body: Reader<void> };

/** PLY, text or binary in either byte order, with any further elements and properties passed over. It names no unit. */
export function plyReader(sizeBytes: number): Reader<ReadMesh> {
  let head: Uint8Array = new Uint8Array(0);
  let opened: Opened | null = null;

  function feed(bytes: Uint8Array): void {
    if (opened !== null) return opened.body.feed(bytes);
    head = head.length === 0 ? bytes : join(head, bytes);
    const header = plyHeaderOf(head);
    if (header === null) {
      // The slice may be used again by whoever fed it.
      head = head.slice();
      return;
    }
    const countOf = (name: string): number =>
      header.elements.find((element) => element.name === name)?.count ?? 0;
    const surface = indexedSurface({
      vertices: Math.min(countOf("vertex"), sizeBytes / 3),
      triangles: Math.min(1.1 * countOf("face"), sizeBytes / 4),
    });
    const body = header.layout === "text" ? plyTextBody(header, surface) : plyBinaryBody(header, surface);
    opened = { header, surface, body };
    body.feed(head.subarray(header.size));
    head = new Uint8Array(0);
  }

  function end(): ReadMesh {
    if (opened === null) throw cutShort(`${head.length} bytes`, "a PLY header up to end_header");
    const { header, surface, body } = opened;
    body.end();
    return {
      ...surface.finish(),
      unit: null,
      format: header.layout === "text" ? "ply-text" : "ply-binary",
      notes: notesOf({ "polygons-split": surface.polygons(), "facets-dropped": surface.dropped() }),
    };
  }

  return { feed, end };
}
