import { useState } from "react";
import sheet from "../../../base/styles/sheet.module.css";
import styles from "./csv.module.css";

/** A file by the phone's own picker, or dropped here. */
export function FilePick({
  onFile,
  another,
}: {
  readonly onFile: (file: File) => void;
  readonly another: boolean;
}) {
  const [over, setOver] = useState(false);
  return (
    <div className={another ? styles["another"] : styles["drop"]} data-over={over || undefined}>
      <strong>{another ? "Choose another file" : "Choose the logger’s file"}</strong>
      {!another && <span className={sheet["pale2"]}>CSV or text. You can drop it here too.</span>}
      <input
        type="file"
        aria-label="The logger’s file"
        accept=".csv,.txt,.tsv,.asc,text/csv,text/plain,text/tab-separated-values"
        onDragEnter={() => setOver(true)}
        onDragLeave={() => setOver(false)}
        onDrop={() => setOver(false)}
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = "";
          if (file !== undefined) onFile(file);
        }}
      />
    </div>
  );
}
