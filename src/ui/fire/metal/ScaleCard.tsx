import { chainedScale, patternScale, volumeScale } from "../../../physics/metal/shrinkScale.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import type { MeltFigures } from "../../../trade/metals/alloy.ts";
import type { PatternMaterial } from "../../../trade/patternMaterials.ts";
import { otherShrinks } from "../../../trade/volumeRoutes.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import type { Format } from "../../base/format/units.ts";
import { Card } from "../../base/parts/Card.tsx";
import type { SumForm } from "../../base/forms/bound.ts";
import { isPrinted, type MassDraft } from "../../../logbook/casting/massDraft.ts";
import { Reckoned, Rows, type Given } from "../../base/parts/Reckoned.tsx";
import { ownShrink } from "../../../logbook/casting/ownShrink.ts";
import sheet from "../../base/styles/sheet.module.css";
import { PickOf } from "../../base/forms/BoundFields.tsx";
import css from "./metal.module.css";

/** How much larger the pattern must be than the casting, with each step on the way multiplied in. */
export function ScaleCard({
  form,
  shop,
  alloyId,
  figures,
  material,
}: {
  readonly form: SumForm<MassDraft>;
  readonly shop: Shop;
  readonly alloyId: string;
  readonly figures: MeltFigures;
  readonly material: PatternMaterial | null;
}) {
  const format = useFormat();
  const learned = ownShrink({ shop, alloyId, held: "free" });
  const usual = (figures.shrinkLow.value + figures.shrinkHigh.value) / 2;
  const share = learned.kind === "learned" ? Math.min(0.2, Math.max(0, learned.meanShare)) : usual;
  const metal = patternScale({ shrinkShare: share, convention: "rule" });
  const before = stepsBefore(material, form.draft.rubber === "yes");
  const whole = chainedScale([metal, ...before.map(({ scale }) => scale)]);
  return (
    <Card title="Shrink allowance">
      <p className={css["big"]}>
        × {format.number(metal, 4)} <small>for the metal’s shrink</small>
      </p>
      <p>
        {format.show("share", share)}
        {learned.kind === "learned"
          ? `, the shop's own: mean of ${learned.pieces} pieces, ± ${format.show("share", learned.sdShare)}`
          : `, a starting value (${rangeWords(figures, format)}); lists differ by ± 0.3%`}
        . In volume and metal that is {format.show("share", volumeScale(metal) - 1)} more.
      </p>
      {material === "wax" && (
        <PickOf
          form={form}
          at="rubber"
          label="Wax from a rubber mould?"
          options={[
            { value: "no", label: "No" },
            { value: "yes", label: "Yes" },
          ]}
        />
      )}
      <Rows
        rows={[
          ...before.map(({ name, scale }): Given => [name, `× ${format.number(scale, 4)}`]),
          ["Total, from the start", `× ${format.number(whole, 4)}`],
        ]}
      />
      <Reckoned
        formula="scale = (1 + metal shrink by the rule) × each shrink before it, as 1 ÷ (1 − s)"
        given={[["Metal shrink", format.show("share", share)]]}
        source={`${figures.shrinkLow.source}; before it: ${otherShrinks.wax.source}; the shell: ${otherShrinks["shell-firing"].source}`}
      />
      <p className={sheet["soft"]}>
        The charge uses the pattern’s present size, which is on the safe side. A piece held by a core or its
        shape shrinks less: measure both kinds on the alloy’s page.
      </p>
    </Card>
  );
}

function stepsBefore(material: PatternMaterial | null, isFromRubber: boolean) {
  const step = (name: string, share: number) => ({
    name,
    scale: patternScale({ shrinkShare: share, convention: "contraction" }),
  });
  return [
    ...(material === "wax" ? [step("Wax as it cools", otherShrinks.wax.value)] : []),
    ...(material === "wax" && isFromRubber ? [step("Rubber mould", otherShrinks["rubber-mould"].value)] : []),
    ...(isPrinted(material) ? [step("Printed plastic", otherShrinks["printed-plastic"].value)] : []),
    step("Shell as it is fired", otherShrinks["shell-firing"].value),
  ];
}

const rangeWords = ({ shrinkLow, shrinkHigh }: MeltFigures, format: Format): string =>
  shrinkLow.value === shrinkHigh.value
    ? format.show("share", shrinkLow.value)
    : `${format.show("share", shrinkLow.value)} to ${format.show("share", shrinkHigh.value)}`;
