import { useState } from "react";
import { patternMaterials, type PatternMaterial } from "../../../trade/patternMaterials.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Button } from "../../base/parts/Button.tsx";
import { PickField } from "../../base/forms/PickField.tsx";
import { NumberField } from "../../base/forms/NumberField.tsx";
import { areaM2Of, type AreaBody, type Relief } from "../../../logbook/piece/areaEstimate.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./AreaEstimator.module.css";

const bodies = [
  { value: "box", label: "A box" },
  { value: "cylinder", label: "A cylinder" },
  { value: "sphere", label: "A ball" },
  { value: "weighed", label: "Weight and thickness", hint: "A hollow or sheet pattern of even thickness." },
] as const;
const reliefs = [
  { value: "smooth", label: "Smooth" },
  { value: "relief", label: "Some relief", hint: "a third more" },
  { value: "deep", label: "Deep folds", hint: "two thirds more" },
] as const satisfies readonly { value: Relief; label: string; hint?: string }[];
const faces = [
  { value: "1", label: "Outside only" },
  { value: "2", label: "Both faces" },
] as const;

type Sizes = {
  readonly lengthMm: number | null;
  readonly widthMm: number | null;
  readonly heightMm: number | null;
  readonly diameterMm: number | null;
  readonly massG: number | null;
  readonly thicknessMm: number | null;
};
const nothing: Sizes = {
  lengthMm: null,
  widthMm: null,
  heightMm: null,
  diameterMm: null,
  massG: null,
  thicknessMm: null,
};
const names: Record<keyof Sizes, string> = {
  lengthMm: "Length",
  widthMm: "Width",
  heightMm: "Height",
  diameterMm: "Diameter",
  massG: "Pattern weight",
  thicknessMm: "Thickness",
};
const asked: Record<AreaBody["kind"], readonly (keyof Sizes)[]> = {
  box: ["lengthMm", "widthMm", "heightMm"],
  cylinder: ["diameterMm", "heightMm"],
  sphere: ["diameterMm"],
  weighed: ["massG", "thicknessMm"],
};

/** A surface from a rule or a scale, for who has no mesh. */
export function AreaEstimator({
  material,
  onUse,
}: {
  readonly material: PatternMaterial | null;
  readonly onUse: (areaM2: number) => void;
}) {
  const format = useFormat();
  const [kind, setKind] = useState<AreaBody["kind"]>("box");
  const [relief, setRelief] = useState<Relief>("relief");
  const [side, setSide] = useState<"1" | "2">("1");
  const [sizes, setSizes] = useState<Sizes>(nothing);
  const density = patternMaterials[material ?? "wax"].densityKgM3?.value ?? null;
  const body = bodyOf(kind, sizes, { density, faces: side === "1" ? 1 : 2 });
  const areaM2 = body === null ? null : areaM2Of(body, relief);
  return (
    <details className={css["estimator"]}>
      <summary>Work out the surface area</summary>
      <div className={`${sheet["stack"]} ${css["body"]}`}>
        <PickField label="Closest shape" options={bodies} value={kind} onChange={setKind} />
        {asked[kind].map((name) => (
          <NumberField
            key={name}
            label={names[name]}
            quantity={name === "massG" ? "g" : "mm"}
            min={0}
            value={sizes[name]}
            onChange={(value) => setSizes({ ...sizes, [name]: value })}
          />
        ))}
        {kind === "weighed" && (
          <PickField label="Dipped on" options={faces} value={side} onChange={setSide} />
        )}
        {kind === "weighed" && density === null && (
          <p>Weight can’t give the volume of this pattern material. Use a box, a cylinder or a ball.</p>
        )}
        {kind === "weighed" && density !== null && (
          <p>
            Calculated as {patternMaterials[material ?? "wax"].label.toLowerCase()} of{" "}
            {format.number(density, 0)} kg/m³.
          </p>
        )}
        <PickField label="Surface texture" options={reliefs} value={relief} onChange={setRelief} />
        <p role="status">
          {areaM2 === null ? "Fill in the sizes." : `About ${format.show("m2", areaM2)}, an estimate.`}
        </p>
        <Button
          kind="secondary"
          disabledReason={areaM2 === null ? "Fill in the sizes above first." : null}
          onPress={() => {
            if (areaM2 !== null) onUse(Number(areaM2.toPrecision(2)));
          }}
        >
          Use it
        </Button>
      </div>
    </details>
  );
}

function bodyOf(
  kind: AreaBody["kind"],
  { lengthMm, widthMm, heightMm, diameterMm, massG, thicknessMm }: Sizes,
  { density, faces }: { readonly density: number | null; readonly faces: 1 | 2 },
): AreaBody | null {
  switch (kind) {
    case "box":
      return given(lengthMm) && given(widthMm) && given(heightMm)
        ? { kind, lengthMm, widthMm, heightMm }
        : null;
    case "cylinder":
      return given(diameterMm) && given(heightMm) ? { kind, diameterMm, heightMm } : null;
    case "sphere":
      return given(diameterMm) ? { kind, diameterMm } : null;
    case "weighed":
      return given(massG) && given(thicknessMm) && density !== null
        ? { kind, massG, densityKgM3: density, thicknessMm, faces }
        : null;
  }
}

const given = (value: number | null): value is number => value !== null && value > 0;
