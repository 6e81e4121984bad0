import { Link } from "wouter";
import { brimShare } from "../../../physics/metal/crucible.ts";
import type { MeltGroup } from "../../../logbook/planning/pourProposal.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Card } from "../../base/parts/Card.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import { Rows, type Given } from "../../base/parts/Reckoned.tsx";
import sheet from "../../base/styles/sheet.module.css";
import { mayPour } from "../../fire/pour/PourPlanForm.tsx";

/** One melt of the day: its pieces, its charge against the crucible, and the ways to plan it. */
export function MeltCard({
  melt,
  alloyNamed,
  pourAt,
}: {
  readonly melt: MeltGroup;
  readonly alloyNamed: (id: string) => string;
  readonly pourAt: number;
}) {
  const format = useFormat();
  const { furnace, alloyId, pieces, charge, mostKg } = melt;
  const { parts } = charge;
  const kg = (value: number): string => format.show("kg", value);
  const ids = pieces.map(({ of }) => of.id);
  const hotSoon = pieces.filter(({ of }) => mayPour(of)).map(({ of }) => of.id);
  const rows: readonly Given[] = [
    ["Casting and gating", kg(parts.castingKg)],
    ["Margin", kg(parts.marginKg)],
    ["Molten", kg(parts.meltKg)],
    ["To weigh in", kg(parts.chargeKg)],
    [
      "Crucible takes",
      mostKg === null ? "not known" : `${kg(mostKg)}, filled to ${format.show("percent", brimShare.tongs)}`,
    ],
    ...(mostKg === null ? [] : [["Left in the crucible", kg(mostKg - parts.meltKg)] as const]),
  ];
  return (
    <Card title={`Melt of ${alloyNamed(alloyId)}`}>
      <p>
        {furnace === null ? "In a crucible not set up yet" : `In ${furnace.name}`}, for{" "}
        {pieces.length === 1 ? "one piece" : `${pieces.length} pieces`}:
      </p>
      <ul className={`${sheet["stack1"]} ${sheet["bullets"]}`}>
        {pieces.map(({ of, verdict }) => (
          <li key={of.id} className={sheet["breaks"]}>
            <Link href={paths.piece(of.id)} className={sheet["link"]}>
              {of.name}
            </Link>
            <span className="visually-hidden">, </span>
            <p>
              {kg(of.metalKg ?? 0)}.{" "}
              {verdict.is === "sure"
                ? "Hot in time, even at the cautious times."
                : "Hot in time only at the likely times: check each coat before the next."}
            </p>
          </li>
        ))}
      </ul>
      <Rows rows={rows} />
      <div className={sheet["row"]}>
        <LinkButton kind="primary" href={paths.newMeltOf(ids, furnace?.id ?? null)}>
          Open the melt plan with these
        </LinkButton>
        {hotSoon.length > 0 && (
          <LinkButton href={paths.newPourOf(hotSoon, pourAt)}>Open the pour plan with these</LinkButton>
        )}
      </div>
      <p className={sheet["soft"]}>
        Nothing is saved yet: save it there.
        {hotSoon.length < ids.length &&
          ` ${hotSoon.length === 0 ? "A pour plan takes pieces" : "The pour plan takes the others"} after their shell review.`}
      </p>
    </Card>
  );
}
