import { lazy, Suspense, type ComponentType } from "react";
import { Link, Route, Switch } from "wouter";
import { DipPage } from "../making/dip/DipPage.tsx";
import { Empty } from "../base/parts/Empty.tsx";
import { Page } from "../base/parts/Page.tsx";
import { PieceBesideRack } from "../making/piece/PieceBesideRack.tsx";
import { RackPage } from "../making/rack/RackPage.tsx";
import { ScreenGuard } from "./ScreenGuard.tsx";
import { paths } from "../base/state/paths.ts";

type Screen = ComponentType<Record<string, never>>;
/** A screen in its own chunk; the service worker keeps all of them, so none is ever fetched at the bucket. */
const later = <K extends string>(load: () => Promise<Record<K, Screen>>, name: K) =>
  lazy(async () => ({ default: (await load())[name] }));

const RoomsPage = later(() => import("../air/rooms/RoomsPage.tsx"), "RoomsPage");
const RoomPage = later(() => import("../air/rooms/RoomPage.tsx"), "RoomPage");
const DayPage = later(() => import("../air/rooms/day/DayPage.tsx"), "DayPage");
const ImportPage = later(() => import("../air/rooms/csv/ImportPage.tsx"), "ImportPage");
const SensorPage = later(() => import("../air/rooms/SensorPage.tsx"), "SensorPage");
const TimelinePage = later(() => import("../making/timeline/TimelinePage.tsx"), "TimelinePage");
const AdvicePage = later(() => import("../air/advice/AdvicePage.tsx"), "AdvicePage");
const FinalDryPage = later(() => import("../making/finalDry/FinalDryPage.tsx"), "FinalDryPage");
const NextPourPage = later(() => import("../making/nextPour/NextPourPage.tsx"), "NextPourPage");
const BoardPage = later(() => import("./board/BoardPage.tsx"), "BoardPage");
const DuePage = later(() => import("../making/due/DuePage.tsx"), "DuePage");
const RingTestPage = later(() => import("../making/due/RingTestPage.tsx"), "RingTestPage");
const StartPage = later(() => import("../making/start/StartPage.tsx"), "StartPage");
const PlanPage = later(() => import("../making/start/PlanPage.tsx"), "PlanPage");
const LogPage = later(() => import("../making/log/LogPage.tsx"), "LogPage");
const WeighPage = later(() => import("../making/weigh/WeighPage.tsx"), "WeighPage");
const CoatPage = later(() => import("../making/coat/CoatPage.tsx"), "CoatPage");
const LearnedPage = later(() => import("../shop/learned/LearnedPage.tsx"), "LearnedPage");
const RecipesPage = later(() => import("../shop/recipes/RecipesPage.tsx"), "RecipesPage");
const RecipePage = later(() => import("../shop/recipes/RecipePage.tsx"), "RecipePage");
const BucketsPage = later(() => import("../bucket/buckets/BucketsPage.tsx"), "BucketsPage");
const BucketPage = later(() => import("../bucket/buckets/BucketPage.tsx"), "BucketPage");
const BucketChartPage = later(() => import("../bucket/bucketChart/BucketChartPage.tsx"), "BucketChartPage");
const BucketAimsPage = later(() => import("../bucket/buckets/BucketAimsPage.tsx"), "BucketAimsPage");
const MakeUpPage = later(() => import("../bucket/makeUp/MakeUpPage.tsx"), "MakeUpPage");
const BucketCardPage = later(() => import("../bucket/bucketCard/BucketCardPage.tsx"), "BucketCardPage");
const StockPage = later(() => import("../shop/stock/StockPage.tsx"), "StockPage");
const MaterialsPage = later(() => import("../shop/stock/MaterialsPage.tsx"), "MaterialsPage");
const ReadPage = later(() => import("../bucket/reading/ReadPage.tsx"), "ReadPage");
const BucketLimitsPage = later(() => import("../bucket/limits/BucketLimitsPage.tsx"), "BucketLimitsPage");
const CupsPage = later(() => import("../bucket/cups/CupsPage.tsx"), "CupsPage");
const ReviewPage = later(() => import("../making/review/ReviewPage.tsx"), "ReviewPage");
const SettingsPage = later(() => import("../shop/settings/SettingsPage.tsx"), "SettingsPage");
const FiguresPage = later(() => import("../shop/settings/FiguresPage.tsx"), "FiguresPage");
const ArchivePage = later(() => import("../making/rack/ArchivePage.tsx"), "ArchivePage");
const RunPlanPage = later(() => import("../fire/run/RunPlanPage.tsx"), "RunPlanPage");
const RunPage = later(() => import("../fire/run/RunPage.tsx"), "RunPage");
const PatternsPage = later(() => import("../pattern/mesh/PatternsPage.tsx"), "PatternsPage");
const PatternPage = later(() => import("../pattern/mesh/PatternPage.tsx"), "PatternPage");
const FirePage = later(() => import("../fire/furnaces/FirePage.tsx"), "FirePage");
const KilnsPage = later(() => import("../fire/furnaces/KilnsPage.tsx"), "KilnsPage");
const AlloysPage = later(() => import("../fire/metal/AlloysPage.tsx"), "AlloysPage");
const AlloyPage = later(() => import("../fire/metal/AlloyPage.tsx"), "AlloyPage");
const MeltPlanPage = later(() => import("../fire/metal/MeltPlanPage.tsx"), "MeltPlanPage");
const MeltPage = later(() => import("../fire/metal/MeltPage.tsx"), "MeltPage");
const PieceMetalPage = later(() => import("../fire/metal/PieceMetalPage.tsx"), "PieceMetalPage");
const GatingPage = later(() => import("../fire/metal/GatingPage.tsx"), "GatingPage");
const PourPlanPage = later(() => import("../fire/pour/PourPlanPage.tsx"), "PourPlanPage");
const PourPage = later(() => import("../fire/pour/PourPage.tsx"), "PourPage");
const PourSheetPage = later(() => import("../fire/pour/PourPage.tsx"), "PourSheetPage");
const HowTosPage = later(() => import("../shop/howTo/HowTosPage.tsx"), "HowTosPage");
const HowToPage = later(() => import("../shop/howTo/HowToPage.tsx"), "HowToPage");
const ShopPage = later(() => import("../shop/home/ShopPage.tsx"), "ShopPage");

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
  ["/piece/:id", PieceBesideRack],
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
  [paths.bucketLimits, BucketLimitsPage],
  [paths.cups, CupsPage],
  [paths.stock, StockPage],
  [paths.materials, MaterialsPage],
  [paths.recipes, RecipesPage],
  ["/recipes/:id", RecipePage],
  [paths.timeline, TimelinePage],
  [paths.board, BoardPage],
  [paths.due, DuePage],
  [paths.nextPour, NextPourPage],
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
  [paths.howTos, HowTosPage],
  ["/how-to/:id", HowToPage],
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
