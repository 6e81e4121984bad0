import { useEffect, useState } from "react";
import type { KilnCsvOptions } from "../../../workers/kilnCsv.ts";
import { makeKilnCsvClient, type KilnCsvAnswer } from "../../../workers/kilnCsvClient.ts";

const readKilnFile = makeKilnCsvClient();

/** A logger's file as it reads for this run; null without a file and while it is being read. */
export function useKilnFile(
  file: File | null,
  { zone, startMs, endMs, unit }: KilnCsvOptions,
): KilnCsvAnswer | null {
  const [read, setRead] = useState<{ readonly of: string; readonly answer: KilnCsvAnswer } | null>(null);
  const of = `${zone} ${startMs} ${endMs} ${unit}`;
  useEffect(() => {
    setRead(null);
    if (file === null) return undefined;
    const stop = new AbortController();
    void readKilnFile(file, { zone, startMs, endMs, unit, signal: stop.signal }).then((answer) => {
      if (!stop.signal.aborted) setRead({ of, answer });
    });
    return () => stop.abort();
  }, [file, of, zone, startMs, endMs, unit]);
  return read?.of === of ? read.answer : null;
}
