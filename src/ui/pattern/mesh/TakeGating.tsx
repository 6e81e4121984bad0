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
  "hot-spot": "the hot spot found on the 3D file",
  thickest: "the thickest place as a round bar (find the hot spot on the pattern’s Thickness page for more)",
  mesh: "the whole 3D file by volume and surface (thick places not known yet)",
};
const byWords: Readonly<Record<GatingHandover["by"], string>> = {
  cup: "through the gating drawn, to the cup",
  feeder: "to the nearest feeder",
  nothing: "to nothing yet: no gating is drawn",
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
    given(found.wallMm, (mm) => `thinnest section ${format.show("mm", mm)}`),
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
          All of it is shown below.
        </p>
      ) : (
        <>
          <Button onPress={() => set(found)}>Take from the pattern</Button>
          <p className={sheet["soft"]}>This replaces the parts and figures below.</p>
        </>
      )}
    </Card>
  );
}

const given = (value: number | null | undefined, words: (value: number) => string): string | null =>
  value === null || value === undefined ? null : words(value);
