import { Link } from "wouter";
import type { Pour } from "../../../logbook/fire/fireStates.ts";
import type { ShellCourse } from "../../../logbook/pour/pourCourse.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { ago, clockTime, soonTime } from "../../base/format/time.ts";
import { cautionLines } from "../../base/cautions/cautionWords.ts";
import { MeltEndForm } from "../metal/MeltEndForm.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import { FullMass } from "./FullMass.tsx";
import type { KnockoutTimes } from "../../../logbook/pour/knockoutTimes.ts";
import { frozenWords, outSource } from "./knockoutWords.ts";
import { pourContents, pourWeights, type PourParts } from "./pourParts.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./pour.module.css";

/** Full shells: when they are frozen, when they may be broken out; and what is left in the crucible. */
export function AfterPour({
  pour,
  parts,
  courses,
  knockouts,
  now,
  isAllFull,
}: {
  readonly pour: Pour;
  readonly parts: PourParts;
  readonly courses: readonly ShellCourse[];
  readonly knockouts: readonly (KnockoutTimes | null)[];
  readonly now: number;
  readonly isAllFull: boolean;
}) {
  const format = useFormat();
  const { alloy, melt, furnace } = parts;
  const full = courses.filter(({ stage }) => stage === "full");
  if (full.length === 0) return null;
  const heat = alloy?.knockout ?? null;
  const isLeft = full.some(({ knockedOut }) => !knockedOut);
  return (
    <>
      <Card title="Full">
        <ul className={`${sheet["stack3"]} ${sheet["list"]} ${styles["list"]}`}>
          {full.map((course) => {
            const times = knockouts.find((one) => one?.pieceId === course.pieceId) ?? null;
            return (
              <li key={course.pieceId}>
                <strong>
                  <Link href={paths.piece(course.pieceId)}>{course.name}</Link>
                </strong>
                <span>full at {clockTime(course.full?.at ?? now, format.locale)}</span>
                {times !== null && (
                  <>
                    <span>{frozenWords(times, now, format.locale)}</span>
                    {course.knockedOut ? (
                      <span>Broken out.</span>
                    ) : (
                      <>
                        <span className={sheet["strong"]}>
                          Not out of the shell before {soonTime(times.outAt, now, format.locale)},{" "}
                          {ago(times.outAt, now)}
                        </span>
                        <span className={`${sheet["soft"]} ${styles["soft"]}`}>{outSource[times.from]}</span>
                        {times.outAt <= now && (
                          <div>
                            <LinkButton
                              kind="primary"
                              href={paths.logFor(course.pieceId, "shell-knocked-out")}
                            >
                              Log the knockout
                            </LinkButton>
                          </div>
                        )}
                      </>
                    )}
                  </>
                )}
                <FullMass key={course.full?.id} course={course} startKg={massOf(parts, course)} />
              </li>
            );
          })}
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
      {isAllFull && melt !== null && melt.startedAt !== null && melt.ended === null && (
        <>
          <p className={styles["warn"]}>
            What is left in the crucible goes into the dry, hot ingot mould now, and the melt is ended.
          </p>
          <MeltEndForm melt={melt} furnace={furnace} />
        </>
      )}
      {isAllFull && melt === null && pour.ended === null && (
        <p className={styles["warn"]}>What is left in the crucible goes into the dry, hot ingot mould now.</p>
      )}
    </>
  );
}

const massOf = ({ shells }: PourParts, { pieceId }: ShellCourse): number =>
  shells.find(({ id }) => id === pieceId)?.metalKg ?? 1;
