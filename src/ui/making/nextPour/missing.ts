import type { LeftPiece } from "../../../logbook/planning/pourProposal.ts";
import { paths } from "../../base/state/paths.ts";
import type { Format } from "../../base/format/units.ts";
import { fireText } from "./nextPourWords.ts";
import type { NextPour } from "./lookAhead.ts";

/** A fact nobody has given yet, and where to give it. */
export type Missing = {
  readonly key: string;
  readonly name: string;
  readonly says: string;
  readonly href: string;
  readonly link: string;
};

/** What the shop and the pieces leave open, the shop's own first. */
export function missingFacts({ day, proposal }: NextPour, format: Format): readonly Missing[] {
  const shop: Missing[] = [];
  if (day.furnaces.length === 0)
    shop.push({
      key: "crucible",
      name: "Crucible",
      says: "No crucible volume is set, so melts are not checked against one.",
      href: paths.kilns,
      link: "Set up a furnace",
    });
  if (day.kilns.length === 0)
    shop.push({
      key: "kiln",
      name: "Kiln",
      says: "No kiln is set up. Times are for a small kiln, and space is not checked.",
      href: paths.kilns,
      link: "Set up a kiln",
    });
  return [...shop, ...proposal.left.flatMap((left) => pieceFact(left, format))];
}

/** True for a piece that is left out because something of it is not known. */
export const lacksFact = (left: LeftPiece, format: Format): boolean => pieceFact(left, format).length > 0;

function pieceFact({ of: { id, name, standing }, why }: LeftPiece, format: Format): readonly Missing[] {
  const said = (says: string, href: string, link: string): readonly Missing[] => [
    { key: id, name, says, href, link },
  ];
  switch (why.code) {
    case "no-alloy":
      return said("No alloy is set.", paths.editPiece(id), "Set its alloy");
    case "no-metal":
      return said("Its metal mass is not set.", paths.metal(id), "Work out its metal");
    case "no-fire":
      return "gaps" in why.fire
        ? said(fireText(why.fire, format), paths.editPiece(id), "Complete its plan")
        : [];
    case "stopped":
      if (why.stop.code === "no-recipe")
        return said(
          "No recipe is set: the coats to come are not known.",
          paths.editPiece(id),
          "Set its recipe",
        );
      return why.stop.code === "no-time" && why.stop.why === "no-readings" && standing.room !== null
        ? said(
            "The air of its room was never logged, so no drying time yet.",
            paths.room(standing.room.id),
            "Log the room’s air",
          )
        : [];
    case "too-late":
    case "with-others":
    case "in-other-pour":
    case "too-much-metal":
    case "crucible-full":
    case "other-alloy":
    case "kiln-heat":
    case "kiln-full":
      return [];
  }
}
