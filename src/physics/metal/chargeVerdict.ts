import { requireWithin } from "../stats/range.ts";
import {
  readyCharge,
  shareOfSet,
  type ChargeItem,
  type ChargeRefusal,
  type Element,
  type Recovery,
  type ShareSeen,
} from "./scrap.ts";

/** What an alloy may hold of an element, or of several together; fractions 0–1, either end open. */
export type CompositionLimit = {
  readonly of: readonly Element[];
  readonly min?: number | undefined;
  readonly max?: number | undefined;
};

/** "assay": what is known neither clears nor damns it; have it measured. */
export type Verdict = "pass" | "fail" | "assay";

export type LimitJudged = {
  readonly limit: CompositionLimit;
  readonly share: ShareSeen;
  readonly verdict: Verdict;
};

export type ChargeJudged =
  { readonly ok: true; readonly verdict: Verdict; readonly limits: readonly LimitJudged[] } | ChargeRefusal;

/** A whole interval inside is a pass, a whole interval outside a fail, anything else wants an assay. */
export function judgeShare(share: ShareSeen, { min = 0, max = 1 }: CompositionLimit): Verdict {
  for (const [name, end] of Object.entries({ ...share, min, max }))
    requireWithin(name, end, { low: -1e-6, high: 1 + 1e-6, unit: "(a fraction, not percent)" });
  // A share that is right to the last digit of a sum is on its limit, not over it.
  const slack = 1e-9;
  if (share.high < min - slack || share.low > max + slack) return "fail";
  return share.low >= min - slack && share.high <= max + slack ? "pass" : "assay";
}

/** A charge against an alloy's limits, one by one and together: one fail is a fail, one assay an assay. */
export function judgeCharge({
  items,
  recovery,
  limits,
}: {
  items: readonly ChargeItem[];
  recovery: Recovery;
  limits: readonly CompositionLimit[];
}): ChargeJudged {
  const ready = readyCharge({ items, recovery });
  if (!ready.ok) return ready;
  const judged = limits.map((limit): LimitJudged => {
    const share = shareOfSet(ready, limit.of);
    return { limit, share, verdict: judgeShare(share, limit) };
  });
  const has = (verdict: Verdict): boolean => judged.some((one) => one.verdict === verdict);
  return { ok: true, verdict: has("fail") ? "fail" : has("assay") ? "assay" : "pass", limits: judged };
}
