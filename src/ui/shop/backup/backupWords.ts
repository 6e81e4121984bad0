import type { NotABackup, Unreadable } from "../../../storage/backup/items.ts";
import type { BackupPreview, UnreadRow } from "../../../storage/backup/previewBackup.ts";
import { faultWords } from "../../base/format/faultWords.ts";
import { numberFormat } from "../../base/format/formatters.ts";

export const countWords = (count: number, one: string, many: string, locale: string): string =>
  `${numberFormat(locale).format(count)} ${count === 1 ? one : many}`;

export const entriesWords = (count: number, locale: string): string =>
  countWords(count, "entry", "entries", locale);
export const photosWords = (count: number, locale: string): string =>
  countWords(count, "photo", "photos", locale);

/** Why a file is not taken: what was found, and what to do. */
export function notABackupWords(why: NotABackup): string {
  if (why.code === "newer-backup")
    return `This backup was made by a newer Dipbook (version ${why.version}; this one reads up to ${why.known}). Update Dipbook first.`;
  return `This is not a backup: found ${why.found}. Choose a file saved by Dipbook.`;
}

const reasons: Readonly<Record<Unreadable, string>> = {
  "cut-off": "is cut off",
  checksum: "was altered: its checksum does not fit",
  "not-json": "is damaged",
  missing: "is missing",
  "not-a-photo": "is not a photo",
  "binary-missing": "is not whole",
  "not-all-there": "starts a damaged part: lines are missing or doubled",
};

export function unreadRowWords({ place, why, fault }: UnreadRow): string {
  if (fault === null) return `Line ${place} ${reasons[why]}.`;
  return `Line ${place}: ${faultWords(fault)}.`;
}

export const badPhotoWords = ({ name, why }: BackupPreview["photos"]["bad"][number]): string =>
  `Photo ${name} ${reasons[why]}.`;

/** No more than this many things that can't be read are listed; the first ones say what is wrong. */
const mostListed = 20;

/** Everything in a backup that can't be read, a line each. */
export function unreadableWords({ entries, photos, kept }: BackupPreview, locale: string): readonly string[] {
  const all = [...entries.bad.map(unreadRowWords), ...photos.bad.map(badPhotoWords)];
  const more = all.length - mostListed;
  return [
    ...all.slice(0, mostListed),
    ...(more > 0 ? [`And ${numberFormat(locale).format(more)} more.`] : []),
    ...(kept.bad > 0 ? ["Some settings, half-written forms or 3D files can't be read."] : []),
  ];
}
