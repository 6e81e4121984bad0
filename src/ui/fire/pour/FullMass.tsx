import { useState } from "react";
import { streamOf } from "../../../logbook/entries/entry.ts";
import type { ShellCourse } from "../../../logbook/pour/pourCourse.ts";
import { ranges } from "../../../logbook/entries/ranges.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { withoutEmpty } from "../../base/forms/formFields.ts";
import { Button } from "../../base/parts/Button.tsx";
import { SkipStepper } from "./SkipStepper.tsx";
import styles from "./pour.module.css";

/** What went in, weighed or by difference, when there is time for it. */
export function FullMass({ course, startKg }: { readonly course: ShellCourse; readonly startKg: number }) {
  const { log } = useShop();
  const format = useFormat();
  const [massKg, setMass] = useState<number | null>(null);
  const { poured, pieceId } = course;
  if (poured === null) return null;
  if (poured.massKg !== null) return <span>{format.show("kg", poured.massKg)} in it.</span>;
  const keep = () => {
    const { id, at: _at, ...body } = poured;
    return log({
      do: "correct",
      stream: streamOf("piece", pieceId),
      entryId: id,
      body: withoutEmpty({ ...body, massKg }),
      reason: "its mass was added",
    });
  };
  return (
    <div className={styles["stack"]}>
      <SkipStepper
        label={`Metal in ${course.name}`}
        unread="Mass not known: set it"
        quantity="kg"
        start={startKg}
        step={0.1}
        low={0.1}
        high={Math.min(500, ranges.metalKg.high)}
        value={massKg}
        onChange={setMass}
      />
      {massKg !== null && (
        <div>
          <Button onPress={keep}>Save this mass</Button>
        </div>
      )}
    </div>
  );
}
