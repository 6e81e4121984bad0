import { expect, test } from "vitest";
import type { CrackState } from "../../../logbook/piece/crackStates.ts";
import { crackLine, crackStateWords, cracksWords } from "./crackStateWords.ts";

const crack = {
  id: "c",
  at: 0,
  kind: "hairline",
  stage: "coating",
  where: "left ear",
  photos: [],
  afterBurnout: false,
  patched: null,
  runId: null,
} as const;
const of = (state: CrackState["state"], more: Partial<CrackState> = {}): CrackState => ({
  crack,
  state,
  by: null,
  isTrimmedOff: false,
  ...more,
});

test("patched and dry are two states, also in a count", () => {
  expect(cracksWords([of("open")])).toBe("1 crack, open");
  expect(cracksWords([of("patch-wet")])).toBe("1 crack, repaired, not yet dry");
  expect(cracksWords([of("patch-dry", { by: "looked" })])).toBe("1 crack, repaired, dry");
  expect(cracksWords([of("patch-dry"), of("open"), of("patch-wet"), of("open")])).toBe(
    "4 cracks: 2 open; 1 repaired, not yet dry; 1 repaired, dry",
  );
  // Together as each alone: nobody found the patch dry where only a coat covered it.
  expect(cracksWords([of("patch-dry", { by: "coat" })])).toBe("1 crack, repaired, a coat over it");
  expect(cracksWords([of("patch-dry", { by: "coat" }), of("patch-dry", { by: "looked" })])).toBe(
    "2 cracks: 1 repaired, a coat over it; 1 repaired, dry",
  );
  expect(cracksWords([])).toBe("no crack");
});

test("one crack by its kind and place, with what answers for its patch", () => {
  expect(crackLine(of("patch-wet"))).toBe("Hairline crack, left ear: repaired, not yet dry");
  expect(crackStateWords(of("patch-dry", { by: "coat" }))).toBe("repaired, a coat over it");
  expect(crackStateWords(of("patch-dry", { by: "fire" }))).toBe("repaired, dried by fire");
  expect(crackLine(of("open", { isTrimmedOff: true }))).toBe(
    "Hairline crack, left ear: open, in a part that is trimmed off",
  );
});
