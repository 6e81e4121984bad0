export type EntryText = { readonly title: string; readonly detail: string | null };

/** A line of the log: what happened, and whatever else was said of it. */
export const entryText = (title: string, ...details: readonly (string | null | undefined)[]): EntryText => {
  const said = details.filter((detail) => detail !== null && detail !== undefined && detail.trim() !== "");
  return { title, detail: said.length === 0 ? null : said.join(" · ") };
};

/** "drying factor 1.2"; says so when it was cleared, and nothing when it was not spoken of. */
export function figureDetail(
  name: string,
  value: number | null | undefined,
  show: (value: number) => string,
): string | null {
  if (value === undefined) return null;
  return value === null ? `${name} not known` : `${name} ${show(value)}`;
}

export const retiredWords = ({ retired }: { readonly retired?: boolean | undefined }): string | null =>
  retired === true ? "no longer used" : null;
