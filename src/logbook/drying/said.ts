import type { SaidOfBeneath } from "../entries/pieceBodies.ts";

/** What makes the log know more or less of a coat's time than it did: `count` lines, the one of `at` where it is known. */
export type KnowsAnew = {
  readonly of: "air" | "checks";
  readonly how: "added" | "struck" | "changed";
  readonly count: number;
  readonly at: number | null;
};

/** Why a coat's dryness is worked out anew: what came to the log or left it since, or a dip whose time was put right. */
export type SaidAnewWhy = Omit<KnowsAnew, "of"> & { readonly of: KnowsAnew["of"] | "dip" };

/** What was said of a coat at the dip that covered it. */
export type SaidThen = SaidOfBeneath & {
  /** What is worked out with what is known now; null where that says the same, or nothing of its time has changed. */
  readonly anew:
    (Pick<SaidOfBeneath, "leftShare" | "dryness"> & { readonly why: readonly SaidAnewWhy[] }) | null;
};
