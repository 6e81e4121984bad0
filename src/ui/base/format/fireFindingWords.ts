import type { Say, WordsOf } from "./findingSay.ts";
import { fireFindings as t, kindsTexts } from "../words/fireFindings.ts";

const kinds: Readonly<Record<string, string>> = kindsTexts;
const crackTitle = (say: Say): string => kinds[say.text("kind")] ?? "Crack";
const place = (say: Say): string =>
  say.text("where") === "" ? "" : t["place.whereWhere"]({ where: say.text("where") });

export const crackWords: WordsOf<"open-crack"> = {
  open: (say) => ({
    title: t["crack.open.title"]({ crackTitle: crackTitle(say) }),
    says: t["crack.open.says"]({ place: place(say) }),
    remedy: t["crack.open.remedy"],
  }),
  "patch-not-dry": (say) => ({
    title: t["crack.patch-not-dry.title"]({ crackTitle: crackTitle(say) }),
    says: t["crack.patch-not-dry.says"]({ place: place(say), ageH: say.show("ageH") }),
    remedy: t["crack.patch-not-dry.remedy"],
  }),
  "trimmed-off": (say) => ({
    title: t["crack.trimmed-off.title"]({ crackTitle: crackTitle(say) }),
    says: t["crack.trimmed-off.says"]({ place: place(say) }),
    remedy: t["crack.trimmed-off.remedy"],
  }),
};

export const wireWords: WordsOf<"patched-without-wire"> = {
  "no-wire": (say) => ({
    title: t["wire.no-wire.title"],
    says: t["wire.no-wire.says"]({ place: place(say) }),
    remedy: t["wire.no-wire.remedy"],
  }),
};

const fired = (say: Say): string =>
  t["fired.firedToPeakCFor"]({
    peakC: say.show("peakC"),
    holdMin: say.show("holdMin"),
    limitC: say.show("limitC"),
    limitMin: say.show("limitMin"),
  });

export const firedWords: WordsOf<"fired-too-little"> = {
  cool: (say) => ({
    title: t["fired.cool.title"],
    says: t["fired.cool.says"]({ fired: fired(say) }),
    remedy: t["fired.cool.remedy"],
  }),
  short: (say) => ({
    title: t["fired.short.title"],
    says: t["fired.short.says"]({ fired: fired(say) }),
    remedy: t["fired.short.remedy"],
  }),
  "not-bonded": (say) => ({
    title: t["fired.not-bonded.title"],
    says: t["fired.not-bonded.says"]({ fired: fired(say) }),
    remedy: t["fired.not-bonded.remedy"],
  }),
  "not-logged": () => ({
    title: t["fired.not-logged.title"],
    says: t["fired.not-logged.says"],
    remedy: t["fired.not-logged.remedy"],
  }),
};

const misrunRemedy = t["misrunRemedy.lookForMisrunsAnd"];

export const coldShellWords: WordsOf<"poured-cold-shell"> = {
  "too-long": (say) => ({
    title: t["coldShell.too-long.title"],
    says: t["coldShell.too-long.says"]({
      outMin: say.show("outMin"),
      wallMm: say.show("wallMm"),
      leftC: say.show("leftC"),
      leastC: say.show("leastC"),
      limitMin: say.show("limitMin"),
    }),
    remedy: t["coldShell.too-long.remedy"],
  }),
  "too-long-if": (say) => ({
    title: t["coldShell.too-long-if.title"],
    says: t["coldShell.too-long-if.says"]({
      outMin: say.show("outMin"),
      wallMm: say.show("wallMm"),
      sectionMm: say.show("sectionMm"),
      limitMin: say.show("limitMin"),
      leftC: say.show("leftC"),
    }),
    remedy: t["coldShell.too-long-if.remedy"],
  }),
  "too-cold": (say) => ({
    title: t["coldShell.too-cold.title"],
    says: t["coldShell.too-cold.says"]({
      shellC: say.show("shellC"),
      sectionMm: say.show("sectionMm"),
      leastC: say.show("leastC"),
    }),
    remedy: misrunRemedy,
  }),
  "cold-if-thin": (say) => ({
    title: t["coldShell.cold-if-thin.title"],
    says: t["coldShell.cold-if-thin.says"]({
      shellC: say.show("shellC"),
      sectionMm: say.show("sectionMm"),
      leastC: say.show("leastC"),
    }),
    remedy: misrunRemedy,
  }),
  "preheat-cold": (say) => ({
    title: t["coldShell.preheat-cold.title"],
    says: t["coldShell.preheat-cold.says"]({
      shellC: say.show("shellC"),
      sectionMm: say.show("sectionMm"),
      leastC: say.show("leastC"),
    }),
    remedy: t["coldShell.preheat-cold.remedy"],
  }),
  "preheat-cold-if-thin": (say) => ({
    title: t["coldShell.preheat-cold-if-thin.title"],
    says: t["coldShell.preheat-cold-if-thin.says"]({
      shellC: say.show("shellC"),
      sectionMm: say.show("sectionMm"),
      leastC: say.show("leastC"),
    }),
    remedy: t["coldShell.preheat-cold-if-thin.remedy"],
  }),
  "not-known": () => ({
    title: t["coldShell.not-known.title"],
    says: t["coldShell.not-known.says"],
    remedy: t["coldShell.not-known.remedy"],
  }),
};
