import type { Pour } from "../../logbook/fireStates.ts";
import { coldShell, shellHeatOf } from "../../logbook/shellHeat.ts";
import type { RackItem } from "../app/live.ts";
import type { PourParts } from "./pourParts.ts";

/** What a sheet's line stands at: blocked by what is known, not known, or in order. */
export type LineState = "ok" | "blocked" | "open";

export type SheetLine = {
  readonly id: string;
  readonly kind: "reckoned" | "hand";
  readonly state: LineState;
  /** Codes of what was found, each with the shell it is about; the page has the words. */
  readonly why: readonly { readonly shell: string | null; readonly code: WhyCode }[];
  readonly note: string | null;
};

export type WhyCode =
  | "no-shells"
  | "shells-not-here"
  | "no-review"
  | "review-hold"
  | "coats-since-review"
  | "open-crack"
  | "fire-broke-limit"
  | "pattern-inside"
  | "wax-film"
  | "residue"
  | "rinsed"
  | "cold"
  | "not-fired"
  | "fired-too-little"
  | "wall-fails"
  | "wall-marginal"
  | "wall-not-judged"
  | "not-preheated"
  | "preheat-too-cold"
  | "preheat-cold-if-thin"
  | "no-vent-noted"
  | "metal-not-known"
  | "metal-short"
  | "crucible-not-known"
  | "crucible-too-full"
  | "metal-too-cold-planned"
  | "no-alloy";

/** What only hands and eyes can tell; `sand-dry` only where there is sand. */
const handItems = [
  "vents-open",
  "sand-dry",
  "face-shield",
  "leathers-gloves-boots",
  "ingot-mould-hot-dry",
  "tools-hot-dry",
  "path-clear",
  "second-person",
  "sand-and-extinguisher",
  "no-water",
  "ventilation",
] as const;

type Why = SheetLine["why"][number];

/** A code that stops a pour; the others only leave it open. */
const open: readonly WhyCode[] = [
  "wall-not-judged",
  "no-vent-noted",
  "metal-not-known",
  "crucible-not-known",
  "not-preheated",
  "preheat-cold-if-thin",
  "no-alloy",
  "wall-marginal",
];

/** Every line of the sheet: what the log and the sums say, then what is ticked by hand. */
export function sheetLines(pour: Pick<Pour, "plan" | "checks">, parts: PourParts): readonly SheetLine[] {
  const each = (of: (item: RackItem) => readonly WhyCode[]): readonly Why[] => [
    ...hereWhy(pour.plan.pieceIds, parts),
    ...parts.items.flatMap((item) =>
      of(item).map((code) => ({ shell: item.standing.piece.plan.name, code })),
    ),
  ];
  const { wantedKg, metalKg, fill, alloy } = parts;
  const whole = (...codes: readonly WhyCode[]): readonly Why[] =>
    codes.map((code) => ({ shell: null, code }));
  const reckoned: readonly (readonly [string, readonly Why[]])[] = [
    ["review-clear", each(reviewWhy)],
    ["shell-sound", each(soundWhy)],
    ["shell-empty", each(({ standing }) => standing.metalBars.map(({ code }) => code))],
    ["shell-fired", each(firedWhy)],
    ["wall-carries", each(wallWhy)],
    ["shell-hot", each((item) => hotWhy(item, parts))],
    [
      "vents-noted",
      each(({ standing }) => ((standing.piece.patterns.at(-1)?.vents ?? 0) > 0 ? [] : ["no-vent-noted"])),
    ],
    [
      "metal-enough",
      whole(
        ...(wantedKg === null || metalKg === null
          ? ["metal-not-known" as const]
          : metalKg < wantedKg
            ? ["metal-short" as const]
            : []),
      ),
    ],
    [
      "crucible-fill",
      whole(
        ...(fill === null
          ? ["crucible-not-known" as const]
          : fill.fits
            ? []
            : ["crucible-too-full" as const]),
      ),
    ],
    [
      "metal-heat",
      whole(
        ...(alloy === null
          ? ["no-alloy" as const]
          : pour.plan.metalC < alloy.liquidusC.value
            ? ["metal-too-cold-planned" as const]
            : []),
      ),
    ],
  ];
  const checkOf = (id: string) => pour.checks.find(({ item }) => item === id) ?? null;
  return [
    ...reckoned.map(([id, why]): SheetLine => {
      const check = checkOf(id);
      const isBlocked = why.some(({ code }) => !open.includes(code));
      return {
        id,
        kind: "reckoned",
        // What isn't known may be looked at by hand; what is known to be wrong may not be ticked away.
        state:
          isBlocked || check?.ok === false
            ? "blocked"
            : why.length === 0 || check?.ok === true
              ? "ok"
              : "open",
        why,
        note: check?.note ?? null,
      };
    }),
    ...handItems
      .filter((id) => id !== "sand-dry" || pour.plan.bed !== "air")
      .map((id): SheetLine => {
        const check = checkOf(id);
        return {
          id,
          kind: "hand",
          state: check === null ? "open" : check.ok ? "ok" : "blocked",
          why: [],
          note: check?.note ?? null,
        };
      }),
  ];
}

