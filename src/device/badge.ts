export type BadgeResult = "set" | "missing" | "failed";

/** Puts a count on the app's icon, nothing for 0. It makes no sound, and many home screens have no place for it. */
export async function setBadge(count: number): Promise<BadgeResult> {
  if (!("setAppBadge" in navigator)) return "missing";
  try {
    await (count > 0 ? navigator.setAppBadge(count) : navigator.clearAppBadge());
    return "set";
  } catch {
    return "failed";
  }
}
