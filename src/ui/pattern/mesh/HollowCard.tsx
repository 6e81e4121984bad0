import { useFormat } from "../../base/state/useFormat.ts";
import type { Format } from "../../base/format/units.ts";
import { PickField } from "../../base/forms/PickField.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { volumeText } from "../../base/format/figureText.ts";
import { noResults } from "./patternResults.ts";
import { sizeOf, type PatternSize } from "./patternSize.ts";
import type { StudyHollows } from "./studyHollows.ts";
import type { PatternController } from "./usePatternController.ts";

const answers = [
  { value: "metal", label: "Metal: cast solid" },
  { value: "core", label: "Core and shell: open it" },
] as const;

/** Voids that no slurry reaches: what becomes of them decides metal, surface and fill; nothing where there are none. */
export function HollowCard({ door: { study, mmPerUnit, change } }: { readonly door: PatternController }) {
  const format = useFormat();
  const size = mmPerUnit === null ? null : sizeOf(study, mmPerUnit);
  if (size === null || size.hollows === null) return null;
  const { hollows } = size;
  return (
    <Card
      title={hollows.count === 1 ? "Closed void" : "Closed voids"}
      tone={hollows.are === null ? "ember" : "plain"}
    >
      <PickField
        label={questionWords(hollows, format)}
        options={answers}
        value={hollows.are}
        onChange={(hollowsAre) => change((now) => ({ ...now, ...noResults, hollowsAre }))}
      />
      <p role="status">{answerWords(size, hollows, format)}</p>
    </Card>
  );
}

function questionWords({ count, volumeMm3 }: StudyHollows, format: Format): string {
  const held = volumeText(volumeMm3 / 1e6, format);
  return count === 1
    ? `The pattern has a closed void of ${held} that slurry can’t reach. Is it metal (cast solid) or core and shell (open it)?`
    : `The pattern has ${format.number(count, 0)} closed voids of ${held} that slurry can’t reach. Are they metal (cast solid) or core and shell (open them)?`;
}

function answerWords(size: PatternSize, { are, areaMm2 }: StudyHollows, format: Format): string {
  const litre = (mm3: number | null): string => volumeText((mm3 ?? 0) / 1e6, format);
  const area = (mm2: number): string => format.show("m2", mm2 / 1e6);
  const unsure = areaMm2 === null ? " The surface counts the skin of the void: its bodies overlap." : "";
  switch (are) {
    case null:
      return `Until you choose, the metal of the piece is between ${litre(size.lowMm3)} and ${litre(size.highMm3)}, and its surface between ${area(size.outerMm2)} and ${area(size.areaMm2)}.`;
    case "metal":
      return `It fills with metal: ${litre(size.volumeMm3)} for the piece, and only the outside is coated, ${area(size.areaMm2)}.${unsure}`;
    case "core":
      return `Open it before the first dip, so slurry gets in and the core comes out: ${litre(size.volumeMm3)} for the piece, inside and outside are coated, ${area(size.areaMm2)}.`;
  }
}
