import { millisecondsInHour as hourMs } from "date-fns/constants";
import type { CoatDrying } from "../../../logbook/piece/standing.ts";
import { airClasses } from "../../../trade/airClasses.ts";
import { assumedWords } from "./assumedWords.ts";
import { balanceWords } from "./saidWords.ts";
import { duration } from "./time.ts";
import type { Format } from "./units.ts";
import { basisTexts as t } from "../words/basisTexts.ts";
import { counts } from "../words/counts.ts";

/** What a ready time rests on, a line each. */
export function basisWords(
  { basis, condensed, carriedKgM2, startKgM2 }: CoatDrying,
  format: Format,
): readonly string[] {
  const { readings, lastReadingAgeMs, longestGapMs, forecast, ownFactor, learned, air } = basis;
  const lines: string[] = [];
  if (basis.assumed) lines.push(assumedWords(basis, format));
  else if (readings === 0) lines.push(t["basis.noReadingOfThe"]);
  if (readings > 0) {
    const age =
      lastReadingAgeMs === null
        ? ""
        : t["basis.theLastDurationOld"]({ duration: duration(lastReadingAgeMs) });
    lines.push(
      t["basis.clauseOfTheRooms"]({
        readings: counts.readings(readings),
        age,
      }),
    );
    if (longestGapMs > 12 * hourMs)
      lines.push(t["basis.theLongestGapBetween"]({ duration: duration(longestGapMs) }));
  }
  if (air !== null) lines.push(t["basis.airMovementPart"]({ part: airClasses[air].label.toLowerCase() }));
  if (forecast === "repeat-yesterday") lines.push(t["basis.fromNowOnThe"]);
  if (forecast === "hold-last") lines.push(t["basis.fromNowOnTheAgain"]);
  lines.push(
    ownFactor !== null
      ? t["basis.dryingFactorPartSet"]({ part: format.number(ownFactor, 2) })
      : learned !== null
        ? t["basis.dryingFactorPartPart"]({
            part: format.number(learned.factor, 2),
            part2: format.number(learned.low, 2),
            part3: format.number(learned.high, 2),
            coats: counts.coats(learned.shopPairs),
            ofKind: learned.pairs === 0 ? "none" : counts.coats(learned.pairs),
          })
        : t["basis.dryingFactorStartingValue"],
  );
  if (carriedKgM2 > 0 && startKgM2 > 0)
    lines.push(t["basis.partOfItsWater"]({ part: format.show("percent", carriedKgM2 / startKgM2) }));
  if (condensed) lines.push(t["basis.waterCondensedOnIt"]);
  return lines;
}

/** What was said plainly, and what that does to the sum. */
export function plainWords(evidence: NonNullable<CoatDrying["evidence"]>, format: Format): string {
  const found = evidenceWords(evidence, format);
  if (evidence.says === "wet") return t["plain.itIsWetBy"]({ found });
  switch (evidence.by) {
    case "felt":
      return t["plain.felt"];
    case "steady":
      return t["plain.steady"]({ found });
    case "target":
      return t["plain.target"]({ found });
    case "surface":
      return t["plain.surface"]({ found });
    case "resistance":
      return t["plain.resistance"];
  }
}

function evidenceWords({ seen }: NonNullable<CoatDrying["evidence"]>, format: Format): string {
  switch (seen.method) {
    case "touch":
      return t["evidence.touch"]({ verdict: seen.verdict });
    case "weight":
      return t["evidence.weight"]({ balanceWords: balanceWords(seen.massG, format) });
    case "surface":
      return t["evidence.surface"]({ surfaceC: format.show("temp", seen.surfaceC) });
    case "colour":
      return t["evidence.colour"]({ verdict: seen.verdict });
    case "resistance":
      return t["evidence.resistance"];
    case "bag":
      return t["evidence.bag"]({ rh: format.show("percent", seen.rh) });
  }
}
