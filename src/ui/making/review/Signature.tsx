import type { Piece } from "../../../logbook/piece/piece.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { LevelMark } from "../../base/parts/LevelMark.tsx";
import { shortDateTime } from "./coatLines.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./ReviewPage.module.css";

/** The last signature, or on paper a line to sign by hand. */
export function Signature({ piece }: { readonly piece: Piece }) {
  const { locale } = useFormat();
  const last = piece.reviews.at(-1);
  if (last === undefined)
    return (
      <p className={css["line"]}>
        <span>Name</span>
        <span>Date</span>
      </p>
    );
  const since = piece.coats.length - last.coats;
  return (
    <section className={`${sheet["stack2"]} ${css["section"]}`} aria-label="Signature">
      <p>
        <LevelMark level={last.verdict} /> Signed by <strong>{last.name}</strong>,{" "}
        {shortDateTime(last.at, locale, { year: true })}
        {since > 0 && `; ${since === 1 ? "a coat" : `${since} coats`} since: sign again`}
      </p>
      {last.passed.map(({ rule, reason }) => (
        <p key={`${rule} ${reason}`} className={css["passed"]}>
          Hold overridden: {reason}
        </p>
      ))}
    </section>
  );
}
