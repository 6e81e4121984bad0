import {
  Archive,
  BookOpen,
  CircleQuestionMark,
  Package,
  Presentation,
  Settings,
  Sigma,
  Timer,
} from "lucide-react";
import { paths } from "../../base/state/paths.ts";
import { Page } from "../../base/parts/Page.tsx";
import { PlaceList } from "../../base/parts/PlaceList.tsx";

const places = [
  {
    href: paths.recipes,
    name: "Recipes",
    says: "Coats, their stucco and how dry each must be",
    Icon: BookOpen,
  },
  {
    href: paths.cups,
    name: "Cups",
    says: "Flow cups, checked against your reference",
    Icon: Timer,
  },
  {
    href: paths.stock,
    name: "Stock",
    says: "What is left, when to order, what a shell costs",
    Icon: Package,
  },
  {
    href: paths.board,
    name: "Wall board",
    says: "For a screen on the wall, to be read from across the room",
    Icon: Presentation,
  },
  {
    href: paths.figures,
    name: "Figures",
    says: "Your own, learned and starting values",
    Icon: Sigma,
  },
  {
    href: paths.howTos,
    name: "How to",
    says: "Weigh, read the cup, test bars, back up: with drawings",
    Icon: CircleQuestionMark,
  },
  { href: paths.archive, name: "Archive", says: "Finished and scrapped pieces", Icon: Archive },
  { href: paths.settings, name: "Settings", says: "Units, look, backup, demo shop", Icon: Settings },
] as const;

export function ShopPage() {
  return (
    <Page title="Shop">
      <PlaceList places={places} />
    </Page>
  );
}
