import { Droplets, Flame, Layers, Store, Thermometer } from "lucide-react";
import type { ReactNode } from "react";
import { Link, useLocation } from "wouter";
import { useFleeting } from "../base/state/fleeting.ts";
import styles from "./Frame.module.css";
import { paths } from "../base/state/paths.ts";

const places = [
  { path: paths.rack, name: "Rack", Icon: Layers, holds: ["/piece", "/due", "/timeline"] },
  { path: paths.dip, name: "Dip", Icon: Droplets, holds: [] },
  { path: paths.rooms, name: "Rooms", Icon: Thermometer, holds: [] },
  { path: paths.fire, name: "Fire", Icon: Flame, holds: [] },
  {
    path: paths.shop,
    name: "Shop",
    Icon: Store,
    holds: ["/recipes", "/buckets", "/patterns", "/settings", "/figures", "/archive"],
  },
] as const;

export function Frame({ children }: { readonly children: ReactNode }) {
  const [location] = useLocation();
  const bare = useFleeting((fleeting) => fleeting.bare);
  const isIn = (path: string): boolean => location === path || location.startsWith(`${path}/`);
  return (
    <div className={styles["frame"]} data-bare={bare || undefined}>
      <main>{children}</main>
      <nav className={styles["nav"]} aria-label="Main">
        {places.map(({ path, name, Icon, holds }) => {
          const here = path === "/" ? location === "/" || holds.some(isIn) : [path, ...holds].some(isIn);
          return (
            <Link key={path} href={path} className={styles["place"]} aria-current={here ? "page" : undefined}>
              <Icon aria-hidden="true" size={24} />
              {name}
            </Link>
          );
        })}
      </nav>
    </div>
  );
}
