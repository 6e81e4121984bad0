import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import type { Melt, Pour, Run } from "../fire/fireStates.ts";
import { fillWhy, firedWhy, heatWhy, metalHeatWhy, metalWhy, soundWhy, wallWhy } from "./pourSheetWhys.ts";
import type { SheetFinding, SheetShell, Told, Why, WhyCode } from "./pourSheetWhys.ts";
import { meltHeatRead, shellHeat, type HeatRead } from "../fire/heatRead.ts";
import { readTold } from "./pourTold.ts";
import { waterOf } from "./pourChecks.ts";
import type { PourSupply } from "./pourSupply.ts";
import { lineAgeMin, linesByHand } from "./pourSheetAges.ts";

/** OK by a measurement or a fresh tick; known to be wrong; only planned so far; or to be looked at. */
export type LineState = "ok" | "not-ok" | "planned" | "to-check";

export type SheetLine = {
  readonly id: string;
  readonly kind: "log" | "hand";
  readonly state: LineState;
  readonly why: readonly Why[];
  /** Whether a look by hand can settle it now. */
  readonly isTickable: boolean;
  /** The newest tick by hand, fresh or old. */
  readonly check: Pour["checks"][number] | null;
  /** When the tick or the reading it is OK by grows old, epoch ms; null for what doesn't. */
  readonly until: number | null;
  /** The reading it is OK by; of several shells the one that grows old first. Null for all else. */
  readonly read: HeatRead | null;
};

/** All that a sheet speaks of, as the log had it at `now`. */
export type SheetOf = {
  readonly pour: Pour;
  readonly shells: readonly SheetShell[];
  readonly run: Run | null;
  readonly melt: Melt | null;
  readonly supply: PourSupply;
  readonly now: number;
};

/** Known to be wrong: a tick by hand can't change it. */
const wrong: ReadonlySet<WhyCode> = new Set<WhyCode>([
  "no-shells",
  "shells-not-here",
  "no-review",
  "review-hold",
  "coats-since-review",
  "open-crack",
  "patch-not-dry",
  "pattern-inside",
  "wax-film",
  "residue",
  "rinsed",
  "cold",
  "stop-warning",
  "not-fired",
  "fired-too-little",
  "wall-fails",
  "damp",
  "heat-too-low",
  "metal-short",
  "crucible-too-full",
  "metal-too-cold",
  "metal-too-hot",
  "metal-planned-cold",
  "metal-planned-hot",
  "said-no",
]);
/** Not there yet: nothing to look at. */
const toCome: ReadonlySet<WhyCode> = new Set<WhyCode>(["preheat-not-begun", "melt-not-begun"]);

export const isWrong = (code: WhyCode): boolean => wrong.has(code);

/** Which line speaks for a rule's stop warning; a rule that is not here gets a line of its own. */
const lineOfRule: Readonly<Record<string, string>> = {
  "open-crack": "shell-sound",
  "run-broke-a-limit": "shell-sound",
  "fired-too-little": "shell-fired",
  "wall-too-thin": "wall-carries",
  "poured-cold-shell": "shell-hot",
  "last-coat-damp": "shell-dry",
  "pattern-inside": "shell-empty",
  "burnout-residue": "shell-empty",
  "shell-damp-again": "shell-empty",
};

/** Every line of the sheet: what the log measured, then what is ticked by hand. A plan ticks nothing. */
export function sheetLines(of: SheetOf): readonly SheetLine[] {
  const { pour, shells, run, melt, supply, now } = of;
  const held = shells.flatMap((shell) =>
    shell.findings.filter(({ level }) => level === "hold").map((finding) => ({ shell, finding })),
  );
  const own = [...new Set(held.map(({ finding }) => finding.rule))].filter((rule) => !(rule in lineOfRule));
  const holdsOf = (isOf: (rule: string) => boolean): readonly Why[] =>
    held.filter(({ finding }) => isOf(finding.rule)).map(({ shell, finding }) => stopWarning(shell, finding));
  const each = (id: string, ask: (shell: SheetShell) => Told): Told => {
    const told = shells.map((shell) => [shell, ask(shell)] as const);
    const why = told.flatMap(([{ standing }, of]) =>
      of.why.map((one): Why => ({ ...one, shell: standing.piece.plan.name, pieceId: standing.piece.id })),
    );
    // What the line says already of a shell is not said again in a warning's words.
    const isSaid = ({ pieceId }: Why): boolean =>
      why.some((one) => one.pieceId === pieceId && wrong.has(one.code));
    return {
      why: [
        ...hereWhy(pour.pieceIds, shells),
        ...why,
        ...holdsOf((rule) => lineOfRule[rule] === id).filter((one) => !isSaid(one)),
      ],
      until: least(told.map(([, { until }]) => until)),
      // A tick that is older than what it speaks of says nothing.
      from: Math.max(-Infinity, ...told.map(([, { from }]) => from)),
      read: told.flatMap(([, { read }]) => read ?? []).toSorted((a, b) => a.at - b.at)[0],
    };
  };
  const { family } = readTold(pour.plan);
  const metal = meltHeatRead(pour, melt, now);
  const lines: readonly (readonly [string, Told])[] = [
    ["review-clear", each("review-clear", ({ standing }) => reviewTold(standing.piece))],
    ["shell-sound", each("shell-sound", soundWhy)],
    ["shell-empty", each("shell-empty", ({ standing }) => only(standing.metalBars.map(({ code }) => code)))],
    ["shell-fired", each("shell-fired", firedWhy)],
    [
      "shell-dry",
      each("shell-dry", ({ standing }) => {
        const water = waterOf(standing, family);
        return only(water === "fired" ? [] : water === "damp" ? ["damp"] : ["dry-by-estimate"]);
      }),
    ],
    ["wall-carries", each("wall-carries", wallWhy)],
    [
      "shell-hot",
      each("shell-hot", ({ standing }) =>
        heatWhy(shellHeat(standing.piece, { pour, run, now }), {
          planned: pour.plan,
          shell: supply.shells.find(({ id }) => id === standing.piece.id) ?? null,
          alloy: supply.alloy,
          now,
        }),
      ),
    ],
    [
      "vents-noted",
      each("vents-noted", ({ standing: { piece } }) =>
        only((piece.patterns.at(-1)?.vents ?? 0) > 0 ? [] : ["no-vent-noted"]),
      ),
    ],
    ["metal-enough", metalWhy(supply, metal)],
    ["crucible-fill", fillWhy(supply, metal)],
    ["metal-heat", metalHeatWhy(metal, { planned: pour.plan, supply, now })],
    ...own.map((rule): readonly [string, Told] => [
      `hold:${rule}`,
      { why: holdsOf((one) => one === rule), until: null, from: -Infinity },
    ]),
  ];
  const hand: Told = { why: [{ shell: null, code: "not-looked-at" }], until: null, from: -Infinity };
  return [
    ...lines.map(([id, told]) => lineOf(id, "log", told, { pour, now })),
    ...linesByHand
      .filter((id) => id !== "sand-dry" || pour.plan.bed !== "air")
      .map((id) => lineOf(id, "hand", hand, { pour, now })),
  ];
}