/** Of shells nobody sees here nothing is known, so nothing about them can be in order. */
const hereWhy = (pieceIds: readonly string[], { items }: PourParts): readonly Why[] =>
  pieceIds.length === 0
    ? [{ shell: null, code: "no-shells" }]
    : items.length < pieceIds.length
      ? [{ shell: null, code: "shells-not-here" }]
      : [];

function reviewWhy({ standing: { piece } }: RackItem): readonly WhyCode[] {
  const review = piece.reviews.at(-1);
  if (review === undefined) return ["no-review"];
  if (piece.coats.length > review.coats) return ["coats-since-review"];
  return review.verdict === "hold" && review.passed.length === 0 ? ["review-hold"] : [];
}

function soundWhy({ standing: { piece }, findings }: RackItem): readonly WhyCode[] {
  const isOpen = piece.cracks.some(({ patched, trimmedOff }) => patched === null && trimmedOff !== true);
  const isHeld = findings.some(({ rule, level }) => rule === "open-crack" && level === "hold");
  const broke = findings.some(({ rule, level }) => rule === "run-broke-a-limit" && level === "hold");
  return [
    ...(isOpen || isHeld ? (["open-crack"] as const) : []),
    ...(broke ? (["fire-broke-limit"] as const) : []),
  ];
}

function firedWhy({ standing: { piece }, findings }: RackItem): readonly WhyCode[] {
  const burnt = piece.burnouts.some(({ ended }) => ended !== null && ended.result !== "stopped");
  if (piece.firings.length === 0 && !burnt) return ["not-fired"];
  return findings.some(({ rule, level }) => rule === "fired-too-little" && level !== "note")
    ? ["fired-too-little"]
    : [];
}

function wallWhy({ standing: { wall } }: RackItem): readonly WhyCode[] {
  if (wall.judged === null) return ["wall-not-judged"];
  if (wall.judged.band === "carries") return [];
  return [wall.judged.band === "marginal" ? "wall-marginal" : "wall-fails"];
}

function hotWhy({ standing: { piece } }: RackItem, { alloy, shells }: PourParts): readonly WhyCode[] {
  const preheat = piece.preheats.at(-1);
  if (piece.phase !== "preheated" || preheat === undefined) return ["not-preheated"];
  const thinnestMm = shells.find(({ id }) => id === piece.id)?.thinnestMm ?? null;
  const heat = alloy === null ? null : shellHeatOf(alloy, thinnestMm);
  if (heat === null) return [];
  const cold = coldShell(heat, preheat.shellC);
  return cold === "ok" ? [] : [cold === "cold" ? "preheat-too-cold" : "preheat-cold-if-thin"];
}

export type SheetVerdict = {
  /** Nothing stands against it but what was passed with a written reason. */
  readonly isGo: boolean;
  /** Lines that stand against it and have no reason yet. */
  readonly against: readonly SheetLine[];
  readonly passed: readonly { readonly item: string; readonly reason: string }[];
};

/** Go or no-go: a line that is not in order is passed only with a written reason. */
export function sheetVerdict(
  lines: readonly SheetLine[],
  reasons: Readonly<Record<string, string>>,
): SheetVerdict {
  const wrong = lines.filter(({ state }) => state !== "ok");
  const reasonOf = ({ id }: SheetLine): string => (reasons[id] ?? "").trim();
  return {
    isGo: wrong.every((line) => reasonOf(line) !== ""),
    against: wrong.filter((line) => reasonOf(line) === ""),
    passed: wrong
      .filter((line) => reasonOf(line) !== "")
      .map((line) => ({ item: line.id, reason: reasonOf(line) })),
  };
}
