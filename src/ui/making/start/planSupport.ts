import type { PiecePlan } from "../../../logbook/entries/pieceBodies.ts";
import {
  withoutEmpty,
  asGiven,
  figureOrNull,
  type DraftOf,
  type ReadOf,
} from "../../base/forms/formFields.ts";

type Support = NonNullable<PiecePlan["support"]>;
const span = { remedy: "Measure it on the pattern, or leave it empty." };

/** What takes load off a flat panel, as the plan form asks it. */
export const supportFields = {
  ribEveryMm: figureOrNull("ribEveryMm", { what: "spacing of the ribs", ...span }),
  crownMm: figureOrNull("crownMm", { what: "crown", ...span }),
  sand: asGiven<Support["sand"] | null>(null),
  edges: asGiven<Support["edges"] | null>(null),
};

export const draftOfSupport = ({ support }: PiecePlan): DraftOf<typeof supportFields> => ({
  ribEveryMm: support?.ribEveryMm ?? null,
  crownMm: support?.crownMm ?? null,
  sand: support?.sand ?? null,
  edges: support?.edges ?? null,
});

/** Null where nothing is there, or the part is none that it helps: a tube bears by its roundness. */
export function supportOf(
  draft: ReadOf<typeof supportFields>,
  part: NonNullable<PiecePlan["part"]>["kind"] | undefined,
): Support | null {
  if (part === undefined || part === "round") return null;
  const support = withoutEmpty({
    ribEveryMm: draft.ribEveryMm ?? undefined,
    crownMm: part === "flat" ? (draft.crownMm ?? undefined) : undefined,
    sand: draft.sand ?? undefined,
    edges: part === "flat" ? (draft.edges ?? undefined) : undefined,
  });
  return Object.keys(support).length === 0 ? null : support;
}
