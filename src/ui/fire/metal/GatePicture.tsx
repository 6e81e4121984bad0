import type { GatingDraft } from "../../../logbook/casting/gatingDraft.ts";
import plot from "../../base/charts/plot.module.css";
import css from "./metal.module.css";

const says = {
  top: "Metal falls into the cavity from above: the whole sprue is its head",
  bottom: "Metal comes in below: half the cavity height comes off the head",
  parting: "Metal comes in part of the way up: the part above the gate lowers the head",
} as const;

/** Where the gate comes in, in section, with the lengths the sums ask for. */
export function GatePicture({ gate }: { readonly gate: GatingDraft["gate"] }) {
  const gateY = { top: 62, bottom: 150, parting: 106 }[gate];
  const sprueFoot = gate === "top" ? 62 : gateY;
  return (
    <svg
      className={`${plot["svg"]} ${css["picture"]}`}
      viewBox="0 0 360 190"
      role="img"
      aria-label={says[gate]}
    >
      <path className={css["metalFill"]} d="M54 18h60l-14 22h-32z" />
      <path className={css["metalFill"]} d={`M74 40h20l-4 ${sprueFoot - 34}h-12z`} />
      <path className={css["metalFill"]} d={`M78 ${sprueFoot - 6}h112v12H78z`} />
      <rect className={css["metalFill"]} x={190} y={56} width={96} height={100} rx={10} />
      <path className={css["dashed"]} d="M30 18H310" />
      <text x={300} y={13} textAnchor="end">
        metal in the cup
      </text>
      <path className={css["line"]} d={`M38 18V${gateY}M33 18h10M33 ${gateY}h10`} />
      <text className={plot["strong"]} x={30} y={(18 + gateY) / 2 + 4} textAnchor="end">
        h
      </text>
      <path className={css["thin"]} d={`M38 ${gateY}H78`} />
      {gate !== "top" && (
        <>
          <path className={css["line"]} d="M304 56V156M299 56h10M299 156h10" />
          <text className={plot["strong"]} x={314} y={140}>
            c
          </text>
        </>
      )}
      {gate === "parting" && (
        <>
          <path className={css["line"]} d={`M172 56V${gateY - 6}M167 56h10`} />
          <text className={plot["strong"]} x={158} y={82}>
            p
          </text>
        </>
      )}
      <text x={238} y={112} textAnchor="middle">
        cavity
      </text>
      <text x={134} y={sprueFoot + 22} textAnchor="middle">
        gate
      </text>
    </svg>
  );
}
