import { figure, wordsOrNone } from "../../base/forms/formFields.ts";
import { NumberOf, TextOf } from "../../base/forms/BoundFields.tsx";
import { HowToLink } from "../../base/parts/HowToLink.tsx";
import { LogForm, type LogFormProps } from "./LogForm.tsx";

export function WallForm({ item }: LogFormProps) {
  const fields = {
    wallMm: figure("wallMm", {
      what: "wall",
      remedy: "Measure the broken edge with a caliper, without pattern and loose grains.",
    }),
    where: wordsOrNone,
  };
  return (
    <LogForm item={item} type="wall-measured" title="Caliper reading" fields={fields} body={(read) => read}>
      {(form) => (
        <>
          <NumberOf
            form={form}
            at="wallMm"
            label="Shell thickness"
            hint="At the broken edge of the cup, or a test stick dipped with the piece. Your reading replaces the table’s figure."
          />
          <HowToLink to="caliper" />
          <TextOf form={form} at="where" label="Where" hint="Cup edge, test stick, a corner." />
        </>
      )}
    </LogForm>
  );
}
