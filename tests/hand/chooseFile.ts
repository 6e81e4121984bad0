import type { Page } from "@playwright/test";

/** Chooses a backup on the settings page that is open, by its path: the driver's own way would carry all of it over. */
export async function chooseFile(page: Page, path: string): Promise<void> {
  const session = await page.context().newCDPSession(page);
  const { result } = await session.send("Runtime.evaluate", {
    expression: `document.querySelector('input[type=file][accept*=".zip"]')`,
  });
  if (result.objectId === undefined) throw new Error("the settings page has no field for a backup");
  await session.send("DOM.setFileInputFiles", { files: [path], objectId: result.objectId });
  await session.detach();
}

/** Waits until the page says something, asked once a second: a closer watch would be work of its own for the page. */
export async function untilSaid(page: Page, wanted: RegExp): Promise<string> {
  for (;;) {
    const text = await page.evaluate(() =>
      Array.from(document.querySelectorAll("[role=status], [role=alert]"), (one) => one.textContent).join(
        "\n",
      ),
    );
    if (wanted.test(text)) return text;
    await new Promise((done) => setTimeout(done, 1000));
  }
}
