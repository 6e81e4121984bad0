import css from "./makeUp.module.css";

/** Said wherever dry flour is handled. */
export function DustNote() {
  return (
    <p className={css["dust"]}>
      <strong>Dry flour: mask on.</strong> Its dust is silica and stays in the lungs for good. Pour low and
      slowly. Wipe up wet, never sweep dry. Local codes come first.
    </p>
  );
}
