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
const DayPage = later(() => import("../rooms/day/DayPage.tsx"), "DayPage");
const ImportPage = later(() => import("../rooms/csv/ImportPage.tsx"), "ImportPage");
const SensorPage = later(() => import("../rooms/SensorPage.tsx"), "SensorPage");
const TimelinePage = later(() => import("../timeline/TimelinePage.tsx"), "TimelinePage");
const AdvicePage = later(() => import("../advice/AdvicePage.tsx"), "AdvicePage");
const FinalDryPage = later(() => import("../finalDry/FinalDryPage.tsx"), "FinalDryPage");
const DuePage = later(() => import("../due/DuePage.tsx"), "DuePage");
const RingTestPage = later(() => import("../due/RingTestPage.tsx"), "RingTestPage");
const StartPage = later(() => import("../start/StartPage.tsx"), "StartPage");
const PlanPage = later(() => import("../start/PlanPage.tsx"), "PlanPage");
const LogPage = later(() => import("../log/LogPage.tsx"), "LogPage");
const WeighPage = later(() => import("../weigh/WeighPage.tsx"), "WeighPage");
const CoatPage = later(() => import("../coat/CoatPage.tsx"), "CoatPage");
const LearnedPage = later(() => import("../learned/LearnedPage.tsx"), "LearnedPage");
const RecipesPage = later(() => import("../recipes/RecipesPage.tsx"), "RecipesPage");
const RecipePage = later(() => import("../recipes/RecipePage.tsx"), "RecipePage");
const BucketsPage = later(() => import("../buckets/BucketsPage.tsx"), "BucketsPage");
const BucketPage = later(() => import("../buckets/BucketPage.tsx"), "BucketPage");
const BucketChartPage = later(() => import("../bucketChart/BucketChartPage.tsx"), "BucketChartPage");
const BucketAimsPage = later(() => import("../buckets/BucketAimsPage.tsx"), "BucketAimsPage");
const MakeUpPage = later(() => import("../makeUp/MakeUpPage.tsx"), "MakeUpPage");
const BucketCardPage = later(() => import("../bucketCard/BucketCardPage.tsx"), "BucketCardPage");
const StockPage = later(() => import("../stock/StockPage.tsx"), "StockPage");
const MaterialsPage = later(() => import("../stock/MaterialsPage.tsx"), "MaterialsPage");
const ReadPage = later(() => import("../reading/ReadPage.tsx"), "ReadPage");
const CupsPage = later(() => import("../cups/CupsPage.tsx"), "CupsPage");
const ReviewPage = later(() => import("../review/ReviewPage.tsx"), "ReviewPage");
const SettingsPage = later(() => import("../settings/SettingsPage.tsx"), "SettingsPage");
const FiguresPage = later(() => import("../settings/FiguresPage.tsx"), "FiguresPage");
const ArchivePage = later(() => import("../rack/ArchivePage.tsx"), "ArchivePage");
const RunPlanPage = later(() => import("../run/RunPlanPage.tsx"), "RunPlanPage");
const RunPage = later(() => import("../run/RunPage.tsx"), "RunPage");
const PatternsPage = later(() => import("../pattern/PatternsPage.tsx"), "PatternsPage");
const PatternPage = later(() => import("../pattern/PatternPage.tsx"), "PatternPage");
const FirePage = later(() => import("../fire/FirePage.tsx"), "FirePage");
const KilnsPage = later(() => import("../fire/KilnsPage.tsx"), "KilnsPage");
const AlloysPage = later(() => import("../metal/AlloysPage.tsx"), "AlloysPage");
const AlloyPage = later(() => import("../metal/AlloyPage.tsx"), "AlloyPage");
const MeltPlanPage = later(() => import("../metal/MeltPlanPage.tsx"), "MeltPlanPage");
const MeltPage = later(() => import("../metal/MeltPage.tsx"), "MeltPage");
const PieceMetalPage = later(() => import("../metal/PieceMetalPage.tsx"), "PieceMetalPage");
const GatingPage = later(() => import("../metal/GatingPage.tsx"), "GatingPage");
const PourPlanPage = later(() => import("../pour/PourPlanPage.tsx"), "PourPlanPage");
const PourPage = later(() => import("../pour/PourPage.tsx"), "PourPage");
const PourSheetPage = later(() => import("../pour/PourPage.tsx"), "PourSheetPage");
const ShopPage = later(() => import("../shop/ShopPage.tsx"), "ShopPage");

const screens: readonly (readonly [path: string, screen: ComponentType])[] = [
  [paths.rack, RackPage],
  [paths.dip, DipPage],
  [paths.newPiece, StartPage],
  ["/piece/:id/plan", PlanPage],
  ["/piece/:id/log/:type", LogPage],
  ["/piece/:id/weigh", WeighPage],
  ["/piece/:id/coat/:coatId", CoatPage],
  [paths.learned, LearnedPage],
  ["/piece/:id/review", ReviewPage],
  ["/piece/:id/advice", AdvicePage],
  ["/piece/:id/final-dry", FinalDryPage],
  ["/piece/:id", PiecePage],
  [paths.patterns, PatternsPage],
  ["/patterns/:id", PatternPage],
  [paths.rooms, RoomsPage],
  ["/rooms/:id/day", DayPage],
  ["/rooms/:id/import", ImportPage],
  ["/rooms/:id/sensor", SensorPage],
  ["/rooms/:id", RoomPage],
  [paths.buckets, BucketsPage],
  ["/buckets/:id/read", ReadPage],
  ["/buckets/:id/aims", BucketAimsPage],
  ["/buckets/:id/chart", BucketChartPage],
  ["/buckets/:id/make-up", MakeUpPage],
  ["/buckets/:id/card", BucketCardPage],
  ["/buckets/:id", BucketPage],
  [paths.cups, CupsPage],
  [paths.stock, StockPage],
  [paths.materials, MaterialsPage],
  [paths.recipes, RecipesPage],
  ["/recipes/:id", RecipePage],
  [paths.timeline, TimelinePage],
  [paths.due, DuePage],
  [paths.ring, RingTestPage],
  [paths.newRun, RunPlanPage],
  ["/fire/run/:id", RunPage],
  [paths.fire, FirePage],
  [paths.kilns, KilnsPage],
  [paths.alloys, AlloysPage],
  ["/fire/alloys/:id", AlloyPage],
  [paths.newMelt, MeltPlanPage],
  ["/fire/melt/:id", MeltPage],
  [paths.newPour, PourPlanPage],
  ["/fire/pour/:id/sheet", PourSheetPage],
  ["/fire/pour/:id", PourPage],
  ["/piece/:id/metal", PieceMetalPage],
  ["/piece/:id/gating", GatingPage],
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
