import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import { useState } from "react";
import type { GoStanding } from "../../../rules/pourGo.ts";
import type { PourCame } from "../../../logbook/entries/shellFireBodies.ts";
import { streamOf } from "../../../logbook/entries/entry.ts";
import type { Pour } from "../../../logbook/fire/fireStates.ts";
import { lastMark, type ShellCourse } from "../../../logbook/pour/pourCourse.ts";
import { faceAt, type ShellBed } from "../../../logbook/fire/shellOut.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { BigKey } from "../../base/glove/BigKey.tsx";
import { Button } from "../../base/parts/Button.tsx";
import { withoutEmpty } from "../../base/forms/formFields.ts";
import { cameKeys, cameWords } from "../../base/format/pourCameWords.ts";
import { ago, soonTime } from "../../base/format/time.ts";
import { HoldKey } from "./HoldKey.tsx";
import { LatestGauge } from "./LatestGauge.tsx";
import { SkipStepper } from "./SkipStepper.tsx";
import { goText } from "./goWords.ts";
import type { PourParts } from "./pourParts.ts";
import { pourNote } from "./pourNote.ts";
import { lower } from "./sheetWords.ts";
import { StopRuleLine } from "./StopRuleLine.tsx";
import { stopRule } from "./stopWords.ts";
import { turnOut } from "./turnOut.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./pour.module.css";

const notFull = ["short", "leaked", "frozen", "stopped"] as const;

type Props = {
  readonly pour: Pour;
  /** When metal is poured as the day stands now, epoch ms: a late track moves it past the plan's. */
  readonly pourAt: number;
  readonly go: GoStanding;
  readonly parts: PourParts;
  readonly courses: readonly ShellCourse[];
  readonly turn: ShellCourse | null;
  readonly now: number;
  readonly place: ShellBed;
  /** It leads the screen, so a lapsed go is said here in the largest type. */
  readonly isFirst: boolean;
};

