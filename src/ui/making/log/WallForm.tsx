import { figure, wordsOrNone } from "../../base/forms/formFields.ts";
import { NumberOf, TextOf } from "../../base/forms/BoundFields.tsx";
import { HowToLink } from "../../base/parts/HowToLink.tsx";
import { LogForm, type LogFormProps } from "./LogForm.tsx";

export function WallForm({ item }: LogFormProps) {
  const fields = {
    wallMm: figure("wallMm", {
      what: "wall",
      remedy: "Close the caliper on the broken edge, without pattern and without loose grains.",
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
            label="Wall"
            hint="At the broken edge of the cup, or a test stick dipped along. Your own reading replaces the table's figure."
          />
          <HowToLink to="caliper" />
          <TextOf form={form} at="where" label="Where" hint="Cup edge, test stick, a corner." />
        </>
      )}
    </LogForm>
  );
}
