import type { Pour } from "../../../logbook/fire/fireStates.ts";
import type { ShellCourse } from "../../../logbook/pour/pourCourse.ts";
import type { PourPlan } from "../../../physics/metal/pourDay.ts";
import type { KnockoutTimes } from "./knockoutTimes.ts";
import { stepWords } from "./pourStepWords.ts";

/** Something that is to be done at a moment; epoch ms. */
export type PourDue = {
  /** The same for the same thing of the same pour, however often its time is reckoned anew. */
  readonly id: string;
  readonly dueMs: number;
  readonly title: string;
  readonly says: string;
};

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
}): readonly PourDue[] {
  const ofShells = knockouts.flatMap((times): readonly PourDue[] => {
    const course = courses.find(({ pieceId }) => pieceId === times?.pieceId);
    if (times === null || course === undefined || course.knockedOut) return [];
    return [
      {
        id: `${pour.id}-knock-out-${times.pieceId}`,
        dueMs: times.outAt,
        title: `${course.name}: may be broken out`,
        says: "The core is hot long after the skin. Respirator, eyes, gloves.",
      },
    ];
  });
  if (hasBegun) return ofShells;
  const steps = plan.tracks.flatMap((track) =>
    track.steps.flatMap((step): readonly PourDue[] =>
      step.state === "waiting"
        ? [
            {
              id: `${pour.id}-${step.id}`,
              dueMs: step.startAt,
              title: stepWords(step.id).title,
              says: stepWords(step.id).says,
            },
          ]
        : [],
    ),
  );
  const skims = plan.advice.flatMap(({ skimAt, step }): readonly PourDue[] =>
    skimAt === null
      ? []
      : [
          {
            id: `${pour.id}-skim-${step}`,
            dueMs: skimAt,
            title: "Skim the metal",
            says: "Skimmer dry and hot.",
          },
        ],
  );
  return [
    ...steps,
    ...skims,
    {
      id: `${pour.id}-pour`,
      dueMs: plan.pourAt,
      title: "Pour time",
      says: "Only with a go that still holds.",
    },
    ...ofShells,
  ].toSorted((a, b) => a.dueMs - b.dueMs);
}

/** What was due this long before the screen was opened is no news. */
const newsMs = 90_000;
/** A step put off by this much rings again. */
const againMs = 120_000;

/** What rings now, and what has rung: each once, and again only where it was put off well into the future. */
export function ringsAt(
  dues: readonly PourDue[],
  {
    rung,
    now,
    isFirst,
  }: { readonly rung: ReadonlySet<string>; readonly now: number; readonly isFirst: boolean },
): { readonly ring: readonly PourDue[]; readonly rung: ReadonlySet<string> } {
  const come = dues.filter(({ dueMs }) => dueMs <= now);
  const putOff = new Set(dues.filter(({ dueMs }) => dueMs > now + againMs).map(({ id }) => id));
  const ring = come.filter(({ id, dueMs }) => !rung.has(id) && !(isFirst && now - dueMs > newsMs));
  return {
    ring,
    rung: new Set([...[...rung].filter((id) => !putOff.has(id)), ...come.map(({ id }) => id)]),
  };
}
