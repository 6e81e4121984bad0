import type { PatternStudy } from "./patternStudy.ts";

/** What is to be said of a mesh, the gravest first, and how grave it is. */
export function meshFindings(
  { found, holesClosed, seamsJoined }: Pick<PatternStudy, "found" | "holesClosed" | "seamsJoined">,
  { isWhole, count }: { readonly isWhole: boolean; readonly count: (n: number) => string },
): { readonly level: "clear" | "note" | "watch"; readonly findings: readonly string[] } {
  const { measures, filed, mended, analysed } = found;
  const watch: string[] = [];
  const note: string[] = [];
  if (!measures.watertight) watch.push(openWords(found, count));
  if (enclosesNothing(measures))
    watch.push("It is a surface without thickness. Add thickness in your 3D program.");
  if (measures.overlaps)
    watch.push("Bodies overlap. The overlap is counted once. Join them in your 3D program to be sure.");
  if (measures.farOff)
    watch.push(
      "It is too far from the origin, so fine detail is lost. Move it to the origin and export again.",
    );
  if (filed.insideOut) note.push("The mesh was inside out and was turned.");
  if (mended.turnedBodies > 0 && !filed.insideOut)
    note.push(`${some(mended.turnedBodies, "body was", "bodies were", count)} inside out and turned.`);
  if (mended.turnedOver > 0)
    note.push(
      `${some(mended.turnedOver, "face looked", "faces looked", count)} the wrong way and was turned.`,
    );
  if (seamsJoined) note.push("Open seams were joined.");
  if (mended.cappedCount > 0)
    note.push(
      `${some(mended.cappedCount, "hole was", "holes were", count)} closed${holesClosed ? " as you said" : ""}: ` +
        `the widest is ${(100 * Math.max(...mended.capped.map(({ share }) => share))).toFixed(0)}% of the size across.`,
    );
  if ((mended.doubles ?? 0) > 0)
    note.push(`${some(mended.doubles ?? 0, "face", "faces", count)} drawn a second time left out.`);
  if (mended.degenerate > 0)
    note.push(`${some(mended.degenerate, "face", "faces", count)} without an area left out.`);
  if (!analysed.isWhole)
    note.push(
      `This mesh is too large for this device. Volume and surface use all of it; the rest uses a copy of ${count(analysed.triangles)} triangles.`,
    );
  else if (!isWhole)
    note.push(
      "The file is no longer here, so new results use the copy shown. Open the file again for the full mesh.",
    );
  const { components } = measures;
  if (watch.length + note.length === 0 && components === 1)
    return { level: "clear", findings: ["Watertight: one closed surface, no repairs."] };
  const voids = found.hollows?.count ?? 0;
  if (measures.watertight && components === voids + 1 && voids > 0)
    note.push(
      `${count(components)} closed skins: ${voids === 1 ? "a void" : `${count(voids)} voids`} in one body.`,
    );
  else if (measures.watertight && components > 1)
    note.push(
      `${count(components)} closed skins: separate bodies, or hollows in one. Each body needs its own gate.`,
    );
  const sound = measures.watertight ? ["Watertight."] : [];
  return { level: watch.length > 0 ? "watch" : "note", findings: [...watch, ...sound, ...note] };
}

/** Less than a millionth of the cube over its diagonal: thinner than any wall. */
const enclosesNothing = ({ watertight, volume, box }: PatternStudy["found"]["measures"]): boolean =>
  watertight && volume !== null && Math.abs(volume) < 1e-6 * box.diagonal ** 3;

const reasonWords = {
  border: "it has open edges",
  "non-manifold": "edges carry more than two faces",
  flipped: "faces look both ways",
} as const;

function openWords({ measures }: PatternStudy["found"], count: (n: number) => string): string {
  const reasons = (measures.openVolume?.reasons ?? []).map((reason) => reasonWords[reason]).join(", ");
  const edges = measures.borderEdges + measures.nonManifoldEdges + measures.flippedEdges;
  return `Not watertight: ${reasons} (${count(edges)} edges). Its volume is a range at best.`;
}

const some = (n: number, one: string, many: string, count: (n: number) => string): string =>
  n === 1 ? `1 ${one}` : `${count(n)} ${many}`;
