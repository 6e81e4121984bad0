import { Box, Droplets, FlaskConical, Flame, Layers, Store, Thermometer } from "lucide-react";
import type { ReactNode } from "react";
import { Link, useLocation } from "wouter";
import { useFleeting } from "../base/state/fleeting.ts";
import styles from "./Frame.module.css";
import { paths } from "../base/state/paths.ts";

const places = [
  { path: paths.rack, name: "Rack", Icon: Layers, holds: ["/piece", paths.due, "/timeline", paths.nextPour] },
  { path: paths.dip, name: "Dip", Icon: Droplets, holds: [] },
  {
    path: paths.buckets,
    name: "Buckets",
    Icon: FlaskConical,
    holds: [paths.bucketLimits, paths.cups],
  },
  { path: paths.rooms, name: "Rooms", Icon: Thermometer, holds: [] },
  { path: paths.patterns, name: "Patterns", Icon: Box, holds: [] },
  { path: paths.fire, name: "Fire", Icon: Flame, holds: [] },
  {
    path: paths.shop,
    name: "Shop",
    Icon: Store,
    holds: [paths.recipes, paths.settings, paths.figures, paths.archive, paths.howTos],
  },
] as const satisfies readonly Place[];

type Place = {
  readonly path: string;
  readonly name: string;
  readonly Icon: typeof Box;
  /** Further addresses of its screens. */
  readonly holds: readonly string[];
};

/** The place an address belongs to: the one that names most of it. */
function placeOf(location: string): string | null {
  const isIn = (path: string): boolean =>
    location === path || (path !== "/" && location.startsWith(`${path}/`));
  const named = places.flatMap(({ path, holds }) =>
    [path, ...holds].filter(isIn).map((match) => ({ path, length: match.length })),
  );
  return named.toSorted((a, b) => b.length - a.length)[0]?.path ?? null;
}

export function Frame({ children }: { readonly children: ReactNode }) {
  const [location] = useLocation();
  const bare = useFleeting((fleeting) => fleeting.bare);
  const here = placeOf(location);
  return (
    <div className={styles["frame"]} data-bare={bare || undefined}>
      <main>{children}</main>
      <nav className={styles["nav"]} aria-label="Main">
        {places.map(({ path, name, Icon }) => (
          <Link
            key={path}
            href={path}
            className={styles["place"]}
            aria-current={path === here ? "page" : undefined}
          >
            <Icon aria-hidden="true" size={24} />
            {name}
          </Link>
        ))}
      </nav>
    </div>
  );
}
