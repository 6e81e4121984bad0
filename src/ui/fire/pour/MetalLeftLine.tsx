import { metalLeft } from "../../../logbook/pour/metalLeft.ts";
import type { ShellCourse } from "../../../logbook/pour/pourCourse.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import type { PourParts } from "./pourParts.ts";
import styles from "./pour.module.css";

/** Where the rest of the metal goes, and how much an ingot mould must take. */
export function MetalLeftLine({
  parts,
  courses,
}: {
  readonly parts: PourParts;
  readonly courses: readonly ShellCourse[];
}) {
  const format = useFormat();
  const left = metalLeft(parts, courses);
  const isWaiting = courses.some(({ stage }) => stage === "waiting");
  const first = isWaiting ? "Metal the other shells don’t need" : "What is left in the crucible";
  const kg = (value: number): string => format.show("kg", value);
  const much =
    left === null || left.mostKg < 0.005
      ? null
      : left.mostKg - left.leastKg < 0.005
        ? kg(left.mostKg)
        : `${kg(left.leastKg)} to ${kg(left.mostKg)}`;
  return (
    <p className={styles["warn"]}>
      {first} goes into the dry, hot ingot mould {isWaiting ? "after the last shell" : "now"}.
      {much !== null && ` There is about ${much} left`}
      {much !== null &&
        (left?.mouldL == null
          ? "."
          : `: the mould must take ${format.show("litre", left.mouldL)}. If it is too small, use a second one.`)}
    </p>
  );
}
