import type { ReactNode } from "react";
import type { Pour } from "../../../logbook/fire/fireStates.ts";
import type { ShellCourse } from "../../../logbook/pour/pourCourse.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { cautionLines } from "../../base/cautions/cautionWords.ts";
import { MeltEndForm } from "../metal/MeltEndForm.tsx";
import { cameToDo, cameWords } from "../../base/format/pourCameWords.ts";
import { Card } from "../../base/parts/Card.tsx";
import type { KnockoutTimes } from "../../../logbook/pour/knockoutTimes.ts";
import { MetalLeftLine } from "./MetalLeftLine.tsx";
import { PouredShell } from "./PouredShell.tsx";
import { pourContents, pourWeights, type PourParts } from "./pourParts.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./pour.module.css";

/** Shells with their metal: how it went, when they may be knocked out; and what is left in the crucible. */
export function AfterPour({
  pour,
  parts,
  courses,
  knockouts,
  now,
  isOver,
  end,
}: {
  readonly pour: Pour;
  readonly parts: PourParts;
  readonly courses: readonly ShellCourse[];
  readonly knockouts: readonly (KnockoutTimes | null)[];
  readonly now: number;
  /** No shell waits for metal any more. */
  readonly isOver: boolean;
  /** What closes the pour, before all that may wait; null while a shell is to come. */
  readonly end: ReactNode;
}) {
  const format = useFormat();
  const { alloy, melt, furnace } = parts;
  const poured = courses.filter(({ stage }) => stage === "poured");
  if (poured.length === 0) return null;
  const isFull = poured.every(({ came }) => came === "full");
  const isUnderWay = courses.some(({ stage }) => stage === "out" || stage === "pouring");
  const heat = alloy?.knockout ?? null;
  const isLeft = poured.some(({ knockedOut }) => !knockedOut);
  // What to do now stands first for the shell that was last to have its metal.
  const newest = poured.reduce((a, b) => ((b.poured?.at ?? 0) >= (a.poured?.at ?? 0) ? b : a));
  const isLed = pour.ended === null && !isUnderWay && !newest.knockedOut;
  return (
    <>
      {isLed && newest.came !== null && newest.came !== "full" && (
        <p className={`${sheet["held"]} ${sheet["firm"]} ${sheet["inset"]}`} role="alert">
          <strong>
            {newest.name}: {cameWords[newest.came]}.
          </strong>{" "}
          <span>{cameToDo[newest.came]}</span>
        </p>
      )}
      {end}
      {pour.ended === null && (isOver || !isFull) && !isUnderWay && (
        <MetalLeftLine parts={parts} courses={courses} />
      )}
      <Card title={isFull ? "Full" : "Poured"}>
        <ul className={`${sheet["stack3"]} ${sheet["list"]} ${styles["list"]}`}>
          {poured.map((course) => (
            <PouredShell
              key={course.pieceId}
              course={course}
              times={knockouts.find((one) => one?.pieceId === course.pieceId) ?? null}
              startKg={massOf(parts, course)}
              now={now}
              mayTakeBack={pour.ended === null && !isUnderWay && course === newest}
              isLed={isLed && course === newest}
            />
          ))}
        </ul>
        {heat !== null && isLeft && (
          <p>
            The core must be below {format.show("temp", heat.value)} ({heat.source}).{" "}
            {heat.note !== undefined && <strong>{heat.note}</strong>}
          </p>
        )}
        {isLeft && (
          <ul>
            {cautionLines(
              { step: "knock-out", contents: pourContents(parts), weights: pourWeights(parts) },
              format,
            ).map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        )}
      </Card>
      {isOver && melt !== null && melt.startedAt !== null && melt.ended === null && (
        <>
          <p>Then weigh the ingots, and end the melt.</p>
          <MeltEndForm melt={melt} furnace={furnace} />
        </>
      )}
    </>
  );
}

const massOf = ({ shells }: PourParts, { pieceId }: ShellCourse): number =>
  shells.find(({ id }) => id === pieceId)?.metalKg ?? 1;
