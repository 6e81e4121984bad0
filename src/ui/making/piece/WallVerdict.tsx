import type { Standing } from "../../../logbook/piece/standing.ts";
import { isPastPour } from "../../../rules/stage.ts";
import { WallWayList } from "./WallWayList.tsx";
import { AskPlan } from "../../base/ask/AskPlan.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import {
  beforeLogWords,
  moreCoats,
  neededText,
  neededBy,
  plannedWallWords,
  wallMissingWords,
  wallRange,
  wallWords,
} from "../../base/format/wallWords.ts";

/**
 * The shell against its pour in a sentence; what is missing when it can't be judged. `isFound`: a finding on the same
 * page has the figures and the ways out, and the word alone stands here.
 */
export function WallVerdict({
  standing,
  isFound = false,
}: {
  readonly standing: Standing;
  readonly isFound?: boolean;
}) {
  const format = useFormat();
  const { wall, piece } = standing;
  const { judged, planned, missing } = wall;
  // With metal in it nothing of the shell is to come.
  if (isPastPour(piece))
    return judged === null ? null : (
      <p>
        The shell was {wallRange(judged, format)}; {neededBy({ ...judged, floorMm: wall.floorMm })} needed{" "}
        {format.show("mm", judged.neededMm)}.
      </p>
    );
  const earlier = beforeLogWords(piece.coats, wall.basis);
  const whole = planned?.judged ?? judged;
  const asked = missing.find((what) => what !== "coats");
  if (whole === null)
    return (
      <>
        <p>
          Not set: {missing.map((what) => wallMissingWords[what]).join("; ")}. Without it the shell
          can&rsquo;t be checked against the pour.{earlier !== null && ` ${earlier}`}
        </p>
        {asked !== undefined && <AskPlan key={asked} piece={piece} what={asked} />}
      </>
    );
  const { word, neededMm, coatsToAdd, loadShare } = whole;
  if (isFound)
    return (
      <p>
        <strong>{planned === null ? wallWords[word] : plannedWallWords[word]}.</strong>
      </p>
    );
  return (
    <>
      <p>
        <strong>{planned === null ? wallWords[word] : plannedWallWords[word]}. </strong>
        {planned === null ? "The shell is " : "With the coats to come the shell will be "}
        {wallRange(whole, format)}; {neededText({ neededMm, floorMm: wall.floorMm }, format)}.
        {coatsToAdd > 0 && ` ${moreCoats(coatsToAdd)} would reach that.`}
        {loadShare < 1 &&
          ` Its strength counts at ${format.show("percent", loadShare)}, for a damp coat or a short firing.`}{" "}
        An estimate.
        {earlier !== null && ` ${earlier}`}
      </p>
      <WallWayList judged={whole} />
    </>
  );
}
