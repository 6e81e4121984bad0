import { sentence } from "../../base/format/sentence.ts";
import type { PourOrder } from "../../../physics/metal/pourOrder.ts";
import { metalCooling } from "../../../logbook/pour/pourShells.ts";
import { fillsAboveK } from "../../../logbook/pour/pourHeat.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Card } from "../../base/parts/Card.tsx";
import type { PourParts } from "./pourParts.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./pour.module.css";

const problemWords = {
  "metal-short": "not enough metal left",
  "metal-cold": "metal too cold by then",
  "shell-cold": "shell too cold by then",
} as const;

/** What keeps the plan from working, by what must be changed. */
const headings = {
  "metal-short": "Not enough metal",
  "metal-cold": "Metal too cold",
  "shell-cold": "Shell too cold",
} as const;
const whole = {
  "metal-short": "There is less metal than the shells hold.",
  "metal-cold": "Metal will be too cold at the last shell.",
  "shell-cold": "Shell will be too cold when the metal arrives.",
} as const;

/** Which shell goes first and why, and whether metal and heat last. */
export function OrderCard({
  parts,
  order,
  metalC,
  carryMin,
}: {
  readonly parts: PourParts;
  readonly order: PourOrder | null;
  readonly metalC: number;
  readonly carryMin: number;
}) {
  const format = useFormat();
  const { shells, metalKg, metalFrom, wantedKg, alloy, figures, airC } = parts;
  const kg = (value: number): string => format.show("kg", value);
  if (order === null || metalKg === null || figures === null)
    return (
      <Card title={shells.length > 1 ? "Order of the shells" : "Metal and heat"}>
        <p>
          {shells.length === 0
            ? "Its shells are not on this device."
            : alloy === null
              ? "No metal is planned for these shells: set an alloy, or choose a melt."
              : wantedKg === null
                ? "Enter how much metal each shell holds."
                : "Enter how much metal is in the crucible, or choose a melt."}
        </p>
        {shells.length > 1 && (
          <p className={`${sheet["soft"]} ${styles["soft"]}`}>Until then: the thinnest first.</p>
        )}
      </Card>
    );
  const nameOf = (id: string): string => shells.find((shell) => shell.id === id)?.name ?? id;
  const found = order.turns.flatMap(({ problems }) => problems);
  const problem = (["metal-short", "shell-cold", "metal-cold"] as const).find((one) => found.includes(one));
  const coolK = metalCooling({ metalKg, metalC, airC, figures });
  return (
    <Card
      title={
        problem !== undefined
          ? `${headings[problem]} for this plan`
          : shells.length > 1
            ? "Order of the shells"
            : "Metal and heat"
      }
      tone={order.isEnough ? "plain" : "hold"}
    >
      <p>
        <strong>{problem === undefined ? "Metal and heat last." : whole[problem]}</strong> {kg(metalKg)}{" "}
        {metalFrom === "weighed" ? "weighed" : "planned"}
        {wantedKg === null ? "" : `, ${kg(wantedKg)} wanted`}
        {problem !== "metal-short" && order.metalLeftKg > 0.005
          ? `; ${kg(order.metalLeftKg)} left for the ingot mould.`
          : "."}
      </p>
      <ol className={`${sheet["stack3"]} ${sheet["list"]} ${styles["list"]} ${styles["ordered"]}`}>
        {order.turns.map((turn) => (
          <li key={turn.id}>
            <strong>{nameOf(turn.id)}</strong>
            <span>
              full after {format.number(turn.endMin, 1)} min,{" "}
              {alloy !== null && turn.metalC < alloy.solidusC.value
                ? "metal frozen by then"
                : `metal then ${format.show("temp", turn.metalC)}`}
              {turn.spareMin === null
                ? ""
                : turn.spareMin >= 0
                  ? `, ${format.number(turn.spareMin, 1)} min to spare`
                  : `, ${format.number(-turn.spareMin, 1)} min too late`}
            </span>
            {turn.problems.length > 0 && (
              <p className={`${sheet["held"]} ${sheet["firm"]} ${sheet["inset"]}`}>
                {sentence(turn.problems.map((problem) => problemWords[problem]).join("; "))}.
              </p>
            )}
          </li>
        ))}
      </ol>
      {shells.length > 1 && (
        <p className={`${sheet["soft"]} ${styles["soft"]}`}>
          The shell that runs out of time first goes first; between equals, the thinnest. Each shell leaves
          the kiln at its turn.
        </p>
      )}
      <details>
        <summary>How this is calculated</summary>
        <p>
          In the crucible the metal loses about {format.show("tempDiff", coolK)} a minute through its open
          surface (derived; estimate, half to twice). A shell takes {format.number(carryMin, 1)} min from the
          kiln to metal and 0.2 min to fill. It still fills at down to{" "}
          {format.show("tempDiff", fillsAboveK.value)} above the liquidus, or the low end of its range for
          heavy work. Order: earliest due first (Jackson’s rule, 1955).
        </p>
      </details>
    </Card>
  );
}
