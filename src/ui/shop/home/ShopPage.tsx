import {
  Archive,
  Box,
  BellRing,
  BookOpen,
  CircleQuestionMark,
  FlaskConical,
  GraduationCap,
  Package,
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
  { href: paths.buckets, name: "Buckets", says: "Slurries and their readings", Icon: FlaskConical },
  {
    href: paths.cups,
    name: "Cups",
    says: "Each cup on the wall, checked against the shop’s own",
    Icon: Timer,
  },
  {
    href: paths.stock,
    name: "Stock",
    says: "What is left, when to order, what a shell costs",
    Icon: Package,
  },
  {
    href: paths.due,
    name: "What is due",
    says: "Ready times, and what on this device can ring",
    Icon: BellRing,
  },
  {
    href: paths.learned,
    name: "What was learned",
    says: "Drying factor, coat water and build, from your own coats",
    Icon: GraduationCap,
  },
  {
    href: paths.patterns,
    name: "Patterns",
    says: "Mesh files: metal, wall, vents and drains",
    Icon: Box,
  },
  { href: paths.archive, name: "Archive", says: "Pieces that are through", Icon: Archive },
  {
    href: paths.figures,
    name: "Own figures",
    says: "Drying factor and strength, learned or set",
    Icon: Sigma,
  },
  {
    href: paths.howTos,
    name: "How to",
    says: "Weigh, read the cup, test bars, back up: with drawings",
    Icon: CircleQuestionMark,
  },
  { href: paths.settings, name: "Settings", says: "Units, look, backup, demo shop", Icon: Settings },
] as const;

export function ShopPage() {
  return (
    <Page title="Shop">
      <PlaceList places={places} />
    </Page>
  );
}
