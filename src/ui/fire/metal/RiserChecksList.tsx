import { riserDiameterMm } from "../../../physics/metal/feeding.ts";
import type { MeltFigures } from "../../../trade/metals/alloy.ts";
import { riserGives } from "../../../trade/riserFigures.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { LevelMark } from "../../base/parts/LevelMark.tsx";
import type { RiserChecks } from "../../../logbook/casting/chainSum.ts";
import type { SumForm } from "../../base/forms/bound.ts";
import type { GatingDraft } from "../../../logbook/casting/gatingDraft.ts";
import { Reckoned } from "../../base/parts/Reckoned.tsx";
import sheet from "../../base/styles/sheet.module.css";
import { PickOf } from "../../base/forms/BoundFields.tsx";
import css from "./metal.module.css";

const gives = [
  { value: "plain", label: "Plain" },
  { value: "domed", label: "Domed" },
  { value: "insulated", label: "Insulated" },
] as const;

/** The three checks of a riser, all of which must pass. */
export function RiserChecksList({
  form,
  checks,
  isPathMet,
  figures,
}: {
  readonly form: SumForm<GatingDraft>;
  readonly checks: RiserChecks;
  readonly isPathMet: boolean;
  readonly figures: MeltFigures;
}) {
  const format = useFormat();
  const { modulus, volume } = checks;
  const cm3 = (mm3: number): string => format.show("cm3", mm3 / 1000);
  return (
    <section className={sheet["stack3"]} aria-label="Riser checks">
      <p>
        <strong>{checks.riser} feeds the casting if all three are met:</strong>
      </p>
      <Check isMet={modulus.isMet}>
        Freezes last: modulus {format.show("mm", modulus.hasMm)}, needs {format.show("mm", modulus.needsMm)}{" "}
        (⌀ {format.show("mm", riserDiameterMm({ modulusMm: modulus.needsMm, slender: 1 }))} as high as wide, ⌀{" "}
        {format.show("mm", riserDiameterMm({ modulusMm: modulus.needsMm, slender: 2 }))} twice as high)
      </Check>
      {volume === null ? (
        <p className={sheet["soft"]}>Has enough metal: enter the lengths or volumes of casting and riser.</p>
      ) : (
        <Check isMet={volume.isMet}>
          {volume.kind === "never-enough"
            ? "Has enough metal: no, it shrinks by more than it can give"
            : `Has enough metal: ${cm3(volume.hasMm3)}, needs ${cm3(volume.needsMm3)}`}
        </Check>
      )}
      <Check isMet={isPathMet}>Feeding path open: every part 1.1 times those behind it</Check>
      <PickOf
        form={form}
        at="riserGive"
        label="It gives up"
        options={gives.map(({ value, label }) => ({
          value,
          label: `${label}, ${format.show("percent", riserGives[value].value)}`,
        }))}
      />
      <Reckoned
        title="How the riser is checked"
        formula="modulus: M riser ≥ 1.2 × M casting; volume: V riser ≥ V casting × β ÷ (η − β)"
        given={[
          ["β, shrink on freezing", format.show("share", figures.freezeHigh.value)],
          ["η, what the riser gives", format.show("percent", riserGives[form.draft.riserGive].value)],
        ]}
        source={`from memory of Wlodawer (1966); ${riserGives[form.draft.riserGive].source}; β: ${figures.freezeHigh.source}. A covered top does with 0.7 to 0.8 of the size`}
      />
    </section>
  );
}

function Check({ isMet, children }: { readonly isMet: boolean; readonly children: React.ReactNode }) {
  return (
    <p className={`${sheet["line3"]} ${sheet["tap"]} ${css["pick"]}`}>
      <LevelMark level={isMet ? "clear" : "hold"} />
      <span>{children}.</span>
    </p>
  );
}
