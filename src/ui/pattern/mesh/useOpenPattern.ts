import { useEffect, useRef, useState } from "react";
import { useLocation } from "wouter";
import { getPattern, patternIds, putPattern } from "../../../storage/patterns.ts";
import { mostAtOnce } from "../../../workers/pattern/fileId.ts";
import type { PatternProgress } from "../../../workers/patternMessages.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { notAnsweredWords } from "./fileWords.ts";
import { patternSession } from "./patternSession.ts";
import { studyOf } from "./patternStudy.ts";
import { keptFileBytes, readStudy } from "./readStudy.ts";
import { sumsVersion } from "./sumsVersion.ts";

type Opening = { readonly name: string; readonly progress: PatternProgress };

/** Opens a mesh file, keeps what was found, and goes to its page. */
export function useOpenPattern(): {
  readonly opening: Opening | null;
  readonly fault: string | null;
  readonly open: (file: Blob, name: string) => Promise<void>;
  readonly tell: (fault: string) => void;
  readonly cancel: () => void;
} {
  const { db, clock } = useShop();
  const say = useFleeting((fleeting) => fleeting.say);
  const [, goTo] = useLocation();
  const [opening, setOpening] = useState<Opening | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const stop = useRef<AbortController>(undefined);
  useEffect(() => () => stop.current?.abort(), []);

  const open = async (file: Blob, name: string): Promise<void> => {
    stop.current?.abort();
    const mine = new AbortController();
    stop.current = mine;
    setFault(null);
    setOpening({ name, progress: { stage: "read", share: 0 } });
    const onProgress = (progress: PatternProgress): void => {
      if (!mine.signal.aborted) setOpening({ name, progress });
    };
    // Only a large file may be kept by an id of an older kind; all that is kept is read for it.
    const isLarge = file.size > mostAtOnce;
    const keptIds = isLarge ? await patternIds(db, (kept) => keptFileBytes(kept) === file.size) : [];
    const opened = await patternSession().open({ file, name, keptIds }, { signal: mine.signal, onProgress });
    if (mine.signal.aborted) return;
    setOpening(null);
    if (!opened.ok) return setFault(notAnsweredWords(opened));
    const { id } = opened.answer;
    const row = await getPattern(db, id);
    const kept = readStudy(row?.kept ?? null);
    if (kept !== null) say("This file is here already. It opens as you left it.");
    // What older sums found of the mesh gives way to what was found now, unless the maker mended it since.
    const isOlder = kept !== row?.kept && kept?.holesClosed === false && !kept.seamsJoined;
    const study =
      kept === null
        ? studyOf(opened.answer, nameOf(name), sumsVersion)
        : isOlder
          ? { ...kept, found: opened.answer.found }
          : kept;
    const written = await putPattern(db, { id, name: study.name, savedAt: clock(), kept: study });
    if (!written.ok)
      return setFault("It opened, but this device is too full to save it. Remove a pattern, or photos.");
    goTo(paths.pattern(id));
  };
  const cancel = (): void => {
    stop.current?.abort();
    setOpening(null);
  };
  return { opening, fault, open, tell: setFault, cancel };
}

/** The file's name without its ending, as a piece would be called. */
function nameOf(file: string): string {
  const bare = file
    .replace(/\.[a-z0-9]{2,4}$/i, "")
    .replaceAll(/[_\s]+/g, " ")
    .trim();
  return bare === "" ? "Pattern" : bare.slice(0, 120);
}
