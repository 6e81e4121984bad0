import { useState } from "react";
import { lengthUnitMm } from "../../../geometry/lengthUnit.ts";
import { minus } from "../../../geometry/vector.ts";
import { ownAlloy, ownMeltFigures } from "../../../logbook/shop/ownAlloy.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import { learnShrink } from "../../../physics/metal/shrinkScale.ts";
import type { Format } from "../../base/format/units.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { PickField } from "../../base/forms/PickField.tsx";
import { Reckoned, Rows } from "../../base/parts/Reckoned.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { NumberField } from "../../base/forms/NumberField.tsx";
import { unitWords } from "./fileWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./pattern.module.css";
import { resized } from "./patternStudy.ts";
import { sizeOf, type PatternSize } from "./patternSize.ts";
import { UnitQuestion } from "./UnitQuestion.tsx";
import type { PatternController } from "./usePatternController.ts";

const ways = [
  { value: "percent", label: "By percent" },
  { value: "length", label: "To a length" },
] as const;
const shrinkWays = [
  { value: "no", label: "As it is" },
  { value: "yes", label: "Larger by the metal's shrink" },
] as const;

/** A pattern shorter or longer than this is one in the wrong unit; judgement. */
const [leastMm, mostMm] = [3, 5000];
const isCastable = (longestMm: number): boolean => longestMm >= leastMm && longestMm <= mostMm;

const isPercent = (value: number | null): value is number => value !== null && value >= 1 && value <= 10_000;
const isLength = (value: number | null): value is number => value !== null && value >= 1 && value <= 5000;

export function SizeCard({ door, shop }: { readonly door: PatternController; readonly shop: Shop }) {
  const { study, mmPerUnit, act } = door;
  const format = useFormat();
  const [way, setWay] = useState(study.scale.kind);
  const { box } = study.found.measures;
  const longest = Math.max(...minus(box.high, box.low));
  const { unit, scale, shrinkShare, alloyId } = study;
  const longestMm = unit === null ? null : longest * lengthUnitMm[unit];
  const share = alloyId === null ? null : shrinkOf(shop, alloyId);
  const alloy = alloyId === null ? null : ownAlloy(alloyId, shop);
  const size = mmPerUnit === null ? null : sizeOf(study, mmPerUnit);
  return (
    <Card title="Size" tone={unit === null ? "ember" : "plain"}>
      <UnitPart door={door} longest={longest} />
      {longestMm !== null && (
        <>
          <PickField label="Make it larger or smaller" options={ways} value={way} onChange={setWay} />
          {way === "percent" ? (
            <NumberField
              label="Percent of the file"
              quantity="plain"
              min={1}
              max={10_000}
              value={scale.kind === "percent" ? scale.percent : (100 * scale.toMm) / scale.fromMm}
              onChange={(percent) => {
                if (isPercent(percent))
                  act((now) => resized(now, { scale: { kind: "percent", percent } }), "scale");
              }}
            />
          ) : (
            <NumberField
              label="Longest side becomes"
              quantity="mm"
              min={1}
              max={5000}
              value={scale.kind === "length" ? scale.toMm : longestMm}
              onChange={(toMm) => {
                if (isLength(toMm))
                  act((now) => resized(now, { scale: { kind: "length", fromMm: longestMm, toMm } }), "scale");
              }}
              hint={`${format.show("mm", longestMm)} in the file.`}
            />
          )}
          {share === null || alloy === null ? (
            <p>Choose the alloy to have the shrink added.</p>
          ) : (
            <PickField
              label="The casting shall come out at this size"
              options={shrinkWays}
              value={shrinkShare === null ? "no" : "yes"}
              onChange={(answer) =>
                act((now) => resized(now, { shrinkShare: answer === "yes" ? share.share : null }))
              }
              hint={`${alloy.name} shrinks by ${format.show("share", share.share)}: ${share.basis}. Choose "As it is" when it was drawn larger already.`}
            />
          )}
          {shrinkShare !== null && share !== null && Math.abs(share.share - shrinkShare) > 1e-6 && (
            <p>
              The pattern is larger by {format.show("share", shrinkShare)}, the shrink of another alloy. Tap
              the choice again to take this one's.
            </p>
          )}
        </>
      )}
      {size !== null && !isCastable(Math.max(...size.boxMm)) && (
        <p role="alert" className={`${sheet["refused"]} ${sheet["held"]} ${css["refused"]}`}>
          {Math.max(...size.boxMm) < leastMm ? "Less than" : "More than"}{" "}
          {format.show("mm", Math.max(...size.boxMm) < leastMm ? leastMm : mostMm)} long: no pattern for a
          shell is. Look at its unit again, or at the scale.
        </p>
      )}
      {size !== null && (
        <>
          <Rows
            rows={[
              ["Box", size.boxMm.map((mm) => format.show("mm", mm)).join(" × ")],
              ["Surface", surfaceWords(size, format)],
            ]}
          />
          <Reckoned
            formula="unit × scale × (1 + shrink by the rule)"
            given={[["One unit of the file", `${format.number(mmPerUnit ?? 0, 5)} mm`]]}
            source="inch and foot exact since 1959; shrink as said above"
          />
        </>
      )}
    </Card>
  );
}

/** A range until it is said whether slurry will come into closed hollows. */
function surfaceWords({ areaMm2, outerMm2, hollows }: PatternSize, format: Format): string {
  const area = (mm2: number): string => format.show("m2", mm2 / 1e6);
  return hollows?.are === null ? `${area(outerMm2)} to ${area(areaMm2)}` : area(areaMm2);
}

/** Asked until it is known; then it steps back, but can be put right. */
function UnitPart({
  door: {
    study: { file, unit },
    change,
  },
  longest,
}: {
  readonly door: PatternController;
  readonly longest: number;
}) {
  const question = (
    <UnitQuestion
      longest={longest}
      value={unit}
      onChange={(next) => change((now) => resized(now, { unit: next }))}
    />
  );
  if (unit === null) return question;
  if (file.unit !== null) return <p>The file says it is in {unitWords[unit].toLowerCase()}.</p>;
  return (
    <details>
      <summary>The file is in {unitWords[unit].toLowerCase()}</summary>
      {question}
    </details>
  );
}

function shrinkOf(shop: Shop, alloyId: string): { readonly share: number; readonly basis: string } | null {
  const own = learnShrink(shop.shrinks.filter((seen) => seen.alloyId === alloyId && seen.held === "free"));
  if (own.kind === "learned")
    return {
      share: Math.min(0.2, Math.max(0, own.meanShare)),
      basis: `your own, of ${own.pieces} pieces`,
    };
  const figures = ownMeltFigures(alloyId, shop);
  if (figures === null) return null;
  return {
    share: (figures.shrinkLow.value + figures.shrinkHigh.value) / 2,
    basis: "a starting value, lists differ by a third of a percent",
  };
}