/** One shell at a time, one big key: out of the kiln, pour start, full; beneath it how it may end otherwise. */
export function PourAct({ pour, pourAt, go, parts, courses, turn, now, place, isFirst }: Props) {
  const { log, clock } = useShop();
  const format = useFormat();
  const say = useFleeting((fleeting) => fleeting.say);
  const [shellC, setShellC] = useState<number | null>(null);
  const [metalC, setMetalC] = useState<number | null>(null);
  const [isAsking, setAsking] = useState(false);
  if (turn === null) return null;
  const { pieceId, name, stage, out, begun } = turn;
  const stream = streamOf("piece", pieceId);
  const pourId = pour.id;
  const { rows, allowed } = turnOut(turn, { pour, parts, place });
  const latest = allowed?.latest ?? null;
  const outMin = out === null ? null : Math.max(0, (now - out.at) / minuteMs);
  const face = outMin === null ? null : faceAt(rows, outMin);
  const last = lastMark(courses);
  // Once the first shell is out nothing is asked any more.
  const hasBegun = courses.some((course) => course.stage !== "waiting");
  const mayGo = go.state === "go" || hasBegun;
  const stopMin =
    stage === "pouring" && begun !== null ? (begun.at - (out?.at ?? begun.at)) / minuteMs : outMin;
  const rule = latest === null ? null : stopRule(latest, stage === "waiting" ? null : stopMin);

  const takeOut = () => log({ do: "log", stream, type: "shell-out-of-kiln", body: { shellC, pourId } });
  const begin = () => log({ do: "log", stream, type: "pour-begun", body: { metalC, pourId } });
  const end = async (came: PourCame): Promise<void> => {
    const minutes = out === null ? null : ((begun?.at ?? clock()) - out.at) / minuteMs;
    const at = minutes === null ? null : faceAt(rows, minutes);
    const done = await log({
      do: "log",
      stream,
      type: "metal-poured",
      body: {
        metalC: begun?.metalC ?? metalC,
        shellC: at === null ? (out?.shellC ?? null) : Math.round(at.likelyC),
        massKg: null,
        outOfKilnMin: minutes === null ? null : Math.round(minutes * 100) / 100,
        pourId,
        ...withoutEmpty({
          came: came === "full" ? undefined : came,
          meltId: pour.plan.meltId,
          note: pourNote("", at !== null),
        }),
      },
    });
    if (done.ok) say(`${name}: ${cameWords[came]}.`);
  };
  const takeBack = () =>
    last &&
    log({
      do: "strike",
      stream: streamOf("piece", last.pieceId),
      entryId: last.entryId,
      reason: "taken back at the pour",
    });

  return (
    <section className={`${sheet["stack"]} ${styles["moment"]}`} aria-label="The pour">
      {courses.length > 1 && (
        <h2 className={styles["which"]}>
          <span className={`${sheet["figure"]} ${sheet["breaks"]}`}>{name}</span>{" "}
          <span>
            Shell {courses.indexOf(turn) + 1} of {courses.length}
          </span>
        </h2>
      )}
      {stage === "waiting" && !hasBegun && (
        <>
          {go.state !== "go" && !isAsking && (
            <p
              className={
                go.state === "lapsed" && isFirst
                  ? styles["lapsed"]
                  : `${sheet["held"]} ${sheet["firm"]} ${sheet["inset"]}`
              }
              role="alert"
            >
              {goText(go, { format, now })}
            </p>
          )}
          <p className={styles["clock"]}>
            Pour {soonTime(pourAt, now, format.locale)}, {ago(pourAt, now)}
          </p>
          {go.state === "go" && <p className={sheet["strong"]}>{goText(go, { format, now })}</p>}
        </>
      )}
      {rule !== null && <StopRuleLine rule={rule} />}
      {stage !== "waiting" && stopMin !== null && (
        <p className={styles["running"]} role="timer" aria-label="Minutes out of the kiln">
          {clockOf(stopMin)} <small>out of the kiln</small>
        </p>
      )}
      {stage === "waiting" && (
        <>
          {!isAsking && (
            <BigKey main onPress={mayGo ? takeOut : () => setAsking(true)} under={name}>
              Out of the kiln
            </BigKey>
          )}
          {isAsking && (
            <div className={styles["stack"]} role="group" aria-label="No go given">
              <p className={`${sheet["held"]} ${sheet["firm"]} ${sheet["inset"]}`}>
                No go given: {lower(goText(go, { format, now }))} Take {name} out anyway?
              </p>
              <HoldKey onHeld={takeOut} under="Without a go. Hold it down.">
                Hold to take it out
              </HoldKey>
              <Button onPress={() => setAsking(false)}>Leave it in the kiln</Button>
            </div>
          )}
          <SkipStepper
            label="Shell, read"
            unread="Shell not read: set it"
            quantity="temp"
            start={pour.plan.shellC}
            step={10}
            low={0}
            high={1300}
            value={shellC}
            onChange={setShellC}
          />
        </>
      )}
      {stage === "out" && (
        <>
          <BigKey
            main
            onPress={begin}
            under={metalC === null ? "metal not read" : `metal ${format.show("temp", metalC)}`}
          >
            Pour start
          </BigKey>
          <SkipStepper
            label="Metal, read"
            unread="Metal not read: set it"
            quantity="temp"
            start={pour.plan.metalC}
            step={10}
            low={100}
            high={2150}
            value={metalC}
            onChange={setMetalC}
          />
        </>
      )}
      {stage === "pouring" && begun !== null && (
        <>
          <BigKey
            main
            onPress={() => end("full")}
            under={`pouring for ${Math.max(0, Math.round((now - begun.at) / 1000))} s`}
          >
            {cameKeys.full}
          </BigKey>
          <div className={styles["otherwise"]} role="group" aria-label="Not full">
            {notFull.map((came) => (
              <BigKey key={came} onPress={() => end(came)}>
                {cameKeys[came]}
              </BigKey>
            ))}
          </div>
        </>
      )}
      <p className={sheet["strong"]}>
        If the shell leaks: step back, let it run into the sand. Never use water.
      </p>
      {stage !== "waiting" && stopMin !== null && latest !== null && (
        <LatestGauge outMin={stopMin} latest={latest} />
      )}
      {face !== null && stage === "out" && (
        <p>
          Inner face now about <strong>{format.show("temp", Math.round(face.likelyC / 5) * 5)}</strong>
          {allowed === null ? "" : `, least ${format.show("temp", allowed.heat.lowC)}`} (estimate).
        </p>
      )}
      {last !== null && <BigKey onPress={takeBack}>Take back the last tap</BigKey>}
      <p className={`${sheet["soft"]} ${styles["soft"]}`}>Local codes come first.</p>
    </section>
  );
}

/** Minutes and seconds as on a watch. */
function clockOf(minutes: number): string {
  const seconds = Math.max(0, Math.floor(minutes * 60));
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, "0")}`;
}
