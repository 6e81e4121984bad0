import { useEffect, useState } from "react";
import type { KilnCsvOptions } from "../../../workers/kilnCsv.ts";
import { makeKilnCsvClient, type KilnCsvAnswer } from "../../../workers/kilnCsvClient.ts";

const readKilnFile = makeKilnCsvClient();

type Read = { readonly file: File; readonly asked: string; readonly answer: KilnCsvAnswer };

/** A logger's file as it reads for this run; null without a file and while it is being read. */
export function useKilnFile(
  file: File | null,
  { zone, startMs, endMs, unit }: KilnCsvOptions,
): KilnCsvAnswer | null {
  const [read, setRead] = useState<Read | null>(null);
  const asked = `${zone} ${startMs} ${endMs} ${unit}`;
  useEffect(() => {
    if (file === null) return undefined;
    const stop = new AbortController();
    const look = async (): Promise<void> => {
      const answer = await readKilnFile(file, { zone, startMs, endMs, unit, signal: stop.signal });
      if (!stop.signal.aborted) setRead({ file, asked, answer });
    };
    void look();
    return () => stop.abort();
  }, [file, asked, zone, startMs, endMs, unit]);
  return read !== null && read.file === file && read.asked === asked ? read.answer : null;
}
