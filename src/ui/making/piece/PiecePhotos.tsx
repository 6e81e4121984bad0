import { effective } from "../../../logbook/log/effective.ts";
import type { Entry } from "../../../logbook/entries/entry.ts";
import { Card } from "../../base/parts/Card.tsx";
import { Photo } from "../../base/parts/Photo.tsx";
import styles from "./PiecePhotos.module.css";

/** Every photo of the entries that stand, in the order they were taken. */
export function PiecePhotos({ entries }: { readonly entries: readonly Entry[] }) {
  const ids = effective(entries).flatMap(({ body }) => ("photos" in body ? (body.photos ?? []) : []));
  if (ids.length === 0) return null;
  return (
    <Card title="Photos">
      <div className={styles["grid"]}>
        {ids.map((id, place) => (
          <Photo key={id} id={id} alt={`Photo ${place + 1} of ${ids.length}`} />
        ))}
      </div>
    </Card>
  );
}
