import { Link } from "wouter";
import type { Standing, WallStanding } from "../../../logbook/piece/standing.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";

/** The wall's sum in a sentence; what is missing when it can't be made. */
export function WallVerdict({ standing }: { readonly standing: Standing }) {
  const format = useFormat();
  const { wall, piece, next } = standing;
  const { judged, missing } = wall;
  if (judged === null)
    return (
      <p>
        Whether it bears the head can't be judged without{" "}
        {missing.map((what) => missingWords[what]).join(", ")}.{" "}
        <Link href={paths.editPiece(piece.id)}>Add it to the plan</Link>.
      </p>
    );
  const { safety, safetyLow, safetyHigh, coatsToAdd, morHalved, band } = judged;
  const isBuilding = piece.phase === "coating" && next !== null;
  const factor = (value: number): string => format.number(value, value < 1 ? 2 : 1);
  return (
    <p>
      {isBuilding ? "So far: safety factor " : <strong>{bandWords[band]}. </strong>}
      {!isBuilding && "Safety factor "}
      {factor(safety)}, between {factor(safetyLow)} and {factor(safetyHigh)}
      {morHalved
        ? `, with ${format.show("percent", judged.loadShare)} of its strength for damp coats or a short firing`
        : ""}
      .
      {coatsToAdd > 0 &&
        ` ${coatsToAdd === 1 ? "1 more coat" : `${coatsToAdd} more coats`} would reach what is needed.`}{" "}
      An estimate, no promise.
    </p>
  );
}

const bandWords: Record<NonNullable<WallStanding["judged"]>["band"], string> = {
  carries: "By the sum it carries the head",
  marginal: "By the sum it is at the edge",
  thin: "By the sum it is thin for the head",
  fails: "By the sum it would fail",
};

const missingWords: Record<WallStanding["missing"][number], string> = {
  alloy: "the alloy",
  head: "the head height",
  part: "the part of the wall that suffers most",
  coats: "the first coat",
};
