import type { EntryBodies } from "../../logbook/entry.ts";
import { useFormat } from "../app/useFormat.ts";

/** A bucket's reading in one line: what was measured, nothing more. */
export function ReadingLine({ reading }: { readonly reading: EntryBodies["bucket-read"] }) {
  const format = useFormat();
  const { cup, cupS, slurryC, densityGCm3, pH, note } = reading;
  const parts = [
    cupS === undefined
      ? null
      : `${format.show("s", cupS)}${cup === undefined ? " in the cup" : ` in ${cup}`}`,
    slurryC === undefined ? null : format.show("temp", slurryC),
    densityGCm3 === undefined ? null : format.show("density", densityGCm3),
    pH === undefined ? null : `pH ${format.show("plain", pH)}`,
    note ?? null,
  ];
  return <>{parts.filter((part) => part !== null).join(", ")}</>;
}
