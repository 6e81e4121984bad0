import { Camera, X } from "lucide-react";
import { useId, useRef, useState } from "react";
import { putPhoto } from "../../../storage/photos.ts";
import { makePhotoClient, type PhotoClient } from "../../../workers/photoClient.ts";
import { useShop } from "../state/shop.tsx";
import { Button } from "./Button.tsx";
import sheet from "../styles/sheet.module.css";
import field from "./field.module.css";
import { Photo } from "./Photo.tsx";
import styles from "./PhotoPicker.module.css";

/** Pictures kept by id; each is in the store before its id is handed on. */
export function PhotoPicker(props: {
  readonly photos: readonly string[];
  readonly onChange: (photos: readonly string[]) => void;
  readonly label?: string | undefined;
}) {
  const { photos, onChange, label = "Photos" } = props;
  const { db, moment } = useShop();
  const id = useId();
  const client = useRef<PhotoClient | null>(null);
  const [busy, setBusy] = useState(false);
  const [fault, setFault] = useState<string | null>(null);

  const take = async (files: readonly File[]): Promise<void> => {
    if (files.length === 0) return;
    client.current ??= makePhotoClient();
    setBusy(true);
    setFault(null);
    let kept = photos;
    for (const file of files) {
      const shrunk = await client.current.shrink(file);
      if (!shrunk.ok) {
        setFault(`“${file.name}” could not be read as a picture.`);
        continue;
      }
      const photoId = moment().newId();
      try {
        await putPhoto(db, shrunk.photo, photoId);
        kept = [...kept, photoId];
        onChange(kept);
      } catch {
        setFault("The photo was not saved: this device may be full.");
      }
    }
    setBusy(false);
  };

  return (
    <div className={field["field"]} role="group" aria-labelledby={`${id}-label`}>
      <span id={`${id}-label`} className={field["label"]}>
        {label}
      </span>
      <div className={styles["grid"]}>
        {photos.map((photo, place) => (
          <div key={photo} className={sheet["cell"]}>
            <Photo id={photo} alt={`Photo ${place + 1}`} />
            <Button kind="quiet" onPress={() => onChange(photos.filter((other) => other !== photo))}>
              <X aria-hidden="true" size={18} /> Leave out photo {place + 1}
            </Button>
          </div>
        ))}
        <label className={styles["add"]}>
          <Camera aria-hidden="true" />
          {busy ? "Keeping it…" : "Add a photo"}
          <input
            type="file"
            accept="image/*"
            multiple
            disabled={busy}
            onChange={(event) => {
              const files = [...(event.target.files ?? [])];
              event.target.value = "";
              void take(files);
            }}
          />
        </label>
      </div>
      {fault !== null && (
        <span className={field["error"]} role="alert">
          {fault}
        </span>
      )}
    </div>
  );
}
