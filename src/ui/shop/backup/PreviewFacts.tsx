import type { BackupPreview } from "../../../storage/backup/previewBackup.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { numberFormat } from "../../base/format/formatters.ts";
import { dayTime } from "../../base/format/time.ts";
import sheet from "../../base/styles/sheet.module.css";
import { entriesWords, photosWords, unreadableWords } from "./backupWords.ts";

/** What is in a backup and what would come of it: new, here already, unreadable and why, clashes. */
export function PreviewFacts({ preview }: { readonly preview: BackupPreview }) {
  const { clock } = useShop();
  const { locale } = useFormat();
  const { head, entries, photos } = preview;
  const unreadable = unreadableWords(preview, locale);
  const clashes = entries.clashes.length + photos.clashes.length;
  return (
    <>
      <ul className={`${sheet["stack1"]} ${sheet["list"]}`} aria-label="In this backup">
        {head.madeAt !== null && <li>Made {dayTime(head.madeAt, clock(), locale)}</li>}
        <li>
          {entriesWords(entries.fresh, locale)} new, {numberFormat(locale).format(entries.already)} here
          already
        </li>
        <li>
          {photosWords(photos.fresh, locale)} new, {numberFormat(locale).format(photos.already)} here already
        </li>
        {entries.aside > 0 && (
          <li>
            {entriesWords(entries.aside, locale)} can't be read by this version. They are kept as they are.
          </li>
        )}
        {clashes > 0 && (
          <li>
            {numberFormat(locale).format(clashes)} differ from what is here under the same number. What is
            here stays.
          </li>
        )}
        {!head.isWhole && <li>The end of the file is missing or damaged. The rest can be read.</li>}
      </ul>
      {unreadable.length > 0 && (
        <details>
          <summary>Can't be read: {numberFormat(locale).format(unreadable.length)}</summary>
          <ul className={`${sheet["stack1"]} ${sheet["list"]}`}>
            {unreadable.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}
