import { Link } from "wouter";
import type { DayShop } from "../../../logbook/planning/dayShop.ts";
import type { LeftPiece } from "../../../logbook/planning/pourProposal.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Card } from "../../base/parts/Card.tsx";
import sheet from "../../base/styles/sheet.module.css";
import { nextDayText, whyLeftText } from "./nextPourWords.ts";

/** The pieces that don't go on the day, each with its reason in numbers. */
export function LeftCard({
  left,
  day,
  alloyNamed,
  now,
}: {
  readonly left: readonly LeftPiece[];
  readonly day: DayShop;
  readonly alloyNamed: (id: string) => string;
  readonly now: number;
}) {
  const format = useFormat();
  const furnaceNamed = (id: string): string =>
    day.furnaces.find((furnace) => furnace.id === id)?.name ?? "the crucible";
  return (
    <Card title="Not on that day">
      <ul className={`${sheet["stack3"]} ${sheet["list"]}`}>
        {left.map(({ of, why, verdict }) => (
          <li key={of.id} className={sheet["lines"]}>
            <Link
              href={why.code === "in-other-pour" ? paths.pour(why.pourId) : paths.piece(of.id)}
              className={`${sheet["link"]} ${sheet["strong"]} ${sheet["breaks"]}`}
            >
              {of.name}
            </Link>
            <span>
              {whyLeftText(why, { format, now, alloyNamed, furnaceNamed })}{" "}
              {nextDayText(verdict, { format, now })}
            </span>
          </li>
        ))}
      </ul>
    </Card>
  );
}
