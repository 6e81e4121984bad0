import type { DipProposal } from "../../../logbook/dip/dipProposal.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { kindWords } from "../../base/format/coatWords.ts";
import { Card } from "../../base/parts/Card.tsx";
import type { DipWishes, WantedCoat } from "../../../logbook/dip/dipWishes.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./Proposal.module.css";
import { stuccosWords, visitWords } from "./timelineWords.ts";

/** When to go to the bucket and with what, in sentences. */
export function ProposalCard(props: {
  readonly proposal: DipProposal;
  readonly wishes: DipWishes;
  readonly bucketNames: ReadonlyMap<string, string>;
  readonly now: number;
}) {
  const { proposal, wishes, bucketNames, now } = props;
  const format = useFormat();
  const wanted = new Map(wishes.wanted.map((one) => [one.wish.id, one]));
  const { visits, left } = proposal;
  const named = (ids: readonly { readonly id: string }[]): readonly WantedCoat[] =>
    ids.flatMap(({ id }) => wanted.get(id) ?? []);
  const noTime = named(left.filter(({ why }) => why === "no-time"));
  const later = named(left.filter(({ why }) => why === "after-the-hours"));
  return (
    <Card title="Proposal">
      {visits.length === 0 && <p>No coat to propose within your hours of the next two days.</p>}
      <ol className={`${sheet["stack3"]} ${sheet["list"]} ${css["visits"]}`}>
        {visits.map((visit) => (
          <li key={visit.at}>
            <h3>{visitWords(visit, now, format)}</h3>
            <ul>
              {visit.dips.map(({ group, pieces }) => {
                const coats = named(pieces);
                const [first] = coats;
                const bucket = bucketNames.get(group.split(" ")[1] ?? "");
                return (
                  <li key={group}>
                    <strong>{first === undefined ? "" : kindWords[first.kind]}</strong>
                    {bucket === undefined ? "" : ` from ${bucket}`}, {stuccosWords(coats)}:{" "}
                    {pieces.map(({ id, by, isBareTooLong }, i) => (
                      <span key={id}>
                        {i > 0 && ", "}
                        {wanted.get(id)?.standing.piece.plan.name ?? id}
                        {by === "likely" && " (check if dry first)"}
                        {isBareTooLong && " (its prime will be over a day old)"}
                      </span>
                    ))}
                  </li>
                );
              })}
            </ul>
          </li>
        ))}
      </ol>
      {noTime.length > 0 && <Left coats={noTime}>No time can be given for</Left>}
      {later.length > 0 && <Left coats={later}>Dry only after these two days, or outside your hours:</Left>}
      {wishes.withoutRecipe.length > 0 && (
        <p className={sheet["soft"]}>
          Without a recipe, so not planned:{" "}
          {wishes.withoutRecipe.map(({ piece }) => piece.plan.name).join(", ")}.
        </p>
      )}
      {wishes.held.length > 0 && (
        <p>On hold, no further coat yet: {wishes.held.map(({ piece }) => piece.plan.name).join(", ")}.</p>
      )}
      <p className={sheet["soft"]}>
        One coat ahead, in as few visits as possible. Each piece goes in your first free hour after it is dry
        at the latest. Its likely time is used if that is too late, or a prime coat would be over a day old.
        Check each before it goes in.
      </p>
    </Card>
  );
}

function Left({ coats, children }: { readonly coats: readonly WantedCoat[]; readonly children: string }) {
  return (
    <p>
      {children} {coats.map(({ standing }) => standing.piece.plan.name).join(", ")}.
    </p>
  );
}
