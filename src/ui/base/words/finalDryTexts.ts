import { catalogue, params } from "./catalogue.ts";

export const finalDryTexts = catalogue("final-dry", {
  "reviewWhen.overSinceSay": params("over since {say}"),
  "reviewWhen.reviewFromSay": params("review not before {say}"),
  "reviewWhen.noTimeCanBe": "no time can be given",
  "reviewWhen.theRoomsAirStays": "the room's air stays too damp to end it",
});
