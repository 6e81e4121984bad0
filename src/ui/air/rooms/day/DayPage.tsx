import { millisecondsInDay as dayMs, millisecondsInHour as hourMs } from "date-fns/constants";
import { ChevronLeft, ChevronRight } from "lucide-react";
import { useMemo, useState } from "react";
import { useParams, useSearch } from "wouter";
import { forecastError } from "../../../../physics/drying/forecastError.ts";
import type { AirReading, Room } from "../../../../logbook/piece/piece.ts";
import { practice } from "../../../../trade/practice.ts";
import { useRoom } from "../../../base/state/live.ts";
import { paths } from "../../../base/state/paths.ts";
import { useFormat } from "../../../base/state/useFormat.ts";
import { useNow } from "../../../base/state/useNow.ts";
import { dayName } from "../../../base/format/time.ts";
import { Button } from "../../../base/parts/Button.tsx";
import { Card } from "../../../base/parts/Card.tsx";
import { Empty } from "../../../base/parts/Empty.tsx";
import { LinkButton } from "../../../base/parts/LinkButton.tsx";
import { localText, readLocalText } from "../../../base/parts/localTime.ts";
import { NoRoom } from "../NoRoom.tsx";
import { DayChart } from "./DayChart.tsx";
import { dayOf, midnight, spellsOver, toPhysics } from "../../../../logbook/air/dayAir.ts";
import { dayLimitWords, dayWords, errorWords, spellWords } from "./dayWords.ts";
import { MadeHow } from "./MadeHow.tsx";
import { Page } from "../../../base/parts/Page.tsx";
import sheet from "../../../base/styles/sheet.module.css";
import styles from "./day.module.css";

/** What the forecast looks back on: its days of trial, and the two it is made from. */
const backMs = 31 * dayMs;

export function DayPage() {
  const { id = "" } = useParams();
  const asked = readLocalText(`${new URLSearchParams(useSearch()).get("day") ?? ""}T00:00`);
  // Followed from minute to minute, the readings would be read again each time.
  const hour = Math.floor(useNow() / hourMs) * hourMs;
  const [chosen, setChosen] = useState(asked);
  const from = Math.min(chosen ?? hour, hour);
  const found = useRoom(id, Math.min(midnight(from) - 3 * hourMs, midnight(hour) - backMs));
  if (found === undefined) return null;
  if (found === null) return <NoRoom />;
  return <OneDay key={id} {...found} from={midnight(from)} hour={hour} onGo={setChosen} />;
}

function OneDay(props: {
  readonly room: Room;
  readonly readings: readonly AirReading[];
  readonly from: number;
  readonly hour: number;
  readonly onGo: (at: number | null) => void;
}) {
  const { room, readings, from, hour, onGo } = props;
  const format = useFormat();
  const now = useNow();
  const [looked, setLooked] = useState<number | null>(null);
  const air = useMemo(() => readings.map(toPhysics), [readings]);
  const day = useMemo(() => dayOf(air, { from, now }), [air, from, now]);
  const error = useMemo(() => forecastError({ readings: air, nowMs: hour }), [air, hour]);
  const name = dayName(from, now, format.locale);
  const isToday = now >= from && now < midnight(from, 1);
  const go = (at: number | null): void => {
    setLooked(null);
    onGo(at);
  };
  const spells = spellsOver(day.view.points, practice.rhFinalDry.value);
  const words = dayWords(day.view, (Math.min(now, day.to) - from) / hourMs, format);
  return (
    <Page title={`${room.name}: ${name}`} back={paths.room(room.id)}>
      <div className={`${sheet["row"]} ${sheet["top"]}`}>
        <Button label="The day before" onPress={() => go(midnight(from, -1))}>
          <ChevronLeft aria-hidden="true" />
        </Button>
        <label className={styles["date"]}>
          <span className="visually-hidden">Day</span>
          <input
            type="date"
            value={localText(from).slice(0, 10)}
            max={localText(now).slice(0, 10)}
            onChange={(event) => {
              const at = readLocalText(`${event.target.value}T00:00`);
              if (at !== null) go(at);
            }}
          />
        </label>
        {!isToday && (
          <Button label="The day after" onPress={() => go(midnight(from, 1))}>
            <ChevronRight aria-hidden="true" />
          </Button>
        )}
        {!isToday && name !== "yesterday" && (
          <Button kind="quiet" onPress={() => go(null)}>
            Today
          </Button>
        )}
      </div>
      {words === null && day.ahead === null ? (
        <Empty title={`No readings ${name.startsWith("to") || name.startsWith("yes") ? name : `on ${name}`}`}>
          <p>{day.lastAt === null ? "This room has no readings yet." : "No readings to draw."}</p>
          <LinkButton href={paths.roomImport(room.id)}>Import a logger’s file</LinkButton>
        </Empty>
      ) : (
        <Card title={isToday ? "Today and the next 24 hours" : "The day"}>
          {spells.map((spell) => (
            <p key={spell.from} className={styles["damp"]}>
              {spellWords(spell, format)}
            </p>
          ))}
          {spells.length > 0 && <p className={sheet["soft"]}>{dayLimitWords(format)}</p>}
          {words !== null && <p>{words}</p>}
          {day.view.knownShare < 0.98 && (
            <p className={sheet["soft"]}>
              Readings cover {format.show("percent", day.view.knownShare)} of the hours
              {isToday ? " so far" : ""}. Gaps of more than 2 hours are left blank.
            </p>
          )}
          <DayChart day={day} error={error} now={now} looked={looked} onLook={setLooked} />
          {day.ahead !== null && <p>{errorWords(error, day.ahead.basis, format)}</p>}
          {isToday && day.ahead === null && (
            <p>The last reading is over a day old, so there is no forecast.</p>
          )}
          <MadeHow />
        </Card>
      )}
    </Page>
  );
}