function lineOf(
  id: string,
  kind: SheetLine["kind"],
  told: Told,
  { pour, now }: { readonly pour: Pour; readonly now: number },
): SheetLine {
  const check = pour.checks.find(({ item }) => item === id) ?? null;
  const base = { id, kind, check, until: null, isTickable: false, read: null };
  const { why } = told;
  if (why.some(({ code }) => wrong.has(code))) return { ...base, state: "not-ok", why };
  if (why.some(({ code }) => toCome.has(code))) return { ...base, state: "planned", why };
  const isTickable = why.length > 0;
  if (check !== null && !check.ok && isTickable)
    return { ...base, state: "not-ok", why: [{ shell: null, code: "said-no" }], isTickable };
  if (!isTickable) return { ...base, state: "ok", why, until: told.until, read: told.read ?? null };
  const until = check === null ? null : check.at + lineAgeMin(id) * minuteMs;
  if (check === null || until === null || check.at < told.from)
    return { ...base, state: "to-check", why, isTickable };
  return now < until
    ? { ...base, state: "ok", why, isTickable, until }
    : { ...base, state: "to-check", why: [...why, { shell: null, code: "tick-old" }], isTickable };
}

const stopWarning = ({ standing: { piece } }: SheetShell, finding: SheetFinding): Why => ({
  shell: piece.plan.name,
  code: "stop-warning",
  finding,
  pieceId: piece.id,
});

/** Of shells nobody sees here nothing is known, so nothing about them can be OK. */
const hereWhy = (pieceIds: readonly string[], shells: readonly SheetShell[]): readonly Why[] =>
  pieceIds.length === 0
    ? [{ shell: null, code: "no-shells" }]
    : shells.length < pieceIds.length
      ? [{ shell: null, code: "shells-not-here" }]
      : [];

function reviewTold({ coats, reviews }: SheetShell["standing"]["piece"]): Told {
  const review = reviews.at(-1);
  if (review === undefined) return only(["no-review"]);
  if (coats.length > review.coats) return only(["coats-since-review"]);
  return only(review.verdict === "hold" && review.passed.length === 0 ? ["review-hold"] : []);
}

const only = (codes: readonly WhyCode[]): Told => ({
  why: codes.map((code) => ({ shell: null, code })),
  until: null,
  from: -Infinity,
});

const least = (times: readonly (number | null)[]): number | null => {
  const known = times.filter((time) => time !== null);
  return known.length === 0 ? null : Math.min(...known);
};

export type SheetVerdict = {
  /** Nothing stands against it but what was passed with a written reason. */
  readonly isGo: boolean;
  /** Lines that stand against it and have no reason yet. */
  readonly against: readonly SheetLine[];
  readonly passed: readonly { readonly item: string; readonly reason: string }[];
};

/** Go or no-go: a line that is not OK is passed only with a written reason. */
export function sheetVerdict(
  lines: readonly SheetLine[],
  reasons: Readonly<Record<string, string>>,
): SheetVerdict {
  const open = lines.filter(({ state }) => state !== "ok");
  const reasonOf = ({ id }: SheetLine): string => (reasons[id] ?? "").trim();
  return {
    isGo: open.every((line) => reasonOf(line) !== ""),
    against: open.filter((line) => reasonOf(line) === ""),
    passed: open
      .filter((line) => reasonOf(line) !== "")
      .map((line) => ({ item: line.id, reason: reasonOf(line) })),
  };
}
