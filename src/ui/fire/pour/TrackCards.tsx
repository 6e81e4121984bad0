import type { PlannedTrack } from "../../../physics/metal/pourDay.ts";
import { TrackCard, type TracksOf } from "./TrackCard.tsx";
import { trackNames } from "./pourStepWords.ts";
import { currentOf, trackOf } from "./trackState.ts";
import styles from "./pour.module.css";

/** Every track but the one that leads the screen; what is ready folds away. Their order stands still: a key must not move under a thumb. */
export function TrackCards(props: TracksOf & { readonly lead: PlannedTrack | undefined }) {
  const { plan, lead } = props;
  const others = plan.tracks.filter((track) => track.id !== lead?.id);
  const done = others.filter((track) => currentOf(track) === undefined);
  const cards = (of: readonly PlannedTrack[]) =>
    of.map((track) => <TrackCard key={track.id} {...props} track={track} />);
  return (
    <div className={styles["stack"]}>
      <ul className={styles["tracks"]} aria-label="Tracks">
        {cards(others.filter((track) => !done.includes(track)))}
      </ul>
      {done.length > 0 && (
        <details>
          <summary>Ready: {done.map(({ id }) => trackNames[trackOf(id)].toLowerCase()).join(", ")}</summary>
          <ul className={styles["tracks"]} aria-label="Tracks that are ready">
            {cards(done)}
          </ul>
        </details>
      )}
    </div>
  );
}
