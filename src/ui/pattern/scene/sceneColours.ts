import { Color } from "three";

const tokens = [
  "ground",
  "surface",
  "raised",
  "line",
  "line-strong",
  "ink",
  "ink-soft",
  "ember",
  "on-ember",
  "ember-fill",
  "hold",
  "watch",
  "note",
  "clear",
  "water",
  "pattern",
  "band-prime",
  "band-backup",
] as const;
export type ColourName = (typeof tokens)[number];
export type SceneColours = Readonly<Record<ColourName, Color>>;

/** The tokens as the theme in use resolves them where `host` stands. */
export function sceneColours(host: HTMLElement): SceneColours {
  const probe = document.createElement("span");
  probe.style.display = "none";
  host.append(probe);
  const read = (name: ColourName): Color => {
    probe.style.color = `var(--${name})`;
    return new Color(getComputedStyle(probe).color);
  };
  const colours = Object.fromEntries(tokens.map((name) => [name, read(name)])) as Record<ColourName, Color>;
  probe.remove();
  return colours;
}

/** Calls back when the theme changes, by hand or with the device. */
export function onThemeChange(changed: () => void): () => void {
  const watcher = new MutationObserver(changed);
  watcher.observe(document.documentElement, { attributes: true, attributeFilter: ["data-theme"] });
  const dark = matchMedia("(prefers-color-scheme: dark)");
  dark.addEventListener("change", changed);
  return () => {
    watcher.disconnect();
    dark.removeEventListener("change", changed);
  };
}
