import { X } from "lucide-react";
import { useEffect, useRef } from "react";
import { useLocation } from "wouter";
import { useFleeting, type Toast } from "../state/fleeting.ts";
import sheet from "../styles/sheet.module.css";
import styles from "./Toasts.module.css";
import { usePress } from "./usePress.ts";

const staysMs = { done: 4_000, refused: 12_000 };
/** Time to see the slip and reach the key. */
const undoMs = 10_000;

export function Toasts() {
  const toasts = useFleeting((fleeting) => fleeting.toasts);
  return (
    <div className={styles["stack"]} role="status" aria-live="polite">
      {toasts.map((toast) => (
        <OneToast key={toast.id} toast={toast} />
      ))}
    </div>
  );
}

function OneToast({ toast }: { readonly toast: Toast }) {
  const dismiss = useFleeting((fleeting) => fleeting.dismiss);
  const [place] = useLocation();
  const saidAt = useRef(place);
  useEffect(() => {
    // It speaks of the page it was said on, or of the one that came with it. A refusal stays until it has been read.
    if (toast.tone === "done" && place !== saidAt.current) dismiss(toast.id);
  }, [place, dismiss, toast]);
  const press = usePress(() => dismiss(toast.id));
  const takeBack = usePress(() => {
    dismiss(toast.id);
    toast.undo?.();
  });
  useEffect(() => {
    const ms = toast.undo === undefined ? staysMs[toast.tone] : undoMs;
    const timer = setTimeout(() => dismiss(toast.id), ms);
    return () => clearTimeout(timer);
  }, [dismiss, toast]);
  return (
    <div className={`${sheet["line2"]} ${styles["toast"]} ${styles[toast.tone]}`}>
      <span>{toast.text}</span>
      {toast.undo !== undefined && (
        <button type="button" className={styles["undo"]} {...takeBack}>
          Undo
        </button>
      )}
      <button type="button" aria-label="Close this message" {...press}>
        <X aria-hidden="true" />
      </button>
    </div>
  );
}
