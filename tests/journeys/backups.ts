import { expect, type Locator, type Page } from "@playwright/test";

/** A phone's browser has no dialog for choosing where a file goes: it is handed over. Call before the first visit. */
export const likeAPhone = (page: Page): Promise<unknown> =>
  page.addInitScript(() => {
    Reflect.deleteProperty(window, "showSaveFilePicker");
  });

/** From the settings page that is open: saves everything, waits until it is checked, and gives the file's path. */
export async function saveBackup(page: Page): Promise<string> {
  const saving = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save a backup" }).click();
  const path = await (await saving).path();
  await expect(page.getByText(/^Made and checked: /)).toBeVisible();
  return path;
}

/** On the settings page that is open: looks a file through and adds what is new. */
export async function restoreBackup(
  page: Page,
  file: Parameters<Locator["setInputFiles"]>[0],
): Promise<void> {
  await page.getByLabel("Choose a backup file").setInputFiles(file);
  await expect(page.getByText("This backup is sound.")).toBeVisible();
  await page.getByRole("button", { name: /^Add [\d,]+ entr/ }).click();
  await expect(page.getByText(/added, .* here already/)).toBeVisible();
}
