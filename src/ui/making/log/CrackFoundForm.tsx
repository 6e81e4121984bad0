import { z } from "zod";
import type { CrackKind, CrackStage } from "../../../logbook/entries/pieceBodies.ts";
import type { Phase } from "../../../logbook/piece/piece.ts";
import { PickField } from "../../base/forms/PickField.tsx";
import { PhotoPicker } from "../../base/parts/PhotoPicker.tsx";
import { TextField } from "../../base/forms/TextField.tsx";
import { oneOf, photoIds, words } from "../../base/forms/fieldSchema.ts";
import { TickList } from "../../base/forms/TickList.tsx";
import { LogForm, type LogFormProps } from "./LogForm.tsx";

const kinds = [
  { value: "hairline", label: "Hairline", hint: "A nail slides over it." },
  { value: "open", label: "Open", hint: "A nail catches, or light shows through." },
  { value: "chip", label: "Chip", hint: "A piece of the wall is gone." },
  { value: "lift", label: "Lift", hint: "Coats have parted; it sounds hollow." },
] as const satisfies readonly { value: CrackKind; label: string; hint: string }[];
const stages = [
  { value: "coating", label: "While coating" },
  { value: "burnout", label: "In burnout" },
  { value: "firing", label: "In firing" },
  { value: "other", label: "Another time" },
] as const satisfies readonly { value: CrackStage; label: string }[];

const stageOf = (phase: Phase): CrackStage =>
  phase === "coating" || phase === "reviewed"
    ? "coating"
    : phase === "dewaxed" || phase === "burnout" || phase === "burnt-out"
      ? "burnout"
      : phase === "fired" || phase === "preheated"
        ? "firing"
        : "other";

const schema = z.object({
  kind: oneOf(["hairline", "open", "chip", "lift"], "the kind of crack"),
  stage: oneOf(["coating", "burnout", "firing", "other"], "when it came"),
  where: words("place", "Say where, so that you find it again: left ear, cup edge, back flat."),
  photos: photoIds,
  trimmedOff: z
    .boolean()
    .optional()
    .transform((isTrimmed) => (isTrimmed === true ? true : undefined)),
});

export function CrackFoundForm({ item }: LogFormProps) {
  const initial: {
    readonly kind: CrackKind | null;
    readonly stage: CrackStage;
    readonly where: string;
    readonly photos: readonly string[];
    readonly trimmedOff: boolean;
  } = { kind: null, stage: stageOf(item.standing.piece.phase), where: "", photos: [], trimmedOff: false };
  return (
    <LogForm item={item} type="crack-found" title="A crack" initial={initial} schema={schema}>
      {({ draft, set, errors }) => (
        <>
          <PickField
            label="Kind"
            options={kinds}
            value={draft.kind}
            onChange={(kind) => set({ kind })}
            error={errors["kind"]}
          />
          <PickField
            label="It came"
            options={stages}
            value={draft.stage}
            onChange={(stage) => set({ stage })}
          />
          <TextField
            label="Where"
            value={draft.where}
            onChange={(where) => set({ where })}
            hint="It stands as a hold until it is logged as patched."
            error={errors["where"]}
          />
          <TickList
            label="Does it matter"
            options={[
              {
                value: "trimmed",
                label: "It is trimmed off before the pour",
                hint: "Such as the rim of the pour cup. Then it holds nothing up.",
              },
            ]}
            ticked={draft.trimmedOff ? ["trimmed"] : []}
            onChange={(ticked) => set({ trimmedOff: ticked.length > 0 })}
          />
          <PhotoPicker photos={draft.photos} onChange={(photos) => set({ photos })} />
        </>
      )}
    </LogForm>
  );
}
