import type { Pour } from "../../../logbook/fire/fireStates.ts";
import type { Memo } from "../../../logbook/log/memo.ts";
import type { ShellBed } from "../../../logbook/fire/shellOut.ts";
import { shellCourse, turnOf, type ShellCourse } from "../../../logbook/pour/pourCourse.ts";
import { pourStanding, sensedRun, type PourStanding } from "../../../logbook/pour/pourStanding.ts";
import { readTold } from "../../../logbook/pour/pourTold.ts";
import type { RingDue } from "../../base/alarm/ringDue.ts";
import { knockoutOf, type KnockoutTimes } from "../../../logbook/pour/knockoutTimes.ts";
import { pourDues } from "./pourDues.ts";
import { bedOf, sensedMelt, type PourParts } from "./pourParts.ts";

/** How a pour stands: its shells, its plan as it is moving, and what is to be done when. */
export type PourDay = {
  readonly told: ReturnType<typeof readTold>;
  readonly place: ShellBed;
  readonly courses: readonly ShellCourse[];
  readonly turn: ShellCourse | null;
  readonly isPouring: boolean;
  readonly hasBegun: boolean;
  readonly standing: PourStanding;
  readonly knockouts: readonly (KnockoutTimes | null)[];
  /** None once it has ended. */
  readonly dues: readonly RingDue[];
};

export const coursesOf = (pour: Pour, { items }: Pick<PourParts, "items">): readonly ShellCourse[] =>
  items.map(({ standing }) => shellCourse(standing.piece, pour.id));

/** True while metal is on the way: a shell is out of the kiln and has not come to its end. */
export const isPouring = (courses: readonly ShellCourse[]): boolean =>
  courses.some(({ stage }) => stage === "out" || stage === "pouring");

/** The pour at `now`, epoch ms. */
export function pourDay(
  pour: Pour,
  parts: PourParts,
  { now, memo }: { readonly now: number; readonly memo: Memo },
): PourDay {
  const courses = coursesOf(pour, parts);
  const hasBegun = courses.some(({ stage }) => stage !== "waiting");
  const told = readTold(pour.plan);
  const place = bedOf(parts, { bed: pour.plan.bed, sandC: pour.plan.sandC, family: told.family });
  const begunAt = Math.min(
    ...courses.flatMap(({ out, begun, poured }) => (out ?? begun ?? poured)?.at ?? []),
  );
  const plannedNow = hasBegun ? Math.min(now, begunAt) : now;
  const sensed = [parts.run === null ? null : sensedRun(parts.run, plannedNow), sensedMelt(parts)].filter(
    (one) => one !== null,
  );
  const standing = pourStanding(pour, { now: plannedNow, people: told.people, sensed });
  const knockouts = courses.map((course, i) =>
    knockoutOf({ course, shell: parts.shells[i], parts, plan: pour.plan, place }, memo),
  );
  const { plan } = standing;
  return {
    told,
    place,
    courses,
    turn: turnOf(courses),
    isPouring: isPouring(courses),
    hasBegun,
    standing,
    knockouts,
    dues: pour.ended === null ? pourDues({ pour, plan, hasBegun, knockouts, courses }) : [],
  };
}
