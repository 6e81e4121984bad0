import { test } from "vitest";
import { quietWeeks, lookThrough, looksAt, told } from "../../tests/weeks.ts";
test("x", { timeout: 60000 }, () => {
  for (const week of quietWeeks) {
    const t = performance.now();
    const looks = lookThrough(week);
    console.log(week.name, looks.length, "watch", looksAt(looks, "watch").length, "hold", looksAt(looks, "hold").length, "note", looksAt(looks, "note").length, Math.round(performance.now() - t));
    const c: Record<string, number> = {};
    for (const l of told(looks)) { const k = l.replace(/.*: /, ""); c[k] = (c[k] ?? 0) + 1; }
    console.log(c);
  }
});
