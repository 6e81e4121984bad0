import { Router } from "wouter";
import { Toasts } from "../parts/Toasts.tsx";
import { Frame } from "./Frame.tsx";
import { Routes } from "./Routes.tsx";
import { ShopProvider, type ShopDoor } from "./shop.tsx";
import { UpdateBar } from "./UpdateBar.tsx";
import { useTheme } from "./useTheme.ts";

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
  return (
    <>
      <Frame>
        <UpdateBar />
        <Routes />
      </Frame>
      <Toasts />
    </>
  );
}
