import type { EntryBodies } from "../../../logbook/entries/entry.ts";
import type { Finding } from "../../../rules/finding.ts";
import { checkFields, words, type Checked } from "../../base/forms/formFields.ts";
import type { Format } from "../../base/format/units.ts";

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
    format,
  }: {
    readonly findings: readonly Finding[];
    readonly verdict: EntryBodies["review-signed"]["verdict"];
    readonly safety: number | null;
    readonly format: Format;
  },
): Checked<EntryBodies["review-signed"]> {
  const holds = holdsOf(findings);
  const name = words("name", "Sign with the name of the person who looked at the shell.", 120);
  const reason = words(
    "reason",
    "A hold is passed only with a written reason: say why it may go on all the same.",
  );
  const signed = checkFields({ name }, draft, format);
  const passed = checkFields(
    Object.fromEntries(holds.map((hold) => [holdKey(hold), reason])),
    Object.fromEntries(holds.map((hold) => [holdKey(hold), draft.reasons[holdKey(hold)] ?? ""])),
    format,
  );
  if (!signed.ok || !passed.ok) {
    const reasons = passed.ok ? [] : Object.entries(passed.errors);
    return {
      ok: false,
      errors: {
        ...(signed.ok ? {} : signed.errors),
        ...Object.fromEntries(reasons.map(([key, sentence]) => [`reasons.${key}`, sentence])),
      },
    };
  }
  return {
    ok: true,
    value: {
      ...signed.value,
      verdict,
      passed: holds.map((hold) => ({ rule: hold.rule, reason: passed.value[holdKey(hold)] ?? "" })),
      safety,
    },
  };
}
