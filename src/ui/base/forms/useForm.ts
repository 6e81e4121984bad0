import { useRef, useState } from "react";
import { useDraft } from "../state/live.ts";
import type { LogResult } from "../state/shop.tsx";
import type { Limits } from "../../../logbook/casting/limits.ts";
import type { FieldErrors } from "./formFields.ts";

export type Form<D extends object> = {
  readonly draft: D;
  readonly set: (changes: Partial<D>) => void;
  readonly drop: () => Promise<void>;
  /** Puts everything back as it was before the first change. */
  readonly restart: () => Promise<void>;
  readonly isChanged: boolean;
  /** False until a kept draft has been looked for: where a tap answers a question, the question waits for it. */
  readonly isLooked: boolean;
  readonly errors: FieldErrors;
  readonly tell: (errors: FieldErrors) => void;
  /** Why the log did not take it; null once something is changed or it is sent again. */
  readonly refused: string | null;
  readonly refuse: (why: string) => void;
  /** Writes it once, however often the key is pressed. What was taken drops the draft, and then `done` goes on. */
  readonly send: (write: () => Promise<LogResult>, done?: AfterSave) => Promise<void>;
};

/** What comes after the log has taken it; under `restart` the form stays on the page and begins anew. */
export type AfterSave = (() => void | Promise<void>) | { readonly restart: () => void };

type Kept<D> = { readonly about: string; readonly draft: D };

/**
 * What a form speaks of, such as a coat. Where it was once named with less, `was` is that name: a draft kept under it is
 * taken up too, with the values of `given` in it.
 */
type About<D> = string | { readonly is: string; readonly was: string; readonly given: Partial<D> };

/**
 * A half-written form: kept as a draft at every key stroke, its complaints only in memory. A draft
 * kept about something else is not taken up.
 */
export function useForm<D extends object>(key: string, initial: D, asked: About<D> = ""): Form<D> {
  const { is: about, was, given } = typeof asked === "string" ? { is: asked, was: asked, given: {} } : asked;
  const [kept, write, drop, isLooked] = useDraft<Kept<D>>(key, { about, draft: initial });
  const [errors, tell] = useState<FieldErrors>({});
  const [refused, refuse] = useState<string | null>(null);
  const sending = useRef(false);
  // A draft kept from before a field was there has that field's start.
  const draft =
    kept.about === about
      ? { ...initial, ...kept.draft }
      : kept.about === was
        ? { ...initial, ...kept.draft, ...given }
        : initial;
  const set = (changes: Partial<D>) => {
    write({ about, draft: { ...draft, ...changes } });
    refuse(null);
    const touched = Object.keys(changes);
    if (touched.some((name) => errors[name] !== undefined))
      tell(Object.fromEntries(Object.entries(errors).filter(([name]) => !touched.includes(name))));
  };
  const restart = async () => {
    write({ about, draft: initial });
    tell({});
    await drop();
  };
  const send = async (run: () => Promise<LogResult>, done?: AfterSave) => {
    if (sending.current) return;
    sending.current = true;
    refuse(null);
    try {
      const result = await run();
      if (!result.ok) return refuse(result.text);
      if (typeof done === "object") {
        await restart();
        return done.restart();
      }
      await drop();
      await done?.();
    } finally {
      sending.current = false;
    }
  };
  return {
    draft,
    set,
    drop,
    restart,
    isChanged: JSON.stringify(draft) !== JSON.stringify(initial),
    isLooked,
    errors,
    tell,
    refused,
    refuse,
    send,
  };
}

/** The form of a sum that follows each key stroke: nothing is saved, what lies outside its limits is said at once. */
export function useSumForm<D extends object>(
  key: string,
  initial: D,
  { limits, about }: { readonly limits: Limits<D>; readonly about?: string },
): Form<D> & { readonly limits: Limits<D> } {
  return { ...useForm(key, initial, about), limits };
}
