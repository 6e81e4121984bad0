import { NumberOf, PickOf } from "../../base/forms/BoundFields.tsx";
import { sandCoverMm } from "../../../trade/wallFigures.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import type { PlanForm } from "./planForm.ts";

/** What takes load off a flat panel or a rim: asked where the part is asked. */
export function PlanSupport({ form }: { readonly form: PlanForm }) {
  const format = useFormat();
  const { part } = form.draft;
  if (part !== "flat" && part !== "rim") return null;
  return (
    <>
      <NumberOf
        form={form}
        at="ribEveryMm"
        label="Ribs across it, spacing"
        hint="Bars or ridges across the panel, coated in with the shell. They count as edges; the ribs themselves are not checked."
      />
      {part === "flat" && (
        <NumberOf
          form={form}
          at="crownMm"
          label="Crown"
          hint="How far the middle bulges out across the short side. Lay a ruler across it."
        />
      )}
      <PickOf
        form={form}
        at="sand"
        label="Sand around it at the pour"
        options={[
          { value: "loose", label: "Loose", hint: "Holds a leak; adds no strength." },
          {
            value: "vibrated",
            label: "Vibrated in a box",
            hint: `At least ${format.show("mm", sandCoverMm.value)} all round.`,
          },
        ]}
        empty="None"
      />
      {part === "flat" && (
        <PickOf
          form={form}
          at="edges"
          label="Edges"
          options={[
            {
              value: "held",
              label: "Held by the other face",
              hint: "A thin plate, coated on both faces in one shell.",
            },
          ]}
          empty="Not held"
        />
      )}
    </>
  );
}
