import { spawn } from "node:child_process";
import { readFile, rm } from "node:fs/promises";
import { join } from "node:path";
import { chromium, type Browser, type Page } from "@playwright/test";
import { chromiumArgs, chromiumPath } from "../chromium.ts";

export type OwnBrowser = {
  readonly page: Page;
  /** Of the browser's first process; all its others descend from it. */
  readonly processId: number;
  /** Ends the browser as a phone out of memory or power would: at once, with no chance to tidy up. */
  readonly kill: () => Promise<void>;
};

/** Starts a browser on a profile of its own that outlives it, so that it can be killed and started again. */
export async function startBrowser(profile: string): Promise<OwnBrowser> {
  const portFile = join(profile, "DevToolsActivePort");
  await rm(portFile, { force: true });
  const child = spawn(
    chromiumPath(),
    [
      ...chromiumArgs,
      "--headless",
      // As the journeys of the shared browser: a shop of the United States would start in its own units.
      "--accept-lang=en-GB",
      "--remote-debugging-port=0",
      `--user-data-dir=${profile}`,
      "about:blank",
    ],
    { stdio: "ignore" },
  );
  const gone = new Promise<void>((done) => child.once("exit", () => done()));
  const browser = await connect(portFile);
  const session = await browser.newBrowserCDPSession();
  const { processInfo } = await session.send("SystemInfo.getProcessInfo");
  const own = processInfo.find(({ type }) => type === "browser");
  if (own === undefined) throw new Error("the browser did not tell its process id");
  const context = browser.contexts()[0] ?? (await browser.newContext());
  const page = context.pages()[0] ?? (await context.newPage());
  await page.setViewportSize({ width: 390, height: 844 });
  page.setDefaultTimeout(60_000);
  return {
    page,
    processId: own.id,
    kill: async () => {
      process.kill(own.id, "SIGKILL");
      await gone;
      await browser.close().catch(() => undefined);
    },
  };
}

async function connect(portFile: string): Promise<Browser> {
  for (let tries = 0; tries < 150; tries += 1) {
    const port = (await readFile(portFile, "utf8").catch(() => "")).split("\n")[0];
    if (port !== undefined && port !== "")
      return chromium.connectOverCDP(`http://127.0.0.1:${port}`, { timeout: 60_000 });
    await new Promise((done) => setTimeout(done, 100));
  }
  throw new Error(`no browser wrote ${portFile} within 15 s`);
}
