import { Link } from "wouter";
import { usePattern } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import type { SumForm } from "../../base/forms/bound.ts";
import type { GatingDraft } from "../../../logbook/casting/gatingDraft.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { chainOfStudy, type GatingHandover } from "./chainOfStudy.ts";
import sheet from "../../base/styles/sheet.module.css";
import { readStudy } from "./readStudy.ts";

const fromWords: Readonly<Record<GatingHandover["from"], string>> = {
  "hot-spot": "the place that freezes last, as found on the mesh",
  thickest:
    "the thickest place of the mesh, as if it were a round bar (find what freezes last on the pattern's Walls to do better)",
  mesh: "the whole mesh by its volume and surface (nothing is known yet of where it is thick)",
};
const byWords: Readonly<Record<GatingHandover["by"], string>> = {
  cup: "over the bars drawn, to the cup",
  feeder: "to the feeder that stands nearest to it",
  nothing: "to nothing yet: no bar is drawn on a gate or feeder",
};

/** What the piece's pattern can put into these sums; nothing while it is not kept on this device. */
export function TakeGating({
  patternId,
  form: { draft, set },
}: {
  readonly patternId: string;
  readonly form: SumForm<GatingDraft>;
}) {
  const format = useFormat();
  const row = usePattern(patternId);
  const study = row === undefined || row === null ? null : readStudy(row.kept);
  const found = study === null ? null : chainOfStudy(study);
  if (study === null || found === null) return null;
  const { from, by, ...taken } = found;
  const heights = [
    taken.sprueMm === undefined ? null : `cup to gate ${format.show("mm", taken.sprueMm ?? 0)}`,
    taken.cavityMm === undefined ? null : `height of the cavity ${format.show("mm", taken.cavityMm ?? 0)}`,
    taken.wallMm === undefined ? null : `thinnest wall ${format.show("mm", taken.wallMm ?? 0)}`,
  ].filter((words) => words !== null);
  const isTaken = Object.entries(taken).every(
    ([name, value]) => JSON.stringify(draft[name as keyof GatingDraft]) === JSON.stringify(value),
  );
  return (
    <Card title="From the pattern">
      <p className={sheet["breaks"]}>
        <Link href={paths.pattern(study.id)}>{study.name === "" ? "Its pattern" : study.name}</Link> knows a
        feeding chain of {format.number(taken.links.length, 0)}: from {fromWords[from]}, {byWords[by]}.
      </p>
      {heights.length > 0 && <p>And {heights.join(", ")}.</p>}
      {isTaken ? (
        <p role="status" className={sheet["soft"]}>
          All of it stands below.
        </p>
      ) : (
        <>
          <Button onPress={() => set(taken)}>Take from the pattern</Button>
          <p className={sheet["soft"]}>It takes the place of the parts and lengths that stand below now.</p>
        </>
      )}
    </Card>
  );
}
