import { Link } from "wouter";
import { exactUpTo } from "../../../logbook/planning/packPour.ts";
import { alloyName } from "../../../logbook/shop/ownAlloy.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { dayTime, soonTime } from "../../base/format/time.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { Empty } from "../../base/parts/Empty.tsx";
import sheet from "../../base/styles/sheet.module.css";
import { CoatsCard } from "./CoatsCard.tsx";
import { HowCard } from "./HowCard.tsx";
import { KilnCard } from "./KilnCard.tsx";
import { LeftCard } from "./LeftCard.tsx";
import type { NextPour } from "./lookAhead.ts";
import { MeltCard } from "./MeltCard.tsx";
import { MissingCard } from "./MissingCard.tsx";
import { lacksFact, missingFacts } from "./missing.ts";
import { listed } from "./nextPourWords.ts";
import { useNextPour, type AskedDay } from "./useNextPour.ts";

/** The answer for one day, and how far the next one is. */
export function NextPourView({ day, now }: { readonly day: AskedDay; readonly now: number }) {
  const { found: last, step, isBroken, again } = useNextPour(day);
  const { locale } = useFormat();
  // The last answer may be that of the day that stood there before: its keys would open plans for the wrong one.
  const found = last?.pourAt === day.pourAt && last.pourId === day.pourId ? last : null;
  return (
    <>
      <p role="status" className={sheet["soft"]}>
        {step !== null
          ? `Looking ahead: ${step.done} of ${step.of} pieces.`
          : found === null
            ? ""
            : `Calculated ${soonTime(found.workedOutAt, now, locale)}, for ${dayTime(found.pourAt, now, locale)}.`}
      </p>
      {found !== null && <Proposal found={found} now={now} />}
      {isBroken && step === null && (
        <Card tone="watch">
          <p>A calculation failed, so there is no proposal for this day. The log is unchanged.</p>
        </Card>
      )}
      {(found !== null || isBroken) && step === null && (
        <div>
          <Button onPress={again}>Calculate again</Button>
        </div>
      )}
    </>
  );
}

function Proposal({ found, now }: { readonly found: NextPour; readonly now: number }) {
  const format = useFormat();
  const { proposal, day, times, faults, pieces } = found;
  if (pieces === 0 && faults.length === 0)
    return (
      <Empty title="No piece is waiting for metal">
        <p>
          Pieces show here from their start until they are poured.{" "}
          <Link href={paths.newPiece} className={sheet["link"]}>
            Start a piece
          </Link>
        </p>
      </Empty>
    );
  const facts = missingFacts(found, format);
  const left = proposal.left.filter((one) => !lacksFact(one, format));
  const alloyNamed = (id: string): string => alloyName(id, day.shop);
  const going = proposal.melts.reduce((sum, melt) => sum + melt.pieces.length, 0);
  return (
    <>
      {facts.length > 0 && <MissingCard facts={facts} />}
      {faults.length > 0 && (
        <Card tone="watch">
          <p>Left out, because they can’t be calculated: {listed(faults)}.</p>
        </Card>
      )}
      {going === 0 && (
        <Card title="No pour possible on that day">
          <p>No piece with complete data is hot by then. The reasons are below.</p>
        </Card>
      )}
      {proposal.melts.map((melt) => (
        <MeltCard key={melt.pieces[0]?.of.id} melt={melt} alloyNamed={alloyNamed} pourAt={found.pourAt} />
      ))}
      {proposal.kilns.map((group) => (
        <KilnCard key={group.pieces[0]?.of.id} group={group} pourAt={found.pourAt} now={now} />
      ))}
      {times.length > 0 && <CoatsCard times={times} now={now} />}
      {left.length > 0 && <LeftCard left={left} day={day} alloyNamed={alloyNamed} now={now} />}
      <HowCard how={proposal.how} exactUpTo={exactUpTo} />
    </>
  );
}
