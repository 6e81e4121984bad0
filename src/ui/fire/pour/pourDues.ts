import type { Pour } from "../../../logbook/fire/fireStates.ts";
import type { ShellCourse } from "../../../logbook/pour/pourCourse.ts";
import type { PourPlan } from "../../../physics/metal/pourDay.ts";
import type { RingDue } from "../../base/alarm/ringDue.ts";
import { paths } from "../../base/state/paths.ts";
import type { KnockoutTimes } from "../../../logbook/pour/knockoutTimes.ts";
import { stepWords } from "./pourStepWords.ts";

/** What rings on a pour day: steps to begin, metal to skim, the pour; then shells to break out. */
export function pourDues({
  pour,
  plan,
  hasBegun,
  knockouts,
  courses,
}: {
  readonly pour: Pour;
  readonly plan: PourPlan;
  readonly hasBegun: boolean;
  readonly knockouts: readonly (KnockoutTimes | null)[];
  readonly courses: readonly ShellCourse[];
}): readonly RingDue[] {
  const ofShells = knockouts.flatMap((times): readonly RingDue[] => {
    const course = courses.find(({ pieceId }) => pieceId === times?.pieceId);
    if (times === null || course === undefined || course.knockedOut) return [];
    return [
      dueOf(pour, `knock-out-${times.pieceId}`, times.outAt, {
        title: `${course.name}: ready to knock out`,
        says: "The core stays hot long after the skin. Respirator, eye protection, gloves.",
      }),
    ];
  });
  if (hasBegun) return ofShells;
  const steps = plan.tracks.flatMap((track) =>
    track.steps.flatMap((step): readonly RingDue[] =>
      step.state === "waiting" ? [dueOf(pour, step.id, step.startAt, stepWords(step.id))] : [],
    ),
  );
  const skims = plan.advice.flatMap(({ skimAt, step }): readonly RingDue[] =>
    skimAt === null
      ? []
      : [dueOf(pour, `skim-${step}`, skimAt, { title: "Skim the metal", says: "Skimmer dry and hot." })],
  );
  return [
    ...steps,
    ...skims,
    dueOf(pour, "pour", plan.pourAt, { title: "Pour time", says: "Only with a go that still holds." }),
    ...ofShells,
  ].toSorted((a, b) => a.dueMs - b.dueMs);
}

const dueOf = (
  pour: Pour,
  what: string,
  dueMs: number,
  { title, says }: { readonly title: string; readonly says: string },
): RingDue => ({
  id: `${pour.id}-${what}`,
  dueMs,
  words: title,
  name: title,
  notice: { title, body: says },
  path: paths.pour(pour.id),
  calendar: () => ({
    durationMin: 5,
    summary: title,
    description: `${says} The time is from the plan. If something is late, add it to the calendar again.`,
  }),
});
