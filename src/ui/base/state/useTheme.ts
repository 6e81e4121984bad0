import { useLayoutEffect } from "react";
import { useSettings } from "./live.ts";

/** The chosen theme on the document; "system" leaves it to the device. */
export function useTheme(): void {
  const [{ theme }] = useSettings();
  useLayoutEffect(() => {
    if (theme === "system") delete document.documentElement.dataset["theme"];
    else document.documentElement.dataset["theme"] = theme;
    const ground = getComputedStyle(document.body).backgroundColor;
    for (const meta of document.querySelectorAll("meta[name=theme-color]"))
      meta.setAttribute("content", ground);
  }, [theme]);
}
