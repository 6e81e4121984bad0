/**
 * What is kept of the log outside its store, so that a cleared store is not taken for a new one: two numbers and two
 * times, in the page's local storage and in a cookie of a year. Each survives some losses the other does not.
 */
export type OutsideNote = {
  readonly entries: number;
  /** When the last entry was written, epoch ms. */
  readonly lastAt: number;
  /** When the last sound backup was made; null before the first. */
  readonly backupAt: number | null;
};

const name = "dipbook-log";
const yearS = 365 * 86_400;

const text = ({ entries, lastAt, backupAt }: OutsideNote): string =>
  [entries, lastAt, backupAt ?? ""].join("_");

function parse(value: string | null | undefined): OutsideNote | null {
  const found = /^(\d{1,9})_(\d{1,15})_(\d{0,15})$/.exec(value ?? "");
  if (found === null) return null;
  const backupAt = found[3] === "" ? null : Number(found[3]);
  return { entries: Number(found[1]), lastAt: Number(found[2]), backupAt };
}

/** Writes the note in both places; a browser that refuses one is no reason to fail. */
export function writeNote(note: OutsideNote): void {
  try {
    localStorage.setItem(name, text(note));
  } catch {
    // Switched off or full: the cookie may still take it.
  }
  try {
    document.cookie = `${name}=${text(note)}; max-age=${yearS}; path=/; SameSite=Strict`;
  } catch {
    // A page without an origin may not set one.
  }
}

/** The note, from the place that has the later one; null where neither has any. */
export function readNote(): OutsideNote | null {
  const notes = [fromStorage(), fromCookie()].filter((note) => note !== null);
  return notes.toSorted((a, b) => b.lastAt - a.lastAt)[0] ?? null;
}

export function forgetNote(): void {
  try {
    localStorage.removeItem(name);
  } catch {
    // As above.
  }
  document.cookie = `${name}=; max-age=0; path=/; SameSite=Strict`;
}

function fromStorage(): OutsideNote | null {
  try {
    return parse(localStorage.getItem(name));
  } catch {
    return null;
  }
}

const fromCookie = (): OutsideNote | null =>
  parse(
    document.cookie
      .split("; ")
      .find((one) => one.startsWith(`${name}=`))
      ?.slice(name.length + 1),
  );
