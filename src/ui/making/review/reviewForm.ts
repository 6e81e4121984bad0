import { z } from "zod";
import type { EntryBodies } from "../../../logbook/entries/entry.ts";
import type { Finding } from "../../../rules/finding.ts";
import { check, words, type Checked } from "../../base/forms/fieldSchema.ts";

export type SignDraft = { readonly name: string; readonly reasons: Readonly<Record<string, string>> };

/** Tells one hold from another of the same rule: two cracks are two reasons. */
export const holdKey = ({ rule, variant, entries }: Finding): string => [rule, variant, ...entries].join("/");

export const holdsOf = (findings: readonly Finding[]): readonly Finding[] =>
  findings.filter(({ level }) => level === "hold");

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
  const reason = words(
    "reason",
    "A hold is passed only with a written reason: say why it may go on all the same.",
  );
  const schema = z.object({
    name: words("name", "Sign with the name of the person who looked at the shell.", 120),
    reasons: z.object(Object.fromEntries(holds.map((hold) => [holdKey(hold), reason]))),
  });
  const reasons = Object.fromEntries(
    holds.map((hold) => [holdKey(hold), draft.reasons[holdKey(hold)] ?? ""]),
  );
  const read = check(schema, { name: draft.name, reasons });
  if (!read.ok) return read;
  const passed = holds.map((hold) => ({ rule: hold.rule, reason: read.value.reasons[holdKey(hold)] ?? "" }));
  return { ok: true, value: { name: read.value.name, verdict, passed, safety } };
}
