import { useLiveQuery } from "dexie-react-hooks";
import { useCallback } from "react";
import { getPhoto } from "../../../storage/photos.ts";
import { useShop } from "../state/shop.tsx";
import styles from "./Photo.module.css";

export function Photo({ id, alt = "Photo from the log" }: { readonly id: string; readonly alt?: string }) {
  const { db } = useShop();
  const blob = useLiveQuery(() => getPhoto(db, id), [db, id]);
  const show = useCallback(
    (image: HTMLImageElement) => {
      if (!blob) return undefined;
      const url = URL.createObjectURL(blob);
      image.src = url;
      return () => URL.revokeObjectURL(url);
    },
    [blob],
  );
  if (blob === null) return <span className={styles["gone"]}>This photo is not on this device.</span>;
  if (blob === undefined) return <span className={styles["gone"]} aria-hidden="true" />;
  return <img ref={show} alt={alt} className={styles["photo"]} />;
}
