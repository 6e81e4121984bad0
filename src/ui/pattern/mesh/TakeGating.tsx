import { Link } from "wouter";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import type { SumForm } from "../../base/forms/bound.ts";
import type { GatingDraft } from "../../../logbook/casting/gatingDraft.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import type { GatingHandover } from "./chainOfStudy.ts";
import sheet from "../../base/styles/sheet.module.css";
import { isTaken, type GatingOf } from "./useGatingOf.ts";

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
  gating: { study, first, found, way },
  form: { draft, set },
}: {
  readonly gating: GatingOf;
  readonly form: SumForm<GatingDraft>;
}) {
  const format = useFormat();
  const link = <Link href={paths.pattern(study.id)}>{study.name === "" ? "Its pattern" : study.name}</Link>;
  if (first !== null)
    return (
      <Card title="From the pattern" tone="note">
        <p className={sheet["breaks"]}>
          Nothing can be taken from {link} yet. {first}
        </p>
      </Card>
    );
  if (found === null || way === null) return null;
  const told = [
    given(found.massKg, (kg) => `metal ${format.show("kg", kg)}`),
    given(found.gateMm2, (mm2) => `gates ${format.show("mm2", mm2)}`),
    given(found.cupMm, (mm) => `metal in the cup ${format.show("mm", mm)}`),
    given(found.sprueMm, (mm) => `cup to gate ${format.show("mm", mm)}`),
    given(found.cavityMm, (mm) => `height of the cavity ${format.show("mm", mm)}`),
    given(found.wallMm, (mm) => `thinnest wall ${format.show("mm", mm)}`),
  ].filter((words) => words !== null);
  return (
    <Card title="From the pattern">
      <p className={sheet["breaks"]}>
        {link} knows a feeding chain of {format.number(found.links.length, 0)}: from {fromWords[way.from]},{" "}
        {byWords[way.by]}.
      </p>
      {told.length > 0 && <p>And {told.join(", ")}.</p>}
      {isTaken(found, draft) ? (
        <p role="status" className={sheet["soft"]}>
          All of it stands below.
        </p>
      ) : (
        <>
          <Button onPress={() => set(found)}>Take from the pattern</Button>
          <p className={sheet["soft"]}>It takes the place of the parts and figures that stand below now.</p>
        </>
      )}
    </Card>
  );
}

const given = (value: number | null | undefined, words: (value: number) => string): string | null =>
  value === null || value === undefined ? null : words(value);
