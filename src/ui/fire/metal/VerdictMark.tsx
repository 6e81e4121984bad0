import { CircleCheck, CircleHelp, OctagonX } from "lucide-react";
import type { Verdict } from "../../../physics/metal/chargeVerdict.ts";
import css from "./metal.module.css";

const icons = { pass: CircleCheck, assay: CircleHelp, fail: OctagonX } as const;

/** Pass, assay or fail, by shape and word. */
export function VerdictMark({ verdict }: { readonly verdict: Verdict }) {
  const Icon = icons[verdict];
  return (
    <span className={`${css["verdict"]} ${css[verdict]}`}>
      <Icon aria-hidden="true" size={18} />
      {verdict}
    </span>
  );
}
