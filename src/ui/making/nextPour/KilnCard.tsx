import { sentence } from "../../base/format/sentence.ts";
import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import { mayEnter } from "../../../logbook/fire/fireFacts.ts";
import type { RunAhead } from "../../../logbook/planning/fireAhead.ts";
import type { KilnGroup } from "../../../logbook/planning/pourProposal.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { dayTime, duration } from "../../base/format/time.ts";
import { Card } from "../../base/parts/Card.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import { Rows, type Given } from "../../base/parts/Reckoned.tsx";
import sheet from "../../base/styles/sheet.module.css";
import { listed, runWord } from "./nextPourWords.ts";

/** What one kiln does for the day: its runs backwards from the pour, its heat, and how full it is. */
export function KilnCard({
  group,
  pourAt,
  now,
}: {
  readonly group: KilnGroup;
  readonly pourAt: number;
  readonly now: number;
}) {
  const format = useFormat();
  const { kiln, pieces, heat, leaveC, fire, room, sizeUnknown, shellKg, massUnknown } = group;
  const litre = (value: number): string => format.show("kilnL", value);
  const unknown = (count: number): string => (count === 0 ? "" : `; ${count} not known`);
  const known = (text: string, count: number): string =>
    count === pieces.length ? "not known" : `${text}${unknown(count)}`;
  const rows: readonly Given[] = [
    ["Shell temperature out of the kiln", format.show("temp", leaveC)],
    [
      "Usual for all of them",
      heat === null ? "not known" : `${format.show("temp", heat.lowC)} to ${format.show("temp", heat.highC)}`,
    ],
    [
      "Space used",
      known(
        room === null ? "no kiln set up" : `${litre(room.knownL)} of ${litre(room.usableL)} usable`,
        sizeUnknown,
      ),
    ],
    ["Shells weigh", known(format.show("kg", shellKg), massUnknown)],
  ];
  return (
    <Card title={kiln === null ? "Kiln" : kiln.name}>
      <p>
        {pieces.length === 1 ? "One shell" : `${pieces.length} shells`}:{" "}
        {listed(pieces.map(({ of }) => of.name))}.
      </p>
      <ol className={`${sheet["stack2"]} ${sheet["bullets"]}`}>
        {fire.runs.map((run, place) => (
          <li key={`${run.purpose} ${run.pieceIds[0] ?? ""}`}>
            <strong>{sentence(runWord(run.purpose))}</strong>, {duration(run.minutes * minuteMs)}: start by{" "}
            {dayTime(startOf(fire.runs, place, pourAt), now, format.locale)}
            {run.pieceIds.length < pieces.length && `, with ${namesOf(run, group)}`}.
          </li>
        ))}
      </ol>
      <Rows rows={rows} />
      <div className={sheet["row"]}>
        {fire.runs.map((run) => {
          const ids = enterNow(run, group);
          return (
            ids.length > 0 && (
              <LinkButton
                key={`${run.purpose} ${run.pieceIds[0] ?? ""}`}
                href={paths.newRunOf(ids, run.purpose)}
              >{`Open the ${runWord(run.purpose)} plan with ${ids.length === 1 ? "one" : ids.length}`}</LinkButton>
            )
          );
        })}
      </div>
      <p className={sheet["soft"]}>
        The runs are for all shells together, one after the other. Starts are the latest possible and may be
        at night; a burnout may start earlier. Space is by volume only: check height, shelf and weight limit.
      </p>
    </Card>
  );
}

const startOf = (runs: readonly RunAhead[], place: number, pourAt: number): number =>
  pourAt - runs.slice(place).reduce((sum, { minutes }) => sum + minutes, 0) * minuteMs;

const namesOf = ({ pieceIds }: RunAhead, { pieces }: KilnGroup): string =>
  listed(pieces.filter(({ of }) => pieceIds.includes(of.id)).map(({ of }) => of.name));

/** The shells of a run that its form takes today: all coats on, and where this run is next. */
const enterNow = ({ purpose, pieceIds }: RunAhead, { pieces }: KilnGroup): readonly string[] =>
  pieces
    .filter(({ of }) => pieceIds.includes(of.id) && of.coats.length === 0 && mayEnter(purpose, of.standing))
    .map(({ of }) => of.id);
