import { lazy, Suspense, type ComponentType } from "react";
import { Link, Route, Switch } from "wouter";
import { DipPage } from "../dip/DipPage.tsx";
import { Empty } from "../parts/Empty.tsx";
import { Page } from "../parts/Page.tsx";
import { PiecePage } from "../piece/PiecePage.tsx";
import { RackPage } from "../rack/RackPage.tsx";
import { ScreenGuard } from "./ScreenGuard.tsx";
import { paths } from "./paths.ts";

type Screen = ComponentType<Record<string, never>>;
/** A screen in its own chunk; the service worker keeps all of them, so none is ever fetched at the bucket. */
const later = <K extends string>(load: () => Promise<Record<K, Screen>>, name: K) =>
  lazy(async () => ({ default: (await load())[name] }));

const RoomsPage = later(() => import("../rooms/RoomsPage.tsx"), "RoomsPage");
const RoomPage = later(() => import("../rooms/RoomPage.tsx"), "RoomPage");
const DuePage = later(() => import("../due/DuePage.tsx"), "DuePage");
const RingTestPage = later(() => import("../due/RingTestPage.tsx"), "RingTestPage");
const StartPage = later(() => import("../start/StartPage.tsx"), "StartPage");
const PlanPage = later(() => import("../start/PlanPage.tsx"), "PlanPage");
const LogPage = later(() => import("../log/LogPage.tsx"), "LogPage");
const RecipesPage = later(() => import("../recipes/RecipesPage.tsx"), "RecipesPage");
const RecipePage = later(() => import("../recipes/RecipePage.tsx"), "RecipePage");
const BucketsPage = later(() => import("../buckets/BucketsPage.tsx"), "BucketsPage");
const BucketPage = later(() => import("../buckets/BucketPage.tsx"), "BucketPage");
const ReviewPage = later(() => import("../review/ReviewPage.tsx"), "ReviewPage");
const SettingsPage = later(() => import("../settings/SettingsPage.tsx"), "SettingsPage");
const FiguresPage = later(() => import("../settings/FiguresPage.tsx"), "FiguresPage");
const ArchivePage = later(() => import("../rack/ArchivePage.tsx"), "ArchivePage");
const ShopPage = later(() => import("../shop/ShopPage.tsx"), "ShopPage");

const screens: readonly (readonly [path: string, screen: ComponentType])[] = [
  [paths.rack, RackPage],
  [paths.dip, DipPage],
  [paths.newPiece, StartPage],
  ["/piece/:id/plan", PlanPage],
  ["/piece/:id/log/:type", LogPage],
  ["/piece/:id/review", ReviewPage],
  ["/piece/:id", PiecePage],
  [paths.rooms, RoomsPage],
  ["/rooms/:id", RoomPage],
  [paths.buckets, BucketsPage],
  ["/buckets/:id", BucketPage],
  [paths.recipes, RecipesPage],
  ["/recipes/:id", RecipePage],
  [paths.due, DuePage],
  [paths.ring, RingTestPage],
  [paths.shop, ShopPage],
  [paths.settings, SettingsPage],
  [paths.figures, FiguresPage],
  [paths.archive, ArchivePage],
];

export function Routes() {
  return (
    <Suspense fallback={null}>
      <Switch>
        {screens.map(([path, Screen]) => (
          <Route key={path} path={path}>
            {() => (
              <ScreenGuard>
                <Screen />
              </ScreenGuard>
            )}
          </Route>
        ))}
        <Route>
          <Page title="Nothing here" back={paths.rack}>
            <Empty title="There is no such screen">
              <p>
                The address may be old. <Link href={paths.rack}>Back to the rack</Link>.
              </p>
            </Empty>
          </Page>
        </Route>
      </Switch>
    </Suspense>
  );
}
