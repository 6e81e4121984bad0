import { Link } from "wouter";
import type { KnockoutTimes } from "../../../logbook/pour/knockoutTimes.ts";
import type { ShellCourse } from "../../../logbook/pour/pourCourse.ts";
import { streamOf } from "../../../logbook/entries/entry.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { cameToDo, cameWords } from "../../base/format/pourCameWords.ts";
import { ago, clockTime, soonTime } from "../../base/format/time.ts";
import { Button } from "../../base/parts/Button.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import { CameForm } from "./CameForm.tsx";
import { FullMass } from "./FullMass.tsx";
import { frozenWords, outSource } from "./knockoutWords.ts";
import { ofPourNote } from "./pourNote.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./pour.module.css";

/** One shell that has its metal: how it went, what to do now, and when it may be knocked out. */
export function PouredShell({
  course,
  times,
  startKg,
  now,
  mayTakeBack,
  isLed,
}: {
  readonly course: ShellCourse;
  readonly times: KnockoutTimes | null;
  /** Where the question for its mass starts. */
  readonly startKg: number;
  readonly now: number;
  /** It was the last tap of a pour that has not ended. */
  readonly mayTakeBack: boolean;
  /** What to do now stands above the list already. */
  readonly isLed: boolean;
}) {
  const { log } = useShop();
  const { locale } = useFormat();
  const { pieceId, name, poured, came, knockedOut } = course;
  if (poured === null || came === null) return null;
  const note = ofPourNote(poured.note).words;
  const takeBack = () =>
    log({
      do: "strike",
      stream: streamOf("piece", pieceId),
      entryId: poured.id,
      reason: "taken back at the pour",
    });
  return (
    <li>
      <strong>
        <Link href={paths.piece(pieceId)}>{name}</Link>
      </strong>
      <span className={came === "full" ? undefined : sheet["strong"]}>
        {cameWords[came]} at {clockTime(poured.at, locale)}
      </span>
      {came !== "full" && !knockedOut && !isLed && <p className={styles["warn"]}>{cameToDo[came]}</p>}
      {note !== "" && <span>{note}</span>}
      {times !== null && <span>{frozenWords(times, now, locale)}</span>}
      {times !== null && knockedOut && <span>Knocked out.</span>}
      {times !== null && !knockedOut && (
        <>
          <span className={sheet["strong"]}>
            Not out of the shell before {soonTime(times.outAt, now, locale)}, {ago(times.outAt, now)}
          </span>
          <span className={`${sheet["soft"]} ${styles["soft"]}`}>{outSource[times.from]}</span>
          {times.outAt <= now && (
            <div>
              <LinkButton kind="primary" href={paths.logFor(pieceId, "shell-knocked-out")}>
                Log the knock-out
              </LinkButton>
            </div>
          )}
        </>
      )}
      {!knockedOut && (
        <div className={styles["keys"]}>
          {mayTakeBack && (
            <Button label={`Take back: ${name} ${cameWords[came]}`} onPress={takeBack} debounceMs={700}>
              Take back
            </Button>
          )}
          <CameForm key={`${poured.id} form`} course={course} />
        </div>
      )}
      <FullMass key={poured.id} course={course} startKg={startKg} />
    </li>
  );
}
