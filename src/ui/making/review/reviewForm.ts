import type { EntryBodies } from "../../../logbook/entries/entry.ts";
import type { Piece } from "../../../logbook/piece/piece.ts";
import type { Finding } from "../../../rules/finding.ts";
import { words, type Checked } from "../../base/forms/formFields.ts";

export type SignDraft = { readonly name: string; readonly reasons: Readonly<Record<string, string>> };

/** Tells one hold from another of the same rule: two cracks are two reasons. */
export const holdKey = ({ rule, variant, entries }: Finding): string => [rule, variant, ...entries].join("/");

export const holdsOf = (findings: readonly Finding[]): readonly Finding[] =>
  findings.filter(({ level }) => level === "hold");

/** Whether the shell as it stands was signed: no coat and no hold has come since. */
export function isSigned({ phase, reviews, coats }: Piece, findings: readonly Finding[]): boolean {
  return phase === "reviewed" && reviews.at(-1)?.coats === coats.length && holdsOf(findings).length === 0;
}

/** A signed review as the log keeps it. A hold passes only with a reason of its own. */
export function signedReview(
  draft: SignDraft,
  {
    findings,
    verdict,
    safety,
  }: {
    readonly findings: readonly Finding[];
    readonly verdict: EntryBodies["review-signed"]["verdict"];
    readonly safety: number | null;
  },
): Checked<EntryBodies["review-signed"]> {
  const holds = holdsOf(findings);
  const name = words("name", "Sign with the name of the person who looked at the shell.", 120);
  const reason = words("reason", "To override a hold, give a written reason.");
  const signed = name.read(draft.name);
  const reasons = holds.map((hold) => {
    const key = holdKey(hold);
    return { hold, key, read: reason.read(draft.reasons[key] ?? "") };
  });
  const missing = reasons.flatMap(({ key, read }) =>
    read.ok ? [] : [[`reasons.${key}`, read.errors[""]] as const],
  );
  if (!signed.ok || missing.length > 0) {
    const own = signed.ok ? {} : { name: signed.errors[""] };
    return { ok: false, errors: { ...own, ...Object.fromEntries(missing) } };
  }
  return {
    ok: true,
    value: {
      name: signed.value,
      verdict,
      passed: reasons.map(({ hold, read }) => ({ rule: hold.rule, reason: read.ok ? read.value : "" })),
      safety,
    },
  };
}
