import { lazy, Suspense } from "react";
import { Router, useLocation } from "wouter";
import { Toasts } from "../base/parts/Toasts.tsx";
import { Frame } from "./Frame.tsx";
import { Routes } from "./Routes.tsx";
import { ShopProvider, type ShopDoor } from "../base/state/shop.tsx";
import { MovedBar } from "../shop/backup/MovedBar.tsx";
import { paths } from "../base/state/paths.ts";
import { UpdateBar } from "./UpdateBar.tsx";
import { useTheme } from "../base/state/useTheme.ts";
import { WatcherGuard } from "../base/parts/WatcherGuard.tsx";

// The rack is painted first; what watches the due times may come a moment later.
const Alarms = lazy(() => import("./Alarms.tsx").then((module) => ({ default: module.Alarms })));
const LogNote = lazy(() =>
  import("../shop/backup/LogNote.tsx").then((module) => ({ default: module.LogNote })),
);
const Learner = lazy(() =>
  import("../shop/learned/Learner.tsx").then((module) => ({ default: module.Learner })),
);

export function App({ shop, base }: { readonly shop: ShopDoor; readonly base: string }) {
  return (
    <ShopProvider shop={shop}>
      <Router base={base}>
        <InShop />
      </Router>
    </ShopProvider>
  );
}

function InShop() {
  useTheme();
  const [location] = useLocation();
  return (
    <>
      {location === paths.board ? (
        <main>
          <Routes />
        </main>
      ) : (
        <Frame>
          <UpdateBar />
          <MovedBar />
          <Routes />
        </Frame>
      )}
      <Toasts />
      <Suspense fallback={null}>
        <Alarms />
        <WatcherGuard watches="The note of this log">
          <LogNote />
        </WatcherGuard>
        <WatcherGuard watches="Learning from the log">
          <Learner />
        </WatcherGuard>
      </Suspense>
    </>
  );
}
