import { riserDiameterMm } from "../../../physics/metal/feeding.ts";
import type { PatternMeasured } from "../../../logbook/entries/pieceBodies.ts";
import type { Alloy, MeltFigures } from "../../../trade/metals/alloy.ts";
import { feedingWalls, freezingGroup } from "../../../trade/metals/freezingGroup.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import type { Format } from "../../base/format/units.ts";
import { Card } from "../../base/parts/Card.tsx";
import { ChainEditor } from "./ChainEditor.tsx";
import { ChainPicture } from "./ChainPicture.tsx";
import type { ChainSum } from "../../../logbook/casting/chainSum.ts";
import type { SumForm } from "../../base/forms/bound.ts";
import { type GatingDraft } from "../../../logbook/casting/gatingDraft.ts";
import { freezingWords } from "./metalWords.ts";
import { Reckoned } from "../../base/parts/Reckoned.tsx";
import { RiserChecksList } from "./RiserChecksList.tsx";
import sheet from "../../base/styles/sheet.module.css";
import { NumberOf, PickOf } from "../../base/forms/BoundFields.tsx";

const beds = [
  { value: "air", label: "Hot shell, standing free" },
  { value: "cold-sand", label: "Hot shell, in sand" },
  { value: "thick-mould", label: "Thick cold mould" },
] as const;

const lawWords: Readonly<Record<ChainSum["lawKind"], string>> = {
  through: "hot shell: freezing time grows with the modulus (± 30%)",
  chill: "the shell chills like a thick mould: time grows with the modulus squared (± 30%)",
  thick: "thick mould: time grows with the modulus squared",
};

/** Will feed metal reach the casting until it is frozen: the chain, its picture and the three checks. */
export function FeedCard({
  form,
  sum,
  alloy,
  figures,
  mesh,
}: {
  readonly form: SumForm<GatingDraft>;
  readonly sum: ChainSum | null;
  readonly alloy: Alloy;
  readonly figures: MeltFigures;
  readonly mesh: PatternMeasured | null;
}) {
  const format = useFormat();
  const { draft } = form;
  const group = freezingGroup({ solidusC: alloy.solidusC.value, liquidusC: alloy.liquidusC.value });
  const walls = feedingWalls[group];
  return (
    <Card title="Will it be fed?">
      <p>
        {alloy.name} {freezingWords[group]}. It feeds about {walls.value} walls far
        {draft.wallMm === null
          ? ""
          : `: in a wall of ${format.show("mm", draft.wallMm)}, ${format.show("mm", walls.value * draft.wallMm)} on each side of a gate`}
        .
      </p>
      <PickOf form={form} at="bed" label="Mould" options={beds} />
      {draft.bed !== "thick-mould" && (
        <NumberOf
          form={form}
          at="shellMm"
          label="Shell thickness"
          quantity="mm"
          hint={`Empty: ${format.show("mm", 8)}. It is filled in from the coats.`}
        />
      )}
      {sum === null ? (
        <p>Enter the sizes of one part to start the picture.</p>
      ) : (
        <>
          <ChainPicture links={sum.chain.links} />
          {sum.chain.shutAt !== null && (
            <p role="alert" className={`${sheet["held"]} ${sheet["firm"]} ${sheet["inset"]}`}>
              {sum.chain.shutAt.name} freezes before the part it feeds, so that part shrinks inside. Make its
              modulus {format.show("mm", sum.chain.shutAt.needsMm ?? 0)} or more
              {roundFor(sum.chain.shutAt.needsMm, format)}.
            </p>
          )}
          {sum.missing.length > 0 && (
            <p className={sheet["soft"]}>Left out, size missing: {sum.missing.join(", ")}.</p>
          )}
        </>
      )}
      <ChainEditor form={form} mesh={mesh} />
      {sum?.checks != null && (
        <RiserChecksList form={form} checks={sum.checks} isPathMet={sum.chain.isMet} figures={figures} />
      )}
      <Reckoned
        formula="M = volume ÷ cooling face; each M on the way to the cup at least 1.1 × the largest before it; freezing t = C·Mⁿ"
        given={sum === null ? [] : [["Here", lawWords[sum.lawKind]]]}
        source={`path: from memory of Wlodawer, Directional Solidification of Steel Castings (1966); thick mould: Chvorinov, constant after Flemings (1974), from memory; hot shell: derived here; reach of feeding: ${walls.source}`}
      />
    </Card>
  );
}

/** ", a round bar of 12 mm": what a modulus means in the hand. */
const roundFor = (modulusMm: number | null, format: Format): string =>
  modulusMm === null
    ? ""
    : `: a round bar of ${format.show("mm", 4 * modulusMm)}, or as a riser as high as wide ${format.show("mm", riserDiameterMm({ modulusMm, slender: 1 }))}`;
