import { Link } from "wouter";
import type { DayShop } from "../../../logbook/planning/dayShop.ts";
import type { LeftPiece } from "../../../logbook/planning/pourProposal.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Card } from "../../base/parts/Card.tsx";
import sheet from "../../base/styles/sheet.module.css";
import { nextDayText, whyLeftText } from "./nextPourWords.ts";

/** The pieces that don't go on the day, by their reason in numbers. */
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
  // A reason that holds for several is said once, under their names; so is a day they share.
  const groups = new Map<string, (LeftPiece & { readonly next: string })[]>();
  for (const one of left) {
    const next = nextDayText(one.verdict, { format, now });
    const reason = whyLeftText(one.why, { format, now, alloyNamed, furnaceNamed });
    groups.set(reason, [...(groups.get(reason) ?? []), { ...one, next }]);
  }
  return (
    <Card title="Not on that day">
      {[...groups].map(([reason, pieces]) => {
        const days = new Set(pieces.map(({ next }) => next));
        return (
          <div key={reason} className={sheet["lines"]}>
            <ul className={sheet["list"]}>
              {pieces.map(({ of, why, next }) => (
                <li key={of.id}>
                  <Link
                    href={why.code === "in-other-pour" ? paths.pour(why.pourId) : paths.piece(of.id)}
                    className={`${sheet["link"]} ${sheet["strong"]} ${sheet["breaks"]}`}
                  >
                    {of.name}
                  </Link>
                  {days.size > 1 && next !== "" && <> {next}</>}
                </li>
              ))}
            </ul>
            <p className={sheet["breaks"]}>
              {reason} {days.size === 1 && [...days][0]}
            </p>
          </div>
        );
      })}
    </Card>
  );
}
