import { useLiveQuery } from "dexie-react-hooks";
import { useEffect, useState } from "react";
import { getPhoto } from "../../storage/photos.ts";
import { useShop } from "../app/shop.tsx";
import styles from "./Photo.module.css";

export function Photo({ id, alt = "Photo from the log" }: { readonly id: string; readonly alt?: string }) {
  const { db } = useShop();
  const blob = useLiveQuery(() => getPhoto(db, id), [db, id]);
  const [url, setUrl] = useState<string | null>(null);
  useEffect(() => {
    if (blob === undefined || blob === null) return undefined;
    const made = URL.createObjectURL(blob);
    setUrl(made);
    return () => URL.revokeObjectURL(made);
  }, [blob]);
  if (blob === null) return <span className={styles["gone"]}>This photo is not on this device.</span>;
  if (url === null) return <span className={styles["gone"]} aria-hidden="true" />;
  return (
    <a href={url} target="_blank" rel="noreferrer" className={styles["link"]}>
      <img src={url} alt={alt} className={styles["photo"]} loading="lazy" />
    </a>
  );
}
