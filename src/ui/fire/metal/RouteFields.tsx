import { effectiveSolidity, printedMassG } from "../../../physics/shell/printSolidity.ts";
import type { PatternMeasured } from "../../../logbook/entries/pieceBodies.ts";
import type { PatternMaterial } from "../../../trade/patternMaterials.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Choice } from "../../base/forms/Choice.tsx";
import type { SumForm } from "../../base/forms/bound.ts";
import { kept } from "../../../logbook/casting/limits.ts";
import { isPrinted, massLimits, type MassDraft } from "../../../logbook/casting/massDraft.ts";
import sheet from "../../base/styles/sheet.module.css";
import { NumberOf, PickOf } from "../../base/forms/BoundFields.tsx";
import css from "./metal.module.css";

type Props = { readonly form: SumForm<MassDraft> };
type WithMesh = Props & { readonly mesh: PatternMeasured | null };

export function HollowFields({ form, mesh }: WithMesh) {
  const format = useFormat();
  if (mesh === null) return <p>No 3D file for this piece yet. Open one under Patterns to fill this in.</p>;
  return (
    <>
      <p>
        {mesh.fileName}:{" "}
        {mesh.volumeMm3 === null
          ? "no volume: the mesh has gaps"
          : `${format.show("cm3", mesh.volumeMm3 / 1000)} inside`}
        , {format.show("m2", mesh.areaMm2 / 1e6)} of surface.
      </p>
      <PickOf
        form={form}
        at="hollow"
        label="Pattern"
        options={[
          { value: "solid", label: "Solid, or filled inside", hint: "solid metal" },
          { value: "closed-hollow", label: "Hollow, closed", hint: "solid metal too" },
          { value: "vented-hollow", label: "Hollow, open to slurry", hint: "metal in the wall only" },
        ]}
      />
      {form.draft.hollow === "vented-hollow" && (
        <NumberOf
          form={form}
          at="hollowWallMm"
          label="Wall thickness"
          quantity="mm"
          hint="Slurry must run in, coat everything and drain out: every drain hole open."
        />
      )}
    </>
  );
}

export function WaterFields({ form, route }: Props & { readonly route: "hydrostatic" | "displacement" }) {
  return (
    <>
      <div className={css["fields"]}>
        {route === "displacement" ? (
          <>
            <NumberOf
              form={form}
              at="displacedG"
              label="Water displaced"
              quantity="g"
              hint="Weigh the overflow of a brim-full pail. Or read how much a pail on the scale gains with the pattern held under."
            />
            <NumberOf
              form={form}
              at="sinkerDisplacedG"
              label="Of that, the sinker"
              quantity="g"
              hint="The sinker alone, the same way."
            />
          </>
        ) : (
          <>
            <NumberOf form={form} at="airG" label="Weight in air" quantity="g" hint="The pattern alone." />
            <NumberOf
              form={form}
              at="submergedG"
              label="Weight under water"
              quantity="g"
              hint="With its sinker, if it floats."
            />
            <NumberOf form={form} at="sinkerSubmergedG" label="The sinker alone, under water" quantity="g" />
          </>
        )}
      </div>
      <PickOf
        form={form}
        at="isSealed"
        label="Does water get in?"
        options={[
          { value: "yes", label: "No, sealed" },
          { value: "no", label: "Yes, or not sure" },
        ]}
      />
      <p className={sheet["soft"]}>
        Volume is the water's weight over{" "}
        {route === "displacement" ? "" : "(what hanging under water takes off) "}
        0.998 g/cm³, water at room heat.
      </p>
    </>
  );
}

export function SlicerFields({ form }: Props) {
  return (
    <>
      <p>
        Set the part to 100% infill in the slicer and read its weight. Print it as you like: the cavity is the
        full volume.
      </p>
      <div className={css["fields"]}>
        <NumberOf form={form} at="slicerG" label="Weight at 100% infill" quantity="g" />
        <NumberOf
          form={form}
          at="slicerGCm3"
          label="Density in the slicer"
          quantity="density"
          hint="In its filament settings."
        />
      </div>
    </>
  );
}

const fills = [
  { value: "solid", label: "Solid all through" },
  { value: "infill", label: "With infill", hint: "a skin and a lattice inside" },
  { value: "closed-hollow", label: "Hollow, closed" },
  { value: "vented-hollow", label: "Hollow, open to slurry", hint: "slurry coats the inside too" },
] as const;

export function WeightFields({
  form,
  mesh,
  material,
}: WithMesh & { readonly material: PatternMaterial | null }) {
  const { fill } = form.draft;
  return (
    <>
      <Choice
        label={isPrinted(material) ? "Is the print solid?" : "Is the pattern solid?"}
        options={fills}
        value={fill === "not-stated" ? null : fill}
        onChange={(next) => form.set({ fill: next })}
      />
      <div className={css["fields"]}>
        <NumberOf form={form} at="patternG" label="Pattern weight" quantity="g" />
        <NumberOf
          form={form}
          at="patternGCm3"
          label="Density of the pattern"
          quantity="density"
          hint={
            material === "foam"
              ? "Weight is a poor guide for foam: glue and paint weigh as much."
              : "Starting value for the material. Weigh a block of your own for a better one."
          }
        />
      </div>
      {fill === "infill" && <InfillCheck form={form} mesh={mesh} />}
      {fill === "vented-hollow" && <p>The metal is the wall only, so weight over density is right here.</p>}
    </>
  );
}

/** What a print of this mesh should weigh, beside the scale: why the weight can't be used. */
function InfillCheck({ form, mesh }: WithMesh) {
  const format = useFormat();
  const { skinMm, infill, patternGCm3, patternG } = kept(form.draft, massLimits);
  const volumeCm3 = mesh?.volumeMm3 ?? null;
  return (
    <>
      <div className={css["fields"]}>
        <NumberOf form={form} at="skinMm" label="Print walls" quantity="mm" />
        <NumberOf form={form} at="infill" label="Infill" quantity="percent" />
      </div>
      {mesh !== null && volumeCm3 !== null && volumeCm3 > 0 && skinMm !== null && infill !== null && (
        <Should
          print={{
            volumeCm3: volumeCm3 / 1000,
            areaCm2: mesh.areaMm2 / 100,
            wallMm: skinMm,
            infillShare: infill,
          }}
          densityGCm3={patternGCm3}
          patternG={patternG}
        />
      )}
      {volumeCm3 === null && (
        <p className={sheet["soft"]}>
          Open its 3D file to compare the weight with what the print should weigh.
        </p>
      )}
      <p className={sheet["soft"]}>
        Seal every pin hole before the first dip, or slurry gets inside. Plastic = walls × surface + infill ×
        the rest inside; derived here, walls taken as flat ({format.show("percent", 0.15)} infill in a
        palm-sized print is about three tenths solid).
      </p>
    </>
  );
}

function Should({
  print,
  densityGCm3,
  patternG,
}: {
  readonly print: Parameters<typeof effectiveSolidity>[0];
  readonly densityGCm3: number | null;
  readonly patternG: number | null;
}) {
  const format = useFormat();
  const should = densityGCm3 === null ? null : printedMassG({ ...print, densityKgM3: densityGCm3 * 1000 });
  return (
    <p>
      Such a print is {format.show("percent", effectiveSolidity(print))} plastic
      {should === null ? "" : ` and should weigh ${format.show("g", should)}`}
      {patternG === null ? "" : `; the scale says ${format.show("g", patternG)}`}. The metal fills all of it.
    </p>
  );
}
