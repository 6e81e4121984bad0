import type { CrackKind, CrackStage } from "../../../logbook/entries/pieceBodies.ts";
import type { Phase } from "../../../logbook/piece/piece.ts";
import { crackFields } from "../../base/forms/crackFields.ts";
import { oneOf, photoIds, ticked } from "../../base/forms/formFields.ts";
import { FlagOf, PhotosOf, PickOf, TextOf } from "../../base/forms/BoundFields.tsx";
import { LogForm, type LogFormProps } from "./LogForm.tsx";

const kinds = [
  { value: "hairline", label: "Hairline", hint: "A nail slides over it." },
  { value: "open", label: "Open", hint: "A nail catches, or light shows through." },
  { value: "chip", label: "Chip", hint: "A piece of the shell is gone." },
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

const fields = {
  ...crackFields,
  stage: oneOf(["coating", "burnout", "firing", "other"], "when it came"),
  photos: photoIds,
  trimmedOff: ticked,
};

export function CrackFoundForm({ item }: LogFormProps) {
  const start = { stage: stageOf(item.standing.piece.phase) };
  return (
    <LogForm
      item={item}
      type="crack-found"
      title="A crack"
      fields={fields}
      start={start}
      body={(read) => read}
    >
      {(form) => (
        <>
          <PickOf form={form} at="kind" label="Kind" options={kinds} />
          <PickOf form={form} at="stage" label="Found" options={stages} />
          <TextOf form={form} at="where" label="Where" hint="It stops the piece until you log the repair." />
          <FlagOf
            form={form}
            at="trimmedOff"
            label="Trimmed off"
            name="It is trimmed off before the pour"
            hint="Such as the rim of the pour cup. Then it does not stop the piece."
          />
          <PhotosOf form={form} at="photos" />
        </>
      )}
    </LogForm>
  );
}
