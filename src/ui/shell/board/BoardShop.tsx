import type { ReactNode } from "react";
import { dayTime } from "../../base/format/time.ts";
import { Ago } from "../../base/parts/Ago.tsx";
import { HealthMark } from "../../base/parts/HealthMark.tsx";
import { usePours, useRooms } from "../../base/state/live.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { useBucketStandings } from "../../bucket/useBucketStandings.ts";
import { pourLine } from "../../fire/furnaces/pourLine.ts";
import styles from "./BoardPage.module.css";
import { useTurning } from "./useTurning.ts";

type Line = { readonly id: string; readonly says: ReactNode };

/** The pour day, the rooms' air and the slurries, as their own screens have them. */
export function BoardShop({
  now,
  hungIn,
}: {
  readonly now: number;
  /** Rooms with pieces in work; where there are none, every room is shown. */
  readonly hungIn: ReadonlySet<string>;
}) {
  const format = useFormat();
  const pours = usePours("open");
  const rooms = useRooms();
  const buckets = useBucketStandings();
  const pourLines = pours
    ?.toSorted((a, b) => a.plan.pourAt - b.plan.pourAt)
    .map((pour): Line => {
      const { id, title, state, says } = pourLine(pour, dayTime(pour.plan.pourAt, now, format.locale));
      const when = state === "under way" ? `${state}, ${says}` : says;
      return { id, says: <Fact of={title}>{when}</Fact> };
    });
  const airLines = rooms
    ?.filter(({ id, retired }) => (hungIn.size === 0 ? !retired : hungIn.has(id)))
    .map(({ id, name, last }): Line => {
      if (last === null) return { id, says: <Fact of={name}>no reading</Fact> };
      const air = `${format.show("temp", last.airC)} ${format.show("percent", last.rh)}`;
      const says = (
        <>
          <Fact of={name}>{air}</Fact> <Ago at={last.at} />
        </>
      );
      return { id, says };
    });
  const slurryLines = buckets
    ?.filter(({ bucket }) => !bucket.retired)
    .map(({ bucket: { id, name }, health }): Line => {
      const says = (
        <>
          {name} <HealthMark level={health.level} />
        </>
      );
      return { id, says };
    });
  const none: readonly Line[] = pourLines?.length === 0 ? [{ id: "no-pour", says: "No pour planned" }] : [];
  const lines = [...(pourLines ?? []), ...none, ...(airLines ?? []), ...(slurryLines ?? [])];
  const { box, shown, fits } = useTurning<HTMLUListElement, Line>(lines);
  return (
    <ul ref={box} className={styles["shop"]} aria-label="Pour, air and slurry">
      {shown.map(({ id, says }, place) => (
        <li key={id} data-over={place >= fits || undefined}>
          {says}
        </li>
      ))}
    </ul>
  );
}

function Fact({ of, children }: { readonly of: string; readonly children: ReactNode }) {
  return (
    <>
      {of} <strong>{children}</strong>
    </>
  );
}
