import { Link } from "wouter";
import { meltFor } from "../../../logbook/pour/meltTie.ts";
import type { Piece, Shop } from "../../../logbook/piece/piece.ts";
import { useMelts, usePours } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { useNow } from "../../base/state/useNow.ts";
import { dayTime } from "../../base/format/time.ts";
import { Card } from "../../base/parts/Card.tsx";
import { meltTitle } from "./meltWords.ts";

/** Which melt a piece's metal came from, or is planned to; nothing where none is tied to it. */
export function PieceMelt({ piece, shop }: { readonly piece: Piece; readonly shop: Shop }) {
  const format = useFormat();
  const now = useNow();
  const melts = useMelts();
  const pours = usePours();
  if (melts === undefined || pours === undefined) return null;
  const melt = meltFor(piece, { melts, pours });
  if (melt === null) return null;
  const { plan, startedAt } = melt;
  const when =
    startedAt === null
      ? `planned ${dayTime(plan.at, now, format.locale)}`
      : `melted ${dayTime(startedAt, now, format.locale)}`;
  return (
    <Card title={piece.pours.length > 0 ? "Metal from" : "Metal planned from"}>
      <p>
        <Link href={paths.melt(melt.id)}>{meltTitle(melt, { shop, format })}</Link>, {when}.
      </p>
      <ul>
        {plan.items.map(({ name, massKg }, at) => (
          <li key={`${at} ${name}`}>
            {name}, {format.show("kg", massKg)}
          </li>
        ))}
      </ul>
    </Card>
  );
}
