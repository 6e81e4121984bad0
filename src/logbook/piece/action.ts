/** The one thing to do next, in the order of the rack: hands first. */
export type NextAction =
  | {
      readonly kind: "dip";
      readonly readiness: "ready" | "maybe" | "drying" | "unknown";
      readonly at: number | null;
    }
  | { readonly kind: "final-dry"; readonly at: number | null }
  | { readonly kind: "mend" }
  | { readonly kind: "review" }
  | { readonly kind: "dewax" }
  | { readonly kind: "burn-out" }
  | { readonly kind: "end-burnout" }
  /** In a firing or preheat that is lit, since `since` (epoch ms). */
  | { readonly kind: "in-kiln"; readonly runId: string; readonly since: number | null }
  | { readonly kind: "fire" }
  | { readonly kind: "preheat" }
  | { readonly kind: "pour" }
  | { readonly kind: "knock-out" }
  | { readonly kind: "finish" }
  | { readonly kind: "tell-outcome" }
  | { readonly kind: "none" };
