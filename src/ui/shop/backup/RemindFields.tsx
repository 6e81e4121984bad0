import { useSettings } from "../../base/state/live.ts";
import { Choice } from "../../base/forms/Choice.tsx";

const days = [
  { value: "0", label: "Never" },
  { value: "7", label: "7 days" },
  { value: "14", label: "14 days" },
  { value: "30", label: "30 days" },
] as const;
const entries = [
  { value: "0", label: "Never" },
  { value: "100", label: "100" },
  { value: "300", label: "300" },
  { value: "1000", label: "1,000" },
] as const;

const chosen = <T extends string>(options: readonly { readonly value: T }[], value: number): T | null =>
  options.find((option) => option.value === String(value))?.value ?? null;

/** When the rack reminds of a backup. */
export function RemindFields() {
  const [{ remindDays, remindEntries }, change] = useSettings();
  return (
    <details>
      <summary>Remind me</summary>
      <Choice
        label="After so many days"
        options={days}
        value={chosen(days, remindDays)}
        onChange={(value) => void change({ remindDays: Number(value) })}
      />
      <Choice
        label="After so many new entries"
        options={entries}
        value={chosen(entries, remindEntries)}
        onChange={(value) => void change({ remindEntries: Number(value) })}
      />
    </details>
  );
}
