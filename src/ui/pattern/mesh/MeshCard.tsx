import { useState } from "react";
import type { NotAnswered } from "../../../workers/patternClient.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import type { Format } from "../../base/format/units.ts";
import { Rows, type Given } from "../../base/parts/Reckoned.tsx";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { LevelMark } from "../../base/parts/LevelMark.tsx";
import { deviceCaps } from "./deviceCaps.ts";
import { noteWords, notAnsweredWords } from "./fileWords.ts";
import { meshFindings } from "./meshFindings.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./pattern.module.css";
import { noResults } from "./patternResults.ts";
import type { PatternStudy } from "./patternStudy.ts";
import type { PatternController } from "./usePatternController.ts";

/** Whether the mesh can be trusted, what was done to it, and what its maker must say. */
export function MeshCard({ door }: { readonly door: PatternController }) {
  const { study, change, ask, isWhole } = door;
  const format = useFormat();
  const [fault, setFault] = useState<NotAnswered | null>(null);
  const { measures, mended, analysed } = study.found;
  const { level, findings } = meshFindings(study, { isWhole, count: (n) => format.number(n, 0) });
  const mend = async (
    how: "close-holes" | "join-seams",
    said: Partial<Pick<PatternStudy, "holesClosed" | "seamsJoined">>,
  ): Promise<void> => {
    const mended = await ask(how, { caps: deviceCaps() });
    setFault(mended.ok ? null : mended);
    if (mended.ok) change((now) => ({ ...now, ...noResults, ...said, found: mended.answer }));
  };
  return (
    <Card title="The mesh" tone={level}>
      <LevelMark level={level} />
      {findings.map((text) => (
        <p key={text}>{text}</p>
      ))}
      {study.found.seams !== null && (
        <>
          <p>
            {format.number(study.found.seams.before - study.found.seams.after, 0)} of{" "}
            {format.number(study.found.seams.before, 0)} open edges lie within {gapWords(door, format)} of
            each other. Rounding in the export often leaves such seams. Join them to close the surface.
          </p>
          <Button onPress={() => mend("join-seams", { seamsJoined: true })}>Join the seams</Button>
        </>
      )}
      {study.found.seams === null && mended.leftCount > 0 && (
        <>
          <p>
            {mended.leftCount === 1 ? "A hole is" : `${format.number(mended.leftCount, 0)} holes are`} too
            wide to close automatically: {holeWords(door, format)}. If it is a base or a cut, close it. If the
            model is a surface without thickness, add thickness in your 3D program.
          </p>
          <Button onPress={() => mend("close-holes", { holesClosed: true })}>
            Close {mended.leftCount === 1 ? "the hole" : "the holes"}
          </Button>
        </>
      )}
      {fault !== null && (
        <p role="alert" className={`${sheet["refused"]} ${sheet["held"]} ${css["refused"]}`}>
          {fault.why === "no-mesh"
            ? "The file is no longer here. Open it again, then repeat this."
            : notAnsweredWords(fault)}
        </p>
      )}
      <details>
        <summary>Counts</summary>
        <Rows
          rows={[
            ["Triangles", format.number(measures.triangles, 0)],
            ["Bodies", format.number(measures.components, 0)],
            ...(measures.genus === null
              ? []
              : [["Handles", format.number(measures.genus, 0)] satisfies Given]),
            ["Open edges", format.number(measures.borderEdges, 0)],
            ["Edges of more than two faces", format.number(measures.nonManifoldEdges, 0)],
            ["Calculated on", `${format.number(analysed.triangles, 0)} triangles`],
            ["Shown by", `${format.number(study.found.display.idx.length / 3, 0)} triangles`],
          ]}
        />
        {study.file.notes.length > 0 && (
          <ul className={css["facts"]}>
            {study.file.notes.map((note) => (
              <li key={note.code}>{noteWords(note)}</li>
            ))}
          </ul>
        )}
      </details>
    </Card>
  );
}

function gapWords({ study, mmPerUnit }: PatternController, format: Format): string {
  const within = study.found.seams?.within ?? 0;
  if (mmPerUnit !== null && within * mmPerUnit >= 0.1) return format.show("mm", within * mmPerUnit);
  if (mmPerUnit !== null) return "a tenth of a millimetre";
  return `a ${format.number(study.found.measures.box.diagonal / within, 0)}th of its size`;
}

function holeWords({ study, mmPerUnit }: PatternController, format: Format): string {
  return study.found.mended.left
    .slice(0, 3)
    .map(({ share, length }) =>
      mmPerUnit === null
        ? `${format.show("percent", share)} of the size across`
        : `${format.show("mm", length * mmPerUnit)} round the rim`,
    )
    .join(", ");
}
