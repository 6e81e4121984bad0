import { riserDiameterMm } from "../../../physics/metal/feeding.ts";
import {
  caineCheck,
  caineDiameterMm,
  shapeFactor,
  steelRiserRatio,
} from "../../../physics/metal/riserSanity.ts";
import type { Alloy, MeltFigures } from "../../../trade/metals/alloy.ts";
import { caineConstants, riserGives } from "../../../trade/riserFigures.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { LevelMark } from "../../base/parts/LevelMark.tsx";
import type { RiserChecks } from "../../../logbook/casting/chainSum.ts";
import type { SumForm } from "../../base/forms/bound.ts";
import { linkLimits, type GatingDraft, type LinkDraft } from "../../../logbook/casting/gatingDraft.ts";
import { kept } from "../../../logbook/casting/limits.ts";
import { Reckoned } from "../../base/parts/Reckoned.tsx";
import sheet from "../../base/styles/sheet.module.css";
import { PickOf } from "../../base/forms/BoundFields.tsx";
import css from "./metal.module.css";

const gives = [
  { value: "plain", label: "Plain" },
  { value: "domed", label: "Domed" },
  { value: "insulated", label: "Insulated" },
] as const;

/** The three checks of a riser, all of which must pass, and two second opinions. */
export function RiserChecksList({
  form,
  checks,
  isPathMet,
  alloy,
  figures,
  links,
}: {
  readonly form: SumForm<GatingDraft>;
  readonly checks: RiserChecks;
  readonly isPathMet: boolean;
  readonly alloy: Alloy;
  readonly figures: MeltFigures;
  readonly links: readonly LinkDraft[];
}) {
  const format = useFormat();
  const { modulus, volume } = checks;
  const cm3 = (mm3: number): string => format.show("cm3", mm3 / 1000);
  return (
    <section className={sheet["stack3"]} aria-label="Riser checks">
      <p>
        <strong>{checks.riser} feeds the casting if all three hold:</strong>
      </p>
      <Check isMet={modulus.isMet}>
        Freezes last: modulus {format.show("mm", modulus.hasMm)}, wanted {format.show("mm", modulus.needsMm)}{" "}
        (⌀ {format.show("mm", riserDiameterMm({ modulusMm: modulus.needsMm, slender: 1 }))} as high as wide, ⌀{" "}
        {format.show("mm", riserDiameterMm({ modulusMm: modulus.needsMm, slender: 2 }))} twice as high)
      </Check>
      {volume === null ? (
        <p className={sheet["soft"]}>
          Has enough to give: for that, the casting sections and the riser need their lengths.
        </p>
      ) : (
        <Check isMet={volume.isMet}>
          {volume.kind === "never-enough"
            ? "Has enough to give: never, it shrinks by more than it can give"
            : `Has enough to give: ${cm3(volume.hasMm3)}, wanted ${cm3(volume.needsMm3)}`}
        </Check>
      )}
      <Check isMet={isPathMet}>The way stays open: every part 1.1 times those behind it</Check>
      <PickOf
        form={form}
        at="riserGive"
        label="It gives up"
        options={gives.map(({ value, label }) => ({
          value,
          label: `${label}, ${format.show("percent", riserGives[value].value)}`,
        }))}
      />
      <SecondOpinions checks={checks} alloy={alloy} links={links} />
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

function SecondOpinions({
  checks,
  alloy,
  links,
}: {
  readonly checks: RiserChecks;
  readonly alloy: Alloy;
  readonly links: readonly LinkDraft[];
}) {
  const format = useFormat();
  const { castingVolumeMm3, castingAreaMm2, riserVolumeMm3, riserAreaMm2 } = checks;
  if (checks.volume === null) return null;
  const constants = caineConstants[alloy.caine];
  const casting = { volumeMm3: castingVolumeMm3, areaMm2: castingAreaMm2 };
  const caine = caineCheck({
    casting,
    riser: { volumeMm3: riserVolumeMm3, areaMm2: riserAreaMm2 },
    constants: constants.value,
  });
  const steel = steelOf(links);
  return (
    <details>
      <summary>Two second opinions</summary>
      <p>
        Caine's curve: {caine.isSound ? "sound" : "too small"}; it would have a riser as high as wide of ⌀{" "}
        {format.show("mm", caineDiameterMm({ casting, constants: constants.value }))}. {constants.source}
        {"note" in constants ? ` (${constants.note.toLowerCase().replace(".", "")})` : ""}.
      </p>
      {steel !== null && (
        <p>
          Steel of this shape took a riser of {format.show("percent", steel)} of the casting's volume (Bishop,
          Myskowski & Pellini, Trans. AFS 63 (1955), from memory, ± 20%); this one is{" "}
          {format.show("percent", riserVolumeMm3 / castingVolumeMm3)}. For looking at, not for sizing.
        </p>
      )}
    </details>
  );
}

/** The steel curve at the shape of the one casting section, if it is a plate or a bar of known size. */
function steelOf(links: readonly LinkDraft[]): number | null {
  const castings = links.filter(({ role }) => role === "casting").map((link) => kept(link, linkLimits));
  const [only, ...more] = castings;
  if (only === undefined || more.length > 0 || (only.shape !== "plate" && only.shape !== "bar")) return null;
  const { thicknessMm, widthMm, lengthMm } = only;
  if (thicknessMm === null || widthMm === null || lengthMm === null) return null;
  const [t = 0, w = 0, l = 0] = [thicknessMm, widthMm, lengthMm].sort((a, b) => a - b);
  return steelRiserRatio(shapeFactor({ thicknessMm: t, widthMm: w, lengthMm: l }));
}
