import { Link } from "wouter";
import type { Standing } from "../../../logbook/piece/standing.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import sheet from "../../base/styles/sheet.module.css";
import review from "../review/ReviewPage.module.css";
import { leastWords, placeWords, fireReasonWords } from "./finalDryWords.ts";
import { sentence } from "../../base/format/sentence.ts";
import { PatchesWait } from "./PatchesWait.tsx";

/** The last drying as a section of the review. */
export function FinalDrySummary({ standing }: { readonly standing: Standing }) {
  const { finalDry, forFire, now, piece } = standing;
  const format = useFormat();
  if (finalDry === null || forFire === null) return null;
  const [slowest] = finalDry.places;
  return (
    <section className={`${sheet["stack2"]} ${review["section"]}`} aria-labelledby="review-final-dry">
      <h2 id="review-final-dry">Final dry</h2>
      <p>
        {slowest !== undefined && `Slowest: ${placeWords(slowest.geometry)}. `}
        <strong>{sentence(leastWords(forFire, now, format.locale))}</strong>.{" "}
        {fireReasonWords(forFire, now, format)} <Link href={paths.finalDry(piece.id)}>More</Link>
      </p>
      <PatchesWait standing={standing} />
    </section>
  );
}
