import { oneOf, words } from "./formFields.ts";

/** What any crack is asked, on the rack or in the kiln. */
export const crackFields = {
  kind: oneOf(["hairline", "open", "chip", "lift"], "the kind of crack"),
  where: words("place", "Say where, so that you find it again: left ear, cup edge, back flat."),
};
