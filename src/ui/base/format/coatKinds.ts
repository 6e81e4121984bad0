import type { CoatKind } from "../../../trade/coats.ts";

export const coatKinds = [
  { value: "prime", label: "Prime" },
  { value: "intermediate", label: "Intermediate" },
  { value: "backup", label: "Backup" },
  { value: "seal", label: "Seal" },
] as const satisfies readonly { value: CoatKind; label: string }[];
