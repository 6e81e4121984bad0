import css from "./makeUp.module.css";

/** Said wherever dry flour is handled. */
export function DustNote() {
  return (
    <p className={css["dust"]}>
      <strong>Dry flour: mask on.</strong> Its dust is silica that stays in the lungs for good (respirable
      crystalline silica: 29 CFR 1910.1053). Pour low and slowly, wipe up wet, never sweep dry. Local codes
      come first.
    </p>
  );
}
